//! What a student did with one concept on one school date, on one device.

use crate::ids::{DeviceId, MisconceptionCode};
use crate::wire::{present, school_date};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{Confidence, Outcome};

/// A value that a student gave, with the sequence of the event.
///
/// The later value is the greater one; at equal sequences it is the greater value.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields, bound(deserialize = "T: Deserialize<'de>"))]
pub struct Said<T> {
    /// The sequence: one more than every sequence that the device had seen, from 1.
    pub at: u32,
    /// The value; `None` if the student took it back.
    #[serde(deserialize_with = "present")]
    pub value: Option<T>,
}

/// The key of an entry: device, school date, concept.
pub type Key<'e> = (&'e DeviceId, NaiveDate, &'e ConceptId);

/// A check-in: what a student said of one concept on one school date, on one device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CheckIn {
    /// The device on which the student checked in.
    pub device: DeviceId,
    /// School date.
    #[serde(with = "school_date")]
    pub date: NaiveDate,
    /// The concept.
    pub concept: ConceptId,
    /// The confidence; `None` if the student never gave one.
    #[serde(deserialize_with = "present")]
    pub confidence: Option<Said<Confidence>>,
    /// The outcome; `None` if the student never marked one.
    #[serde(deserialize_with = "present")]
    pub outcome: Option<Said<Outcome>>,
}

impl CheckIn {
    /// The sequence of its last event; 0 without an event.
    #[must_use]
    pub fn sequence(&self) -> u32 {
        let rated = self.confidence.map_or(0, |said| said.at);
        let marked = self.outcome.map_or(0, |said| said.at);
        rated.max(marked)
    }
}

/// What came of the practice of one concept on one school date, on one device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Practice {
    /// The device on which the student practised.
    pub device: DeviceId,
    /// School date.
    #[serde(with = "school_date")]
    pub date: NaiveDate,
    /// The concept.
    pub concept: ConceptId,
    /// The sequence of the last answer that is counted.
    pub sequence: u32,
    /// Counts of answers by confidence, each confidence once, without one first.
    pub answers: Vec<AnswerCount>,
    /// How often each misconception was recognised.
    pub misconceptions: BTreeMap<MisconceptionCode, u32>,
}

/// Counts of the answers given with one confidence.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AnswerCount {
    /// The confidence that the student gave before answering; `None` without one.
    #[serde(deserialize_with = "present")]
    pub confidence: Option<Confidence>,
    /// Right at the first try without a hint.
    pub alone: u32,
    /// Right with a hint or at the second try.
    pub with_help: u32,
    /// Wrong twice, or the student asked for the worked steps.
    pub wrong: u32,
}

impl CheckIn {
    /// Its key.
    #[must_use]
    pub fn key(&self) -> Key<'_> {
        (&self.device, self.date, &self.concept)
    }
}

impl Practice {
    /// Its key.
    #[must_use]
    pub fn key(&self) -> Key<'_> {
        (&self.device, self.date, &self.concept)
    }
}

/// An entry of a record.
pub(crate) trait Entry {
    fn key(&self) -> Key<'_>;

    /// Takes over what is newer in another entry of the same key. Returns whether anything
    /// is newer.
    fn absorb(&mut self, other: Self) -> bool;
}

impl Entry for CheckIn {
    fn key(&self) -> Key<'_> {
        self.key()
    }

    fn absorb(&mut self, other: Self) -> bool {
        let newer_rating = other.confidence > self.confidence;
        let newer_outcome = other.outcome > self.outcome;
        self.confidence = self.confidence.max(other.confidence);
        self.outcome = self.outcome.max(other.outcome);
        newer_rating || newer_outcome
    }
}

impl Entry for Practice {
    fn key(&self) -> Key<'_> {
        self.key()
    }

    fn absorb(&mut self, other: Self) -> bool {
        // A device only adds to its counts, so the later entry includes the earlier one.
        let precedes = |a: &Self, b: &Self| {
            (a.sequence, &a.answers, &a.misconceptions)
                < (b.sequence, &b.answers, &b.misconceptions)
        };
        let newer = precedes(self, &other);
        if newer {
            *self = other;
        }
        newer
    }
}
