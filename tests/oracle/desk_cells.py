"""Opens the sealed cells of a desk that has no lock, or of one whose passphrase is known.

XChaCha20-Poly1305 as in draft-irtf-cfrg-xchacha-03: HChaCha20 written here by its section 2.2,
ChaCha20-Poly1305 (RFC 8439) and argon2id (RFC 9106) by `cryptography`.
"""

import struct

from cryptography.exceptions import InvalidTag
from cryptography.hazmat.primitives.ciphers.aead import ChaCha20Poly1305
from cryptography.hazmat.primitives.kdf.argon2 import Argon2id

WORDS = 0xFFFFFFFF
CONSTANTS = b"expand 32-byte k"
COLUMNS_THEN_DIAGONALS = (
    ((0, 4, 8, 12), (1, 5, 9, 13), (2, 6, 10, 14), (3, 7, 11, 15)),
    ((0, 5, 10, 15), (1, 6, 11, 12), (2, 7, 8, 13), (3, 4, 9, 14)),
)


def _quarter(state, a, b, c, d):
    for one, other, turned, bits in ((a, b, d, 16), (c, d, b, 12), (a, b, d, 8), (c, d, b, 7)):
        state[one] = (state[one] + state[other]) & WORDS
        mixed = state[turned] ^ state[one]
        state[turned] = (mixed << bits | mixed >> (32 - bits)) & WORDS


def hchacha20(key, nonce):
    state = list(struct.unpack("<16I", CONSTANTS + key + nonce))
    for _ in range(10):
        for quarters in COLUMNS_THEN_DIAGONALS:
            for quarter in quarters:
                _quarter(state, *quarter)
    return struct.pack("<8I", *state[:4], *state[12:])


# Section 2.2.1 of the draft (from memory).
assert hchacha20(bytes(range(32)), bytes.fromhex("000000090000004a0000000031415927")).hex() == (
    "82413b4227b27bfed30e42508a877d73a0f9e4d58a74a853c12ec41326d3ecdc"
)


def open_sealed(key, sealed, place):
    """The content, or None if key or place do not fit."""
    nonce, sealed = sealed[:24], sealed[24:]
    cipher = ChaCha20Poly1305(hchacha20(key, nonce[:16]))
    try:
        return cipher.decrypt(bytes(4) + nonce[16:], sealed, "\0".join(place).encode())
    except InvalidTag:
        return None


def open_cell(key, cell, table, column, *row):
    place = ("surefoot desk cell v1", table, column, *map(str, row))
    padded = open_sealed(key, cell, place)
    return None if padded is None else padded[: padded.rindex(b"\x80")]


def data_key(store, passphrase=None):
    """The data key of an opened desk, or None if the passphrase is wrong."""
    number, secret, salt, memory_kib, passes = store.execute(
        "SELECT number, secret, salt, memory_kib, passes FROM data_key"
    ).fetchone()
    if salt is None:
        return secret
    slow = Argon2id(salt=salt, length=32, iterations=passes, lanes=1, memory_cost=memory_kib)
    place = ("surefoot desk key v1", number.hex(), str(memory_kib), str(passes))
    return open_sealed(slow.derive(passphrase.encode()), secret, place)


def names(store):
    """The names of a desk with one class, by seat; None for a seat without one."""
    key = data_key(store)
    return {
        number: cell and open_cell(key, cell, "seat", "name", of, number).decode()
        for of, number, cell in store.execute("SELECT class, number, name FROM seat")
    }
