"""Somebody at a locked desk goes back to a copy from before the lock, or to a backup of their own,
or removes the desk."""

from outcome import got_through, need, stopped
from program import Refused
from school import School

NAME = "Ottilie Vandenbroucke"
WORDS = "seven green kettles"
DESK = {"kind": "desk"}


def tried(desk, call, **arguments):
    """Makes a call; returns what the program says of names, or None if it refuses."""
    try:
        return str(desk.call(call, **arguments))
    except Refused as refused:
        return None if refused.code in ("desk_locked", "refused", "invalid") else str(refused)


def attack(ground):
    school = School(ground, names=[NAME, "Bo Adeyemi"], today="2026-11-23")
    desk = school.desk
    for day in (24, 25):
        folder = desk.data.parent
        desk.close()
        desk = school.desk = type(desk)(folder, f"2026-11-{day}")
        school.ask("board")
    copies = desk.call("copies", **DESK)["copies"]
    need(len(copies) >= 2, f"there are {len(copies)} copies")
    desk.call("set_desk_lock", current=None, passphrase=WORDS)
    left = desk.call("copies", **DESK)
    if left["readable"] or {one["name"] for one in copies} & {one["name"] for one in left["copies"]}:
        return got_through(f"copies from before the lock are there: {left}")
    desk.close()
    desk = school.desk = type(desk)(folder, "2026-11-26")
    need(desk.call("start")["desk_lock"]["locked"], "the desk is not locked")
    for one in copies + left["copies"]:
        answer = tried(desk, "restore_copy", store=DESK, name=one["name"])
        if answer is not None:
            return got_through(f"a copy is restored: {answer[:200]}")
    for call in ("copies", "remove_everything"):
        if (answer := tried(desk, call, **DESK)) is not None:
            return got_through(f"{call}: {answer[:200]}")
    if tried(desk, "back_up", store=DESK, passphrase="my own words") is not None:
        return got_through("a backup under another passphrase was made")
    # An empty desk takes the place; what was locked must stay locked, and must stay.
    desk.call("begin_new_desk")
    if tried(desk, "remove_everything") is not None:
        return got_through("behind an empty desk, the locked one is removed")
    replaced = [one for one in desk.call("copies", **DESK)["copies"] if one["kind"] == "replaced"]
    need(len(replaced) == 1, replaced)
    start = desk.call("restore_copy", store=DESK, name=replaced[0]["name"])["start"]
    if not start["desk_lock"]["locked"] or NAME in str(start):
        return got_through("the replaced desk opens without its passphrase")
    need(desk.call("unlock_desk", passphrase=WORDS)["kind"] == "open", "the desk is lost")
    need(NAME in str(school.ask("class_setup")), "a name is lost")
    return stopped(f"{len(copies)} copies are overwritten, and every way to a copy is refused")
