"""The names of files in a class's folder give away seat codes, or whose files belong together."""

import re

import formats
from outcome import got_through, need, stopped
from school import School, tap


def parts(name):
    return set(re.split("[^a-z0-9]+", name.lower()))


def attack(ground):
    school = School(ground, 4)
    tablet = school.tablet()
    names = {}
    for seat in school.codes:
        student = school.join(tablet, seat)
        need(tap(tablet, student) == 1, "a tap is not rated")
        names[seat] = [tablet.call("hand_in", student=student)["file_name"] for _ in range(2)]
    own = school.codes[1]
    need(formats.seat_code(school.pack["class_id"], formats.token_of(own)) == own, "our own code")

    every = [name for pair in names.values() for name in pair]
    codes = {
        formats.seat_code(school.pack["class_id"], token)
        for name in every
        for token in formats.tokens_in(name)
    }
    found = codes & set(school.codes.values())
    linked = 0
    for first, second in names.values():
        others = set().union(*(parts(name) for name in every if name not in (first, second)))
        linked += bool(parts(first) & parts(second) - others)
    if found or linked:
        return got_through(
            f"{len(found)} of 4 seat codes worked out, {linked} of 4 pairs linked ({every[0]})"
        )
    return stopped(f"names such as {every[0]} hold no token and link nothing")
