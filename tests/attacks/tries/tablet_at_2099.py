"""A classmate sets the tablet's clock to 2099, taps, and so outranks all that the student says later."""

from outcome import got_through, need, stopped
from program import Refused
from school import School, hand_in, rated, tap


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    victim = school.join(tablet, 1)
    need(tap(tablet, victim) == 1, "a tap is not rated")
    school.set_pin(tablet, victim, "4711")
    said = []
    for today in ("2099-11-25", "9998-12-31", "1970-01-01"):
        tablet.go_to(today)
        for call, more in (("today", {"date": None}), ("practice", {"more": False}), ("my_path", {}), ("hand_in", {})):
            try:
                tablet.call(call, student=victim, **more)
            except Refused as refused:
                need(refused.code != "panic", f"{today} {call} ends in a panic")
                said.append(refused.code)
        tablet.call("unlock", student=victim, pin="0000")
        tablet.call("start")
    tablet.go_to(school.desk.today)
    waited = tablet.call("unlock", student=victim, pin="4711")
    if waited["kind"] != "open" and waited["wait_seconds"] > 900:
        return got_through(f"the PIN's owner waits {waited['wait_seconds']} s")
    if waited["kind"] != "open":
        school.take_pin_by_slip(tablet, victim, 1)
    # The classmate's tap with the clock ahead, on the open page.
    tablet.go_to("2027-05-06")
    ahead = tap(tablet, victim)
    tablet.go_to(school.desk.today)
    again = tablet.call("today", student=victim, date=None)
    concept = again["concepts"][0]["concept"]["id"]
    tablet.call(
        "check_in", student=victim, date=again["date"], concept=concept, confidence=3, outcome=None
    )
    day = tablet.call("today", student=victim, date=None)["concepts"][0]
    found = school.verdicts(hand_in(tablet, victim))
    board = {row["concept"]["id"]: row for row in school.ask("board")["rows"]}
    if day["confidence"] not in (3, "could_teach") or found != ["new"] or concept not in board:
        return got_through(f"the student's later tap is {day['confidence']}, the hand-in {found}")
    return stopped(f"{ahead} ratings ahead, {rated(tablet, victim)} today; the hand-in is {found[0]}")
