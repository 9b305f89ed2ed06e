"""A copy of another's hand-in is spoiled after the desk read it, to have its owner blamed and words of
the classmate read out."""

import json

from class_folder import ClassFolder, rate
from outcome import got_through, need, stopped

# U+202E turns the direction of what follows.
NAMES = ["A copy \u202e call 555.sfhandin", "zz Wren does not know how to save.sfhandin"]


def attack(ground):
    folder = ClassFolder(ground)
    school = folder.school
    tablet = school.tablet()
    rate(tablet, folder.join(tablet, 1), 0)
    folder.visit(tablet)
    (own,) = folder.files("hand-in-*")
    for name in NAMES:
        (folder.path / name).write_bytes(own.read_bytes())
    folder.look()
    need(school.reports(1) == 1, "the honest hand-in did not come")
    for name in NAMES:
        (folder.path / name).write_bytes(b"spoiled")
    folder.look(24)
    lacking = school.ask("who_has_not", school_days=5)["lacking"]
    need(lacking, "the spoiled copies are not told")
    blamed = [one for one in lacking if one["seat"] is not None]
    if blamed:
        return got_through(f"the owner is listed: {blamed}")
    if "\u202e" in json.dumps(lacking, ensure_ascii=False):
        return got_through("a sign that turns the direction is shown")
    return stopped(f"{len(lacking)} line of nobody for {lacking[0]['what']['files']} files")
