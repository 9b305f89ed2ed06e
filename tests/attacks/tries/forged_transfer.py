"""A forged transfer names the seats and devices of the class that takes it."""

import formats
from outcome import got_through, need, stopped
from program import Refused
from school import School, Student

WORDS = "seven green kettles"


def attack(ground):
    school = School(ground)
    concepts = school.concepts()
    victim = Student(school, 1)
    victim.hands_in_honestly(dict.fromkeys(concepts[:6], 2))
    colleague = formats.Signer()

    def take(student):
        entries = student.ratings(dict.fromkeys(concepts[:20], 0), at=formats.MOST_SEQUENCE)
        paper = [formats.on_paper(school.desk.today, concept, 0) for concept in concepts[:9]]
        contents = [student.content(entries)]
        content = formats.transfer(colleague, school.desk.today, contents, paper)
        path = school.ground / "forged.sftransfer"
        path.write_bytes(formats.write_transfer(content, colleague, WORDS))
        school.desk.pick(path)
        picked = school.desk.call("pick_transfer")
        return school.ask("take_transfer", picked=picked, passphrase=WORDS)

    try:
        return got_through(f"a device of this desk is taken: {take(victim)}")
    except Refused as refused:
        need(refused.error.get("rule") == "already_here", refused)
    # The victim's seat and device id, with a key of one's own.
    taken = take(Student(school, 1, device=victim.device))
    need(taken["seat"] == 4, taken)
    need(school.reports(4) == 29, f"a transfer brings {school.reports(4)} reports")
    # The victim's own device still hands in for its own seat.
    later = victim.hand_in(victim.ratings(dict.fromkeys(concepts[:7], 3), at=2))
    found = school.verdicts(later)
    left = [school.reports(seat) for seat in (1, 2, 3)]
    if left != [7, 0, 0] or found != ["updated"]:
        return got_through(f"{found}, reports {left}")
    return stopped(f"a seat of its own; {found}, reports {left}")
