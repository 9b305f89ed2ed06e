//! The class key file: a class with its keys and its roster, for the teacher's
//! second computer. Sealed by a passphrase; it holds names.

use super::Refusal;
use super::carry::LEAST_PASSPHRASE_CHARS;
use super::class_pack::PracticeRules;
use super::frame::{self, Kind};
use super::keys::{SealingIdentity, SigningKey};
use super::limits::{CARRY_WORK_FACTOR, CLASS_KEY_CAPS};
use super::sealing::{read_capped, seal_with_passphrase, unseal_with_passphrase};
use super::strict_json::{self, bad};
use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::fmt;
use std::io::Read;
use surefoot_catalogue::Concept;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_exercises::bank::OwnExercise;
use surefoot_record::wire::school_date;
use surefoot_record::{ClassId, SeatToken};

/// The format of class key files.
pub const CLASS_KEY_FORMAT: u32 = 1;

/// The least size of its frame; larger ones double.
const CLASS_KEY_STEP_BYTES: usize = 64 * 1024;

/// A seat with its name.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct KeySeat {
    /// 1, 2, 3 ...
    pub number: u32,
    /// The random part of its code.
    pub token: SeatToken,
    /// Given name or code.
    pub name: Option<String>,
}

/// The content inside the seal.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ClassKeyFile {
    /// [`CLASS_KEY_FORMAT`].
    pub format: u32,
    /// The class.
    pub class_id: ClassId,
    /// The teacher's name for it.
    pub title: String,
    /// When the class was made.
    #[serde(with = "school_date")]
    pub made_on: NaiveDate,
    /// The age identity that opens its hand-ins. Secret.
    pub sealing_identity: String,
    /// Seed of the key that signs its class packs, 32 bytes in base64. Secret.
    pub signing_seed: String,
    /// Its school year.
    pub year: SchoolYear,
    /// Concept ids day by day.
    pub rotation: Vec<Vec<String>>,
    /// Dates of first lessons.
    pub taught_from: BTreeMap<String, NaiveDate>,
    /// Its seats.
    pub seats: Vec<KeySeat>,
    /// Bounds of practice at home, and a test to aim at.
    pub practice: PracticeRules,
    /// Own concepts, by id.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub own_concepts: Vec<Concept>,
    /// Own exercises.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub own_exercises: Vec<OwnExercise>,
    /// Version of the last class pack made.
    pub pack_version: u32,
}

impl fmt::Debug for ClassKeyFile {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("ClassKeyFile")
            .field("class_id", &self.class_id)
            .finish_non_exhaustive()
    }
}

impl ClassKeyFile {
    /// A signing key as text for `signing_seed`.
    #[must_use]
    pub fn seed_text(seed: &[u8; 32]) -> String {
        BASE64_STANDARD.encode(seed)
    }

    /// The seed of the signing key.
    ///
    /// # Errors
    /// [`Refusal::BadContent`].
    pub fn seed(&self) -> Result<[u8; 32], Refusal> {
        BASE64_STANDARD
            .decode(&self.signing_seed)
            .ok()
            .and_then(|bytes| bytes.try_into().ok())
            .ok_or_else(|| bad("signing_seed"))
    }

    fn check_content(&self) -> Result<(), Refusal> {
        if self.format != CLASS_KEY_FORMAT {
            return Err(bad("format"));
        }
        for (place, own) in self.own_exercises.iter().enumerate() {
            own.check()
                .map_err(|_| bad(format!("own_exercises[{place}]")))?;
        }
        self.seed()?;
        SealingIdentity::from_identity_file(&self.sealing_identity)
            .map_err(|_| bad("sealing_identity"))?;
        self.year.check().map_err(|_| bad("year"))
    }
}

/// Seals a class key file. Takes about half a second and 128 MiB.
///
/// # Errors
/// [`Refusal::BadContent`] at `passphrase` when it is too short, or where the
/// content breaks a rule.
pub fn seal_class_key(class: &ClassKeyFile, passphrase: &str) -> Result<Vec<u8>, Refusal> {
    if passphrase.chars().count() < LEAST_PASSPHRASE_CHARS {
        return Err(bad("passphrase"));
    }
    class.check_content()?;
    let json = serde_json::to_vec(class).map_err(|_| bad("content"))?;
    strict_json::read::<ClassKeyFile>(&json, &CLASS_KEY_CAPS, CLASS_KEY_FORMAT)?;
    let key = SigningKey::from_seed(&class.seed()?);
    let frame = frame::write(Kind::ClassKey, &json, &key, Some(CLASS_KEY_STEP_BYTES))?;
    seal_with_passphrase(passphrase, CARRY_WORK_FACTOR, &frame)
}

/// Opens a class key file with its passphrase.
///
/// # Errors
/// [`Refusal::WrongPassphrase`], [`Refusal::TooMuchWork`]; else by name.
pub fn open_class_key(bytes: impl Read, passphrase: &str) -> Result<ClassKeyFile, Refusal> {
    let caps = &CLASS_KEY_CAPS;
    let sealed = read_capped(bytes, caps.sealed_bytes)?;
    let plain = unseal_with_passphrase(&sealed, passphrase)?;
    let opened = frame::read(Kind::ClassKey, &plain, true, caps.unpacked_bytes)?;
    let class: ClassKeyFile = strict_json::read(&opened.json, caps, CLASS_KEY_FORMAT)?;
    class.check_content()?;
    if SigningKey::from_seed(&class.seed()?).public() != opened.key {
        return Err(bad("signing_seed"));
    }
    Ok(class)
}
