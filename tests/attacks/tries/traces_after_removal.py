"""What is left of a student on the disk after the seat was removed, in files that went too."""

import collections
import os

from outcome import got_through, need, stopped
from school import School, Student

NAME = "Ottilie Vandenbroucke"
DAYS = [f"2026-11-{day:02}" for day in range(16, 28)]


class Shadow:
    """Second names for every file of a program: what is unlinked can still be read."""

    def __init__(self, program, folder):
        self.program, self.folder = program, folder
        self.seen = set()
        folder.mkdir()

    def look(self):
        for path in self.program.stored():
            number = path.stat().st_ino
            if number not in self.seen:
                self.seen.add(number)
                os.link(path, self.folder / f"{len(self.seen)}-{path.name}")

    def holding(self, words):
        """How many files hold each word: those that are there, and those that are unlinked."""
        found = collections.Counter()
        for path in self.folder.iterdir():
            content, where = path.read_bytes(), "unlinked" if path.stat().st_nlink == 1 else "kept"
            found.update((name, where) for name, word in words.items() if word.encode() in content)
        return found


def attack(ground):
    school = School(ground, names=[NAME, "Bo Adeyemi", "Cy Okonkwo"], today=DAYS[0])
    desk = school.desk
    shadow = Shadow(desk, ground / "shadow")
    concepts = school.concepts()
    folder = ground / "watched"
    folder.mkdir()
    desk.pick(folder)
    desk.call("watch_folder")
    students = [Student(school, seat) for seat in school.codes]
    removed = students[0]
    file_name = f"{removed.token.lower()}-of-ottilie.sfhandin"
    for at, day in enumerate(DAYS):
        desk.go_to(day)
        shadow.look()
        for student in students:
            school.bring(student.hand_in(student.ratings({concepts[at % len(concepts)]: at % 4})))
            shadow.look()
    (folder / file_name).write_bytes(removed.hand_in(removed.ratings({concepts[0]: 1})))
    (folder / f"broken-{file_name}").write_bytes(b"not ours")
    for _ in range(25):
        if job := desk.call("watch")["job"]:
            desk.job(job)
            break
    need(file_name in str(desk.call("imports")), "the watched file was not imported")
    shadow.look()
    words = {
        "the name": NAME,
        "the device id": removed.device,
        "the signing key": removed.signer.public,
        "the token": f"{removed.token}",
        "the file's name": file_name,
    }
    before = {name for name, _ in shadow.holding(words)}
    need(before == set(words), f"before the removal only {before}")
    school.ask("remove_seat", seat=1)
    desk.call("discard_removed", number=desk.call("start")["removed"][0]["number"])
    shadow.look()
    if left := shadow.holding(words):
        counts = ", ".join(
            f"{name} in {many} {where}" for (name, where), many in sorted(left.items())
        )
        return got_through(f"after the removal, of {len(shadow.seen)} files ever made: {counts}")
    return stopped(
        f"none of {len(words)} traces in {len(shadow.seen)} files, unlinked ones included"
    )
