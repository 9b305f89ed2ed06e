"""One evening with the clock at 2099 makes the oldest copy of a store the newest one."""

import contextlib
import sqlite3

from outcome import Outcome, need
from school import School, Student

DAYS = [f"2026-11-{day:02}" for day in range(16, 26)]


def reports_in(path):
    with contextlib.closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True)) as store:
        return store.execute("SELECT count(*) FROM check_in").fetchone()[0]


def attack(ground):
    school = School(ground, today=DAYS[0])
    desk = school.desk
    concepts = school.concepts()
    student = Student(school, 1)
    student.hands_in_honestly({concepts[0]: 2})
    desk.go_to("2099-11-16")
    desk.call("start")
    school.ask("board")
    school.bring(b"not ours")
    # Ten days of work with the right clock.
    entries = student.ratings({concepts[0]: 2})
    for day, concept in zip(DAYS, concepts, strict=False):
        desk.go_to(day)
        desk.call("start")
        entries += student.ratings({concept: 1})
        school.bring(student.hand_in(entries))
    reports = reports_in(desk.desk_path)
    need(reports >= len(DAYS), f"only {reports} reports after ten days")
    folder, today = ground / "desk", desk.today
    desk.close()
    for end in ("-wal", "-shm"):
        desk.desk_path.with_name(desk.desk_path.name + end).unlink(missing_ok=True)
    desk.desk_path.write_bytes(b"\xff" * 4096)
    again = type(desk)(folder, today)
    damaged = again.call("start")["damaged"]
    need(damaged and damaged[0]["last_good"], "no copy is offered for a damaged desk")
    name = damaged[0]["last_good"]["name"]
    (path,) = (path for path in again.stored() if path.name == name)
    offered = reports_in(path)
    proof = f"the desk had {reports} reports; the copy that is offered first, {name}, has {offered}"
    return Outcome(offered < reports - 1, proof)
