"""Somebody with the files of a locked desk reads names and keys in them, older copies included."""

import contextlib
import sqlite3

from outcome import got_through, need, stopped
from program import Refused, command
from school import School, Student
from shadow import Shadow

NAME = "Ottilie Vandenbroucke"
WORDS = "seven green kettles"


def secrets(path):
    """The name and the keys as the desk stores them without a lock."""
    with contextlib.closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True)) as store:
        identity, seed = store.execute(
            "SELECT sealing_identity, signing_seed FROM class"
        ).fetchone()
    words = {"the name": NAME, "the class identity": identity.strip().splitlines()[-1]}
    return {name: word.encode() for name, word in words.items()} | {"the signing seed": seed}


def attack(ground):
    school = School(ground, names=[NAME, "Bo Adeyemi"], today="2026-11-23")
    desk = school.desk
    shadow = Shadow(desk, ground / "shadow")
    student = Student(school, 1)
    student.hands_in_honestly({school.concepts()[0]: 2})
    for day in ("2026-11-24", "2026-11-25"):
        desk.go_to(day)
        school.bring(student.hand_in(student.ratings({school.concepts()[0]: 1})))
        shadow.look()
    words = secrets(desk.desk_path)
    need(len({name for name, _ in shadow.holding(words)}) == 3, "an open desk hides what it holds")
    school.lock(WORDS)
    shadow.look()
    if left := shadow.holding(words):
        return got_through(f"the desk is locked, and {shadow.told(left)}")
    open_calls = []
    for call in ("board", "class_setup", "join_slips", "save_class_pack"):
        with contextlib.suppress(Refused):
            school.ask(call)
            open_calls.append(call)
    ran = command("board", "--desk", desk.desk_path, "--today", desk.today)
    if open_calls or ran.returncode == 0:
        return got_through(
            f"answered without the passphrase: {open_calls}, command {ran.returncode}"
        )
    school.unlock(WORDS)
    need(NAME in str(school.ask("class_setup")), "the passphrase does not open the desk")
    return stopped(f"nothing in {len(shadow.seen)} files; calls and the command are refused")
