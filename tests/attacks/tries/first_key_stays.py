"""A classmate hands in first for a seat, and the teacher cannot reject that device."""

from outcome import got_through, need, stopped
from program import Refused
from school import School, Student


def attack(ground):
    school = School(ground)
    concepts = school.concepts()
    forger, genuine = Student(school, 1), Student(school, 1)
    forger.hands_in_honestly(dict.fromkeys(concepts[:5], 0))
    found = school.verdicts(genuine.hand_in(genuine.ratings(dict.fromkeys(concepts[:8], 2))))
    need(found == ["quarantined"], found)
    (device,) = school.quarantined(1)
    school.decide(1, device, True)
    try:
        school.decide(1, school.device(1, forger), False)
    except Refused as refused:
        return got_through(f"the forged device stays, {school.reports(1)} reports count: {refused}")
    if school.reports(1) != 8:
        return got_through(f"{school.reports(1)} reports count, 8 are genuine")
    return stopped("the teacher rejected the first device; the 8 genuine reports count")
