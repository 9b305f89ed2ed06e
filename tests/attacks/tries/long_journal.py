"""Thousands of foreign files in the folder make the journal of imports so long that it is slow."""

import json
import time

from outcome import Outcome, need
from school import School

FILES = 4_000
MOST_LINES = 1_000


def attack(ground):
    school = School(ground)
    lines = school.bring(*[b"not ours"] * FILES)
    need(lines, "the files are not in the report")
    started = time.monotonic()
    journal = school.desk.call("imports", before=None)
    seconds = time.monotonic() - started
    text = json.dumps(journal)
    shown = text.count("sfhandin")
    need(shown, "the journal names no file")
    size = f"{shown} lines, {len(text) >> 10} KiB"
    proof = f"{FILES} files: the journal comes with {size}, in {seconds:.2f} s"
    return Outcome(shown > MOST_LINES, proof)
