"""Ten students change their mind the same way between two tables, so each one's rating is known."""

from outcome import got_through, need, stopped
from tables import TableClass

SEATS = 40
CHANGED = 10


def attack(ground):
    room = TableClass(ground, SEATS)
    concepts = room.school.concepts()[:10]
    # Odd seats rate low, even ones high.
    room.rate_all(
        {seat: dict.fromkeys(concepts, room.balanced(seat, 0)) for seat in range(1, SEATS + 1)}
    )
    first = room.release()
    need(first and first[concepts[0]][0] >= 2 * CHANGED, "the first table shows no counts")
    room.rate_all({seat: dict.fromkeys(concepts, 2) for seat in range(1, 2 * CHANGED + 1, 2)})
    second = room.release()
    if not second:
        return stopped(room.why)
    both = [concept for concept in concepts if concept in first and concept in second]
    # Ten handed in, and ten fewer ratings are low: so each of the ten was low and is not now.
    known = [concept for concept in both if first[concept][0] - second[concept][0] == CHANGED]
    if known:
        return got_through(
            f"{2 * CHANGED * len(known)} ratings of {CHANGED} students follow from two tables"
        )
    return stopped(f"{len(both)} rows are in both tables, none changes by {CHANGED}")
