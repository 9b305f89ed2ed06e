"""On the shared tablet a classmate takes a PIN away with the seat code, which others can learn."""

from outcome import got_through, need, stopped
from program import Refused
from school import School, locked, rated, tap


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    student = school.join(tablet, 1)
    need(tap(tablet, student) == 1, "a tap is not rated")
    school.set_pin(tablet, student, "4711")
    try:
        school.take_pin_by_code(tablet, student, 1)
    except Refused as refused:
        return stopped(refused)
    if locked(tablet, student):
        return stopped("the seat code is not refused, and the pages stay locked")
    return got_through(f"the PIN is gone, {rated(tablet, student)} rating is shown")
