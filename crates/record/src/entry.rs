//! What a student did with one concept on one school date, on one device.

use crate::ids::{DeviceId, MisconceptionCode};
use crate::wire::{present, school_date};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{Confidence, Outcome};

/// A value that a student gave, and its place among the student's events.
///
/// The order is the order of precedence: the later place, then the greater value.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields, bound(deserialize = "T: Deserialize<'de>"))]
pub struct Said<T> {
    /// One more than every sequence that the device had seen; 1 or more.
    pub at: u32,
    /// The value; nothing when the student took it back.
    #[serde(deserialize_with = "present")]
    pub value: Option<T>,
}

/// The key of an entry: device, school date, concept.
pub type Key<'e> = (&'e DeviceId, NaiveDate, &'e ConceptId);

/// A check-in: what a student said of one concept on one school date, on one device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CheckIn {
    /// Where it was tapped.
    pub device: DeviceId,
    /// School date.
    #[serde(with = "school_date")]
    pub date: NaiveDate,
    /// The concept.
    pub concept: ConceptId,
    /// The rating; nothing when the student never gave one.
    #[serde(deserialize_with = "present")]
    pub confidence: Option<Said<Confidence>>,
    /// How the review went; nothing when the student never marked it.
    #[serde(deserialize_with = "present")]
    pub outcome: Option<Said<Outcome>>,
}

impl CheckIn {
    /// The sequence of the last event in it; 0 when it holds none.
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
    /// Where it was practised.
    pub device: DeviceId,
    /// School date.
    #[serde(with = "school_date")]
    pub date: NaiveDate,
    /// The concept.
    pub concept: ConceptId,
    /// The sequence of the last answer counted.
    pub sequence: u32,
    /// Counts by how sure the student said to be, "not said" first; each once.
    pub answers: Vec<AnswerCount>,
    /// How often which misconception was recognised.
    pub misconceptions: BTreeMap<MisconceptionCode, u32>,
}

/// Answers given at one degree of sureness.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AnswerCount {
    /// How sure the student said to be before answering.
    #[serde(deserialize_with = "present")]
    pub sure: Option<Confidence>,
    /// Right at the first try without a hint.
    pub alone: u32,
    /// Right with a hint or at the second try.
    pub with_help: u32,
    /// Wrong twice, or the steps were asked for.
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

/// An entry of a record: it has a key, and takes in another one of the same key.
pub(crate) trait Entry {
    fn key(&self) -> Key<'_>;

    /// Takes in what another entry of the same key has newer. Returns whether there was such.
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
        // Counts only grow on their device, so the later state holds the earlier one.
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
