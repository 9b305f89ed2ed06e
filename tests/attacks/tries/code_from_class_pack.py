"""A class pack with one personal assignment lists the seats and devices of the class."""

import json

import formats
from outcome import got_through, need, stopped
from school import School, Student


def attack(ground):
    school = School(ground, 4)
    concept = school.concepts()[0]
    students = [Student(school, seat) for seat in school.codes]
    for student in students:
        student.hands_in_honestly({concept: 1})
    school.assign([2], [concept])
    pack = school.save_pack()
    need(len(pack["sealed"]) == 4, f"{len(pack['sealed'])} sealed parts for 4 devices")
    text = json.dumps(pack)
    codes = [s for s in students if f'"{s.token}"' in text]
    devices = [s for s in students if s.device in text or s.identity.recipient in text]
    if codes or devices:
        code = formats.seat_code(pack["class_id"], codes[0].token) if codes else "none"
        return got_through(
            f"{len(codes)} of 4 seat codes ({code}) and {len(devices)} of 4 devices are listed"
        )
    return stopped("the pack lists no token, no device and no recipient of a student")
