"""A classmate sets a PIN on the pages of a student who has none, and locks the student out."""

from outcome import got_through, need, stopped
from program import Refused
from school import School, locked, tap


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    student = school.join(tablet, 1)
    need(tap(tablet, student) == 1, "a tap is not rated")
    try:
        school.set_pin_as_another(tablet, student, "0815")
    except Refused as refused:
        return stopped(refused)
    tablet.call("lock_students")
    if locked(tablet, student):
        return got_through(
            "without anything of the slip a PIN is set; the student's pages are locked"
        )
    return stopped("the pages stay open")
