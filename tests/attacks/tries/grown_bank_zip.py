"""A small zip of exercises makes the program hold many times its size in memory."""

import zipfile

from outcome import Outcome, need
from program import Refused
from school import School

ENTRIES = 96
ENTRY_BYTES = 2 << 20
MOST_GROWTH_BYTES = 96 << 20


def attack(ground):
    school = School(ground)
    honest = ground / "honest.zip"
    with zipfile.ZipFile(honest, "w") as file:
        file.writestr("a.csv", "kind,question\n")
    path = ground / "bank.zip"
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as file:
        for at in range(ENTRIES):
            file.writestr(f"{at}.csv", b"x" * ENTRY_BYTES)

    def bring(zipped):
        school.desk.pick(zipped)
        try:
            own = school.ask("import_own_exercises", concept=None)
            return f"{len(own['imports'][0]['files'])} files read"
        except Refused as refused:
            return str(refused)

    need("1 files read" in bring(honest), "an ordinary zip is not read")
    before = school.desk.peak_bytes()
    came = bring(path)
    growth = school.desk.peak_bytes() - before
    proof = f"a zip of {path.stat().st_size >> 10} KiB: memory grows by {growth >> 20} MiB ({came})"
    return Outcome(growth > MOST_GROWTH_BYTES, proof)
