"""A zip of exercises with two names that are shown alike repeats a key in the list of its files."""

import zipfile

from outcome import got_through, need, stopped
from school import School

LINES = "concept,kind,question,answer\n{},whole number,What is {} + 1?,{}\n"


def attack(ground):
    school = School(ground)
    path = ground / "bank.zip"
    with zipfile.ZipFile(path, "w") as file:
        for at in (1, 2):
            file.writestr(f"fractions{chr(at)}.csv", LINES.format(school.concepts()[0], at, at + 1))
    school.desk.pick(path)
    own = school.ask("import_own_exercises", concept=None)
    need(len(own["exercises"]) == 2, f"{len(own['exercises'])} of 2 exercises are taken")
    names = [file["file"] for file in own["imports"][0]["files"]]
    if len(set(names)) < len(names):
        return got_through(f"{len(names)} files, {len(set(names))} key in the list of the screen")
    return stopped(f"{len(names)} files, {len(set(names))} keys")
