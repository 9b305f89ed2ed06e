"""The log of share-safe tables keeps marks that lead back to a removed student."""

import contextlib
import hashlib
import sqlite3

from outcome import got_through, need, stopped
from tables import TableClass

SEATS = 24


def marks(path):
    """Every text of the tables of the log."""
    with contextlib.closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True)) as store:
        names = "SELECT name FROM sqlite_master WHERE type = 'table' AND name LIKE 'share_release%'"
        tables = [name for (name,) in store.execute(names)]
        rows = [row for table in tables for row in store.execute(f'SELECT * FROM "{table}"')]
    values = {cell.hex() if isinstance(cell, bytes) else cell for row in rows for cell in row}
    return {value for value in values if isinstance(value, str) and len(value) >= 16}


def attack(ground):
    room = TableClass(ground, SEATS)
    school = room.school
    concepts = school.concepts()[:20]
    for seat in range(1, SEATS + 1):
        room.rate(seat, {concept: room.balanced(seat, at) for at, concept in enumerate(concepts)})
    need(room.release(), "the table cannot be handed out")
    before = marks(school.desk.desk_path) - {school.id}
    need(len(before) >= SEATS, f"{len(before)} marks of {SEATS} seats")
    token = room.students[SEATS].token
    texts = (f"{school.id}/{token}", f"{school.id}{token}", token)
    digests = {hashlib.sha256(text.encode()).hexdigest() for text in texts}
    unkeyed = [mark for mark in before if any(digest.startswith(mark[:16]) for digest in digests)]
    school.ask("remove_seat", seat=SEATS)
    after = marks(school.desk.desk_path) - {school.id}
    need(after, "the log is gone")
    if unkeyed:
        return got_through(
            f"a mark is a plain digest of the token: {unkeyed[0]}; 32^{len(token)} trials find it"
        )
    replaced, of_a_seat = len(before - after), len(before) // SEATS
    if replaced < of_a_seat:
        return got_through(f"{replaced} of {of_a_seat} marks of the removed seat were replaced")
    return stopped(f"{replaced} of {len(before)} marks were replaced, none is a plain digest")
