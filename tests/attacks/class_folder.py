"""A class folder between a desk and its tablets."""

import time

from school import School

# After an import that failed or was stopped, the next waits twenty seconds.
PAUSE_SECONDS = 21


class ClassFolder:
    """A desk with one class, and the folder that it shares."""

    def __init__(self, ground, path=None):
        self.school = School(ground)
        self.path = path or ground / "class folder"
        self.path.mkdir(exist_ok=True)
        self.school.desk.pick(self.path)
        self.school.desk.call("name_class_folder")
        self.look()

    def look(self, rounds=12):
        """Lets the desk look at the folder, and ends its imports."""
        for _ in range(rounds):
            state = self.school.desk.call("class_folder")
            if state["job"]:
                self.school.desk.job(state["job"])
            time.sleep(0.05)
        return state

    def look_after_pause(self):
        """Lets the desk find that an import failed, and look again when its pause is over."""
        self.look(2)
        time.sleep(PAUSE_SECONDS)
        self.look()

    def next_job(self):
        """Lets the desk look until it starts an import."""
        for _ in range(200):
            state = self.school.desk.call("class_folder")
            if state["job"]:
                return state["job"]
            time.sleep(0.05)
        raise AssertionError("the desk starts no import")

    def visit(self, tablet, rounds=12):
        for _ in range(rounds):
            visited = tablet.call("visit_folders", done=True)
            time.sleep(0.05)
        return visited

    def offers(self, tablet):
        tablet.pick(self.path)
        return tablet.call("pick_shown_folder")["packs"]

    def join(self, tablet, seat, nickname="Wren"):
        (offer,) = self.offers(tablet)
        you = {"nickname": nickname, "avatar": "heron", "language": "en"}
        code = self.school.codes[seat]
        return tablet.call("join", pack=offer["pack"], seat_code=code, **you)["id"]

    def files(self, pattern):
        return sorted(self.path.glob(pattern))


def rate(tablet, student, place, confidence=1):
    """Rates one of the day's concepts."""
    day = tablet.call("today", student=student, date=None)
    concept = day["concepts"][place]["concept"]["id"]
    change = {"confidence": confidence, "outcome": None}
    tablet.call("check_in", student=student, date=day["date"], concept=concept, **change)
