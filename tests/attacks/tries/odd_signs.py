"""Codes of slips in odd signs, lengths and alphabets open what they should not, or end the program."""

import random

from outcome import got_through, need, stopped
from program import Refused
from school import School, locked, tap

ODD = "\u0130\u017f\u212a\u00df\uff21\u0661\u200b\u202e\U0001d7d8\u0000 -\n\ud7ff0OIlL1UuZ"


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    victim = school.join(tablet, 1)
    tap(tablet, victim)
    school.set_pin(tablet, victim, "4711")
    dice = random.Random(11)
    own, signs = school.codes[1], school.pin_signs[1]

    def changed(text):
        places = dice.sample(range(len(text)), dice.randrange(1, 4))
        odd = [dice.choice(ODD) if at in places else sign for at, sign in enumerate(text)]
        return "".join(odd)

    tried = [changed(signs) for _ in range(150)]
    tried += ["", "-" * 5_000, signs * 400, signs[:-1], signs + "0", "\u0661" * 6, own]
    tablet.pick(school.pack_path)
    pack = tablet.call("pick_class_pack")["pack"]
    taken = []
    for typed in tried:
        try:
            tablet.call("reset_pin", student=victim, pin_signs=typed)
            taken.append(typed)
            school.set_pin(tablet, victim, "4711")
        except Refused as refused:
            need(refused.code != "panic", f"{typed!r} ends the program")
    for typed in [changed(own) for _ in range(150)] + ["", own * 400, own[:-1]]:
        try:
            tablet.call("check_seat_code", pack=pack, seat_code=typed)
            taken.append(typed)
        except Refused as refused:
            need(refused.code != "panic", f"{typed!r} ends the program")
    # What is documented to be the same: case, spaces, dashes, O as 0, I and L as 1.
    same = str.maketrans("oOiIlL", "001111", " -\n\t")
    clean = {text.translate(same).upper() for text in (own, signs)}
    odd = [text for text in taken if text.translate(same).upper() not in clean]
    if odd or not locked(tablet, victim):
        return got_through(f"taken: {ascii(odd[:3])}")
    return stopped(f"{len(tried) + 153} codes, {len(taken)} of them the slip's own, typed otherwise")
