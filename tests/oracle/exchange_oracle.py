#!/usr/bin/env python3
"""Opens and makes the files that travel without any of our code.

Sealing: the `age` program. Signatures, argon2id and HKDF: `cryptography`.
Unpacking: zlib. Schema: `jsonschema` (2020-12). Check character:
`python-stdnum` (ISO/IEC 7064 MOD 37,36). Layouts are written here from docs/exchange.md. Our program only makes
the files that are opened here, and opens those that are made here.

    exchange_oracle.py [--fixture PATH]

Ends with "N passed, M failed".
"""
import argparse
import base64
import copy
import hashlib
import json
import os
import pathlib
import pty
import re
import sqlite3
import subprocess
import sys
import tempfile
import zlib

import jsonschema
import referencing
from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey, Ed25519PublicKey
from cryptography.hazmat.primitives.kdf.argon2 import Argon2id
from cryptography.hazmat.primitives.kdf.hkdf import HKDF
from stdnum.iso7064 import mod_37_36

from checks import check, ended

TOP = pathlib.Path(__file__).resolve().parents[2]
PREFIX = b"surefoot exchange signature v1\n"
SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"


def fixture_program(given):
    if given:
        return given
    target = os.environ.get("CARGO_TARGET_DIR", str(TOP / "target"))
    return str(pathlib.Path(target) / "debug" / "examples" / "exchange_fixture")


def schema(name):
    texts = {path.name: json.loads(path.read_text()) for path in (TOP / "shared" / "schema").iterdir()}
    text = texts[f"{name}.schema.json"]
    jsonschema.Draft202012Validator.check_schema(text)
    others = [(one["$id"], referencing.Resource.from_contents(one)) for one in texts.values()]
    return jsonschema.Draft202012Validator(
        text, registry=referencing.Registry().with_resources(others), format_checker=jsonschema.Draft202012Validator.FORMAT_CHECKER
    )


def unseal(sealed, identity_file):
    """The plain text by the age program, or None."""
    run = subprocess.run(["age", "-d", "-i", str(identity_file)], input=sealed, capture_output=True)
    return run.stdout if run.returncode == 0 else None


def seal(plain, recipient):
    return subprocess.run(["age", "-r", recipient], input=plain, capture_output=True, check=True).stdout


def unseal_by_passphrase(path, out, passphrase):
    return on_terminal(["age", "-d", "-o", str(out), str(path)], passphrase)


def seal_by_passphrase(path, out, passphrase):
    return on_terminal(["age", "-p", "-o", str(out), str(path)], passphrase)


def on_terminal(command, passphrase):
    """Runs the age program on a terminal, where it asks for the passphrase, twice for a new one."""
    child, terminal = pty.fork()
    if child == 0:
        os.execvp(command[0], command)
    while True:
        try:
            asked = os.read(terminal, 1024)
        except OSError:
            break
        if not asked:
            break
        if b"assphrase" in asked and b":" in asked:
            os.write(terminal, passphrase.encode() + b"\n")
    return os.waitpid(child, 0)[1] == 0


def signature_fits(key, signature, message):
    try:
        Ed25519PublicKey.from_public_bytes(key).verify(signature, message)
        return True
    except InvalidSignature:
        return False


def open_frame(frame, magic, step):
    """Key and JSON text of a signed frame; padded when a step is given."""
    assert frame[:8] == magic, frame[:8]
    key, signature, rest = frame[8:40], frame[40:104], frame[104:]
    if step:
        length = int.from_bytes(rest[:4], "big")
        packed, padding = rest[4 : 4 + length], rest[4 + length :]
        assert not any(padding)
        size = step
        while size < 108 + length:
            size *= 2
        assert len(frame) == size, (len(frame), size)
    else:
        packed = rest
    assert signature_fits(key, signature, PREFIX + magic + packed)
    assert not signature_fits(key, signature, PREFIX + magic + packed + b"\0")
    unpacker = zlib.decompressobj()
    text = unpacker.decompress(packed)
    assert unpacker.eof and not unpacker.unused_data
    return key, text


def make_frame(text, secret, magic=b"SFHAND1\n", prefix=PREFIX, step=16384):
    packed = zlib.compress(text, 6)
    key = secret.public_key().public_bytes(
        serialization.Encoding.Raw, serialization.PublicFormat.Raw
    )
    frame = magic + key + secret.sign(prefix + magic + packed) + len(packed).to_bytes(4, "big") + packed
    size = step
    while size < len(frame):
        size *= 2
    return frame + bytes(size - len(frame))


