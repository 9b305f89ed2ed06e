"""Somebody without a seat fills the desk with hand-ins that are quarantined."""

import os

import formats
from outcome import Outcome, need
from school import School, Student

FILES = 12
# What a seat may hold, once in the desk, once in its log and once in its copy, and some.
MOST_GROWTH_BYTES = 32 << 20


def noise(entry, *more):
    """Half of the entries that a file takes, of ids that do not pack."""
    return [
        entry(formats.new_id(), "2026-09-14", os.urandom(24).hex(), *more)
        for _ in range(formats.MOST_ENTRIES // 2)
    ]


def attack(ground):
    school = School(ground)
    concept = school.concepts()[0]
    Student(school, 1).hands_in_honestly({concept: 2})
    before = school.desk.stored_bytes()
    verdicts, sent = [], 0
    for _ in range(FILES):
        forger = Student(school, 1)
        file = forger.hand_in(noise(formats.check_in, 0), noise(formats.practice, []))
        sent += len(file)
        verdicts += school.verdicts(file)
    need(verdicts[0] in ("quarantined", "seat_full", "too_large"), verdicts)
    growth = school.desk.stored_bytes() - before
    proof = f"{FILES} files of {sent >> 20} MiB in all: the folder grows by {growth >> 20} MiB"
    return Outcome(growth > MOST_GROWTH_BYTES, proof)
