"""A newer or foreign store is changed before the program sees that it is not its own."""

import contextlib
import hashlib
import sqlite3

from outcome import got_through, need, stopped
from program import Program, command
from school import School


def state(path):
    beside = sorted(one.name for one in path.parent.iterdir() if one.name.startswith(path.name))
    return hashlib.sha256(path.read_bytes()).hexdigest(), beside


def sql(path, *statements):
    with contextlib.closing(sqlite3.connect(path)) as store:
        for statement in statements:
            store.execute(statement)
        store.commit()
    return path


def attack(ground):
    school = School(ground)
    school.desk.close()
    newer = ground / "newer" / "data" / "own" / "desk.sqlite"
    foreign = ground / "foreign" / "data" / "own" / "desk.sqlite"
    for path in (newer, foreign):
        path.parent.mkdir(parents=True)
    with contextlib.closing(sqlite3.connect(school.desk.desk_path)) as store:
        store.execute("VACUUM INTO ?", [str(newer)])
    sql(newer, "PRAGMA journal_mode = delete", "PRAGMA user_version = 999")
    sql(foreign, "PRAGMA journal_mode = delete", "CREATE TABLE recipe (words TEXT)")
    changed = []
    for path in (newer, foreign):
        before = state(path)
        ran = command("board", "--desk", path, "--today", school.desk.today)
        need(ran.returncode == 1, f"{path.parent.parent.parent.name}: the command takes it")
        if state(path) != before:
            changed.append(f"{path.parts[-4]} by the command: {state(path)[1]}")
        before = state(path)
        program = Program(path.parents[2], school.desk.today)
        need(program.call("start")["damaged"], "the program takes it")
        program.close()
        if state(path) != before:
            changed.append(f"{path.parts[-4]} by the program: {state(path)[1]}")
    return (
        got_through("; ".join(changed))
        if changed
        else stopped("both stores are the same, byte for byte")
    )
