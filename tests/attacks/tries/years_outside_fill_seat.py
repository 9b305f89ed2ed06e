"""Entries dated outside the school year take the places of a student's genuine year."""

import datetime

import formats
from outcome import got_through, need, stopped
from school import School, Student

FILES = 6


def attack(ground):
    school = School(ground)
    concepts = school.concepts()
    student = Student(school, 1)
    student.hands_in_honestly({concepts[0]: 2})
    first = datetime.date(1950, 1, 1)
    found = []
    for at in range(FILES):
        device = formats.new_id()
        entries = [
            formats.check_in(device, (first + datetime.timedelta(days=day)).isoformat(), "g4-round", 0)
            for day in range(at * 4_000, at * 4_000 + 20_000 - 1)
        ]
        found += school.verdicts(student.hand_in(entries))
    need(found[0] == "updated", found)
    size = school.desk.stored_bytes()
    year = student.ratings(dict.fromkeys(concepts[:9], 1), at=2)
    last = school.verdicts(student.hand_in(year))
    counted = school.ask("student_page", seat=1)
    need(concepts[0] in str(counted), "the student's page is empty")
    rated = [one for one in concepts[:9] if one in str(school.ask("board"))]
    if last != ["updated"] or len(rated) != 9:
        return got_through(f"{FILES} files of the years before, then the student's year is {last[0]}")
    if size > 120 << 20:
        return got_through(f"{FILES} files make the desk {size >> 20} MiB large")
    return stopped(f"{FILES} files are {set(found)}; the genuine year is {last[0]}, {size >> 20} MiB")
