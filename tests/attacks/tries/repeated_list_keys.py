"""Forged files make the list of quarantined devices repeat a key, which stops its screen."""

from outcome import got_through, need, stopped
from school import School, Student


def attack(ground):
    school = School(ground)
    concept = school.concepts()[0]
    for seat in (1, 2):
        Student(school, seat).hands_in_honestly({concept: 2})
    one = Student(school, 1)
    forged = [one, Student(school, 1, one.device), Student(school, 2, one.device)]
    found = school.verdicts(*(each.hand_in(each.ratings({concept: 0})) for each in forged))
    need(found == ["quarantined"] * 3, found)
    keys = school.quarantined(1) + school.quarantined(2)
    if len(set(keys)) < 3:
        return got_through(f"3 devices, {len(set(keys))} keys in the list of the screen")
    return stopped("3 devices, 3 keys")
