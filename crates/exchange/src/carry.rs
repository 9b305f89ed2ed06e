//! The carry file: a student's copy for a second device, sealed by a passphrase.

use super::Refusal;
use super::content::{self, Content, within};
use super::frame::Kind;
use super::hand_in::check_entries;
use super::keys::{SealingIdentity, SigningKey};
use super::limits::{CARRY_CAPS, Caps, WORK_FACTOR};
use super::sealing::{read_capped, seal_with_passphrase, unseal_with_passphrase};
use super::strict_json::bad;
use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::fmt;
use std::io::Read;
use surefoot_record::wire::school_date;
use surefoot_record::{CheckIn, ClassId, DeviceId, Practice, SeatToken};

/// The format of carry files.
pub const CARRY_FORMAT: u32 = 1;

/// The content of a carry file; see `shared/schema/carry.schema.json`.
#[derive(Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CarryFile {
    /// [`CARRY_FORMAT`].
    pub format: u32,
    /// The class.
    pub class_id: ClassId,
    /// The seat.
    pub seat: SeatToken,
    /// The device that made it. The device that reads it keeps its own id.
    pub from_device: DeviceId,
    /// The school date on the device's clock.
    #[serde(with = "school_date")]
    pub made_on: NaiveDate,
    /// The seed of the signing key: 32 bytes in base64. With it the second device hands in
    /// for the same seat. Secret.
    pub signing_seed: String,
    /// The age identity that opens personal assignments. Secret.
    pub sealing_identity: String,
    /// The class pack file, in base64.
    pub class_pack: String,
    /// The check-ins of all devices so far.
    pub check_ins: Vec<CheckIn>,
    /// The practice counts of all devices so far.
    pub practice: Vec<Practice>,
    /// What else the student's store has.
    pub store: CarriedStore,
}

/// A part of a carry file that the student's store alone reads.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CarriedStore {
    /// The version of `body`.
    pub version: u32,
    /// What the store wrote.
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
    /// Writes a class pack as `class_pack` has it.
    #[must_use]
    pub fn class_pack_text(file: &[u8]) -> String {
        BASE64_STANDARD.encode(file)
    }

    /// Reads `signing_seed`.
    pub fn signing_key(&self) -> Result<SigningKey, Refusal> {
        self.signing_seed.parse().map_err(|_| bad("signing_seed"))
    }

    /// Reads `sealing_identity`.
    pub fn identity(&self) -> Result<SealingIdentity, Refusal> {
        self.sealing_identity
            .parse()
            .map_err(|_| bad("sealing_identity"))
    }

    /// Reads `class_pack`.
    pub fn class_pack_file(&self) -> Result<Vec<u8>, Refusal> {
        BASE64_STANDARD
            .decode(&self.class_pack)
            .map_err(|_| bad("class_pack"))
    }
}

impl Content for CarryFile {
    const KIND: Kind = Kind::Carry;
    const FORMAT: u32 = CARRY_FORMAT;
    const CAPS: Caps = CARRY_CAPS;
    const STEP_BYTES: Option<usize> = Some(64 * 1024);

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
/// Fails with [`Refusal::BadContent`] at `passphrase` if the passphrase is too short, and if
/// the content breaks a rule or a cap.
pub fn seal_carry(carry: &CarryFile, passphrase: &str) -> Result<Vec<u8>, Refusal> {
    seal_carry_at(carry, passphrase, WORK_FACTOR)
}

pub(super) fn seal_carry_at(
    carry: &CarryFile,
    passphrase: &str,
    work_factor: u8,
) -> Result<Vec<u8>, Refusal> {
    let frame = content::write(carry, &carry.signing_key()?)?;
    let sealed = seal_with_passphrase(passphrase, work_factor, &frame)?;
    within(&CARRY_CAPS, sealed)
}

/// Opens a carry file with its passphrase.
pub fn open_carry(bytes: impl Read, passphrase: &str) -> Result<CarryFile, Refusal> {
    let sealed = read_capped(bytes, CARRY_CAPS.sealed_bytes)?;
    let plain = unseal_with_passphrase(&sealed, passphrase)?;
    let (carry, opened) = content::read::<CarryFile>(&plain)?;
    if carry.signing_key()?.public() != opened.key {
        return Err(bad("signing_seed"));
    }
    Ok(carry)
}
