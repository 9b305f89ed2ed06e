"""A forged carry file swaps a student's keys on the shared tablet for the forger's."""

from outcome import got_through, need, stopped
from program import Refused
from school import School, Student, bring_carry, hand_in, tap


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    victim = school.join(tablet, 1)
    need(tap(tablet, victim) == 1, "a tap is not rated")
    need(school.verdicts(hand_in(tablet, victim)) == ["new"], "the tablet's hand-in does not count")
    forger = Student(school, 1)
    try:
        taken = bring_carry(school, tablet, forger, forger.ratings({school.concepts()[0]: 0}))
    except Refused as refused:
        return stopped(refused)
    if taken["student"] != victim:
        return stopped("the carry file makes a student of its own")
    found = school.verdicts(hand_in(tablet, victim))
    if found[0] in ("updated", "known"):
        return stopped(f"the carry file is read, and the student's next hand-in is {found[0]}")
    return got_through(f"the student's next hand-in has the forger's key and is {found[0]}")
