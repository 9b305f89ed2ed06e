"""Old files come again, in any order: hand-ins, class packs, the personal part of an old pack."""

import itertools

from outcome import got_through, need, stopped
from program import Refused
from school import School, Student


def attack(ground):
    school = School(ground)
    concepts = school.concepts()
    student = Student(school, 1)
    files = [
        student.hand_in(student.ratings({concept: at % 4 for concept in concepts[: at + 1]}, at=at + 1))
        for at in range(5)
    ]
    need(school.verdicts(files[0]) == ["new"], "an honest hand-in does not count")
    school.verdicts(*files)

    def state():
        page = school.ask("concept_reports", concept=concepts[0])
        return str(page), school.reports(1)

    before, tried = state(), 0
    for order in itertools.permutations(files, 3):
        tried += 1
        school.verdicts(*order)
        if state() != before:
            return got_through(f"after {tried} replays the seat's reports are others")
    # Into another class, and to a tablet.
    school.ask("undo_import")
    if state() != before:
        return got_through("undoing a replay takes what came before it")
    tablet = school.tablet()
    victim = school.join(tablet, 2)
    old = [school.pack_path.read_bytes()]
    for _ in range(2):
        school.save_pack()
        old.append(school.pack_path.read_bytes())
    tablet.pick(school.pack_path)
    need(tablet.call("take_class_pack", student=victim)["version"] == 3, "the newest pack")
    path = ground / "old.sfclass"
    for pack in old:
        path.write_bytes(pack)
        tablet.pick(path)
        try:
            tablet.call("take_class_pack", student=victim)
            return got_through("an old class pack is taken")
        except Refused:
            tried += 1
    return stopped(f"{tried} replays change nothing")
