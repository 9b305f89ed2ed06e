"""Another slip after the hand-in was left: nothing travels, and the earlier class misses a file."""

from class_folder import ClassFolder, rate
from outcome import got_through, stopped
from program import Refused


def attack(ground):
    folder = ClassFolder(ground)
    school, tablet = folder.school, folder.school.tablet()
    wren = folder.join(tablet, 2)
    rate(tablet, wren, 0)
    folder.visit(tablet)
    folder.look()

    def change(offer, code, earlier):
        slip = {"pack": offer["pack"], "seat_code": code, "earlier": earlier}
        tablet.call("change_slip", student=wren, **slip)

    (offer,) = folder.offers(tablet)
    change(offer, school.codes[1], school.codes[2])
    folder.visit(tablet)
    folder.look()
    if school.reports(1) != 1:
        return got_through("the right seat of the class has nothing")

    # Two teachers use one folder.
    (ground / "two").mkdir()
    other = ClassFolder(ground / "two", folder.path)
    code = other.school.codes[3]
    for offer in folder.offers(tablet):
        try:
            tablet.call("check_seat_code", pack=offer["pack"], seat_code=code)
        except Refused:
            continue
        change(offer, code, school.codes[1])
    folder.visit(tablet)
    other.look()
    folder.look()
    if other.school.reports(3) != 1:
        return got_through("the new class has nothing")
    if len(folder.files("hand-in-*.sfhandin")) != 2:
        return got_through("one name links the hand-ins to two classes")
    lacking = school.ask("who_has_not", school_days=5)["lacking"]
    damaged = [line for line in lacking if line["what"]["kind"] == "damaged"]
    if damaged:
        return got_through(f"the earlier class lists damage: {damaged}")
    return stopped("the new seat and the new class have it; nothing is listed as damaged")
