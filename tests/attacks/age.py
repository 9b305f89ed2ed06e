"""Sealing as in age-encryption.org/v1: for an X25519 recipient, or by a passphrase."""

import base64
import hashlib
import hmac
import os

from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric.x25519 import X25519PrivateKey, X25519PublicKey
from cryptography.hazmat.primitives.ciphers.aead import ChaCha20Poly1305
from cryptography.hazmat.primitives.kdf.hkdf import HKDF

VERSION = b"age-encryption.org/v1"
CHUNK_BYTES = 64 * 1024
TAG_BYTES = 16
ZERO_NONCE = bytes(12)
BECH32 = "qpzry9x8gf2tvdw0s3jn54khce6mua7l"


def _polymod(values):
    checksum = 1
    for value in values:
        top = checksum >> 25
        checksum = (checksum & 0x1FFFFFF) << 5 ^ value
        for bit, part in enumerate((0x3B6A57B2, 0x26508E6D, 0x1EA119FA, 0x3D4233DD, 0x2A1462B3)):
            checksum ^= part if top >> bit & 1 else 0
    return checksum


def regroup(values, from_bits, to_bits, pad):
    """Numbers of so many bits as numbers of so many others; `pad` fills the last with zeros."""
    number = bits = 0
    for value in values:
        number, bits = number << from_bits | value, bits + from_bits
        while bits >= to_bits:
            bits -= to_bits
            yield number >> bits & (1 << to_bits) - 1
    if pad and bits:
        yield number << to_bits - bits & (1 << to_bits) - 1


def _expanded(prefix):
    return [ord(c) >> 5 for c in prefix] + [0] + [ord(c) & 31 for c in prefix]


def bech32(prefix, content):
    values = list(regroup(content, 8, 5, True))
    checksum = _polymod(_expanded(prefix) + values + [0] * 6) ^ 1
    values += [checksum >> 5 * (5 - place) & 31 for place in range(6)]
    return prefix + "1" + "".join(BECH32[value] for value in values)


def unbech32(prefix, text):
    text = text.lower()
    assert text.startswith(prefix + "1"), text
    values = [BECH32.index(sign) for sign in text[len(prefix) + 1 :]]
    assert _polymod(_expanded(prefix) + values) == 1, "checksum"
    return bytes(regroup(values[:-6], 5, 8, False))


def _hkdf(key, salt, info):
    return HKDF(hashes.SHA256(), 32, salt, info).derive(key)


def _text(content):
    return base64.b64encode(content).rstrip(b"=")


def _bytes(text):
    return base64.b64decode(text + b"=" * (-len(text) % 4))


def _raw(key):
    return key.public_bytes(serialization.Encoding.Raw, serialization.PublicFormat.Raw)


class Identity:
    """An X25519 key; `recipient` is what others seal for."""

    def __init__(self, secret=None):
        self.secret = secret or os.urandom(32)
        self._key = X25519PrivateKey.from_private_bytes(self.secret)
        self._public = _raw(self._key.public_key())
        self.recipient = bech32("age", self._public)
        self.text = bech32("age-secret-key-", self.secret).upper()

    @classmethod
    def from_text(cls, text):
        return cls(unbech32("age-secret-key-", text))

    def file_key(self, arguments, body):
        """The file key of a stanza; nothing if it is for somebody else."""
        if arguments[0] != b"X25519":
            return None
        share = _bytes(arguments[1])
        shared = self._key.exchange(X25519PublicKey.from_public_bytes(share))
        return _unwrapped(_hkdf(shared, share + self._public, VERSION + b"/X25519"), body)


class Passphrase:
    """What opens a file that is sealed by a passphrase."""

    def __init__(self, words):
        self.words = words.encode()

    def key(self, salt, factor):
        return hashlib.scrypt(
            self.words,
            salt=VERSION + b"/scrypt" + salt,
            n=1 << factor,
            r=8,
            p=1,
            maxmem=1 << 30,
            dklen=32,
        )

    def file_key(self, arguments, body):
        if arguments[0] != b"scrypt":
            return None
        return _unwrapped(self.key(_bytes(arguments[1]), int(arguments[2])), body)


def _unwrapped(key, body):
    try:
        return ChaCha20Poly1305(key).decrypt(ZERO_NONCE, body, None)
    except Exception:  # the library's own type says no more than "not this key"
        return None


def _stanza(words, body):
    text = _text(body)
    lines = [text[at : at + 64] for at in range(0, len(text) + 1, 64)]
    return b"-> " + b" ".join(words) + b"\n" + b"\n".join(lines) + b"\n"


def _nonce(place, last):
    return place.to_bytes(11, "big") + (b"\1" if last else b"\0")


def _sealed(plain, file_key, stanza):
    header = VERSION + b"\n" + stanza + b"---"
    mac = hmac.digest(_hkdf(file_key, None, b"header"), header, "sha256")
    salt = os.urandom(16)
    stream = ChaCha20Poly1305(_hkdf(file_key, salt, b"payload"))
    parts = [header + b" " + _text(mac) + b"\n", salt]
    chunks = [plain[at : at + CHUNK_BYTES] for at in range(0, len(plain), CHUNK_BYTES)] or [b""]
    for place, chunk in enumerate(chunks):
        parts.append(stream.encrypt(_nonce(place, place == len(chunks) - 1), chunk, None))
    return b"".join(parts)


def seal(plain, recipient):
    """Seals for a recipient, `age1...`."""
    public = unbech32("age", recipient)
    file_key, ephemeral = os.urandom(16), X25519PrivateKey.generate()
    share = _raw(ephemeral.public_key())
    shared = ephemeral.exchange(X25519PublicKey.from_public_bytes(public))
    body = ChaCha20Poly1305(_hkdf(shared, share + public, VERSION + b"/X25519")).encrypt(
        ZERO_NONCE, file_key, None
    )
    return _sealed(plain, file_key, _stanza([b"X25519", _text(share)], body))


def seal_by_passphrase(plain, words, factor=17):
    """Seals by a passphrase; `factor` is the log2 of scrypt's N."""
    file_key, salt = os.urandom(16), os.urandom(16)
    body = ChaCha20Poly1305(Passphrase(words).key(salt, factor)).encrypt(ZERO_NONCE, file_key, None)
    return _sealed(plain, file_key, _stanza([b"scrypt", _text(salt), str(factor).encode()], body))


def unseal(sealed, opener):
    """The plain text; nothing if `opener` (an identity or a passphrase) does not open it."""
    header, _, rest = sealed.partition(b"\n--- ")
    _, *stanzas = header.split(b"\n-> ")
    mac, _, content = rest.partition(b"\n")
    file_key = None
    for stanza in stanzas:
        words, *body = stanza.split(b"\n")
        file_key = file_key or opener.file_key(words.split(b" "), _bytes(b"".join(body)))
    if file_key is None:
        return None
    found = hmac.digest(_hkdf(file_key, None, b"header"), header + b"\n---", "sha256")
    assert hmac.compare_digest(found, _bytes(mac)), "the header was changed"
    stream = ChaCha20Poly1305(_hkdf(file_key, content[:16], b"payload"))
    content, step = content[16:], CHUNK_BYTES + TAG_BYTES
    places = range(0, len(content), step)
    return b"".join(
        stream.decrypt(_nonce(place, at + step >= len(content)), content[at : at + step], None)
        for place, at in enumerate(places)
    )
