"""A share-safe table says how many rated a concept although fewer than ten did."""

from outcome import got_through, need, stopped
from tables import TableClass


def attack(ground):
    room = TableClass(ground, seats=24)
    concepts = room.school.concepts()[:20]
    for seat in range(1, 25):
        # Only six rate the last concept.
        own = concepts if seat <= 6 else concepts[:-1]
        room.rate(seat, {concept: room.balanced(seat, at) for at, concept in enumerate(own)})
    table = room.release()
    need(table and len(table) > 10, "no table of counts")
    few = [shown for shown in room.reporters().values() if shown and shown < 10]
    if few:
        return got_through(f"a row says that {few[0]} students rated its concept")
    return stopped("no row shows a group below ten")
