//! The transfer: what a desk has of one student, for the colleague whose class the student joins.
//! It is sealed by a passphrase. It holds a name only if the teacher wants it.

use super::Refusal;
use super::content::{self, Content, within};
use super::frame::Kind;
use super::hand_in::HandIn;
use super::keys::{PublicKey, SigningKey};
use super::limits::{Caps, TRANSFER_CAPS, WORK_FACTOR};
use super::sealing::{read_capped, seal_with_passphrase, unseal_with_passphrase};
use super::strict_json::bad;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use std::fmt;
use std::io::Read;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_record::wire::{present, school_date};

/// The format of transfers.
pub const TRANSFER_FORMAT: u32 = 1;

/// The most devices that a transfer has hand-ins of, as a device id with a signing key.
pub const MOST_TRANSFER_DEVICES: usize = 8;

/// A paper entry: a confidence or an outcome that the teacher typed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PaperEntry {
    /// School date.
    #[serde(with = "school_date")]
    pub date: NaiveDate,
    /// The concept.
    pub concept: ConceptId,
    /// The confidence, if it was on the paper.
    #[serde(deserialize_with = "present")]
    pub confidence: Option<Confidence>,
    /// The outcome, if it was on the paper.
    #[serde(deserialize_with = "present")]
    pub outcome: Option<Outcome>,
}

/// The content of a transfer; see `shared/schema/transfer.schema.json`.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Transfer {
    /// [`TRANSFER_FORMAT`].
    pub format: u32,
    /// The key that signs this file: that of the class that the student leaves.
    pub teacher_key: PublicKey,
    /// The date on which it was made.
    #[serde(with = "school_date")]
    pub made_on: NaiveDate,
    /// The student's name, if the teacher put it in.
    #[serde(deserialize_with = "present")]
    pub name: Option<String>,
    /// What the accepted devices of the student handed in: for each signing key its record, as
    /// content of hand-ins.
    pub hand_ins: Vec<HandIn>,
    /// The paper entries, by date and concept.
    pub paper: Vec<PaperEntry>,
}

impl fmt::Debug for Transfer {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Transfer")
            .field("made_on", &self.made_on)
            .field("hand_ins", &self.hand_ins.len())
            .field("paper", &self.paper.len())
            .finish_non_exhaustive()
    }
}

impl Content for Transfer {
    const KIND: Kind = Kind::Transfer;
    const FORMAT: u32 = TRANSFER_FORMAT;
    const CAPS: Caps = TRANSFER_CAPS;
    const STEP_BYTES: Option<usize> = Some(16 * 1024);

    fn check_content(&self) -> Result<(), Refusal> {
        if self.format != TRANSFER_FORMAT {
            return Err(bad("format"));
        }
        let devices: BTreeSet<_> = (self.hand_ins.iter())
            .map(|hand_in| (hand_in.device.as_str(), hand_in.device_key.as_str()))
            .collect();
        if devices.len() > MOST_TRANSFER_DEVICES {
            return Err(bad("hand_ins"));
        }
        for (place, hand_in) in self.hand_ins.iter().enumerate() {
            hand_in.check_content().map_err(|refusal| match refusal {
                Refusal::BadContent { at } => bad(format!("hand_ins[{place}].{at}")),
                other => other,
            })?;
        }
        let mut seen = BTreeSet::new();
        for (place, entry) in self.paper.iter().enumerate() {
            let empty = entry.confidence.is_none() && entry.outcome.is_none();
            if empty || !seen.insert((entry.date, &entry.concept)) {
                return Err(bad(format!("paper[{place}]")));
            }
        }
        Ok(())
    }
}

/// Seals a transfer. Takes about half a second and 128 MiB.
///
/// # Errors
/// Fails with [`Refusal::BadContent`] at `passphrase` if the passphrase is too short, at
/// `teacher_key` if it is not that of `key`, and if the content breaks a rule or a cap.
pub fn seal_transfer(
    transfer: &Transfer,
    key: &SigningKey,
    passphrase: &str,
) -> Result<Vec<u8>, Refusal> {
    if transfer.teacher_key != key.public() {
        return Err(bad("teacher_key"));
    }
    let frame = content::write(transfer, key)?;
    let sealed = seal_with_passphrase(passphrase, WORK_FACTOR, &frame)?;
    within(&TRANSFER_CAPS, sealed)
}

/// Opens a transfer with its passphrase.
pub fn open_transfer(bytes: impl Read, passphrase: &str) -> Result<Transfer, Refusal> {
    let sealed = read_capped(bytes, TRANSFER_CAPS.sealed_bytes)?;
    let plain = unseal_with_passphrase(&sealed, passphrase)?;
    let (transfer, opened) = content::read::<Transfer>(&plain)?;
    if transfer.teacher_key != opened.key {
        return Err(bad("teacher_key"));
    }
    Ok(transfer)
}
