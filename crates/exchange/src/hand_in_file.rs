//! A hand-in as a file: sealed, opened and checked.
//!
//! bytes → [`OpenedHandIn`] (authentic and well formed) → [`CheckedHandIn`]
//! (also fits the class and seat, and its key is accepted) or [`QuarantinedHandIn`]
//! (by another key).

use super::content::{self, within};
use super::hand_in::HandIn;
use super::keys::{PublicKey, Recipient, SealingIdentity, SigningKey};
use super::limits::HAND_IN_CAPS;
use super::sealing::{read_capped, seal_for, unseal};
use super::strict_json::bad;
use super::{Flag, Refusal};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use std::io::Read;
use surefoot_catalogue::ConceptId;
use surefoot_record::{ClassId, DeviceId, Record, SeatToken};

/// Seals a hand-in for a class. Writes the entries in the order of their keys, each key
/// once, so that the same record gives the same content.
///
/// # Errors
/// Fails if [`open_hand_in`] would refuse the file: if `device_key` is not that of `key`, or
/// the content breaks a rule or a cap.
pub fn seal_hand_in(
    hand_in: HandIn,
    key: &SigningKey,
    class: &Recipient,
) -> Result<Vec<u8>, Refusal> {
    if hand_in.device_key != key.public() {
        return Err(bad("device_key"));
    }
    let frame = content::write(&hand_in.in_order(), key)?;
    within(&HAND_IN_CAPS, seal_for(class, &frame)?)
}

/// Opens a hand-in with the identity of the class that it was sealed for, one of
/// `identities`. Checks sizes before allocating, the tags of age and the signature before
/// unpacking, and counts before reading the content.
pub fn open_hand_in<'i>(
    bytes: impl Read,
    identities: impl IntoIterator<Item = &'i SealingIdentity>,
) -> Result<OpenedHandIn, Refusal> {
    let sealed = read_capped(bytes, HAND_IN_CAPS.sealed_bytes)?;
    let plain = unseal(&sealed, identities)?;
    let (hand_in, opened) = content::read::<HandIn>(&plain)?;
    if hand_in.device_key != opened.key {
        return Err(bad("device_key"));
    }
    Ok(OpenedHandIn {
        hand_in,
        json: opened.json,
        packed: opened.packed,
    })
}

/// What the desk knows of a class to check a hand-in.
#[derive(Debug, Clone, Copy)]
pub struct HandInExpectations<'a> {
    /// The class.
    pub class_id: &'a ClassId,
    /// The first day of the school year.
    pub first_day: NaiveDate,
    /// The last day of the school year.
    pub last_day: NaiveDate,
    /// The seats, each with the signing keys whose hand-ins count for it.
    pub seats: &'a BTreeMap<SeatToken, BTreeSet<PublicKey>>,
    /// The concepts that the class knows.
    pub concepts: &'a BTreeSet<ConceptId>,
}

/// A hand-in that is authentic and well formed. Whether it fits a class is unknown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OpenedHandIn {
    hand_in: HandIn,
    json: Vec<u8>,
    packed: Vec<u8>,
}

/// A hand-in that fits its class and seat. It may be merged.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CheckedHandIn {
    hand_in: HandIn,
    json: Vec<u8>,
    packed: Vec<u8>,
    flags: Vec<Flag>,
}

/// A hand-in by a key that is not accepted for its seat. It may not be merged until the
/// teacher accepts the key.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct QuarantinedHandIn(CheckedHandIn);

/// The outcome of [`OpenedHandIn::check`].
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Checked {
    /// By an accepted key of the seat.
    Accepted(CheckedHandIn),
    /// By another key.
    Quarantined(QuarantinedHandIn),
}

impl OpenedHandIn {
    /// The class that it names.
    #[must_use]
    pub fn class_id(&self) -> &ClassId {
        &self.hand_in.class_id
    }

    /// The seat that it names.
    #[must_use]
    pub fn seat(&self) -> &SeatToken {
        &self.hand_in.seat
    }

    /// The device that made it.
    #[must_use]
    pub fn device(&self) -> &DeviceId {
        &self.hand_in.device
    }

    /// The key that signed it.
    #[must_use]
    pub fn device_key(&self) -> &PublicKey {
        &self.hand_in.device_key
    }

    /// Whether it has everything that another hand-in of its device has.
    #[must_use]
    pub fn contains(&self, other: &Self) -> bool {
        let (mine, theirs) = (&self.hand_in, &other.hand_in);
        mine.class_id == theirs.class_id
            && mine.seat == theirs.seat
            && mine.device == theirs.device
            && mine.device_key == theirs.device_key
            && mine.revision >= theirs.revision
            && mine.record().merge(theirs.record()).entries() == 0
    }

