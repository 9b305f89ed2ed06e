"""The files that travel and the codes on slips, written from docs/exchange.md.

The only place that knows a format: an attack names what it wants to say, not its bytes.
"""

import base64
import dataclasses
import functools
import hashlib
import json
import os
import re
import zlib

from cryptography.hazmat.primitives import serialization
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey, Ed25519PublicKey
from cryptography.hazmat.primitives.kdf.argon2 import Argon2id

import age

SIGNED_PREFIX = b"surefoot exchange signature v1\n"
CLASS_ID_PREFIX = b"surefoot class id v1\n"
CLASS_SIGNS_SALT = b"surefoot class signs v1"
FINGERPRINT_PREFIX = b"surefoot device fingerprint v1\n"
SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
CLASS_SIGNS = 8
TOKEN_SIGNS = 6
PIN_SIGNS = 6
FINGERPRINT_BITS = 60

# The most that the format takes.
MOST_COUNT = 500
MOST_ENTRIES = 20_000
MOST_SEQUENCE = 2**32 - 1


@dataclasses.dataclass(frozen=True)
class Kind:
    """A kind of frame: its magic, and the step its size is filled up to, if it is."""

    magic: bytes
    step_bytes: int | None


PACK = Kind(b"SFPACK1\n", None)
HAND_IN = Kind(b"SFHAND1\n", 16 * 1024)
PERSONAL = Kind(b"SFPERS1\n", 1024)
CARRY = Kind(b"SFCARR1\n", 64 * 1024)
TRANSFER = Kind(b"SFTRAN1\n", 16 * 1024)
BACKUP_MAGIC = b"SFBACK1\n"


class Signer:
    """An Ed25519 key; `public` is its text in files."""

    def __init__(self, seed=None):
        self.seed = seed or os.urandom(32)
        self._key = Ed25519PrivateKey.from_private_bytes(self.seed)
        raw = self._key.public_key().public_bytes(
            serialization.Encoding.Raw, serialization.PublicFormat.Raw
        )
        self.raw, self.public = raw, base64.b64encode(raw).decode()

    def sign(self, message):
        return self._key.sign(message)


def new_id():
    """A device id: 16 random bytes."""
    return base64.urlsafe_b64encode(os.urandom(16)).rstrip(b"=").decode()


# --- frames -------------------------------------------------------------------


def write_frame(kind, content, signer):
    packed = zlib.compress(json.dumps(content, separators=(",", ":")).encode(), 9)
    frame = kind.magic + signer.raw + signer.sign(SIGNED_PREFIX + kind.magic + packed)
    if kind.step_bytes is None:
        return frame + packed
    frame += len(packed).to_bytes(4, "big") + packed
    size = kind.step_bytes
    while size < len(frame):
        size *= 2
    return frame.ljust(size, b"\0")


def read_frame(kind, frame):
    """The content of a frame whose signature fits."""
    assert frame[:8] == kind.magic, frame[:8]
    packed = frame[104:]
    if kind.step_bytes is not None:
        packed = frame[108 : 108 + int.from_bytes(frame[104:108], "big")]
    Ed25519PublicKey.from_public_bytes(frame[8:40]).verify(
        frame[40:104], SIGNED_PREFIX + kind.magic + packed
    )
    return json.loads(zlib.decompress(packed))


def read_pack(file):
    return read_frame(PACK, file)


def write_pack(content, signer):
    return write_frame(PACK, content, signer)


def rekeyed_packs(pack, signer, identity):
    """The same pack with the keys of another: with its class id, and with the one that fits."""
    other = pack | {"teacher_key": signer.public, "class_recipient": identity.recipient}
    return [other, other | {"class_id": class_id(signer.raw, identity.recipient)}]


def sealed_parts(pack):
    """The sealed personal assignments of a pack, as bytes."""
    return [base64.b64decode(one) for one in pack["sealed"]]


def read_personal(part, identity):
    """The personal assignments of a sealed part; nothing if it is for somebody else."""
    plain = age.unseal(part, identity)
    return plain and read_frame(PERSONAL, plain)["assignments"]


# --- hand-ins -----------------------------------------------------------------


def check_in(device, date, concept, confidence=None, outcome=None, at=1):
    def said(value):
        return None if value is None else {"at": at, "value": value}

    return {
        "device": device,
        "date": date,
        "concept": concept,
        "confidence": said(confidence),
        "outcome": said(outcome),
    }


def practice(device, date, concept, answers, misconceptions=None, at=1):
    """`answers` are (confidence, alone, with help, wrong)."""
    names = ("confidence", "alone", "with_help", "wrong")
    return {
        "device": device,
        "date": date,
        "concept": concept,
        "sequence": at,
        "answers": [dict(zip(names, counts, strict=True)) for counts in answers],
        "misconceptions": misconceptions or {},
    }


def hand_in_content(pack, seat, signer, recipient, device, date, check_ins, practised, revision):
    return {
        "format": 1,
        "class_id": pack["class_id"],
        "seat": seat,
        "device": device,
        "revision": revision,
        "made_on": date,
        "pack_version": pack["version"],
        "check_ins": list(check_ins),
        "practice": list(practised),
        "device_key": signer.public,
        "device_recipient": recipient,
    }


