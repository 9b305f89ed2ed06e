//! Merges records.
//!
//! A record is a set of entries, one for each (device, school date, concept). Of two
//! entries with the same key the newer content stays; of two check-ins the newer rating
//! and the newer outcome, each by itself. Thus the union is idempotent, commutative and
//! associative: files may arrive twice, late or in any order.

use crate::entry::{CheckIn, Entry, Key, Practice};
use chrono::NaiveDate;

/// Everything known of one student, in the order of the keys.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Record {
    check_ins: Vec<CheckIn>,
    practice: Vec<Practice>,
}

/// Returns the entries by key, each key once.
fn united<E: Entry>(mut entries: Vec<E>) -> Vec<E> {
    // Records that this program wrote are in order already.
    if !entries.is_sorted_by(|a, b| a.key() < b.key()) {
        entries.sort_by(|a, b| a.key().cmp(&b.key()));
        let mut kept: Vec<E> = Vec::with_capacity(entries.len());
        for entry in entries {
            match kept.last_mut().filter(|last| last.key() == entry.key()) {
                Some(last) => drop(last.absorb(entry)),
                None => kept.push(entry),
            }
        }
        return kept;
    }
    entries
}

/// Merges `other` into `here`, both in the order of their keys. Returns the places in the
/// result of the entries that are new or newer.
fn merge<E: Entry>(here: &mut Vec<E>, other: Vec<E>) -> Vec<usize> {
    let mut changed = Vec::new();
    let mut result = Vec::with_capacity(here.len().max(other.len()));
    let mut mine = std::mem::take(here).into_iter().peekable();
    for theirs in other {
        while let Some(entry) = mine.next_if(|entry| entry.key() < theirs.key()) {
            result.push(entry);
        }
        match mine.next_if(|entry| entry.key() == theirs.key()) {
            Some(mut entry) => {
                if entry.absorb(theirs) {
                    changed.push(result.len());
                }
                result.push(entry);
            }
            None => {
                changed.push(result.len());
                result.push(theirs);
            }
        }
    }
    result.extend(mine);
    *here = result;
    changed
}

impl Record {
    /// Makes a record of entries in any order.
    #[must_use]
    pub fn from_entries(
        check_ins: impl IntoIterator<Item = CheckIn>,
        practice: impl IntoIterator<Item = Practice>,
    ) -> Self {
        let practice = practice.into_iter().map(|mut entry| {
            entry.answers.sort_unstable();
            entry
        });
        Self {
            check_ins: united(check_ins.into_iter().collect()),
            practice: united(practice.collect()),
        }
    }

    /// Merges another record into this one. Returns the merged entries that are new or
    /// newer.
    pub fn merge(&mut self, other: Self) -> Self {
        fn at<E: Clone>(entries: &[E], places: &[usize]) -> Vec<E> {
            places
                .iter()
                .filter_map(|place| entries.get(*place).cloned())
                .collect()
        }
        let check_ins = merge(&mut self.check_ins, other.check_ins);
        let practice = merge(&mut self.practice, other.practice);
        Self {
            check_ins: at(&self.check_ins, &check_ins),
            practice: at(&self.practice, &practice),
        }
    }

    /// Splits the record into the entries of some dates and the others.
    #[must_use]
    pub fn split(self, of: impl Fn(NaiveDate) -> bool) -> (Self, Self) {
        let (check_ins, other_check_ins) = (self.check_ins.into_iter()).partition(|e| of(e.date));
        let (practice, other_practice) = (self.practice.into_iter()).partition(|e| of(e.date));
        (
            Self {
                check_ins,
                practice,
            },
            Self {
                check_ins: other_check_ins,
                practice: other_practice,
            },
        )
    }

    /// The number of entries.
    #[must_use]
    pub fn entries(&self) -> usize {
        self.check_ins.len() + self.practice.len()
    }

    /// The check-ins by device, date and concept.
    #[must_use]
    pub fn check_ins(&self) -> &[CheckIn] {
        &self.check_ins
    }

    /// The practice counts by device, date and concept.
    #[must_use]
    pub fn practice(&self) -> &[Practice] {
        &self.practice
    }

    /// The check-ins and the practice counts.
    #[must_use]
    pub fn into_entries(self) -> (Vec<CheckIn>, Vec<Practice>) {
        (self.check_ins, self.practice)
    }

    /// The keys of all entries.
    pub fn keys(&self) -> impl Iterator<Item = Key<'_>> {
        let check_ins = self.check_ins.iter().map(Entry::key);
        check_ins.chain(self.practice.iter().map(Entry::key))
    }
}
