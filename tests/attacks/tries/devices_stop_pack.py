"""A student hands in from more devices than a class pack has room for, so none can be made."""

import formats
from outcome import got_through, need, stopped
from program import Refused
from school import School, Student

DEVICES = 100
MOST_DEVICES = 8


def attack(ground):
    school = School(ground)
    concept = school.concepts()[0]
    student = Student(school, 1)
    student.hands_in_honestly({concept: 2})
    school.assign([1], [concept])
    need(len(school.save_pack()["sealed"]) == 1, "the pack has no personal assignment")
    ids = (formats.new_id() for _ in range(DEVICES))
    found = school.verdicts(
        *(student.hand_in(student.ratings({concept: 1}, device=i), device=i) for i in ids)
    )
    taken = sum(kind in ("new", "updated") for kind in found)
    need(taken or set(found) <= {"quarantined", "seat_full"}, set(found))
    try:
        sealed = len(school.save_pack()["sealed"])
    except Refused as refused:
        return got_through(f"{taken} devices of one seat are accepted; {refused}")
    if sealed > MOST_DEVICES:
        return got_through(f"one seat has {sealed} sealed parts in the pack")
    return stopped(
        f"{taken} of {DEVICES} further devices are taken, the pack has {sealed} sealed parts"
    )
