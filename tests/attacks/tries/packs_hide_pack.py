"""Junk named like class packs, and packs of classes of one's own with the title of the right one, hide
the right one from a student who joins from the folder."""

import formats
from class_folder import ClassFolder
from outcome import got_through, need, stopped
from school import School

JUNK, CLASSES = 500, 5


def attack(ground):
    folder = ClassFolder(ground)
    school = folder.school
    for number in range(JUNK):
        (folder.path / f"class-pack-0{number:04}.sfclass").write_bytes(b"junk")
    for number in range(CLASSES):
        own = School(ground / f"own-{number}")
        (folder.path / f"class-pack-00{number}.sfclass").write_bytes(own.pack_path.read_bytes())
        need(formats.read_pack(own.pack_path.read_bytes())["title"] == "Room 3", "another title")
    tablet = school.tablet()
    offers = folder.offers(tablet)
    need(len(offers) > 1, "the packs of other classes are not found")
    found = tablet.call("pack_for_code", seat_code=school.codes[1])["offer"]
    you = {"nickname": "Wren", "avatar": "heron", "language": "en"}
    joined = tablet.call("join", pack=found["pack"], seat_code=school.codes[1], **you)
    if joined["class_title"] != "Room 3":
        return got_through("the student joined another class")
    return stopped(f"the code finds the class among {JUNK} files of junk and {CLASSES} other classes")