def no_name_twice(pairs):
    names = [name for name, _ in pairs]
    assert len(names) == len(set(names)), names
    return dict(pairs)


def read_json(text):
    return json.loads(text, object_pairs_hook=no_name_twice)


def attempt(name, action):
    """A check that fails when the action raises."""
    try:
        result = action()
        check(name, True)
        return result
    except Exception as error:  # any reason is a failed check
        check(name, False, repr(error)[:300])
        return None


def free_text(node, where, found):
    """Texts of a schema without a pattern and without a list of values."""
    if isinstance(node, dict):
        if node.get("type") == "string" and not ({"pattern", "enum", "const"} & set(node)):
            found.append(where)
        for name, inner in node.items():
            free_text(inner, f"{where}/{name}", found)
    elif isinstance(node, list):
        for place, inner in enumerate(node):
            free_text(inner, f"{where}/{place}", found)
    return found


def signs_of(content):
    """Bytes in base 32: RFC 4648's bits with our alphabet."""
    theirs = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567"
    return base64.b32encode(content).decode().rstrip("=").translate(str.maketrans(theirs, SIGNS))


def in_groups(signs):
    return "-".join(re.findall("...", signs))


def swaps(signs):
    for at in range(1, len(signs)):
        swapped = signs[: at - 1] + signs[at] + signs[at - 1] + signs[at + 1 :]
        if swapped != signs:
            yield swapped


def pin_signs_of(seed, class_id, token):
    """The first PIN signs whose check character is usable and finds every swap."""
    for attempt in range(1000):
        info = b"surefoot pin signs v1\n" + (class_id + token).encode() + attempt.to_bytes(4, "big")
        secret = signs_of(HKDF(hashes.SHA256(), 4, None, info).derive(seed))[:5]
        check_character = mod_37_36.calc_check_digit(token + secret)
        signs = secret + check_character
        if check_character in SIGNS and not any(mod_37_36.is_valid(token + other) for other in swaps(signs)):
            return signs


def slips(facts, pack, teacher_key, student_key):
    """Class id, slip and fingerprint, each computed here from the keys."""
    class_id = signs_of(hashlib.sha256(
        b"surefoot class id v1\n" + teacher_key + pack["class_recipient"].encode()).digest()[:16])
    check("class id: of both keys", class_id == pack["class_id"] == facts["class_id"], class_id)
    slow = Argon2id(salt=b"surefoot class signs v1", length=32, iterations=3, lanes=1, memory_cost=65536)
    class_signs = signs_of(slow.derive(class_id.encode()))[:8]
    slip = facts["slip"].replace("-", "")
    check("seat code: class signs by argon2id", slip[:8] == class_signs, slip)
    check("seat code: holds the token", slip[8:14] == facts["seat"] and len(slip) == 15, slip)
    check("seat code: ISO/IEC 7064 MOD 37,36", mod_37_36.is_valid(slip), slip)
    check("seat code: finds swaps behind the class signs",
          not any(mod_37_36.is_valid(other) for other in swaps(slip) if other[:8] == class_signs))
    signs = pin_signs_of(base64.b64decode(facts["signing_seed"]), class_id, facts["seat"])
    check("PIN signs: by HKDF from the teacher's key", in_groups(signs) == facts["pin_signs"], facts["pin_signs"])
    digest = hashlib.sha256(b"surefoot device fingerprint v1\n" + student_key + facts["device"].encode()).digest()
    check("fingerprint: 60 bits of key and device", in_groups(signs_of(digest)[:12]) == facts["fingerprint"])


