"""A classmate who can write into the class folder: overwrites, replays, links, floods."""

import os
import time

from outcome import got_through, need, stopped
from school import School, Student

FLOOD = 300
MOST_SECONDS_A_CALL = 5
MOST_ROUNDS = 400
SCHOOL_DAYS = [f"2026-{day}" for day in "11-26 11-27 11-30 12-01 12-02 12-03 12-04 12-07 12-08".split()]


class Folder:
    """The class folder between a desk and a tablet, and how long their calls take."""

    def __init__(self, school, tablet, path):
        self.school, self.tablet, self.path = school, tablet, path
        self.slowest = 0.0

    def timed(self, program, name, **arguments):
        began = time.monotonic()
        answer = program.call(name, **arguments)
        self.slowest = max(self.slowest, time.monotonic() - began)
        return answer

    def go_round(self):
        """Lets the tablet and the desk go round until nothing happens any more."""
        quiet = 0
        for _ in range(MOST_ROUNDS):
            seen = self.timed(self.tablet, "visit_folders", done=True)
            state = self.timed(self.school.desk, "class_folder")
            if state["job"]:
                self.school.desk.job(state["job"])
            quiet = 0 if seen["took_pack"] or state["busy"] or state["job"] else quiet + 1
            if quiet > 6:
                return
            time.sleep(0.02)

    def names(self, end):
        return [path for path in self.path.iterdir() if path.name.endswith(end)]


def attack(ground):
    school = School(ground)
    path = ground / "class folder"
    path.mkdir()
    school.desk.pick(path)
    school.desk.call("name_class_folder")
    tablet = school.tablet()
    folder = Folder(school, tablet, path)
    folder.go_round()
    tablet.pick(path)
    (offer,) = tablet.call("pick_shown_folder")["packs"]
    you = {"nickname": "Wren", "avatar": "heron", "language": "en"}
    joined = tablet.call("join", pack=offer["pack"], seat_code=school.codes[1], **you)["id"]

    def rate(confidence):
        day = tablet.call("today", student=joined, date=None)
        tap = {"date": day["date"], "concept": day["concepts"][confidence]["concept"]["id"]}
        tablet.call("check_in", student=joined, confidence=confidence, outcome=None, **tap)

    rate(0)
    folder.go_round()
    (pack,), (hand_in,) = folder.names(".sfclass"), folder.names(".sfhandin")
    first_pack, first_hand_in = pack.read_bytes(), hand_in.read_bytes()
    need(school.reports(1) == 1, "the honest hand-in did not travel")
    rate(1)
    closures = {"closures": ["2026-12-24"]}
    school.ask("set_closures", **closures)
    folder.go_round()
    need(pack.read_bytes() != first_pack, "the desk put no newer pack")

    classmate = Student(school, 2)
    own = classmate.hand_in(classmate.ratings({school.concepts()[0]: 3}))
    outside = ground / "outside"
    outside.write_bytes(b"mine")
    aims = [
        lambda: hand_in.write_bytes(own),
        lambda: hand_in.write_bytes(first_hand_in),
        lambda: pack.write_bytes(first_pack),
        lambda: pack.write_bytes(own),
        lambda: (pack.unlink(), os.mkfifo(pack)),
        lambda: (hand_in.unlink(), os.symlink(outside, hand_in)),
        lambda: os.symlink(outside, path / f".{hand_in.name}.part"),
        lambda: os.symlink(outside, path / f".{pack.name}.part"),
        lambda: (path / f"{hand_in.stem} (1).sfhandin").write_bytes(own),
    ]
    for place, (aim, day) in enumerate(zip(aims, SCHOOL_DAYS, strict=True)):
        for left in (pack, hand_in):
            if left.is_fifo():
                left.unlink()
        aim()
        tablet.go_to(day)
        rate(place % 4)
        folder.go_round()
    for number in range(FLOOD):
        (path / f"a{number:05}.sfclass").write_bytes(own[: number + 1])
        (path / f"a{number:05}.sfhandin").write_bytes(own[: number + 1])
    closures["closures"].append("2026-12-25")
    school.ask("set_closures", **closures)
    folder.go_round()
    school.desk.go_to(tablet.today)
    folder.go_round()

    told = tablet.call("hand_in_preview", student=joined)["check_ins"]
    if outside.read_bytes() != b"mine":
        return got_through("a file outside of the folder was written")
    if folder.slowest > MOST_SECONDS_A_CALL:
        return got_through(f"a call took {folder.slowest:.1f} s")
    if school.reports(1) != told:
        return got_through(f"the desk has {school.reports(1)} of {told} check-ins of the student")
    if school.reports(2) != 1:
        return got_through(f"the classmate's own seat has {school.reports(2)} check-ins")
    closed = tablet.call("today", student=joined, date="2026-12-25")
    if closed["concepts"]:
        return got_through("the tablet does not have the newest pack")
    return stopped(
        f"{len(aims)} aims and {2 * FLOOD} files: all {told} check-ins at the desk, the newest pack on"
        f" the tablet, the slowest call {folder.slowest:.1f} s"
    )
