"""A forged hand-in names the device id of the genuine one, and the teacher's decisions hit both."""

import formats
from outcome import got_through, need, stopped
from school import School, Student


def attack(ground):
    school = School(ground)
    concepts = school.concepts()
    genuine = Student(school, 1)
    genuine.hands_in_honestly(dict.fromkeys(concepts[:8], 2))
    forger = Student(school, 1, device=genuine.device)
    dates = [f"2026-{month}-{day:02}" for month in ("09", "10") for day in range(1, 31)]
    flood = [
        formats.check_in(forger.device, date, concept, 0, at=formats.MOST_SEQUENCE)
        for date in dates
        for concept in concepts[:20]
    ]
    need(
        school.verdicts(forger.hand_in(flood)) == ["quarantined"],
        "the forged one is not quarantined",
    )
    need(school.reports(1) == 8, "a quarantined hand-in counts")
    (device,) = school.quarantined(1)
    school.decide(1, device, True)
    flooded = school.reports(1)
    need(flooded > 8, "an accepted device does not count")
    # What the screen offers: quarantine the device again, then reject it.
    school.decide(1, device, None)
    school.decide(1, device, False)
    left = school.reports(1)
    if left != 8:
        return got_through(f"8 reports, {flooded} after the mistake, {left} after it was undone")
    return stopped(f"8 reports, {flooded} after the mistake, 8 after it was undone")
