"""Forged carry files bring a student so much, or such odd entries, that no hand-in can be made."""

import datetime

import formats
from outcome import got_through, need, stopped
from program import Refused
from school import School, Student, bring_carry, hand_in, tap


def dates(many):
    first = datetime.date(1990, 1, 1)
    return [(first + datetime.timedelta(days=day)).isoformat() for day in range(many)]


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    victim = school.join(tablet, 1)
    need(tap(tablet, victim) == 1, "a tap is not rated")
    need(school.verdicts(hand_in(tablet, victim)) == ["new"], "the tablet's hand-in does not count")
    forger, concept = Student(school, 1), school.concepts()[0]
    made = [one for seat in (2, 3) for one in [Student(school, seat).device]]

    def rated(device, many):
        # An event is known by its device and its place, so each has a place of its own.
        return [
            formats.check_in(device, date, concept, 0, at=20_000 + at)
            for at, date in enumerate(dates(many))
        ]

    def answered(**fields):
        return [formats.answer(forger.device, school.desk.today, concept, 5) | fields]

    codes = [
        formats.answer(forger.device, school.desk.today, concept, 10 + at, f"code-{at}")
        for at in range(70)
    ]
    days = [
        formats.answer(made[0], date, concept, 100 + at) for at, date in enumerate(dates(12_000))
    ]
    brought = {
        "25,000 days": (rated(forger.device, 25_000), ()),
        "12,000 days of one device": (rated(made[0], 12_000), ()),
        "12,000 of another": (rated(made[1], 12_000), ()),
        "12,000 days of practice": ((), days),
        "70 misconceptions of a day": ((), codes),
        "the year 12345": ((), answered(date="+12345-01-01")),
        "the sequence 0": ((), answered(sequence=0)),
        "a code of the wrong kind": ((), answered(misconception="A B")),
        "the level 9": ((), answered(level=9)),
        "a response of 5 MiB": ((), answered(sequence=900, response="x" * (5 << 20))),
    }
    refused = []
    for name, (check_ins, answers) in brought.items():
        before = tablet.stored_bytes()
        try:
            bring_carry(school, tablet, forger, check_ins, answers)
        except Refused as why:
            refused.append(why.error.get("refusal", {}).get("code", why.code))
        if tablet.stored_bytes() > before + (8 << 20):
            return got_through(f"{name}: the tablet's files grow by 8 MiB and more")
        try:
            file = hand_in(tablet, victim)
        except Refused as why:
            return got_through(f"after {name} no hand-in can be made: {why}")
        found = school.verdicts(file)
        if found[0] not in ("updated", "known"):
            return got_through(f"after {name} the hand-in is {found[0]}")
    return stopped(f"{len(refused)} of {len(brought)} are refused; a hand-in is made after each")