    /// Checks it against its class. Flags odd dates and unknown concepts without refusing
    /// the hand-in.
    ///
    /// # Errors
    /// Fails with [`Refusal::WrongClass`] or [`Refusal::SeatUnknown`].
    pub fn check(
        self,
        class: &HandInExpectations<'_>,
        today: NaiveDate,
    ) -> Result<Checked, Refusal> {
        if self.hand_in.class_id != *class.class_id {
            return Err(Refusal::WrongClass);
        }
        let keys = class
            .seats
            .get(&self.hand_in.seat)
            .ok_or(Refusal::SeatUnknown)?;
        let is_accepted = keys.contains(&self.hand_in.device_key);
        let checked = CheckedHandIn {
            flags: flags_of(&self.hand_in, class, today),
            hand_in: self.hand_in,
            json: self.json,
            packed: self.packed,
        };
        Ok(if is_accepted {
            Checked::Accepted(checked)
        } else {
            Checked::Quarantined(QuarantinedHandIn(checked))
        })
    }
}

impl CheckedHandIn {
    /// The content.
    #[must_use]
    pub fn content(&self) -> &HandIn {
        &self.hand_in
    }

    /// The JSON, byte for byte as it was signed.
    #[must_use]
    pub fn json(&self) -> &[u8] {
        &self.json
    }

    /// The same packed by zlib (RFC 1950), as the file has it.
    #[must_use]
    pub fn packed(&self) -> &[u8] {
        &self.packed
    }

    /// Its record, to be merged.
    #[must_use]
    pub fn record(&self) -> Record {
        self.hand_in.record()
    }

    /// As [`CheckedHandIn::record`], without copying the entries.
    #[must_use]
    pub fn into_record(self) -> Record {
        self.hand_in.into_record()
    }

    /// What the teacher should look at.
    #[must_use]
    pub fn flags(&self) -> &[Flag] {
        &self.flags
    }
}

impl QuarantinedHandIn {
    /// The content, to be shown and stored, not merged.
    #[must_use]
    pub fn content(&self) -> &HandIn {
        &self.0.hand_in
    }

    /// The JSON, byte for byte as it was signed.
    #[must_use]
    pub fn json(&self) -> &[u8] {
        &self.0.json
    }

    /// The same packed by zlib (RFC 1950), as the file has it.
    #[must_use]
    pub fn packed(&self) -> &[u8] {
        &self.0.packed
    }

    /// What the teacher should look at.
    #[must_use]
    pub fn flags(&self) -> &[Flag] {
        &self.0.flags
    }
}

/// Entries with one kind of odd date: their number and the date that is furthest off.
#[derive(Default)]
struct Odd {
    furthest: Option<(i64, NaiveDate)>,
    entries: usize,
}

impl Odd {
    fn add(&mut self, days_off: i64, date: NaiveDate) {
        self.entries += 1;
        self.furthest = self.furthest.max(Some((days_off, date)));
    }
}

fn flags_of(hand_in: &HandIn, class: &HandInExpectations<'_>, today: NaiveDate) -> Vec<Flag> {
    let usual = |date: NaiveDate, concept: &ConceptId| {
        date <= today
            && (class.first_day..=class.last_day).contains(&date)
            && class.concepts.contains(concept)
    };
    let mut entries = (hand_in.check_ins.iter())
        .map(|entry| (entry.date, &entry.concept))
        .chain((hand_in.practice.iter()).map(|entry| (entry.date, &entry.concept)));
    if entries.all(|(date, concept)| usual(date, concept)) {
        return Vec::new();
    }
    let record = hand_in.record();
    let (mut future, mut outside) = (Odd::default(), Odd::default());
    let mut unknown = BTreeSet::new();
    for (_, date, concept) in record.keys() {
        if date > today {
            future.add((date - today).num_days(), date);
        }
        if date < class.first_day || date > class.last_day {
            let days_off = (class.first_day - date).max(date - class.last_day);
            outside.add(days_off.num_days(), date);
        }
        if !class.concepts.contains(concept) {
            unknown.insert(concept);
        }
    }
    let mut flags = Vec::new();
    if let Some((_, date)) = future.furthest {
        flags.push(Flag::FutureDate {
            date,
            entries: future.entries,
        });
    }
    if let Some((_, date)) = outside.furthest {
        flags.push(Flag::OutsideYear {
            date,
            entries: outside.entries,
        });
    }
    if !unknown.is_empty() {
        flags.push(Flag::UnknownConcept {
            concepts: unknown.len(),
        });
    }
    flags
}