def hand_in(pack, seat, signer, recipient, device, date, check_ins, practised, revision, extra):
    """A sealed hand-in; `extra` are fields that no format has."""
    content = hand_in_content(
        pack, seat, signer, recipient, device, date, check_ins, practised, revision
    )
    content |= extra
    return age.seal(write_frame(HAND_IN, content, signer), pack["class_recipient"])


def read_hand_in(file, identity):
    """The content; nothing if it is sealed for somebody else."""
    plain = age.unseal(file, identity)
    return plain and read_frame(HAND_IN, plain)


def on_paper(date, concept, confidence=None, outcome=None):
    """A paper entry, as transfers have it."""
    return {"date": date, "concept": concept, "confidence": confidence, "outcome": outcome}


def transfer(signer, date, hand_ins, paper, name=None):
    return {
        "format": 1,
        "teacher_key": signer.public,
        "made_on": date,
        "name": name,
        "hand_ins": hand_ins,
        "paper": paper,
    }


def write_transfer(content, signer, words):
    return age.seal_by_passphrase(write_frame(TRANSFER, content, signer), words)


def read_transfer(file, words):
    return read_frame(TRANSFER, age.unseal(file, age.Passphrase(words)))


def read_backup(plain):
    """The student's id and the store."""
    assert plain[:9] == BACKUP_MAGIC + b"S", plain[:9]
    end = 10 + plain[9]
    return plain[10:end].decode(), zlib.decompress(plain[end:])


def backup(student, store, words):
    """A backup of a student's store."""
    head = BACKUP_MAGIC + b"S" + bytes([len(student)]) + student.encode()
    return age.seal_by_passphrase(head + zlib.compress(store), words)


def read_carry(file, words):
    return read_frame(CARRY, age.unseal(file, age.Passphrase(words)))


def forged_carry(genuine, seat, signer, identity, device, check_ins, answers=()):
    """The content of a carry file for another seat, with keys of our own.

    `genuine` is one of our own seat: it has the class pack and what our program would add.
    """
    body = genuine["store"]["body"] | {"answers": list(answers)}
    return genuine | {
        "store": genuine["store"] | {"body": body},
        "seat": seat,
        "from_device": device,
        "signing_seed": base64.b64encode(signer.seed).decode(),
        "sealing_identity": identity.text,
        "check_ins": check_ins,
        "practice": [],
    }


def answer(device, date, concept, at, misconception=None, response="null"):
    """A finished exercise, as carry files have it."""
    return {
        "device": device,
        "sequence": at,
        "date": date,
        "concept": concept,
        "level": 1,
        "generator_version": 1,
        "seed": 1,
        "confidence": None,
        "result": "wrong",
        "misconception": misconception,
        "seconds": 1,
        "response": response,
    }


def write_carry(content, signer, words):
    return age.seal_by_passphrase(write_frame(CARRY, content, signer), words)


# --- slips --------------------------------------------------------------------


def check_character(signs):
    """ISO/IEC 7064 MOD 37,36."""
    letters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"
    product = 36
    for sign in signs:
        product = ((product + letters.index(sign)) % 36 or 36) * 2 % 37
    return letters[(37 - product) % 36]


def signs_of(content):
    """Bytes as signs of five bits each."""
    return "".join(SIGNS[value] for value in age.regroup(content, 8, 5, True))


def class_id(teacher_key, recipient):
    """The id of the class whose packs this key signs and whose hand-ins this recipient opens."""
    digest = hashlib.sha256(CLASS_ID_PREFIX + teacher_key + recipient.encode()).digest()
    return signs_of(digest[:16])


@functools.cache
def class_signs(class_id):
    """What a slip says of the class; each trial costs 64 MiB and three passes."""
    slow = Argon2id(salt=CLASS_SIGNS_SALT, length=32, iterations=3, lanes=1, memory_cost=64 * 1024)
    return signs_of(slow.derive(class_id.encode()))[:CLASS_SIGNS]


def fingerprint(signer, device):
    """What the tablet and the desk show of a device and its key."""
    digest = hashlib.sha256(FINGERPRINT_PREFIX + signer.raw + device.encode()).digest()
    return "-".join(re.findall("...", signs_of(digest)[: FINGERPRINT_BITS // 5]))


def seat_code(class_id, token):
    """The seat code of a token."""
    signs = class_signs(class_id) + token
    return "-".join(re.findall("...", signs + check_character(signs)))


def token_of(code):
    return code.replace("-", "")[CLASS_SIGNS : CLASS_SIGNS + TOKEN_SIGNS]


def tokens_in(text):
    """What could be a token in a text, such as the name of a file."""
    runs = re.findall(f"[{SIGNS}]+", text.upper())
    return {run[at : at + TOKEN_SIGNS] for run in runs for at in range(len(run) - TOKEN_SIGNS + 1)}
