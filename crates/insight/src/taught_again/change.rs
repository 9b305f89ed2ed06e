//! How far the results since the teaching lie from their forecast.
//!
//! Practice is no part of it: exercises at home are easier or harder than the review, and what was
//! taught again is often practised more.

use super::super::class_estimate::ClassEstimate;
use super::super::evidence::Evidence;
use super::super::stats::logit;
use std::collections::BTreeSet;

/// The results of some students on a concept.
#[derive(Debug, Clone, Default)]
pub(super) struct Change {
    /// Results, and right ones among them.
    pub answers: u32,
    pub right: u32,
    /// How many would be right by the forecast: Σ p.
    pub foretold: f64,
    /// The variance of that by chance alone: Σ p(1 − p).
    pub information: f64,
    /// Σ p(1 − p) · logit p.
    weighted_start: f64,
}

impl Change {
    /// The change against the forecast, on the logit of success.
    pub fn logit(&self) -> f64 {
        (f64::from(self.right) - self.foretold) / self.information
    }

    /// The forecast, as a logit.
    pub fn start(&self) -> f64 {
        self.weighted_start / self.information
    }

    fn add(&mut self, probability: f64, right: bool) {
        let information = probability * (1.0 - probability);
        self.answers = self.answers.saturating_add(1);
        self.right = self.right.saturating_add(u32::from(right));
        self.foretold += probability;
        self.information += information;
        self.weighted_start += information * logit(probability);
    }
}

/// The changes of every concept.
pub(super) struct Changes {
    /// Of the students who were taught.
    pub members: Vec<Change>,
    /// Of all others.
    pub others: Vec<Change>,
}

/// Sums the results by concept, without the cells that are left out.
pub(super) fn by_concept(
    before: &ClassEstimate,
    since: &Evidence,
    members: &BTreeSet<usize>,
    left_out: &BTreeSet<(usize, usize)>,
) -> Changes {
    let mut found = Changes {
        members: vec![Change::default(); since.concepts()],
        others: vec![Change::default(); since.concepts()],
    };
    for student in 0..since.students() {
        let list = if members.contains(&student) {
            &mut found.members
        } else {
            &mut found.others
        };
        for (concept, change) in list.iter_mut().enumerate() {
            if left_out.contains(&(student, concept)) {
                continue;
            }
            let Some(foretold) = before.student(student, concept) else {
                continue;
            };
            let probability = foretold.mean();
            for pass in 0..since.passes() {
                if let Some(right) = since.result(student, concept, pass) {
                    change.add(probability, right);
                }
            }
        }
    }
    found
}
