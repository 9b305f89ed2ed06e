"""A transfer tells the colleague of other students, or a name that nobody ticked."""

import json

import formats
from outcome import got_through, need, stopped
from school import School, Student

WORDS = "seven green kettles"


def attack(ground):
    school = School(ground, names=["Ottilie", "Bo", "Cleo"])
    concepts = school.concepts()
    for seat, count in ((1, 5), (2, 7)):
        Student(school, seat).hands_in_honestly(dict.fromkeys(concepts[:count], 2))
    asked = {"seat": 1, "passphrase": WORDS}
    files = {}
    for named in (False, True):
        made = school.desk.saved(school.ask("make_transfer", with_name=named, **asked))
        files[named] = formats.read_transfer(made.read_bytes(), WORDS)
        need("Ottilie" not in made.name and "ottilie" not in made.name, made.name)
    need(files[True]["name"] == "Ottilie", "a ticked name is not in the file")
    (told,) = files[False]["hand_ins"]
    need(len(told["check_ins"]) == 5, "the record is not in the file")
    text = json.dumps(files[False])
    others = [formats.token_of(school.codes[seat]) for seat in (2, 3)]
    found = [one for one in ["Ottilie", "Bo", "Cleo", *others] if one in text]
    if found or files[False]["name"] is not None:
        return got_through(f"the file has {found}")
    return stopped(f"one seat's {len(told['check_ins'])} entries, no name")
