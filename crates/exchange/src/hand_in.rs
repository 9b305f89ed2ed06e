//! The content of a hand-in: a student's record of the whole year, without a name.
//!
//! It has no free text, no time of day and nothing about the device but its id.

use super::Refusal;
use super::content::Content;
use super::frame::Kind;
use super::keys::{PublicKey, Recipient};
use super::limits::{Caps, HAND_IN_CAPS};
use super::strict_json::bad;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use surefoot_record::wire::school_date;
use surefoot_record::{CheckIn, ClassId, DeviceId, Practice, Record, SeatToken};

/// The format of hand-ins.
pub const HAND_IN_FORMAT: u32 = 1;

/// The highest count of answers or of a misconception in an entry: far more than a student
/// can do in one day. A writer stops counting there.
pub const MOST_COUNT: u32 = 500;

/// The most misconceptions of an entry. A writer leaves out the others.
pub const MOST_MISCONCEPTIONS: usize = 64;

/// The content of a hand-in; see `shared/schema/hand-in.schema.json`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HandIn {
    /// [`HAND_IN_FORMAT`].
    pub format: u32,
    /// The class.
    pub class_id: ClassId,
    /// The seat.
    pub seat: SeatToken,
    /// The device that made it.
    pub device: DeviceId,
    /// The number of the hand-in on its device, from 1.
    pub revision: u32,
    /// The school date on the device's clock.
    #[serde(with = "school_date")]
    pub made_on: NaiveDate,
    /// The version of the class pack the device has.
    pub pack_version: u32,
    /// All check-ins of the year, in the order of their keys.
    pub check_ins: Vec<CheckIn>,
    /// All practice counts of the year, in the order of their keys.
    pub practice: Vec<Practice>,
    /// The key that signs this hand-in.
    pub device_key: PublicKey,
    /// The recipient for which personal assignments are sealed.
    pub device_recipient: Recipient,
}

fn check_counts(entry: &Practice, at: impl Fn(&str) -> String) -> Result<(), Refusal> {
    let mut seen = BTreeSet::new();
    for count in &entry.answers {
        let most = count.alone.max(count.with_help).max(count.wrong);
        if most > MOST_COUNT || !seen.insert(count.confidence) {
            return Err(bad(at("answers")));
        }
    }
    if entry.misconceptions.len() > MOST_MISCONCEPTIONS
        || entry
            .misconceptions
            .values()
            .any(|&n| n == 0 || n > MOST_COUNT)
    {
        return Err(bad(at("misconceptions")));
    }
    Ok(())
}

/// Checks the rules for entries that the types do not express.
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

impl Content for HandIn {
    const KIND: Kind = Kind::HandIn;
    const FORMAT: u32 = HAND_IN_FORMAT;
    const CAPS: Caps = HAND_IN_CAPS;
    const STEP_BYTES: Option<usize> = Some(16 * 1024);

    fn check_content(&self) -> Result<(), Refusal> {
        if self.format != HAND_IN_FORMAT {
            return Err(bad("format"));
        }
        if self.revision == 0 {
            return Err(bad("revision"));
        }
        let most = HAND_IN_CAPS.list_entries;
        if (self.check_ins.len() + self.practice.len()) as u64 > most {
            return Err(Refusal::TooManyEntries { most });
        }
        check_entries(&self.check_ins, &self.practice)
    }
}

impl HandIn {
    /// The entries as a record.
    #[must_use]
    pub fn record(&self) -> Record {
        Record::from_entries(
            self.check_ins.iter().cloned(),
            self.practice.iter().cloned(),
        )
    }

    /// As [`HandIn::record`], without copying the entries.
    #[must_use]
    pub fn into_record(self) -> Record {
        Record::from_entries(self.check_ins, self.practice)
    }

    /// Puts the entries in the order of their keys, each key once.
    pub(super) fn in_order(mut self) -> Self {
        let record = Record::from_entries(self.check_ins, self.practice);
        (self.check_ins, self.practice) = record.into_entries();
        self
    }
}
