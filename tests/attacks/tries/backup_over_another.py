"""A classmate's own backup, named for another student, takes the place of that student's store."""

import formats
from age import Passphrase, unseal
from outcome import got_through, need, stopped
from program import Refused
from school import School, tap

WORDS = "seven green kettles"


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    victim = school.join(tablet, 1, "Wren")
    tap(tablet, victim)
    own = school.join(tablet, 2, "Magpie")
    school.set_pin(tablet, victim, "4711")
    store = {"kind": "student", "student": own}
    made = tablet.saved(tablet.call("back_up", store=store, passphrase=WORDS))
    student, content = formats.read_backup(unseal(made.read_bytes(), Passphrase(WORDS)))
    need(student == own and content.startswith(b"SQLite format 3"), "our backup cannot be read")
    forged = ground / "forged.sfbackup"
    forged.write_bytes(formats.backup(victim, content, WORDS))
    tablet.pick(forged)
    try:
        picked = tablet.call("pick_backup")["picked"]
        tablet.call("restore_backup", picked=picked, passphrase=WORDS)
    except Refused as refused:
        return stopped(refused)
    students = {one["id"]: one["nickname"] for one in tablet.call("start")["students"]}
    if students.get(victim) != "Wren":
        return got_through(f"Wren's pages are now those of {students.get(victim)}, without a PIN")
    return stopped(f"the backup is taken beside the other students: {len(students)} are there")
