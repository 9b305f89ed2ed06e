"""Signs that turn the direction of text, in the name of a transfer, in a title, and in a nickname."""

import json

import formats
from outcome import got_through, need, stopped
from school import School, Student

WORDS = "seven green kettles"
TURNS = "\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"


def attack(ground):
    school = School(ground)
    colleague = formats.Signer()
    student = Student(school, 1)
    contents = [student.content(student.ratings({school.concepts()[0]: 2}))]
    name = f"Wren\u202e{TURNS}"
    content = formats.transfer(colleague, school.desk.today, contents, [], name)
    path = school.ground / "forged.sftransfer"
    path.write_bytes(formats.write_transfer(content, colleague, WORDS))
    school.desk.pick(path)
    picked = school.desk.call("pick_transfer")
    taken = school.ask("take_transfer", picked=picked, passphrase=WORDS)
    need(taken["name"] is not None, "the name did not come along")
    school.ask("name_seat", seat=1, name=f"{TURNS}Ana")
    school.ask("rename_class", title=f"Room {TURNS}3")
    tablet = school.tablet()
    school.save_pack()
    tablet.pick(school.pack_path)
    offer = tablet.call("pick_class_pack")
    you = {"nickname": f"Wr{TURNS}en", "avatar": "heron", "language": "en"}
    joined = tablet.call("join", pack=offer["pack"], seat_code=school.codes[1], **you)
    shown = [taken, school.ask("class_setup"), offer, joined]
    shown = json.dumps(shown, ensure_ascii=False)
    found = [f"U+{ord(sign):04X}" for sign in TURNS if sign in shown]
    if found:
        return got_through(f"shown: {found}")
    need(joined["nickname"] == "Wren", joined)
    return stopped("names and titles stay, without these signs")
