"""More files than the desk and the tablets look at, so that packs and hand-ins are not found."""

from class_folder import ClassFolder, rate
from outcome import got_through, stopped

FLOOD = 30_000
MOST_LOOKS = 60


def attack(ground):
    folder = ClassFolder(ground)
    school = folder.school
    tablet = school.tablet()
    wren, bo = folder.join(tablet, 1), folder.join(tablet, 2, "Bo")
    rate(tablet, wren, 0)
    folder.visit(tablet)
    folder.look()
    (pack,) = folder.files("class-pack-*")
    before = pack.read_bytes()
    for number in range(FLOOD):
        (folder.path / f"n{number}").touch()
        (folder.path / f"a{number}.sfhandin").touch()
    rate(tablet, wren, 1)
    rate(tablet, bo, 0)
    for _ in range(MOST_LOOKS):
        folder.visit(tablet, 4)
        trouble = folder.look(4)["trouble"]
        reports = school.reports(1), school.reports(2)
        if reports == (2, 1) and trouble:
            break
    if reports != (2, 1):
        return got_through(f"the desk has {reports} of (2, 1)")
    if pack.read_bytes() != before:
        return got_through("the desk made a pack although nothing changed")
    if trouble != "too_many":
        return got_through(f"the teacher is told {trouble}")
    return stopped("both hand-ins came, no pack was made, and the teacher is told")
