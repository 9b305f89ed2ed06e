"""A class at a teacher's desk, tablets, and students whose files our own library makes."""

import formats
from age import Identity
from outcome import need
from program import Program, Refused

TODAY = "2026-11-25"
YEAR = {
    "first_day": "2026-08-31",
    "last_day": "2027-05-07",
    "weekdays": [1, 2, 3, 4, 5],
    "closures": [],
}


class School:
    """A desk with one class of nameless seats, 1, 2, 3 ..., unless `names` says more."""

    def __init__(self, ground, seats=3, names=None, today=TODAY):
        self.ground = ground
        self.desk = Program(ground / "desk", today)
        names = names or [""] * seats
        made = self.desk.call(
            "create_class",
            **{
                "class": {
                    "title": "Room 3",
                    "names": names,
                    "year": YEAR,
                    "grades": [4, 5],
                    "rotation_days": 10,
                    "concepts_a_day": 7,
                }
            },
        )
        self.id = made["id"]
        slips = self.ask("join_slips")
        self.codes = {slip["seat"]: slip["code"] for slip in slips}
        self.pin_signs = {slip["seat"]: slip["pin_signs"] for slip in slips}
        self.save_pack()
        self._files = 0
        # What a carry file of a student holds; made when one is forged.
        self.own_carry = None

    def ask(self, call, /, **arguments):
        """A call of the desk about the class."""
        return self.desk.call(call, **{"class": self.id}, **arguments)

    def save_pack(self):
        """Makes the class pack anew; returns what our library reads in it."""
        self.pack_path = self.desk.saved(self.ask("save_class_pack"))
        self.pack = formats.read_pack(self.pack_path.read_bytes())
        return self.pack

    def concepts(self):
        """The concepts that have been taught."""
        rows = self.ask("board")["rows"]
        return [row["concept"]["id"] for row in rows if row["phase"] != "preview"]

    def assign(self, seats, concepts, due="2026-12-18"):
        """Assigns practice to single seats."""
        made = {
            "concepts": concepts,
            "items_each": 4,
            "from": self.desk.today,
            "due": due,
            "seats": seats,
        }
        return self.ask("assign", assignment=made)

    # --- hand-ins -------------------------------------------------------------

    def write(self, *contents, names=None):
        """Writes hand-ins into a folder of their own; returns their paths."""
        self._files += 1
        folder = self.ground / f"files-{self._files}"
        folder.mkdir()
        names = names or [f"{place:05}.sfhandin" for place in range(len(contents))]
        paths = [folder / name for name in names]
        for path, content in zip(paths, contents, strict=True):
            path.write_bytes(content)
        return paths

    def bring(self, *contents):
        """Imports hand-ins; returns a line for each, in the order of their names."""
        self.desk.pick(*self.write(*contents))
        result = self.desk.job(self.desk.call("import_hand_ins", **{"from": "files"}))
        need(result["kind"] == "import", result)
        report = result["report"]
        lines = report["files"]
        while len(lines) < sum(report["tally"].values()):
            asked = {"import": report["import"], "from": len(lines)}
            lines += self.desk.call("import_lines", **asked)
        return sorted(lines, key=lambda line: line["file_name"])

    def verdicts(self, *contents):
        return [verdict(line) for line in self.bring(*contents)]

    def reports(self, seat):
        """How many check-ins of a seat count."""
        return self.ask("seat_holdings", seat=seat)["reports"]

    # --- devices --------------------------------------------------------------

    def devices(self, seat):
        """The devices of a seat, as the list on the screen has them: its key is `id`."""
        seats = {one["number"]: one for one in self.ask("class_setup")["seats"]}
        return seats[seat]["devices"]

    def quarantined(self, seat):
        """The ids of the quarantined devices of a seat."""
        return [one["id"] for one in self.devices(seat) if one["state"] == "quarantined"]

    def device(self, seat, student):
        """The id of a student's device, found as the teacher finds it: by its fingerprint."""
        wanted = formats.fingerprint(student.signer, student.device)
        (found,) = (one["id"] for one in self.devices(seat) if one["fingerprint"] == wanted)
        return found

    def decide(self, seat, device, accept):
        self.ask("decide_device", seat=seat, device=device, accept=accept)

    def discard(self, seat, device):
        """Discards what a quarantined device brought."""
        self.ask("discard_device", seat=seat, device=device)

    # --- tablets --------------------------------------------------------------

    def tablet(self, name="tablet"):
        return Program(self.ground / name, self.desk.today)

    def join(self, tablet, seat, nickname="Wren", pack=None):
        """Joins on a tablet with the seat's slip; returns the student's id there."""
        tablet.pick(pack or self.pack_path)
        offer = tablet.call("pick_class_pack")
        joined = tablet.call(
            "join",
            pack=offer["pack"],
            seat_code=self.codes[seat],
            nickname=nickname,
            avatar="heron",
            language="en",
        )
        return joined["id"]

    def set_pin(self, tablet, student, pin, seat=1):
        slip = {"pin_signs": self.pin_signs[seat], "seat_code": self.codes[seat]}
        tablet.call("set_pin", student=student, pin=pin, **slip)
        tablet.call("lock_students")
        need(locked(tablet, student), "a PIN does not lock the student's pages")

    def set_pin_as_another(self, tablet, student, pin):
        """Sets a PIN with the slip of another seat."""
        slip = {"pin_signs": self.pin_signs[2], "seat_code": self.codes[2]}
        tablet.call("set_pin", student=student, pin=pin, **slip)

    def take_pin_by_code(self, tablet, student, seat):
        """Takes a PIN away with the last signs of the seat code in place of the PIN signs."""
        signs = self.codes[seat].replace("-", "")[-formats.PIN_SIGNS :]
        tablet.call("reset_pin", student=student, pin_signs=signs)

    def take_pin_by_slip(self, tablet, student, seat):
        """Takes a PIN away with all that the slip says."""
        tablet.call("reset_pin", student=student, pin_signs=self.pin_signs[seat])


