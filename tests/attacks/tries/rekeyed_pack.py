"""A student joins with the real slip by a forged first pack; the forger reads the hand-in."""

import formats
from age import Identity
from outcome import got_through, need, stopped
from program import Refused
from school import School, hand_in, tap


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    need(tap(tablet, school.join(tablet, 1)) == 1, "the genuine pack cannot be joined with")
    signer, identity = formats.Signer(), Identity()
    whys = []
    for at, pack in enumerate(formats.rekeyed_packs(school.pack, signer, identity)):
        path = ground / f"forged-{at}.sfclass"
        path.write_bytes(formats.write_pack(pack, signer))
        try:
            student = school.join(tablet, 2, pack=path)
        except Refused as refused:
            whys.append(str(refused))
            continue
        tap(tablet, student)
        content = formats.read_hand_in(hand_in(tablet, student), identity)
        need(content, "the hand-in is sealed for neither")
        return got_through(
            f"joined with the real slip; the forger reads {len(content['check_ins'])} rating"
        )
    return stopped("; ".join(whys))
