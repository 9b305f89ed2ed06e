"""Two share-safe tables around one late hand-in give away each of its ratings."""

from outcome import got_through, need, stopped
from tables import TableClass


def attack(ground):
    room = TableClass(ground, seats=24)
    concepts = room.school.concepts()[:20]
    for seat in range(1, 24):
        room.rate(seat, {concept: room.balanced(seat, at) for at, concept in enumerate(concepts)})
    first = room.release()
    need(first, "the first table cannot be handed out")
    truth = {concept: room.balanced(24, at) for at, concept in enumerate(concepts)}
    room.rate(24, truth)
    second = room.release()
    if not second:
        return stopped(room.why)
    learned = {
        concept: second[concept][0] - first[concept][0]
        for concept in concepts
        if concept in first
        and concept in second
        and sum(second[concept]) == sum(first[concept]) + 1
    }
    right = sum((truth[concept] < 2) == (low == 1) for concept, low in learned.items())
    if right:
        return got_through(
            f"{len(learned)} of {len(truth)} ratings of the late student learned, {right} right"
        )
    return stopped("the second table shows nothing of the late student")
