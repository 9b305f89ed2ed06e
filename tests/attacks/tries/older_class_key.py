"""An older class key makes a second computer save packs, so that versions are given out twice."""

from outcome import got_through, need, stopped
from program import Program, Refused
from school import School

WORDS = "seven green kettles"


def attack(ground):
    school = School(ground)
    first, second = school.desk, Program(ground / "second", school.desk.today)

    def hand_over(desk, name):
        asked = {"class": school.id, "passphrase": WORDS, "hand_over": True}
        path = ground / name
        path.write_bytes(desk.saved(desk.call("export_class", **asked)).read_bytes())
        return path

    def take(desk, path):
        desk.pick(path)
        desk.call("import_class", picked=desk.call("pick_class_key")["picked"], passphrase=WORDS)

    key = hand_over(first, "first.sfkey")
    take(second, key)
    second.call("save_class_pack", **{"class": school.id})
    take(first, hand_over(second, "back.sfkey"))
    version = school.save_pack()["version"]
    try:
        take(second, key)
        return got_through("the key that was handed over first is taken again")
    except Refused as refused:
        need(refused.error.get("rule") == "older", refused)
    try:
        second.call("save_class_pack", **{"class": school.id})
        return got_through("both computers save packs")
    except Refused as refused:
        return stopped(f"one computer saves packs, now version {version}: {refused}")
