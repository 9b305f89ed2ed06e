//! How far the answers since the teaching lie from their forecast.

use super::super::class_estimate::ClassEstimate;
use super::super::evidence::Evidence;
use super::super::stats::logit;
use std::collections::{BTreeMap, BTreeSet};

/// Correlation of the practice answers of one student and concept within one pass, as in the class
/// estimate.
const PRACTICE_LIKENESS: f64 = 0.2;

/// The answers of some students on a concept.
#[derive(Debug, Clone, Default)]
pub(super) struct Change {
    /// Answers, and right ones among them.
    pub answers: u32,
    pub right: u32,
    /// Weight of what is right beyond the forecast: Σ weight · (share right − p).
    pub score: f64,
    /// Its variance by chance alone: Σ weight · p(1 − p).
    pub information: f64,
    /// Σ weight · p(1 − p) · logit p.
    weighted_start: f64,
    /// Each forecast logit, with the number of answers.
    pub forecasts: Vec<(f64, u32)>,
}

impl Change {
    /// The change against the forecast, on the logit of success.
    pub fn logit(&self) -> f64 {
        self.score / self.information
    }

    /// The forecast, as a logit.
    pub fn start(&self) -> f64 {
        self.weighted_start / self.information
    }

    fn add(&mut self, probability: f64, right: u32, answers: u32) {
        if answers == 0 {
            return;
        }
        let many = f64::from(answers);
        let weight = many / (1.0 + PRACTICE_LIKENESS * (many - 1.0));
        let information = weight * probability * (1.0 - probability);
        let start = logit(probability);
        self.answers = self.answers.saturating_add(answers);
        self.right = self.right.saturating_add(right);
        self.score += weight * (f64::from(right) / many - probability);
        self.information += information;
        self.weighted_start += information * start;
        self.forecasts.push((start, answers));
    }
}

/// The changes of every concept.
pub(super) struct Changes {
    /// Of the students who were taught.
    pub members: Vec<Change>,
    /// Of all others.
    pub others: Vec<Change>,
}

/// Sums the answers by concept, without the cells that are left out.
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
    let mut practice: BTreeMap<(usize, usize), BTreeMap<usize, (u32, u32)>> = BTreeMap::new();
    for count in since.practice() {
        let of = practice.entry((count.student, count.concept)).or_default();
        let sum = of.entry(count.pass).or_default();
        sum.0 = sum.0.saturating_add(count.right);
        sum.1 = sum
            .1
            .saturating_add(count.right)
            .saturating_add(count.wrong);
    }
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
                    change.add(probability, u32::from(right), 1);
                }
            }
            for (right, answers) in practice
                .get(&(student, concept))
                .into_iter()
                .flat_map(|of| of.values())
            {
                change.add(probability, *right, *answers);
            }
        }
    }
    found
}
