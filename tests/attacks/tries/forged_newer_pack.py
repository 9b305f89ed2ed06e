"""A forged class pack of a higher version is taken on a tablet that has joined."""

import formats
from age import Identity
from outcome import got_through, need, stopped
from program import Refused
from school import School


def attack(ground):
    school = School(ground)
    tablet = school.tablet()
    student = school.join(tablet, 1)
    first = school.pack_path.read_bytes()
    pack = school.save_pack()
    tablet.pick(school.pack_path)
    need(tablet.call("take_class_pack", student=student)["version"] == 2, "the genuine newer pack")
    signer = formats.Signer()
    newer = pack | {"version": 9, "title": "Room 3, moved"}
    genuine = school.pack_path.read_bytes()
    forged = {
        "another key": formats.write_pack(newer | {"teacher_key": signer.public}, signer),
        "the teacher's key, another's signature": formats.write_pack(newer, signer),
        "a bit changed": genuine[:-9] + bytes([genuine[-9] ^ 1]) + genuine[-8:],
        "the same version again": genuine,
        "an older version": first,
    }
    for at, one in enumerate(formats.rekeyed_packs(newer, signer, Identity())):
        forged[f"keys anew, {at}"] = formats.write_pack(one, signer)
    whys = []
    for name, file in forged.items():
        path = ground / "forged.sfclass"
        path.write_bytes(file)
        tablet.pick(path)
        try:
            tablet.call("take_class_pack", student=student)
            return got_through(f"taken: {name}")
        except Refused as refused:
            whys.append(refused.error.get("refusal", {}).get("code", refused.code))
    return stopped(f"{len(forged)} forged packs are refused: {', '.join(whys)}")
