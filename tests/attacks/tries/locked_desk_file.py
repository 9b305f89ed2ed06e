"""Somebody copies the files of a locked desk, and looks for names and keys or guesses."""

import sqlite3
import time
import zlib

from cells import column, data_key, open_cell, reading
from outcome import got_through, need, stopped
from school import School, Student

NAMES = ["Ottilie Vandenbroucke", "Bo Adeyemi", "Cy Okonkwo"]
WORDS = "seven green kettles"
GUESSES = ["12345678", "password", "seven green kettle", "Seven green kettles"]
# Quick guesses would try a list of words in an evening.
LEAST_SECONDS = 0.1


def cells(path):
    """What the program seals, opened with the key that lies in an open desk."""
    with reading(path) as store:
        key = data_key(store)
        seats = store.execute("SELECT class, number, token FROM seat").fetchall()
        tokens = [
            open_cell(key, cell, "seat", "token", of, number) for of, number, cell in seats
        ]
        of, identity, seed = store.execute(
            "SELECT id, sealing_identity, signing_seed FROM class"
        ).fetchone()
        keys = [
            open_cell(key, identity, "class", "sealing_identity", of),
            open_cell(key, seed, "class", "signing_seed", of),
        ]
    need(None not in tokens + keys, "our library does not open the cells of an open desk")
    return key, [*tokens, *keys]


def inflated(path):
    """Everything in the store's cells that deflate had packed."""
    store = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
    tables = [name for (name,) in store.execute("SELECT name FROM sqlite_schema WHERE type='table'")]
    found = []
    for table in tables:
        for row in store.execute(f'SELECT * FROM "{table}"'):
            for cell in row:
                if isinstance(cell, bytes):
                    for bits in (15, -15):
                        try:
                            found.append(zlib.decompress(cell, bits))
                        except zlib.error:
                            continue
    store.close()
    return found


def attack(ground):
    school = School(ground, names=NAMES)
    desk = school.desk
    student = Student(school, 1)
    student.hands_in_honestly({school.concepts()[0]: 2})
    path = school.write(student.hand_in(), names=["from Ottilie.sfhandin"])
    desk.pick(*path)
    desk.job(desk.call("import_hand_ins", **{"from": "files"}))
    key, words = cells(desk.desk_path)
    words += [key, b"Ottilie", b"Adeyemi", b"Okonkwo"]
    holding = [file for file in desk.stored() if any(word in file.read_bytes() for word in words)]
    need(desk.desk_path in holding, "the key does not lie in an open desk")
    before = set(column(desk.desk_path, "seat", "name"))
    need(desk.call("set_desk_lock", current=None, passphrase=WORDS)["kind"] == "open", "no lock")
    school.ask("name_seat", seat=2, name="Zuzanna Quill")
    words += [b"Zuzanna", *before]
    desk.go_to("2026-11-26")
    desk.call("lock_desk")
    found = {
        f"{file.name} at byte {file.read_bytes().index(word)}"
        for file in desk.stored()
        for word in words
        if word in file.read_bytes()
    }
    found |= {
        f"a packed cell: {word}"
        for text in inflated(desk.desk_path)
        for word in words
        if word in text
    }
    if found:
        return got_through(f"the files of a locked desk show {', '.join(sorted(found))}")
    with reading(desk.desk_path) as store:
        started = time.monotonic()
        opened = [words for words in GUESSES if data_key(store, words)]
        seconds = (time.monotonic() - started) / len(GUESSES)
        need(data_key(store, WORDS), "the passphrase does not open the copied file")
        memory, passes = store.execute("SELECT memory_kib, passes FROM data_key").fetchone()
    if opened or seconds < LEAST_SECONDS:
        return got_through(f"a guess takes {seconds:.3f} s; {opened} open the desk")
    return stopped(
        f"none of {len(words)} names, tokens and keys in {len(desk.stored())} files; a guess at the"
        f" passphrase takes {memory // 1024} MiB and {passes} passes, {seconds:.2f} s here"
    )