def ours_opened(program, folder, schemas, facts):
    identity, student = folder / "class-identity.txt", folder / "student-identity.txt"

    key, text = attempt(
        "class pack: magic, signature, unpacking",
        lambda: open_frame((folder / "class.sfclass").read_bytes(), b"SFPACK1\n", None),
    )
    pack = read_json(text)
    attempt("class pack: schema", lambda: schemas["class-pack"].validate(pack))
    check("class pack: names its key", base64.b64encode(key).decode() == pack["teacher_key"])
    teacher_key = key

    sealed = (folder / "year.sfhandin").read_bytes()
    plain = unseal(sealed, identity)
    check("hand-in: the age program opens it with the exported identity", plain is not None)
    check("hand-in: no other identity opens it", unseal(sealed, student) is None)
    check("hand-in: the recipient of the pack is the exported identity's",
          subprocess.run(["age-keygen", "-y", str(identity)], capture_output=True, text=True).stdout.strip()
          == pack["class_recipient"])
    key, text = attempt("hand-in: magic, signature, padding, unpacking",
                        lambda: open_frame(plain, b"SFHAND1\n", 16384))
    hand_in = read_json(text)
    attempt("hand-in: schema", lambda: schemas["hand-in"].validate(hand_in))
    check("hand-in: names its key", base64.b64encode(key).decode() == hand_in["device_key"])
    check("hand-in: a year of check-ins", len(hand_in["check_ins"]) == facts["check_ins"] == 1080)
    check("hand-in: a year of practice", len(hand_in["practice"]) == facts["practice"] == 1080)
    order = [(e["device"], e["date"], e["concept"]) for e in hand_in["check_ins"]]
    check("hand-in: in order, each key once",
          all((base64.urlsafe_b64decode(a[0] + "=="), a[1:]) < (base64.urlsafe_b64decode(b[0] + "=="), b[1:])
              for a, b in zip(order, order[1:])))

    student_key = key
    parts = [base64.b64decode(part, validate=True) for part in pack["sealed"]]
    check("personal assignments: in the order of their texts", pack["sealed"] == sorted(set(pack["sealed"])))
    check("personal assignments: of one size behind the header",
          len(parts) == 2 and len({len(part.partition(b"\n--- ")[2]) for part in parts}) == 1)
    check("personal assignments: no token and no device in the pack",
          not {facts["seat"], facts["device"]} & set(re.findall(r"[\w-]+", json.dumps(pack))))
    opened = [plain for plain in (unseal(part, student) for part in parts) if plain]
    check("personal assignment: the device's identity opens one part", len(opened) == 1)
    plain = opened[0]
    check("personal assignment: the class identity opens none",
          not any(unseal(part, identity) for part in parts))
    key, text = attempt("personal assignment: frame", lambda: open_frame(plain, b"SFPERS1\n", len(plain)))
    personal = read_json(text)
    attempt("personal assignment: schema", lambda: schemas["personal"].validate(personal))
    check("personal assignment: signed by the teacher", key == teacher_key)
    check("personal assignment: for this seat, device and pack",
          (personal["seat"], personal["device"], personal["pack_version"])
          == (facts["seat"], facts["device"], pack["version"]))

    carried = folder / "carried"
    check("carry file: the age program opens it with the passphrase",
          unseal_by_passphrase(folder / "mine.sfcarry", carried, facts["passphrase"]))
    _, text = attempt("carry file: frame", lambda: open_frame(carried.read_bytes(), b"SFCARR1\n", 65536))
    carry = read_json(text)
    attempt("carry file: schema", lambda: schemas["carry"].validate(carry))
    check("carry file: takes the class pack along",
          base64.b64decode(carry["class_pack"]) == (folder / "class.sfclass").read_bytes())
    secret = Ed25519PrivateKey.from_private_bytes(base64.b64decode(carry["signing_seed"]))
    public = secret.public_key().public_bytes(serialization.Encoding.Raw, serialization.PublicFormat.Raw)
    check("carry file: takes the signing key along",
          base64.b64encode(public).decode() == hand_in["device_key"])

    handed_on(folder, schemas, facts, hand_in, teacher_key)
    backed_up(program, folder, facts)
    slips(facts, pack, teacher_key, student_key)
    return hand_in


def handed_on(folder, schemas, facts, hand_in, teacher_key):
    plain = folder / "transfer.plain"
    check("transfer: the age program opens it with the passphrase",
          unseal_by_passphrase(folder / "one.sftransfer", plain, facts["passphrase"]))
    key, text = attempt("transfer: frame", lambda: open_frame(plain.read_bytes(), b"SFTRAN1\n", 16384))
    transfer = read_json(text)
    attempt("transfer: schema", lambda: schemas["transfer"].validate(transfer))
    check("transfer: signed by the key that it names",
          key == teacher_key and base64.b64encode(key).decode() == transfer["teacher_key"])
    told = [sorted(map(json.dumps, one["check_ins"])) for one in (transfer["hand_ins"][0], hand_in)]
    check("transfer: has the check-ins of the hand-in", told[0] == told[1])
    empty = transfer | {"paper": [transfer["paper"][0] | {"outcome": None}]}
    check("transfer: the schema refuses an entry that says nothing",
          not schemas["transfer"].is_valid(empty))


