"""Somebody at a locked desk goes back to older copies of it, to guess without the waits."""

from outcome import got_through, need, stopped
from school import School

WORDS = "seven green kettles"
DESK = {"kind": "desk"}
# Three guesses are free of a wait.
FREE = 3


def guesses(desk):
    """Guesses until the program asks to wait. Returns how many were checked."""
    for nth in range(20):
        if desk.call("unlock_desk", passphrase=f"my guess number {nth}")["kind"] == "wait":
            return nth
    return 20


def attack(ground):
    school = School(ground, today="2026-11-23")
    desk = school.desk
    desk.call("set_desk_lock", current=None, passphrase=WORDS)
    folder = desk.data.parent
    for day in (24, 25, 26):
        desk.close()
        desk = school.desk = type(desk)(folder, f"2026-11-{day}")
        if day < 26:
            desk.call("unlock_desk", passphrase=WORDS)
            school.ask("board")
    made = guesses(desk)
    need(made == FREE, f"{made} guesses were free")
    desk.call("begin_new_desk")
    copies = [one["name"] for one in desk.call("copies", **DESK)["copies"]]
    need(len(copies) >= 3, f"there are {len(copies)} copies")
    tried = 0
    for name in copies:
        start = desk.call("restore_copy", store=DESK, name=name)["start"]
        if start["desk_lock"]["has_lock"]:
            tried += 1
            if more := guesses(desk):
                return got_through(f"{more} more guesses at once, in copy {name}")
            desk.call("begin_new_desk")
    need(tried >= 3, f"{tried} copies have the lock")
    return stopped(f"{tried} copies ask to wait as long as the desk")
