"""A forged carry file adds to the pages of a student who has a PIN."""

from outcome import got_through, need, stopped
from program import Refused
from school import School, Student, bring_carry, rated, tap

PIN = "4711"


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    victim = school.join(tablet, 1)
    before = tap(tablet, victim)
    forger = Student(school, 1)
    honest = forger.ratings({school.concepts()[3]: 0})
    need(bring_carry(school, tablet, forger, honest)["student"] == victim, "no carry file is taken")
    before = rated(tablet, victim)
    school.set_pin(tablet, victim, PIN)
    try:
        bring_carry(school, tablet, forger, forger.ratings(dict.fromkeys(school.concepts(), 0)))
        why = "taken"
    except Refused as refused:
        why = str(refused)
    tablet.call("unlock", student=victim, pin=PIN)
    after = rated(tablet, victim)
    if after != before:
        return got_through(f"{before} ratings before, {after} after it")
    return stopped(why)
