"""A classmate puts an older copy in the place of a student's store without the PIN."""

from outcome import got_through, need, stopped
from program import Refused
from school import School, rated, tap

PIN = "4711"


def attack(ground):
    school = School(ground, today="2026-11-24")
    tablet = school.tablet()
    student = school.join(tablet, 1)
    need(tap(tablet, student) == 1, "a tap is not rated")
    school.set_pin(tablet, student, PIN)
    folder = ground / "tablet"
    tablet.close()
    tablet = type(tablet)(folder, "2026-11-25")
    need(tablet.call("unlock", student=student, pin=PIN)["kind"] == "open", "the PIN does not open")
    need(tap(tablet, student) == 2, "the second day is not rated")
    tablet.call("lock_students")
    store = {"kind": "student", "student": student}
    try:
        copies = tablet.call("copies", **store)["copies"]
        need(copies, "there is no copy")
        tablet.call("restore_copy", store=store, name=copies[-1]["name"])
    except Refused as refused:
        return stopped(refused)
    tablet.call("unlock", student=student, pin=PIN)
    left = rated(tablet, student)
    need(left < 2, "the copy that was restored is as new as the store")
    return got_through(
        f"2 ratings before, {left} after a copy was restored by somebody without the PIN"
    )
