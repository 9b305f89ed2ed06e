//! The misconceptions of a class, as the board lists them.

use super::views::ConceptMisconception;
use crate::class::OpenClass;
use crate::error::DeskError;
use crate::estimate::{MisconceptionCount, misconceptions};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::Language;
use surefoot_store::DeskStore;

/// Misconceptions of a concept at most.
const OF_A_CONCEPT: usize = 5;

/// Misconceptions over all concepts at most.
const OVER_ALL: usize = 40;

/// The misconceptions of some seats.
pub(super) struct Misconceptions {
    /// Those of each concept, most frequent first.
    pub by_concept: BTreeMap<String, Vec<MisconceptionCount>>,
    /// Those of the concepts of the rotation, of most students first.
    pub over_all: Vec<ConceptMisconception>,
    /// How many more there are over all concepts.
    pub left_out: usize,
}

/// How often a misconception of a concept led to an answer.
struct Sum {
    times: u32,
    students: BTreeSet<u32>,
    newest: NaiveDate,
}

impl Misconceptions {
    pub(super) fn of(
        desk: &DeskStore,
        class: &OpenClass,
        seats: &[u32],
        language: Language,
        today: NaiveDate,
    ) -> Result<Self, DeskError> {
        let mut sums: BTreeMap<(String, String), Sum> = BTreeMap::new();
        for found in misconceptions(desk, class, today)? {
            if !seats.contains(&found.seat) {
                continue;
            }
            let sum = sums.entry((found.concept, found.code)).or_insert(Sum {
                times: 0,
                students: BTreeSet::new(),
                newest: found.date,
            });
            sum.times = sum.times.saturating_add(found.times);
            sum.students.insert(found.seat);
            sum.newest = sum.newest.max(found.date);
        }
        let mut by_concept: BTreeMap<String, Vec<MisconceptionCount>> = BTreeMap::new();
        let mut over_all = Vec::new();
        for ((concept, code), sum) in sums {
            if class.facts.concepts.contains_key(&concept) {
                over_all.push(ConceptMisconception {
                    concept: class.facts.name(&concept, language),
                    code: code.clone(),
                    count: sum.times,
                    students: sum.students.len(),
                    newest_days: (today - sum.newest).num_days(),
                });
            }
            by_concept
                .entry(concept)
                .or_default()
                .push(MisconceptionCount {
                    code,
                    count: sum.times,
                });
        }
        for listed in by_concept.values_mut() {
            listed.sort_by(|a, b| b.count.cmp(&a.count).then(a.code.cmp(&b.code)));
            listed.truncate(OF_A_CONCEPT);
        }
        // How many students have it matters more than how often.
        over_all.sort_by_key(|m| std::cmp::Reverse((m.students, m.count)));
        let left_out = over_all.len().saturating_sub(OVER_ALL);
        over_all.truncate(OVER_ALL);
        Ok(Self {
            by_concept,
            over_all,
            left_out,
        })
    }
}