def backed_up(program, folder, facts):
    """Backups, both ways."""
    plain = folder / "backup-plain"
    check("backup: the age program opens it with the passphrase",
          unseal_by_passphrase(folder / "my.sfbackup", plain, facts["passphrase"]))
    text = plain.read_bytes()
    check("backup: magic, kind and id", text[:14] == b"SFBACK1\nT\x04desk", str(text[:14]))
    store = zlib.decompress(text[14:])
    check("backup: holds the store whole", store == (folder / "store.sqlite").read_bytes())
    (folder / "unpacked.sqlite").write_bytes(store)
    with sqlite3.connect(folder / "unpacked.sqlite") as found:
        check("backup: SQLite finds it whole",
              found.execute("PRAGMA integrity_check").fetchall() == [("ok",)])
        check("backup: the store is a desk",
              found.execute("SELECT count(*) FROM class").fetchone() == (0,))

    def answer(plain):
        made = folder / "made-plain"
        made.write_bytes(plain)
        (folder / "made.sfbackup").unlink(missing_ok=True)
        check("backup made here: the age program seals it",
              seal_by_passphrase(made, folder / "made.sfbackup", facts["passphrase"]))
        run = subprocess.run([program, "backup", str(folder), "made.sfbackup"],
                             capture_output=True, text=True, check=True)
        return json.loads(run.stdout)

    words = b"SFBACK1\nS\x05abc-1" + zlib.compress(b"a store of some kind" * 999)
    check("backup made here: opens here", answer(words) == {"id": "abc-1", "kind": "Student"})
    check("backup made here: its store comes out",
          (folder / "opened.sqlite").read_bytes() == b"a store of some kind" * 999)
    check("backup made here, with a name that leads out",
          answer(b"SFBACK1\nS\x04../x" + zlib.compress(b"x")).get("refused", {}).get("code") == "bad_content")


def theirs_opened(program, folder, schemas, hand_in, facts):
    """Files made here, read by our program."""
    secret = Ed25519PrivateKey.from_private_bytes(bytes(range(32)))
    public = secret.public_key().public_bytes(serialization.Encoding.Raw, serialization.PublicFormat.Raw)
    small = {**hand_in, "check_ins": hand_in["check_ins"][:2], "practice": hand_in["practice"][:2],
             "device_key": base64.b64encode(public).decode()}

    def answer(plain, recipient=facts["class_recipient"]):
        (folder / "theirs").write_bytes(seal(plain, recipient))
        run = subprocess.run([program, "read", str(folder), "theirs"], capture_output=True, text=True, check=True)
        return json.loads(run.stdout)

    def text_of(value):
        return json.dumps(value, ensure_ascii=False).encode()

    def refusal(plain, **more):
        return answer(plain, **more).get("refused", {}).get("code")

    good = text_of(small)
    attempt("made here: schema", lambda: schemas["hand-in"].validate(small))
    check("made here: taken, and says the same", answer(make_frame(good, secret)).get("taken") == small)
    check("made here: a year is taken",
          answer(make_frame(text_of({**hand_in, "device_key": small["device_key"]}), secret)).get("taken") is not None)
    stranger = subprocess.run(["age-keygen"], capture_output=True, text=True).stdout
    stranger = next(line.split(": ")[1] for line in stranger.splitlines() if "public key" in line)
    for name, found, expected in [
        ("for another class", refusal(make_frame(good, secret), recipient=stranger), "wrong_class"),
        ("of another class", refusal(make_frame(text_of({**small, "class_id": "A" * 25 + "0"}), secret)), "wrong_class"),
        ("of an unknown seat", refusal(make_frame(text_of({**small, "seat": "000000"}), secret)), "seat_unknown"),
        ("signed without prefix", refusal(make_frame(good, secret, prefix=b"")), "bad_signature"),
        ("of another kind", refusal(make_frame(good, secret, magic=b"SFCARR1\n")), "not_ours"),
        ("of a newer kind", refusal(make_frame(good, secret, magic=b"SFHAND2\n")), "newer_format"),
        ("of a newer format", refusal(make_frame(text_of({**small, "format": 2}), secret)), "newer_format"),
        ("by another key", refusal(make_frame(text_of({**small, "device_key": hand_in["device_key"]}), secret)),
         "bad_content"),
        ("with a name twice", refusal(make_frame(good[:-1] + b',"format":1}', secret)), "bad_content"),
        ("with a bomb", refusal(make_frame(b" " * (40 << 20), secret)), "unpacks_too_large"),
        ("with something behind the padding", refusal(make_frame(good, secret)[:-1] + b"x"), "damaged"),
        ("without a frame", refusal(b"hello there"), "not_ours"),
    ]:
        check(f"made here, {name}: {expected}", found == expected, str(found))
    future = copy.deepcopy(small)
    future["check_ins"][0]["date"] = "2027-12-24"
    flags = {flag["code"]: flag for flag in answer(make_frame(text_of(future), secret))["flags"]}
    check("made here, dated ahead: kept and flagged",
          flags.get("future_date", {}).get("date") == "2027-12-24" and "outside_year" in flags, str(flags))

    # The schema and our reader agree on what is a hand-in.
    for name, change in changes():
        value = copy.deepcopy(small)
        change(value)
        by_schema = schemas["hand-in"].is_valid(value)
        by_us = "taken" in answer(make_frame(text_of(value), secret))
        check(f"schema and program agree: {name}", by_schema == by_us, f"schema {by_schema}, program {by_us}")


