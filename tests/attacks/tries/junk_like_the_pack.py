"""Junk of the size and time of the class pack, and of a hand-in, in the place of each: devices that
start anew find no pack, and the desk lacks a hand-in without anybody being told."""

import os

from class_folder import ClassFolder, rate
from outcome import got_through, need, stopped

# Files are read again every sixteenth round.
MOST_LOOKS = 60


def replace(path):
    about = path.stat()
    path.write_bytes(b"x" * about.st_size)
    os.utime(path, ns=(about.st_atime_ns, about.st_mtime_ns))


def attack(ground):
    folder = ClassFolder(ground)
    school = folder.school
    tablet = school.tablet()
    wren = folder.join(tablet, 1)
    rate(tablet, wren, 0)
    folder.visit(tablet)
    (pack,), (hand_in,) = folder.files("class-pack-*"), folder.files("hand-in-*")
    whole = pack.read_bytes()
    # Before the desk has looked at the hand-in.
    for path in (pack, hand_in):
        replace(path)
    for _ in range(MOST_LOOKS):
        folder.visit(tablet, 2)
        folder.look(2)
        if pack.read_bytes() == whole and school.reports(1) == 1:
            break
    if pack.read_bytes() != whole:
        return got_through("the junk stays in the place of the class pack")
    if school.reports(1) != 1:
        return got_through("the junk stays in the place of the hand-in")
    (offer,) = folder.offers(school.tablet("another"))
    need(offer["class_title"] == "Room 3", offer)
    lacking = school.ask("who_has_not", school_days=5)["lacking"]
    if any(one["seat"] is not None for one in lacking):
        return got_through(f"the student is blamed: {lacking}")
    return stopped("pack and hand-in are put again, and a new student can join")
