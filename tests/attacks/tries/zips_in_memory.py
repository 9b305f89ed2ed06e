"""Many zips picked at once are all held in memory for as long as the import takes."""

import os
import zipfile

from outcome import Outcome, need
from school import School

ZIPS = 8
ENTRIES = 4
ENTRY_BYTES = 4 << 20
MOST_GROWTH_BYTES = 64 << 20


def attack(ground):
    school = School(ground)
    paths = [ground / f"{at}.zip" for at in range(ZIPS)]
    for path in paths:
        with zipfile.ZipFile(path, "w") as file:
            for at in range(ENTRIES):
                file.writestr(f"{at}.sfhandin", os.urandom(ENTRY_BYTES))
    school.desk.peak_bytes()
    before = school.desk.peak_bytes()
    school.desk.pick(*paths)
    result = school.desk.job(school.desk.call("import_hand_ins", **{"from": "files"}))
    growth = school.desk.peak_bytes() - before
    lines = sum(result["report"]["tally"].values())
    need(lines >= ZIPS, f"{lines} lines for {ZIPS} zips")
    size = ZIPS * ENTRIES * ENTRY_BYTES
    proof = f"{ZIPS} zips of {size >> 20} MiB in all: memory grows by {growth >> 20} MiB"
    return Outcome(growth > MOST_GROWTH_BYTES, proof)
