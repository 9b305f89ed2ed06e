"""One signature or key in other bytes passes for another device, or for nobody's at all."""

import base64

import age
import formats
from outcome import got_through, need, stopped
from school import School, Student

ORDER = 2**252 + 27742317777372353535851937790883648493
# Points of small order (RFC 7748 and RFC 8032 curves): with them anybody signs everything.
SMALL = ("01" + "00" * 31, "00" * 32, "ec" + "ff" * 30 + "7f", "01" + "00" * 30 + "80")


class Zero:
    """A "signer" whose key has small order and whose signature is R = key, S = 0."""

    def __init__(self, raw):
        self.raw, self.public = raw, base64.b64encode(raw).decode()

    def sign(self, _message):
        return bytes.fromhex(SMALL[0]) + bytes(32)


def attack(ground):
    school = School(ground)
    concept = school.concepts()[0]
    student = Student(school, 1)
    student.hands_in_honestly({concept: 2})

    def file(signer, public, change=lambda frame: frame):
        content = {
            "format": 1,
            "class_id": school.pack["class_id"],
            "seat": student.token,
            "device": student.device,
            "revision": 9,
            "made_on": school.desk.today,
            "pack_version": 1,
            "check_ins": student.ratings({concept: 0}, at=9),
            "practice": [],
            "device_key": public,
            "device_recipient": student.identity.recipient,
        }
        frame = formats.write_frame(formats.HAND_IN, content, signer)
        return age.seal(change(frame), school.pack["class_recipient"])

    def with_order_added(frame):
        number = int.from_bytes(frame[72:104], "little") + ORDER
        return frame[:72] + number.to_bytes(32, "little") + frame[104:]

    signer, public = student.signer, student.signer.public
    last = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/"
    other = public[:42] + last[last.index(public[42]) | 3] + "="
    need(base64.b64decode(other) == signer.raw and other != public, "no other text of the key")
    forged = {
        "signature with the order added": file(signer, public, with_order_added),
        "another text of the key": file(signer, other),
        "the key without padding": file(signer, public.rstrip("=")),
        "another's key in the content": file(formats.Signer(), public),
        "no signature": file(signer, public, lambda frame: frame[:40] + bytes(64) + frame[104:]),
    }
    for raw in SMALL:
        zero = Zero(bytes.fromhex(raw))
        forged[f"small order {raw[:2]}..{raw[-2:]}"] = file(zero, zero.public)
    found = dict(zip(forged, school.verdicts(*forged.values()), strict=True))
    taken = [name for name, one in found.items() if one not in ("bad_signature", "bad_content")]
    if taken or school.reports(1) != 1:
        return got_through(f"taken: {', '.join(taken)}")
    need(school.verdicts(file(signer, public)) == ["updated"], "the same with the honest key")
    return stopped(f"{len(forged)} are refused: {', '.join(sorted(set(found.values())))}")
