//! A hand-in as a file: sealing, and the way from bytes to what may be merged.
//!
//! bytes → [`OpenedHandIn`] (authentic and well-formed) → [`CheckedHandIn`]
//! (for this class and seat, by a known key) or [`QuarantinedHandIn`] (by another key).

use super::frame::{self, Kind};
use super::hand_in::{HAND_IN_FORMAT, HandIn};
use super::keys::{PublicKey, Recipient, SealingIdentity, SigningKey};
use super::limits::{Caps, HAND_IN_CAPS};
use super::sealing::{read_capped, seal_for, unseal};
use super::strict_json::{self, bad};
use super::{Flag, Refusal};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use std::io::Read;
use surefoot_catalogue::ConceptId;
use surefoot_record::Record;
use surefoot_record::{ClassId, SeatToken};

/// The least size of a hand-in's frame; larger ones double.
pub const HAND_IN_STEP_BYTES: usize = 16 * 1024;

/// Seals a hand-in for a class. Entries go in the order of their keys,
/// each key once, so that the same record gives the same content.
///
/// # Errors
/// [`Refusal`] when this hand-in would not be taken: `device_key` is not
/// `key`'s, the content breaks a rule or a cap.
pub fn seal_hand_in(
    hand_in: &HandIn,
    key: &SigningKey,
    class: &Recipient,
) -> Result<Vec<u8>, Refusal> {
    if hand_in.device_key != key.public() {
        return Err(bad("device_key"));
    }
    let (check_ins, practice) = hand_in.record().into_entries();
    let ordered = HandIn {
        check_ins,
        practice,
        ..hand_in.clone()
    };
    ordered.check_content()?;
    let json = serde_json::to_vec(&ordered).map_err(|_| bad("content"))?;
    if json.len() as u64 > HAND_IN_CAPS.unpacked_bytes {
        return Err(Refusal::UnpacksTooLarge {
            most_bytes: HAND_IN_CAPS.unpacked_bytes,
        });
    }
    strict_json::read::<HandIn>(&json, &HAND_IN_CAPS, HAND_IN_FORMAT)?;
    let frame = frame::write(Kind::HandIn, &json, key, Some(HAND_IN_STEP_BYTES))?;
    let sealed = seal_for(class, &frame)?;
    if sealed.len() as u64 > HAND_IN_CAPS.sealed_bytes {
        return Err(Refusal::TooLarge {
            found_bytes: sealed.len() as u64,
            most_bytes: HAND_IN_CAPS.sealed_bytes,
        });
    }
    Ok(sealed)
}

/// Opens a hand-in with the identity of whichever of the teacher's classes it
/// was sealed for. Sizes are checked before allocation, the age tags and the
/// signature before a byte is unpacked, counts before the content is read.
///
/// # Errors
/// [`Refusal`], by name.
pub fn open_hand_in<'i>(
    bytes: impl Read,
    identities: impl IntoIterator<Item = &'i SealingIdentity>,
    caps: &Caps,
) -> Result<OpenedHandIn, Refusal> {
    let sealed = read_capped(bytes, caps.sealed_bytes)?;
    let plain = unseal(&sealed, identities)?;
    let opened = frame::read(Kind::HandIn, &plain, true, caps.unpacked_bytes)?;
    let hand_in: HandIn = strict_json::read(&opened.json, caps, HAND_IN_FORMAT)?;
    hand_in.check_content()?;
    if hand_in.device_key != opened.key {
        return Err(bad("device_key"));
    }
    Ok(OpenedHandIn {
        hand_in,
        json: opened.json,
        packed: opened.packed,
    })
}

