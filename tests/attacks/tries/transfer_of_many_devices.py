"""A forged transfer brings more devices than a class pack has room for, so none can be made."""

import formats
from outcome import got_through, need, stopped
from program import Refused
from school import School, Student

WORDS = "seven green kettles"
DEVICES = 2100


def attack(ground):
    school = School(ground)
    concept = school.concepts()[0]
    Student(school, 1).hands_in_honestly({concept: 2})
    forger = formats.Signer()
    one = Student(school, 2).content([])

    def take(devices):
        his = [one | {"device": formats.new_id(), "revision": n + 1} for n in range(devices)]
        path = ground / f"{devices}.sftransfer"
        content = formats.transfer(forger, school.desk.today, his, [])
        path.write_bytes(formats.write_transfer(content, forger, WORDS))
        school.desk.pick(path)
        picked = school.desk.call("pick_transfer")
        return school.ask("take_transfer", picked=picked, passphrase=WORDS)

    need(len(school.devices(take(8)["seat"])) == 8, "a transfer of eight devices is not taken")
    for devices in (9, DEVICES):
        try:
            taken = take(devices)
            return got_through(f"{len(school.devices(taken['seat']))} devices at one seat")
        except Refused as refused:
            need(refused.code == "refused", refused)
    seats = school.ask("class_setup")["seats"]
    need(len(seats) == 4, f"{len(seats)} seats")
    school.assign([1], [concept])
    sealed = len(school.save_pack()["sealed"])
    return stopped(f"more than eight are refused; the pack has {sealed} sealed parts")
