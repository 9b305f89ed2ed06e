"""Somebody at the locked desk reads off the projector how the class does."""

import formats
from outcome import got_through, need, stopped
from school import School, Student

DAYS = ["2026-11-02", "2026-11-09", "2026-11-16", "2026-11-23", "2026-11-24"]
WORDS = "seven green kettles"


def shown(ground, weak_first):
    """The locked projector of a class that is weak in the first two concepts, or in the others."""
    school = School(ground, seats=16)
    desk = school.desk

    def ask():
        return desk.call("projector", **{"class": school.id})

    concepts = [one["concept"]["id"] for one in ask()["concepts"]]
    files = []
    for seat in range(1, 17):
        student = Student(school, seat)
        check_ins, practice = [], []
        for at, day in enumerate(DAYS, 1):
            for place, concept in enumerate(concepts):
                weak = (place < 2) == weak_first
                rated, counts = (0, (None, 0, 0, 4)) if weak else (3, (None, 4, 0, 0))
                entry = student.device, day, concept
                check_ins.append(formats.check_in(*entry, rated, at=at))
                practice.append(formats.practice(*entry, [counts], at=at))
        by_key = {"key": lambda entry: (entry["date"], entry["concept"])}
        files.append(student.hand_in(sorted(check_ins, **by_key), sorted(practice, **by_key)))
    verdicts = set(school.verdicts(*files))
    need(verdicts == {"new"}, verdicts)
    desk.call("set_desk_lock", current=None, passphrase=WORDS)
    desk.call("lock_desk")
    return ask()


def attack(ground):
    one, other = shown(ground / "one", True), shown(ground / "other", False)
    need(any(concept["exercise"] for concept in one["concepts"]), "no exercise is shown")
    if one != other:
        return got_through("the answers differ by how the class does")
    return stopped(f"{len(one['concepts'])} concepts, the same answer for both classes")
