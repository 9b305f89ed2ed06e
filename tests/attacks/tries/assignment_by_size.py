"""The sizes of the sealed parts of a class pack tell who has personal assignments."""

import formats
from outcome import got_through, need, stopped
from school import School, Student


def attack(ground):
    school = School(ground, 3)
    concepts = school.concepts()
    students = [Student(school, seat) for seat in school.codes]
    for student in students:
        student.hands_in_honestly({concepts[0]: 1})
    for at in range(60):
        school.assign([2], [concepts[(at * 5 + step) % len(concepts)] for step in range(5)])
    parts = formats.sealed_parts(school.save_pack())
    own = [part for part in parts if formats.read_personal(part, students[1].identity)]
    need(len(own) == 1, "the student with the assignments cannot open them")
    # The header has a filler of random length, so what counts is behind it.
    sizes = sorted({len(part.partition(b"\n--- ")[2]) for part in parts})
    if len(sizes) > 1:
        return got_through(
            f"the part of the one with 60 assignments is as long as no other: {sizes} bytes"
        )
    return stopped(f"all {len(parts)} parts have {sizes[0]} bytes behind the header")
