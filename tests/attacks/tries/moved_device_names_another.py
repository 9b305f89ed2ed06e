"""A device that the teacher moved names other seats, and its entries reach their students."""

from outcome import got_through, need, stopped
from school import School, Student


def attack(ground):
    school = School(ground)
    concepts = school.concepts()
    honest = Student(school, 3)
    honest.hands_in_honestly(dict.fromkeys(concepts[:4], 2))
    moved = Student(school, 1)
    moved.hands_in_honestly(dict.fromkeys(concepts[:2], 1))
    device = school.device(1, moved)
    school.ask("move_device", seat=1, device=device, to=2, accept=True)
    later = moved.hand_in(moved.ratings(dict.fromkeys(concepts[:3], 0), at=2))
    need(school.verdicts(later) == ["updated"], "a moved device is not known")
    need(school.reports(2) == 3, "a moved device does not count")
    # The same device and key, for the seat of another.
    moved.token = honest.token
    flood = moved.hand_in(moved.ratings(dict.fromkeys(concepts[:20], 0), at=9))
    found = school.verdicts(flood)
    left = [school.reports(seat) for seat in (1, 2, 3)]
    if left != [0, 3, 4]:
        return got_through(f"{found}, reports {left}")
    return stopped(f"{found}, reports {left}")
