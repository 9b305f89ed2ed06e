"""Linear algebra over a row of share-safe tables singles out fewer than ten students.

The attacker knows who handed in when, and which concepts could be new in it, but no rating.
"""

import random

from elimination import smallest_group
from outcome import Outcome, need
from tables import TableClass

SEATS = 30
ROUNDS = 20
FEWEST = 10


def attack(ground):
    dice = random.Random(7)
    room = TableClass(ground, SEATS)
    concepts = room.school.concepts()[:10]
    seats = range(1, SEATS + 1)
    rated = {seat: {c: room.balanced(seat, at) for at, c in enumerate(concepts)} for seat in seats}
    # Grows whenever a seat's rating of a concept may be new.
    version = {(seat, concept): 0 for seat in seats for concept in concepts}
    room.rate_all(rated)
    tables = []
    for turn in range(ROUNDS):
        if table := room.release():
            tables.append((table, dict(version)))
        # Sometimes everybody hands in, sometimes a dozen; a few have more than the day's concepts.
        for seat in dice.sample(seats, SEATS if turn % 2 else 12):
            new = concepts[turn % 10 :][:2] + (
                [dice.choice(concepts)] if dice.random() < 0.1 else []
            )
            for concept in new:
                rated[seat][concept] = room.balanced(dice.randrange(2), 0)
                version[seat, concept] += 1
        room.rate_all(rated)
    need(tables, "not one table was handed out")
    least = SEATS
    for concept in concepts:
        sets = [
            {(seat, known[seat, concept]) for seat in seats}
            for table, known in tables
            if concept in table
        ]
        if sets:
            least = min(least, smallest_group(sets))
    proof = f"{len(tables)} of {ROUNDS} tables handed out; the smallest group has {least} students"
    return Outcome(least < FEWEST, proof)
