"""A classmate who saw the owner's slip gives the pages a slip of their own, and locks them."""

from outcome import got_through, need, stopped
from program import Refused
from school import School, locked, rated, tap

PIN = "4711"


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    owner = school.join(tablet, 1)
    before = tap(tablet, owner)

    def change(seat, earlier):
        tablet.pick(school.pack_path)
        offer = tablet.call("pick_class_pack")
        slip = {"pack": offer["pack"], "seat_code": school.codes[seat], "earlier": earlier}
        tablet.call("change_slip", student=owner, **slip)

    school.set_pin(tablet, owner, PIN)
    try:
        change(2, school.pin_signs[1])
        return got_through("a PIN does not keep the slip")
    except Refused as refused:
        need(refused.code == "locked", refused)
    # With the owner's slip it can be done. The teacher has all slips.
    school.take_pin_by_slip(tablet, owner, 1)
    change(2, school.pin_signs[1])
    school.set_pin(tablet, owner, PIN, seat=2)
    school.take_pin_by_slip(tablet, owner, 2)
    change(1, school.pin_signs[2])
    if locked(tablet, owner) or rated(tablet, owner) != before:
        return got_through("the owner does not get the pages back")
    return stopped("a PIN keeps the slip; the slips of the class give everything back")
