"""Forged hand-ins fill a seat, so that its student's own hand-in is refused."""

import os

import formats
from outcome import got_through, need, stopped
from school import School, Student

ENTRIES = 9_000
FORGERS = 12


def attack(ground):
    school = School(ground)
    concepts = school.concepts()
    genuine = Student(school, 1)
    genuine.hands_in_honestly({concepts[0]: 2})
    forged = []
    for _ in range(FORGERS):
        forger = Student(school, 1)
        noise = [
            formats.check_in(forger.device, "2026-09-14", os.urandom(24).hex(), 0)
            for _ in range(ENTRIES)
        ]
        forged += school.verdicts(*(forger.hand_in(noise) for _ in range(3)))
    need(
        forged[0] == "quarantined" and "seat_full" in forged, f"the seat is not full: {set(forged)}"
    )
    found = school.verdicts(genuine.hand_in(genuine.ratings(dict.fromkeys(concepts[:9], 1), at=2)))
    if school.reports(1) != 9:
        return got_through(
            f"{forged.count('quarantined')} forged hand-ins, then the student's own is {found[0]}"
        )
    for device in school.quarantined(1):
        school.discard(1, device)
    second = Student(school, 1)
    later = school.verdicts(second.hand_in(second.ratings({concepts[0]: 1})))
    if later != ["quarantined"]:
        return got_through(f"after the forged ones were discarded, a second device is {later[0]}")
    refused = f"{forged.count('seat_full')} of {len(forged)} forged ones are refused"
    return stopped(f"{refused}, the student's own counts")
