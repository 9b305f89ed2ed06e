"""As between two tables, but on a day when the whole class hands in ratings of other concepts."""

from outcome import got_through, need, stopped
from tables import TableClass

SEATS = 24


def attack(ground):
    room = TableClass(ground, SEATS)
    concepts = room.school.concepts()[:20]
    yesterday, today = concepts[:14], concepts[14:]
    rated = {
        seat: {c: room.balanced(seat, at) for at, c in enumerate(yesterday)}
        for seat in range(1, SEATS)
    }
    room.rate_all(rated)
    first = room.release()
    need(first, "the first table cannot be handed out")
    rated[SEATS] = {c: room.balanced(SEATS, at) for at, c in enumerate(yesterday)}
    truth = dict(rated[SEATS])
    for seat, own in rated.items():
        own |= {concept: room.balanced(seat, at) for at, concept in enumerate(today)}
    room.rate_all(rated)
    second = room.release()
    if not second:
        return stopped(room.why)
    both = [
        c for c in yesterday if c in first and c in second and sum(second[c]) == sum(first[c]) + 1
    ]
    right = sum((truth[c] < 2) == (second[c][0] - first[c][0] == 1) for c in both)
    if right:
        return got_through(
            f"{len(both)} of {len(truth)} ratings of the late student learned, {right} right"
        )
    return stopped("the second table shows nothing of the late student")
