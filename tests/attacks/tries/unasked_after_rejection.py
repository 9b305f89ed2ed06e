"""A key is taken unasked for a seat whose devices were all rejected."""

from outcome import got_through, need, stopped
from school import School, Student


def attack(ground):
    school = School(ground)
    concepts = school.concepts()
    first, next_one = Student(school, 1), Student(school, 1)
    first.hands_in_honestly({concepts[0]: 2})
    device = school.device(1, first)
    school.decide(1, device, None)
    school.decide(1, device, False)
    need(school.reports(1) == 0, "a rejected device counts")
    found = school.verdicts(next_one.hand_in(next_one.ratings(dict.fromkeys(concepts, 0))))
    if school.reports(1):
        return got_through(
            f"the next unknown key is {found[0]}, {school.reports(1)} of its reports count"
        )
    need(school.quarantined(1), "the next key is nowhere")
    return stopped(f"the next unknown key is {found[0]}")
