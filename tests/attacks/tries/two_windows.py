"""Two programs on one folder: what one acknowledges, the other loses."""

import subprocess

import program
from outcome import got_through, need, stopped
from program import Program, Refused
from school import School, Student, tap

FILES = 400


def attack(ground):
    school = School(ground)
    concepts = school.concepts()
    tablet = school.tablet()
    victim = school.join(tablet, 1)
    second = Program(ground / "tablet", school.desk.today)
    need(tap(tablet, victim) == 1, "a tap is not rated")
    second.call("check_in", **tapped(second, victim, 1))
    tablet.call("check_in", **tapped(tablet, victim, 2))
    both = {window.call("my_path", student=victim)["rated"] for window in (tablet, second)}
    if both != {3}:
        return got_through(f"of 3 taps in two windows they show {both}")

    # An import by the command, and in the window a removal, which writes the desk anew.
    student = Student(school, 1)
    student.hands_in_honestly({concepts[0]: 2})
    entries, files = [], []
    for at in range(FILES):
        date = f"2026-{9 + at // 28 % 2:02}-{1 + at % 28:02}"
        entries += student.ratings({concepts[at % len(concepts)]: 1}, date=date, at=at + 1)
        files.append(student.hand_in(entries))
    paths = school.write(*files)
    imported = subprocess.Popen(
        [program.BINARIES / "surefoot", "import", "--desk", school.desk.desk_path]
        + ["--today", school.desk.today, paths[0].parent],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )
    removed = []
    for seat in (2, 3):
        try:
            school.ask("remove_seat", seat=seat)
            removed.append(seat)
        except Refused as refused:
            removed.append(refused.code)
    _, errors = imported.communicate(timeout=600)
    said = imported.returncode == 0
    try:
        reports = school.reports(1)
    except Refused as refused:
        return got_through(f"the desk cannot be read any more: {refused}")
    wanted = len({(one["date"], one["concept"]) for one in entries} | {(school.desk.today, concepts[0])})
    if said and reports != wanted:
        return got_through(
            f"the command says that all is imported, the desk has {reports} of {wanted} reports "
            f"(removals: {removed})"
        )
    if not said and b"panick" in errors:
        return got_through(f"the command ends in a panic: {errors[:200]!r}")
    why = "all is there" if said else errors.decode()[:80]
    return stopped(f"removals beside an import: {removed}; the import: {why}")


def tapped(window, student, at):
    day = window.call("today", student=student, date=None)
    concept = day["concepts"][at]["concept"]["id"]
    return {
        "student": student,
        "date": day["date"],
        "concept": concept,
        "confidence": 2,
        "outcome": None,
    }
