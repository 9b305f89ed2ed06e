"""Entries at the first and the last dates there are break the screens of the class."""

import formats
from outcome import got_through, need, stopped
from program import Refused, command
from school import School, Student

DATES = ("0000-01-01", "0001-01-01", "1582-10-15", "1970-01-01", "2038-01-19", "9999-12-31")


def attack(ground):
    school = School(ground, names=["Ottilie Vandenbroucke", "Bo Adeyemi"])
    concept = school.concepts()[0]
    student = Student(school, 1)
    student.hands_in_honestly({concept: 2})
    whys = set()
    for at, date in enumerate(DATES):
        entries = student.ratings({concept: 0}, date=date, at=formats.MOST_SEQUENCE - at)
        done = [formats.practice(student.device, date, concept, [(None, 1, 1, 1)], at=at + 1)]
        whys |= set(school.verdicts(student.hand_in(entries, done, extra={"made_on": date})))
    need("updated" in whys, whys)
    failed = []
    looks = {
        "board": {},
        "comparison": {},
        "groups_desk": {},
        "assignments": {},
        "talk": {"minutes": 5},
        "student_page": {"seat": 1},
        "seat_holdings": {"seat": 1},
        "concept_reports": {"concept": concept},
        "entry_day": {"date": None},
        "save_class_pack": {},
    }
    for today in (school.desk.today, "2027-05-07", "2099-12-31", "9999-12-30"):
        school.desk.go_to(today)
        for call, arguments in looks.items():
            try:
                school.ask(call, **arguments)
            except Refused as refused:
                failed.append(f"{today} {refused}")
        shown = command("board", "--desk", school.desk.desk_path, "--today", today)
        if shown.returncode:
            failed.append(f"{today} surefoot board: {shown.stderr.decode()[:120]}")
    if failed:
        return got_through(f"{len(failed)} looks fail: {failed[0]}")
    return stopped(f"files of {len(DATES)} dates are {', '.join(sorted(whys))}; every look comes")
