//! Putting records together, and reading them across devices.
//!
//! A record is a set of entries keyed by (device, school date, concept); of
//! two entries with one key the higher sequence stays. That makes the union
//! idempotent, commutative and associative: files may come twice, late, or in
//! any order, and the end is the same.

use crate::entry::{AnswerCount, CheckIn, Practice};
use crate::{DeviceId, MistakeCode};
use chrono::NaiveDate;
use std::collections::BTreeMap;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{Confidence, Outcome};

/// What an entry is about.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Key {
    /// The device.
    pub device: DeviceId,
    /// School date.
    pub date: NaiveDate,
    /// The concept.
    pub concept: ConceptId,
}

/// A check-in without its key. The order is the order of precedence.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct CheckInState {
    /// See [`CheckIn::sequence`].
    pub sequence: u32,
    /// The rating, if one stands.
    pub confidence: Option<Confidence>,
    /// How it went, if marked.
    pub outcome: Option<Outcome>,
}

/// Practice counts without their key. The order is the order of precedence.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct PracticeState {
    /// See [`Practice::sequence`].
    pub sequence: u32,
    /// Counts, "not said" first.
    pub answers: Vec<AnswerCount>,
    /// Recognised mistakes.
    pub mistakes: BTreeMap<MistakeCode, u32>,
}

/// Everything known of one student.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Record {
    /// Check-ins by key.
    pub check_ins: BTreeMap<Key, CheckInState>,
    /// Practice by key.
    pub practice: BTreeMap<Key, PracticeState>,
}

/// Keeps the greater of two states. Two states of one sequence cannot come
/// from one honest device; then the content decides, the same way everywhere.
fn keep_greater<S: Ord>(map: &mut BTreeMap<Key, S>, key: Key, state: S) -> bool {
    match map.entry(key) {
        std::collections::btree_map::Entry::Vacant(place) => {
            place.insert(state);
            true
        }
        std::collections::btree_map::Entry::Occupied(mut held) => {
            let newer = state > *held.get();
            if newer {
                held.insert(state);
            }
            newer
        }
    }
}

impl Record {
    /// From entries in any order.
    #[must_use]
    pub fn from_entries(
        check_ins: impl IntoIterator<Item = CheckIn>,
        practice: impl IntoIterator<Item = Practice>,
    ) -> Self {
        let mut record = Self::default();
        for entry in check_ins {
            let key = Key {
                device: entry.device,
                date: entry.date,
                concept: entry.concept,
            };
            let state = CheckInState {
                sequence: entry.sequence,
                confidence: entry.confidence,
                outcome: entry.outcome,
            };
            keep_greater(&mut record.check_ins, key, state);
        }
        for entry in practice {
            let key = Key {
                device: entry.device,
                date: entry.date,
                concept: entry.concept,
            };
            let mut answers = entry.answers;
            answers.sort_unstable();
            let state = PracticeState {
                sequence: entry.sequence,
                answers,
                mistakes: entry.mistakes,
            };
            keep_greater(&mut record.practice, key, state);
        }
        record
    }

    /// Takes in another record; gives how many entries were new or newer.
    pub fn merge(&mut self, other: Self) -> usize {
        let mut changed = 0;
        for (key, state) in other.check_ins {
            changed += usize::from(keep_greater(&mut self.check_ins, key, state));
        }
        for (key, state) in other.practice {
            changed += usize::from(keep_greater(&mut self.practice, key, state));
        }
        changed
    }

    /// What another record would bring: its entries that are new here or newer.
    #[must_use]
    pub fn newer_in(&self, other: Self) -> Self {
        if self.entries() == 0 {
            return other;
        }
        Self {
            check_ins: other
                .check_ins
                .into_iter()
                .filter(|(key, state)| self.check_ins.get(key).is_none_or(|here| state > here))
                .collect(),
            practice: other
                .practice
                .into_iter()
                .filter(|(key, state)| self.practice.get(key).is_none_or(|here| state > here))
                .collect(),
        }
    }

    /// Entries in it.
    #[must_use]
    pub fn entries(&self) -> usize {
        self.check_ins.len() + self.practice.len()
    }

    /// The check-ins as they stand in a file, by device, date and concept.
    #[must_use]
    pub fn check_in_entries(&self) -> Vec<CheckIn> {
        self.check_ins
            .iter()
            .map(|(key, state)| CheckIn {
                device: key.device.clone(),
                date: key.date,
                concept: key.concept.clone(),
                sequence: state.sequence,
                confidence: state.confidence,
                outcome: state.outcome,
            })
            .collect()
    }

    /// The practice counts as they stand in a file, by device, date and concept.
    #[must_use]
    pub fn practice_entries(&self) -> Vec<Practice> {
        self.practice
            .iter()
            .map(|(key, state)| Practice {
                device: key.device.clone(),
                date: key.date,
                concept: key.concept.clone(),
                sequence: state.sequence,
                answers: state.answers.clone(),
                mistakes: state.mistakes.clone(),
            })
            .collect()
    }

    /// All keys with the sequence of their entry.
    pub fn keys(&self) -> impl Iterator<Item = &Key> {
        self.check_ins.keys().chain(self.practice.keys())
    }
}