def changes():
    """Ways to change a hand-in, some within the schema, most not."""

    def put(path, value):
        def change(document):
            for step in path[:-1]:
                document = document[step]
            document[path[-1]] = value
        return change

    def drop(path):
        def change(document):
            for step in path[:-1]:
                document = document[step]
            del document[path[-1]]
        return change

    first, practice = ["check_ins", 0], ["practice", 0]
    count = practice + ["answers", 0]
    for path, values in [
        (["nickname"], ["Zaza"]),
        (["time_zone"], ["UTC"]),
        (["revision"], [0, 1, 4294967295, 4294967296, -1, "1", 1.5, None, True]),
        (["pack_version"], [0, 4294967296]),
        (["made_on"], ["2027-05-28", "2027-02-29", "2027-5-28", "2027-05-28T08:00", " 2027-05-28", "+2027-05-2", 20270528]),
        (["device"], ["A" * 22, "A" * 21 + "B", "A" * 21, "A" * 23, "A" * 21 + "="]),
        (["device_recipient"], ["age1", "AGE1" + "Q" * 58]),
        (["check_ins"], [[], None, {}]),
        (first + ["confidence"], [None, 2, {}, {"at": 1}, {"value": 1}, {"at": 1, "value": 1, "more": 0}]),
        (first + ["confidence", "value"], [0, 3, None, 4, -1, "2", 2.5, True]),
        (first + ["confidence", "at"], [1, 0, 4294967295, 4294967296, None]),
        (first + ["outcome"], [None, "right", {"at": 1, "value": "right"}, {"at": 0, "value": "right"}]),
        (first + ["outcome"], [{"at": 1, "value": value} for value in ["wrong", "not_done", None, "Right", "perhaps"]]),
        (first + ["concept"], ["a", "a-b-9", "A", "a--b", "-a", "", "a" * 64, "a" * 65, "<b>"]),
        (first + ["seconds"], [3]),
        (first + ["note"], ["hello"]),
        (count + ["confidence"], [None, 0, 4, "confidence"]),
        (count + ["alone"], [0, 500, 501, -1]),
        (practice + ["answers"], [[], None]),
        (practice + ["misconceptions"], [{}, {"a": 1}, {"a": 0}, {"a": 500}, {"a": 501}, {"A b": 1}, {"=1+1": 1}, []]),
    ]:
        for value in values:
            yield f"{'/'.join(map(str, path))} = {value!r}"[:90], put(path, value)
    for path in [["revision"], ["device_key"], ["practice"], first + ["confidence"], first + ["outcome"],
                 count + ["confidence"], count + ["wrong"], practice + ["misconceptions"]]:
        yield f"without {'/'.join(map(str, path))}", drop(path)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--fixture")
    program = fixture_program(parser.parse_args().fixture)
    schemas = {name: schema(name) for name in ["hand-in", "class-pack", "personal", "carry", "transfer"]}
    check("hand-in schema: no free text", free_text(schemas["hand-in"].schema, "", []) == [])
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        subprocess.run([program, "write", str(folder)], check=True)
        facts = json.loads((folder / "facts.json").read_text())
        hand_in = ours_opened(program, folder, schemas, facts)
        theirs_opened(program, folder, schemas, hand_in, facts)
    return ended()


if __name__ == "__main__":
    sys.exit(main())
