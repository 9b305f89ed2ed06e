"""A student puts the name of a misconception first on a concept that cannot have it."""

import json

import formats
from outcome import got_through, need, stopped
from school import School, Student

CODE, NAME = "added-tops-and-bottoms", "Added numerators and denominators"


def attack(ground):
    school = School(ground)
    concepts = school.concepts()
    lacks = next(one for one in concepts if "fraction" not in one and "mixed" not in one)
    student = Student(school, 1)
    student.hands_in_honestly({lacks: 0})

    def looks(concept, code, at):
        counts = [(0, 0, 0, formats.MOST_COUNT)]
        entry = formats.practice(
            student.device, "2026-11-24", concept, counts, {code: formats.MOST_COUNT}, at
        )
        found = school.verdicts(student.hand_in(student.ratings({concept: 0}), [entry]))
        need(found == ["updated"], found)
        options = {"language": "en", "paper": "letter", "roomy": True}
        asked = {"report": "talk", "values": {"minutes": 5}, "options": options}
        return {
            "board": school.ask("board"),
            "comparison": school.ask("comparison"),
            "concept": school.ask("concept_reports", concept=concept),
            "talk": school.ask("talk", minutes=5),
            "student": school.ask("student_page", seat=1),
            "print": school.ask("preview", **asked),
        }

    genuine = {name: json.dumps(look) for name, look in looks(lacks, "other", 1).items()}
    need(lacks in genuine["board"], "the concept is not on the board")
    found = {name: json.dumps(look) for name, look in looks(lacks, CODE, 2).items()}

    def said(look):
        return look.count(CODE) + look.count(NAME)

    # An exercise of another concept of the day may have it by right.
    where = [name for name, look in found.items() if said(look) > said(genuine[name])]
    if where:
        return got_through(f'"{NAME}" is said of {lacks}: {", ".join(where)}')
    return stopped(f"{len(found)} looks say nothing of it for {lacks}")
