"""A zip whose directory is fat makes an import slow, as the directory is read for each entry."""

import zipfile

from outcome import Outcome, need
from school import School

ENTRIES = 500


def zip_of(path, extra_bytes):
    with zipfile.ZipFile(path, "w") as file:
        for at in range(ENTRIES):
            info = zipfile.ZipInfo(f"{at}.sfhandin")
            info.extra = (b"xx" + extra_bytes.to_bytes(2, "little")).ljust(extra_bytes + 4, b"\0")
            file.writestr(info, b"no hand-in")
    return path


def attack(ground):
    school = School(ground)

    def seconds(extra_bytes):
        school.desk.pick(zip_of(ground / f"{extra_bytes}.zip", extra_bytes))
        before = school.desk.cpu_seconds()
        result = school.desk.job(school.desk.call("import_hand_ins", **{"from": "files"}))
        lines = sum(result["report"]["tally"].values())
        need(lines in (1, ENTRIES), f"{lines} lines for {ENTRIES} entries")
        return school.desk.cpu_seconds() - before

    thin, fat = seconds(4), seconds(60_000)
    size = (ground / "60000.zip").stat().st_size >> 20
    proof = f"{ENTRIES} entries take {thin:.1f} s of a processor, with a directory of {size // 2} MiB {fat:.1f} s"
    return Outcome(fat > 4 * thin + 2, proof)