def bring_carry(school, tablet, student, check_ins, answers=(), words="seven green kettles"):
    """Reads a carry file on a tablet, forged for the seat of `student` by seat 3's owner."""
    if not school.own_carry:
        own = tablet.call("make_carry", student=school.join(tablet, 3, "Magpie"), passphrase=words)
        school.own_carry = formats.read_carry(tablet.saved(own).read_bytes(), words)
    forged = formats.forged_carry(
        school.own_carry,
        student.token,
        student.signer,
        student.identity,
        student.device,
        check_ins,
        answers,
    )
    path = school.ground / "forged.sfcarry"
    path.write_bytes(formats.write_carry(forged, student.signer, words))
    tablet.pick(path)
    picked = tablet.call("pick_carry")["picked"]
    return tablet.call("take_carry", picked=picked, passphrase=words)


def verdict(line):
    kind = line["verdict"]["kind"]
    return line["verdict"]["refusal"]["code"] if kind == "refused" else kind


def locked(tablet, student):
    try:
        tablet.call("today", student=student, date=None)
    except Refused as refused:
        need(refused.code == "locked", refused)
        return True
    return False


def tap(tablet, student):
    """Rates the first concept of the day; returns how many ratings there are then."""
    today = tablet.call("today", student=student, date=None)
    tablet.call(
        "check_in",
        student=student,
        date=today["date"],
        concept=today["concepts"][0]["concept"]["id"],
        confidence=1,
        outcome=None,
    )
    return rated(tablet, student)


def hand_in(tablet, student):
    """The hand-in that the program makes on a tablet."""
    return tablet.saved(tablet.call("hand_in", student=student)).read_bytes()


def rated(tablet, student):
    return tablet.call("my_path", student=student)["rated"]


class Student:
    """Somebody with a seat's token and our own library instead of the program."""

    def __init__(self, school, seat, device=None):
        self.school, self.seat = school, seat
        self.token = formats.token_of(school.codes[seat])
        self.signer, self.identity = formats.Signer(), Identity()
        self.device = device or formats.new_id()
        self._revision = 0

    def ratings(self, by_concept, date=None, at=1, device=None):
        date = date or self.school.desk.today
        return [
            formats.check_in(device or self.device, date, concept, confidence, at=at)
            for concept, confidence in by_concept.items()
        ]

    def hand_in(self, check_ins=(), practised=(), device=None, extra=None):
        self._revision += 1
        return formats.hand_in(
            self.school.pack,
            self.token,
            self.signer,
            self.identity.recipient,
            device or self.device,
            self.school.desk.today,
            check_ins,
            practised,
            self._revision,
            extra or {},
        )

    def content(self, check_ins):
        """What a hand-in would say, not sealed."""
        return formats.hand_in_content(
            self.school.pack,
            self.token,
            self.signer,
            self.identity.recipient,
            self.device,
            self.school.desk.today,
            check_ins,
            [],
            1,
        )

    def hands_in_honestly(self, by_concept):
        """Brings ratings that must count: the precondition of every attack by files."""
        found = self.school.verdicts(self.hand_in(self.ratings(by_concept)))
        need(found == ["new"], f"an honest hand-in is {found}")
        need(self.school.reports(self.seat) == len(by_concept), "an honest hand-in does not count")
