"""A student writes a sentence on the teacher's screens and prints as a misconception's code."""

import json

import formats
from outcome import got_through, need, stopped
from school import School, Student

CODE = "ask-mia-whom-she-copies-from"


def attack(ground):
    school = School(ground)
    concept = school.concepts()[0]
    student = Student(school, 1)
    student.hands_in_honestly({concept: 0})
    entry = formats.practice(
        student.device,
        "2026-11-24",
        concept,
        [(0, 0, 0, formats.MOST_COUNT)],
        {CODE: formats.MOST_COUNT},
    )
    found = school.verdicts(student.hand_in(student.ratings({concept: 0}), [entry]))
    need(found == ["updated"], found)
    looks = {
        "board": school.ask("board"),
        "concept": school.ask("concept_reports", concept=concept),
        "talk": school.ask("talk", minutes=5),
        "student": school.ask("student_page", seat=1),
    }
    options = {"language": "en", "paper": "letter", "roomy": True}
    for report in ("talk", "class_summary"):
        values = {"minutes": 5} if report == "talk" else {}
        looks[report] = school.ask("preview", report=report, values=values, options=options)
    need(concept in json.dumps(looks["board"]), "the concept is not on the board")
    words = (CODE, CODE.replace("-", " "), CODE.capitalize().replace("-", " "))
    where = [name for name, look in looks.items() if any(w in json.dumps(look) for w in words)]
    if where:
        return got_through(f'"{CODE}" is on: {", ".join(where)}')
    return stopped(f"the code is in none of {len(looks)} looks")