/// What is needed of a class to check a hand-in.
#[derive(Debug, Clone, Copy)]
pub struct HandInExpectations<'a> {
    /// The class.
    pub class_id: &'a ClassId,
    /// First day of its school year.
    pub first_day: NaiveDate,
    /// Last day of its school year.
    pub last_day: NaiveDate,
    /// Its seats, each with the signing keys accepted for it so far.
    pub seats: &'a BTreeMap<SeatToken, BTreeSet<PublicKey>>,
    /// The concepts of its catalogue.
    pub concepts: &'a BTreeSet<ConceptId>,
}

/// Authentic and well-formed; not yet known to belong here.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OpenedHandIn {
    hand_in: HandIn,
    json: Vec<u8>,
    packed: Vec<u8>,
}

/// May be merged.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CheckedHandIn {
    hand_in: HandIn,
    json: Vec<u8>,
    packed: Vec<u8>,
    flags: Vec<Flag>,
    first_of_seat: bool,
}

/// By a key that its seat does not have: waits for the teacher.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct QuarantinedHandIn(CheckedHandIn);

/// What became of a check.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Checked {
    /// By the seat's key, or the first of the seat.
    Accepted(CheckedHandIn),
    /// By another key.
    Quarantined(QuarantinedHandIn),
}

impl OpenedHandIn {
    /// The class it says it is for.
    #[must_use]
    pub fn class_id(&self) -> &ClassId {
        &self.hand_in.class_id
    }

    /// The seat it says it is from.
    #[must_use]
    pub fn seat(&self) -> &SeatToken {
        &self.hand_in.seat
    }

    /// Checks it against its class. Odd dates and unknown concepts are flagged, not refused.
    ///
    /// # Errors
    /// [`Refusal::WrongClass`], [`Refusal::SeatUnknown`].
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
        let flags = flags_of(&self.hand_in, class, today);
        let known = keys.contains(&self.hand_in.device_key);
        let checked = CheckedHandIn {
            hand_in: self.hand_in,
            json: self.json,
            packed: self.packed,
            flags,
            first_of_seat: keys.is_empty(),
        };
        Ok(if known || checked.first_of_seat {
            Checked::Accepted(checked)
        } else {
            Checked::Quarantined(QuarantinedHandIn(checked))
        })
    }
}

impl CheckedHandIn {
    /// What it says.
    #[must_use]
    pub fn content(&self) -> &HandIn {
        &self.hand_in
    }

    /// The exact JSON that was signed.
    #[must_use]
    pub fn json(&self) -> &[u8] {
        &self.json
    }

    /// That JSON as a zlib stream (RFC 1950), as it came in the file.
    #[must_use]
    pub fn packed(&self) -> &[u8] {
        &self.packed
    }

    /// Its entries, ready to merge.
    #[must_use]
    pub fn record(&self) -> Record {
        self.hand_in.record()
    }

    /// [`CheckedHandIn::record`] without a copy.
    #[must_use]
    pub fn into_record(self) -> Record {
        self.hand_in.into_record()
    }

    /// Things to look at.
    #[must_use]
    pub fn flags(&self) -> &[Flag] {
        &self.flags
    }

    /// Whether its seat had no key before: this one is now to be remembered.
    #[must_use]
    pub fn is_first_of_seat(&self) -> bool {
        self.first_of_seat
    }
}

impl QuarantinedHandIn {
    /// What it says, to show and to keep; not to merge.
    #[must_use]
    pub fn content(&self) -> &HandIn {
        &self.0.hand_in
    }

    /// The exact JSON that was signed.
    #[must_use]
    pub fn json(&self) -> &[u8] {
        &self.0.json
    }

    /// That JSON as a zlib stream (RFC 1950), as it came in the file.
    #[must_use]
    pub fn packed(&self) -> &[u8] {
        &self.0.packed
    }

    /// Things to look at.
    #[must_use]
    pub fn flags(&self) -> &[Flag] {
        &self.0.flags
    }

    /// The teacher says that this key belongs to the seat.
    #[must_use]
    pub fn accept(self) -> CheckedHandIn {
        self.0
    }
}

/// Furthest date and number of entries of one kind of odd date.
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
