"""A class whose ratings are known to us, and the share-safe tables that are handed out of it."""

import json

from outcome import need
from program import Refused, command
from school import School, Student

OPTIONS = {"language": "en", "paper": "letter", "roomy": True}


class TableClass:
    """A class in which every student hands in by our own library."""

    def __init__(self, ground, seats):
        self.school = School(ground, seats)
        self.students = {seat: Student(self.school, seat) for seat in self.school.codes}
        self.why = ""
        self._at = 0

    @staticmethod
    def balanced(seat, at):
        """Ratings of which half are low for every concept."""
        return 1 if (seat + at) % 2 else 2

    def rate(self, seat, by_concept):
        self.rate_all({seat: by_concept})

    def rate_all(self, by_seat):
        self._at += 1
        files = []
        for seat, by_concept in by_seat.items():
            student = self.students[seat]
            files.append(student.hand_in(student.ratings(by_concept, at=self._at)))
        found = self.school.verdicts(*files)
        need(set(found) <= {"new", "updated", "known"}, set(found))

    def table(self):
        school = self.school
        ran = command(
            "share-table", "--json", "--desk", school.desk.desk_path, "--today", school.desk.today
        )
        need(ran.returncode == 0, ran.stderr)
        return json.loads(ran.stdout)

    def release(self):
        """Hands out the table of now; returns its counts (low, high) by concept, or nothing."""
        counts = {
            row["concept"]["id"]: (row["shown"]["low"], row["shown"]["high"])
            for row in self.table()["rows"]
            if row["concept"]
            and row["shown"]["kind"] == "counts"
            and None not in (row["shown"]["low"], row["shown"]["high"])
        }
        try:
            self.school.ask("print", report="share_safe", values={}, options=OPTIONS)
        except Refused as refused:
            self.why = str(refused)
            return None
        need(counts, "a table without counts was handed out")
        return counts

    def reporters(self):
        """How many rated each concept, where the table says so."""
        return {
            row["concept"]["id"]: row["shown"]["reporters"]
            for row in self.table()["rows"]
            if row["concept"] and row["shown"]["kind"] == "counts"
        }
