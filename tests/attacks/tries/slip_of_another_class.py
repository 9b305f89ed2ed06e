"""A classmate gives open pages a slip of a class of their own, and locks the owner out for good."""

from outcome import got_through, need, stopped
from program import Refused
from school import School, tap


def attack(ground):
    school = School(ground)
    own = School(ground / "own")
    tablet = school.tablet()
    owner = school.join(tablet, 1)
    before = tap(tablet, owner)

    def change(earlier):
        tablet.pick(own.pack_path)
        offer = tablet.call("pick_class_pack")
        slip = {"pack": offer["pack"], "seat_code": own.codes[2], "earlier": earlier}
        tablet.call("change_slip", student=owner, **slip)

    known = {
        "nothing": "",
        "the code of the new slip": own.codes[2],
        "the code of another seat": school.codes[2],
        "the PIN signs of another seat": school.pin_signs[2],
    }
    # Without a PIN, and with one that its owner has just typed.
    for pin in (None, "1111"):
        if pin:
            school.set_pin(tablet, owner, pin)
            tablet.call("unlock", student=owner, pin=pin)
            known["the code of the slip, once the PIN signs are known"] = school.codes[1]
        for words, earlier in known.items():
            try:
                change(earlier)
                return got_through(f"{words} gives the pages away")
            except Refused as refused:
                need(refused.error.get("field") == "earlier_slip", refused)
    need(tap(tablet, owner) >= before, "the pages have lost a tap")
    # A slip that was lost to a classmate: the owner's goes on opening the pages.
    change(school.pin_signs[1])
    own.set_pin(tablet, owner, "4444", seat=2)
    try:
        school.take_pin_by_slip(tablet, owner, 1)
    except Refused as refused:
        return got_through(f"the owner's slip no longer opens the pages: {refused}")
    return stopped("the earlier slip is asked for, and goes on opening the pages")
