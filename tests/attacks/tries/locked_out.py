"""Wrong PINs typed by a classmate keep a student out, even with the slip."""

from outcome import got_through, need, stopped
from program import Refused
from school import School, locked, tap


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    student = school.join(tablet, 1)
    tap(tablet, student)
    school.set_pin(tablet, student, "4711")
    waits = [tablet.call("unlock", student=student, pin=f"{at:04}") for at in range(6)]
    need(waits[-1]["kind"] == "wait", f"wrong PINs do not wait: {waits[-1]}")
    try:
        school.take_pin_by_slip(tablet, student, 1)
    except Refused as refused:
        return got_through(f"with the slip in hand: {refused}")
    need(not locked(tablet, student), "the slip does not open")
    return stopped("the slip opens at once, whatever was typed before")
