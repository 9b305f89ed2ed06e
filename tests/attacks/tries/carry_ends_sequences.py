"""A forged carry file with the highest sequence leaves a student none for any later tap."""

import formats
from outcome import got_through, need, stopped
from program import Refused
from school import School, Student, bring_carry, rated, tap


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    victim = school.join(tablet, 1)
    need(rated(tablet, victim) == 0, "a new student has ratings")
    forger = Student(school, 1)
    concept = tablet.call("today", student=victim, date=None)["concepts"][1]["concept"]["id"]
    last = forger.ratings({concept: 0}, at=formats.MOST_SEQUENCE)
    try:
        taken = bring_carry(school, tablet, forger, last)
    except Refused as refused:
        return stopped(refused)
    need(taken["student"] == victim, "the carry file makes a student of its own")
    before = rated(tablet, victim)
    try:
        after = tap(tablet, victim)
    except Refused as refused:
        return got_through(f"no tap is recorded any more: {refused}")
    need(after == before + 1, f"{before} ratings before the tap, {after} after it")
    return stopped("taps are recorded after it")
