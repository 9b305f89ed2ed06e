//! The carry file: a student's own copy for a second device, sealed by a passphrase.

use super::Refusal;
use super::frame::{self, Kind};
use super::hand_in::check_entries;
use super::keys::{SealingIdentity, SigningKey};
use super::limits::{CARRY_CAPS, CARRY_WORK_FACTOR, Caps};
use super::sealing::{read_capped, seal_with_passphrase, unseal_with_passphrase};
use super::strict_json::{self, bad};
use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::fmt;
use std::io::Read;
use surefoot_record::wire::school_date;
use surefoot_record::{CheckIn, Practice};
use surefoot_record::{ClassId, DeviceId, SeatToken};

/// The newest carry file format known.
pub const CARRY_FORMAT: u32 = 1;
/// The least size of a carry file's frame; larger ones double.
pub const CARRY_STEP_BYTES: usize = 64 * 1024;
/// The shortest passphrase taken, in characters.
pub const LEAST_PASSPHRASE_CHARS: usize = 8;

/// A carry file as it stands inside the seal. `shared/schema/carry.schema.json`.
#[derive(Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CarryFile {
    /// [`CARRY_FORMAT`].
    pub format: u32,
    /// The class.
    pub class_id: ClassId,
    /// The seat.
    pub seat: SeatToken,
    /// The device that made it. The device that takes it keeps an id of its own.
    pub from_device: DeviceId,
    /// School date.
    #[serde(with = "school_date")]
    pub made_on: NaiveDate,
    /// Seed of the signing key, 32 bytes in base64: with it the second device
    /// hands in for the same seat. Secret.
    pub signing_seed: String,
    /// The age identity that opens personal assignments. Secret.
    pub sealing_identity: String,
    /// The class pack file, in base64.
    pub class_pack: String,
    /// Check-ins of every device so far.
    pub check_ins: Vec<CheckIn>,
    /// Practice counts of every device so far.
    pub practice: Vec<Practice>,
    /// What the student's store adds.
    pub store: CarriedStore,
}

/// The student's store in its own words: versioned by the store, opaque here.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CarriedStore {
    /// The store's version of `body`.
    pub version: u32,
    /// Whatever that version says.
    pub body: serde_json::Value,
}

impl fmt::Debug for CarryFile {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("CarryFile")
            .field("class_id", &self.class_id)
            .field("seat", &self.seat)
            .field("from_device", &self.from_device)
            .finish_non_exhaustive()
    }
}

impl CarryFile {
    /// Writes a signing key as the field wants it.
    #[must_use]
    pub fn seed_text(key: &SigningKey) -> String {
        BASE64_STANDARD.encode(key.seed())
    }

    /// Writes a class pack file as the field wants it.
    #[must_use]
    pub fn class_pack_text(file: &[u8]) -> String {
        BASE64_STANDARD.encode(file)
    }

    /// The signing key.
    ///
    /// # Errors
    /// [`Refusal::BadContent`].
    pub fn signing_key(&self) -> Result<SigningKey, Refusal> {
        BASE64_STANDARD
            .decode(&self.signing_seed)
            .ok()
            .and_then(|bytes| <[u8; 32]>::try_from(bytes).ok())
            .map(|seed| SigningKey::from_seed(&seed))
            .ok_or_else(|| bad("signing_seed"))
    }

    /// The identity that opens personal assignments.
    ///
    /// # Errors
    /// [`Refusal::BadContent`].
    pub fn identity(&self) -> Result<SealingIdentity, Refusal> {
        self.sealing_identity
            .parse()
            .map_err(|_| bad("sealing_identity"))
    }

    /// The class pack file.
    ///
    /// # Errors
    /// [`Refusal::BadContent`].
    pub fn class_pack_file(&self) -> Result<Vec<u8>, Refusal> {
        BASE64_STANDARD
            .decode(&self.class_pack)
            .map_err(|_| bad("class_pack"))
    }

    fn check_content(&self) -> Result<(), Refusal> {
        if self.format != CARRY_FORMAT {
            return Err(bad("format"));
        }
        self.signing_key()?;
        self.identity()?;
        self.class_pack_file()?;
        check_entries(&self.check_ins, &self.practice)
    }
}

/// Seals a carry file. Takes about half a second and 128 MiB.
///
/// # Errors
/// [`Refusal::BadContent`] at `passphrase` when it is shorter than
/// [`LEAST_PASSPHRASE_CHARS`], or where the content breaks a rule.
pub fn seal_carry(carry: &CarryFile, passphrase: &str) -> Result<Vec<u8>, Refusal> {
    seal_carry_at(carry, passphrase, CARRY_WORK_FACTOR)
}

pub(super) fn seal_carry_at(
    carry: &CarryFile,
    passphrase: &str,
    work_factor: u8,
) -> Result<Vec<u8>, Refusal> {
    if passphrase.chars().count() < LEAST_PASSPHRASE_CHARS {
        return Err(bad("passphrase"));
    }
    carry.check_content()?;
    let json = serde_json::to_vec(carry).map_err(|_| bad("content"))?;
    let caps = &CARRY_CAPS;
    if json.len() as u64 > caps.unpacked_bytes {
        return Err(Refusal::UnpacksTooLarge {
            most_bytes: caps.unpacked_bytes,
        });
    }
    strict_json::read::<CarryFile>(&json, caps, CARRY_FORMAT)?;
    let frame = frame::write(
        Kind::Carry,
        &json,
        &carry.signing_key()?,
        Some(CARRY_STEP_BYTES),
    )?;
    let sealed = seal_with_passphrase(passphrase, work_factor, &frame)?;
    if sealed.len() as u64 > caps.sealed_bytes {
        return Err(Refusal::TooLarge {
            found_bytes: sealed.len() as u64,
            most_bytes: caps.sealed_bytes,
        });
    }
    Ok(sealed)
}

/// Opens a carry file with its passphrase.
///
/// # Errors
/// [`Refusal::WrongPassphrase`], [`Refusal::TooMuchWork`]; else by name.
pub fn open_carry(bytes: impl Read, passphrase: &str, caps: &Caps) -> Result<CarryFile, Refusal> {
    let sealed = read_capped(bytes, caps.sealed_bytes)?;
    let plain = unseal_with_passphrase(&sealed, passphrase)?;
    let opened = frame::read(Kind::Carry, &plain, true, caps.unpacked_bytes)?;
    let carry: CarryFile = strict_json::read(&opened.json, caps, CARRY_FORMAT)?;
    carry.check_content()?;
    if carry.signing_key()?.public() != opened.key {
        return Err(bad("signing_seed"));
    }
    Ok(carry)
}
