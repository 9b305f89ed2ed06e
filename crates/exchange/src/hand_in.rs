//! What a hand-in says: a student's whole record of the year, without a name.
//!
//! There is no free text in it, no time of day and no fact about the device.

use super::Refusal;
use super::keys::{PublicKey, Recipient};
use super::strict_json::bad;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use surefoot_record::Record;
use surefoot_record::wire::school_date;
use surefoot_record::{CheckIn, Practice};
use surefoot_record::{ClassId, DeviceId, SeatToken};

/// The newest hand-in format known.
pub const HAND_IN_FORMAT: u32 = 1;

/// Answers one (device, date, concept) can have of one kind.
pub const MOST_ANSWERS: u32 = 10_000;

/// Kinds of misconceptions one (device, date, concept) can have.
pub const MOST_MISCONCEPTIONS: usize = 64;

/// A hand-in as it stands inside the seal. `shared/schema/hand-in.schema.json`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HandIn {
    /// [`HAND_IN_FORMAT`].
    pub format: u32,
    /// The class it is for.
    pub class_id: ClassId,
    /// Whose it is, by the token of the join slip.
    pub seat: SeatToken,
    /// The device that made it.
    pub device: DeviceId,
    /// 1, 2, 3 ... on that device.
    pub revision: u32,
    /// The school date on the device's clock.
    #[serde(with = "school_date")]
    pub made_on: NaiveDate,
    /// The version of the class pack the device has.
    pub pack_version: u32,
    /// All check-ins of the year, by device, date and concept.
    pub check_ins: Vec<CheckIn>,
    /// All practice counts of the year, by device, date and concept.
    pub practice: Vec<Practice>,
    /// The key this hand-in is signed with.
    pub device_key: PublicKey,
    /// What personal assignments are sealed for.
    pub device_recipient: Recipient,
}

fn check_counts(entry: &Practice, at: impl Fn(&str) -> String) -> Result<(), Refusal> {
    let mut seen = BTreeSet::new();
    for count in &entry.answers {
        let most = count.alone.max(count.with_help).max(count.wrong);
        if most > MOST_ANSWERS || !seen.insert(count.sure) {
            return Err(bad(at("answers")));
        }
    }
    if entry.misconceptions.len() > MOST_MISCONCEPTIONS
        || entry
            .misconceptions
            .values()
            .any(|&n| n == 0 || n > MOST_ANSWERS)
    {
        return Err(bad(at("misconceptions")));
    }
    Ok(())
}

/// Checks entries beyond what their types say.
pub(super) fn check_entries(check_ins: &[CheckIn], practice: &[Practice]) -> Result<(), Refusal> {
    for (place, entry) in check_ins.iter().enumerate() {
        let begins_at_0 = |at: Option<u32>| at == Some(0);
        if begins_at_0(entry.confidence.map(|said| said.at)) || entry.sequence() == 0 {
            return Err(bad(format!("check_ins[{place}].confidence.at")));
        }
        if begins_at_0(entry.outcome.map(|said| said.at)) {
            return Err(bad(format!("check_ins[{place}].outcome.at")));
        }
    }
    for (place, entry) in practice.iter().enumerate() {
        if entry.sequence == 0 {
            return Err(bad(format!("practice[{place}].sequence")));
        }
        check_counts(entry, |field| format!("practice[{place}].{field}"))?;
    }
    Ok(())
}

impl HandIn {
    /// Checks what the types alone do not say.
    ///
    /// # Errors
    /// [`Refusal::BadContent`] with the place.
    pub fn check_content(&self) -> Result<(), Refusal> {
        if self.format != HAND_IN_FORMAT {
            return Err(bad("format"));
        }
        if self.revision == 0 {
            return Err(bad("revision"));
        }
        check_entries(&self.check_ins, &self.practice)
    }

    /// The entries as a record: one for each (device, date, concept).
    #[must_use]
    pub fn record(&self) -> Record {
        Record::from_entries(
            self.check_ins.iter().cloned(),
            self.practice.iter().cloned(),
        )
    }

    /// [`HandIn::record`] without a copy.
    #[must_use]
    pub fn into_record(self) -> Record {
        Record::from_entries(self.check_ins, self.practice)
    }
}
