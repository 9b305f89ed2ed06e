//! The class key: a class with its keys and roster, for the teacher's second
//! computer. It is sealed by a passphrase, and it holds names.

use super::Refusal;
use super::class_id::class_id_of;
use super::content::{self, Content, within};
use super::frame::Kind;
use super::keys::{SealingIdentity, SigningKey};
use super::limits::{CLASS_KEY_CAPS, Caps, WORK_FACTOR};
use super::sealing::{read_capped, seal_with_passphrase, unseal_with_passphrase};
use super::strict_json::bad;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::fmt;
use std::io::Read;
use surefoot_catalogue::Concept;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_exercises::bank::OwnExercise;
use surefoot_record::wire::school_date;
use surefoot_record::{ClassId, PracticeRules, SeatToken};

/// The format of class keys.
pub const CLASS_KEY_FORMAT: u32 = 1;

/// A seat with its name.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct KeySeat {
    /// Its number, from 1.
    pub number: u32,
    /// Its token.
    pub token: SeatToken,
    /// The student's name, if there is one.
    pub name: Option<String>,
}

/// The content of a class key.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ClassKeyFile {
    /// [`CLASS_KEY_FORMAT`].
    pub format: u32,
    /// The class.
    pub class_id: ClassId,
    /// The title of the class.
    pub title: String,
    /// The date on which the class was made.
    #[serde(with = "school_date")]
    pub made_on: NaiveDate,
    /// The age identity that opens the hand-ins of the class. Secret.
    pub sealing_identity: String,
    /// The seed of the key that signs the class packs: 32 bytes in base64. Secret.
    pub signing_seed: String,
    /// The school year.
    pub year: SchoolYear,
    /// The rotation: the concept ids of each day.
    pub rotation: Vec<Vec<String>>,
    /// The dates of first lessons, by concept id.
    pub taught_from: BTreeMap<String, NaiveDate>,
    /// The seats.
    pub seats: Vec<KeySeat>,
    /// What the teacher sets for practice.
    pub practice: PracticeRules,
    /// The own concepts, in the order of their ids.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub own_concepts: Vec<Concept>,
    /// The own exercises.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub own_exercises: Vec<OwnExercise>,
    /// The version of the last class pack.
    pub pack_version: u32,
    /// Whether the computer that opens this file saves the class packs from then on, in place of
    /// the one that made it.
    pub saves_packs: bool,
}

impl fmt::Debug for ClassKeyFile {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("ClassKeyFile")
            .field("class_id", &self.class_id)
            .finish_non_exhaustive()
    }
}

impl ClassKeyFile {
    /// Reads `signing_seed`.
    pub fn signing_key(&self) -> Result<SigningKey, Refusal> {
        self.signing_seed.parse().map_err(|_| bad("signing_seed"))
    }
}

impl Content for ClassKeyFile {
    const KIND: Kind = Kind::ClassKey;
    const FORMAT: u32 = CLASS_KEY_FORMAT;
    const CAPS: Caps = CLASS_KEY_CAPS;
    const STEP_BYTES: Option<usize> = Some(64 * 1024);

    fn check_content(&self) -> Result<(), Refusal> {
        if self.format != CLASS_KEY_FORMAT {
            return Err(bad("format"));
        }
        for (place, own) in self.own_exercises.iter().enumerate() {
            own.check()
                .map_err(|_| bad(format!("own_exercises[{place}]")))?;
        }
        let teacher = self.signing_key()?.public();
        let class = SealingIdentity::from_identity_file(&self.sealing_identity)
            .map_err(|_| bad("sealing_identity"))?
            .recipient();
        if class_id_of(&teacher, &class).as_ref() != Ok(&self.class_id) {
            return Err(bad("class_id"));
        }
        self.year.check().map_err(|_| bad("year"))
    }
}

/// Seals a class key. Takes about half a second and 128 MiB.
///
/// # Errors
/// Fails with [`Refusal::BadContent`] at `passphrase` if the passphrase is too short, and if
/// the content breaks a rule or a cap.
pub fn seal_class_key(class: &ClassKeyFile, passphrase: &str) -> Result<Vec<u8>, Refusal> {
    let frame = content::write(class, &class.signing_key()?)?;
    let sealed = seal_with_passphrase(passphrase, WORK_FACTOR, &frame)?;
    within(&CLASS_KEY_CAPS, sealed)
}

/// Opens a class key with its passphrase.
pub fn open_class_key(bytes: impl Read, passphrase: &str) -> Result<ClassKeyFile, Refusal> {
    let sealed = read_capped(bytes, CLASS_KEY_CAPS.sealed_bytes)?;
    let plain = unseal_with_passphrase(&sealed, passphrase)?;
    let (class, opened) = content::read::<ClassKeyFile>(&plain)?;
    if class.signing_key()?.public() != opened.key {
        return Err(bad("signing_seed"));
    }
    Ok(class)
}
