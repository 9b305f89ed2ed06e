//! The signed frame: the signer's key, the signature and the signed bytes.
//!
//! `docs/exchange.md` gives the layout byte by byte.

use super::Refusal;
use super::keys::{PublicKey, SigningKey};
use super::strict_json::bad;
use flate2::Compression;
use flate2::read::ZlibDecoder;
use flate2::write::ZlibEncoder;
use std::io::{Read as _, Write as _};

/// What a frame holds. The signature covers the magic bytes of the kind, so that a frame of
/// one kind never passes for another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    ClassPack,
    HandIn,
    Personal,
    Carry,
    ClassKey,
    Transfer,
}

impl Kind {
    pub(super) fn magic(self) -> &'static [u8; MAGIC_BYTES] {
        match self {
            Self::ClassPack => b"SFPACK1\n",
            Self::HandIn => b"SFHAND1\n",
            Self::Personal => b"SFPERS1\n",
            Self::Carry => b"SFCARR1\n",
            Self::ClassKey => b"SFCKEY1\n",
            Self::Transfer => b"SFTRAN1\n",
        }
    }
}

const MAGIC_BYTES: usize = 8;
const KEY_BYTES: usize = 32;
const SIGNATURE_BYTES: usize = 64;
const LENGTH_BYTES: usize = 4;
const HEAD_BYTES: usize = MAGIC_BYTES + KEY_BYTES + SIGNATURE_BYTES;

/// The beginning of every signed message, so that a signature has no meaning elsewhere.
const SIGNED_PREFIX: &[u8] = b"surefoot exchange signature v1\n";

pub(super) fn signed_message(kind: Kind, packed: &[u8]) -> Vec<u8> {
    [SIGNED_PREFIX, kind.magic(), packed].concat()
}

/// Returns the size to which a frame of `bytes` is padded: the smallest `least * 2^n` that
/// holds it. Thus all hand-ins of a year have two or three sizes.
#[must_use]
pub(super) fn padded_bytes(bytes: usize, least: usize) -> usize {
    let mut size = least;
    while size < bytes {
        size = size.saturating_mul(2);
    }
    size
}

/// Packs and signs `json`. If there is a `step`, writes the length and pads the frame with
/// zeros.
pub(super) fn write(
    kind: Kind,
    json: &[u8],
    key: &SigningKey,
    step: Option<usize>,
) -> Result<Vec<u8>, Refusal> {
    let mut encoder = ZlibEncoder::new(Vec::new(), Compression::best());
    let packed = encoder
        .write_all(json)
        .and_then(|()| encoder.finish())
        .map_err(|_| bad("packing"))?;
    let signature = key.sign(&signed_message(kind, &packed));
    let mut frame = Vec::with_capacity(HEAD_BYTES + LENGTH_BYTES + packed.len());
    frame.extend_from_slice(kind.magic());
    frame.extend_from_slice(&key.public().to_bytes());
    frame.extend_from_slice(&signature);
    if step.is_some() {
        let length = u32::try_from(packed.len()).map_err(|_| bad("packing"))?;
        frame.extend_from_slice(&length.to_be_bytes());
    }
    frame.extend_from_slice(&packed);
    if let Some(least) = step {
        frame.resize(padded_bytes(frame.len(), least), 0);
    }
    Ok(frame)
}

/// A frame whose signature is valid.
pub(super) struct Opened {
    pub key: PublicKey,
    pub json: Vec<u8>,
    /// The JSON packed by zlib, as the frame has it.
    pub packed: Vec<u8>,
}

/// Reads a frame. Checks magic and signature before it unpacks, and stops unpacking at the
/// cap.
pub(super) fn read(
    kind: Kind,
    frame: &[u8],
    padded: bool,
    most_unpacked_bytes: u64,
) -> Result<Opened, Refusal> {
    check_magic(kind, frame)?;
    let rest = frame.get(MAGIC_BYTES..).unwrap_or_default();
    let (key, rest) = rest
        .split_first_chunk::<KEY_BYTES>()
        .ok_or(Refusal::Damaged)?;
    let (signature, rest) = rest
        .split_first_chunk::<SIGNATURE_BYTES>()
        .ok_or(Refusal::Damaged)?;
    let packed = if padded {
        let (length, rest) = rest
            .split_first_chunk::<LENGTH_BYTES>()
            .ok_or(Refusal::Damaged)?;
        let length = usize::try_from(u32::from_be_bytes(*length)).map_err(|_| Refusal::Damaged)?;
        let (packed, padding) = rest.split_at_checked(length).ok_or(Refusal::Damaged)?;
        if padding.iter().any(|&byte| byte != 0) {
            return Err(Refusal::Damaged);
        }
        packed
    } else {
        rest
    };
    let key = PublicKey::from_bytes(key).map_err(|_| Refusal::BadSignature)?;
    key.verify(&signed_message(kind, packed), signature)?;
    let json = unpack(packed, most_unpacked_bytes)?;
    let packed = packed.to_vec();
    Ok(Opened { key, json, packed })
}

fn check_magic(kind: Kind, frame: &[u8]) -> Result<(), Refusal> {
    let magic = kind.magic();
    if frame.starts_with(magic) {
        return Ok(());
    }
    if frame.len() < MAGIC_BYTES {
        return Err(if !frame.is_empty() && magic.starts_with(frame) {
            Refusal::Damaged
        } else {
            Refusal::NotOurs
        });
    }
    // A newer program writes the same six letters with another digit.
    match (frame.get(..6) == magic.get(..6), frame.get(6), frame.get(7)) {
        (true, Some(digit @ b'2'..=b'9'), Some(b'\n')) => Err(Refusal::NewerFormat {
            found: u32::from(digit - b'0'),
            known: 1,
        }),
        _ => Err(Refusal::NotOurs),
    }
}

fn unpack(packed: &[u8], most_bytes: u64) -> Result<Vec<u8>, Refusal> {
    let mut decoder = ZlibDecoder::new(packed);
    let mut json = Vec::new();
    (&mut decoder)
        .take(most_bytes.saturating_add(1))
        .read_to_end(&mut json)
        .map_err(|_| Refusal::Damaged)?;
    if json.len() as u64 > most_bytes {
        return Err(Refusal::UnpacksTooLarge { most_bytes });
    }
    if decoder.total_in() != packed.len() as u64 {
        return Err(Refusal::Damaged);
    }
    Ok(json)
}
