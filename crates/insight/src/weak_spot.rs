//! Estimates which concepts are weak now, for the class and for each student.
//!
//! The class's own pairs of rating and result convert ratings to the scale of results, with a shift
//! for each student. Old reports count less. Every student has one vote for each concept. Small
//! samples are shrunk towards the rest of the class. Steps, formulas and their
//! sources: `docs/insight.md`, "Weak spots".

mod fit;
mod probability;
mod scale;
mod settings;

pub use probability::ProbabilityEstimate;
pub use settings::Settings;

use super::evidence::Evidence;

/// Weight of evidence from which a student counts as a reporter.
const REPORTED_WEIGHT: f64 = 0.1;

/// The estimate of a concept for the class.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ConceptEstimate {
    /// Estimated share of the class that has it now, 0.02 to 0.98.
    pub share: f64,
    /// Standard deviation of that estimate.
    pub sd: f64,
    /// Low end of the likely range (80%), at least 0.
    pub low: f64,
    /// High end of the likely range (80%), at most 1.
    pub high: f64,
    /// Students with a report that still counts.
    pub raters: usize,
    /// The share that needs it, minus its uncertainty. Concepts are ranked by this, largest first.
    pub sure_need: f64,
    /// Whether fewer than five students reported, so that the teacher should ask first.
    pub few_reports: bool,
}

/// The class estimate up to one pass.
#[derive(Debug, Clone)]
pub struct ClassEstimate {
    /// Share of right answers at each rating, over the class.
    pub level_value: [f64; 4],
    /// How much results are above each student's ratings, on the logit scale; below 0 the ratings are
    /// too high.
    pub student_shift: Vec<f64>,
    /// Factor by which ratings compress the differences between concepts, 1 to 4.
    pub stretch: f64,
    /// Every concept, in concept order.
    pub concepts: Vec<ConceptEstimate>,
    /// Concept numbers, weakest first.
    pub ranking: Vec<usize>,
    probabilities: Vec<ProbabilityEstimate>,
}

impl ClassEstimate {
    /// The estimate for a student on a concept; `None` outside the class.
    #[must_use]
    pub fn probability(&self, student: usize, concept: usize) -> Option<ProbabilityEstimate> {
        if concept >= self.concepts.len() {
            return None;
        }
        self.probabilities
            .get(student * self.concepts.len() + concept)
            .copied()
    }
}

/// Makes the class estimate from the reports up to `last_pass`.
#[must_use]
pub fn class_estimate(evidence: &Evidence, last_pass: usize, settings: &Settings) -> ClassEstimate {
    let scale = scale::learn(evidence, last_pass, settings);
    let sums = fit::weigh(evidence, last_pass, &scale, settings);
    let fitted = fit::additive(&sums, evidence.students(), evidence.concepts(), settings);

    let concepts: Vec<ConceptEstimate> = fitted
        .concepts
        .iter()
        .enumerate()
        .map(|(c, &fit::Share { mean: share, sd })| {
            let reach = settings.interval_z * sd;
            let raters = sums.raters(c, REPORTED_WEIGHT);
            ConceptEstimate {
                share,
                sd,
                low: (share - reach).max(0.0),
                high: (share + reach).min(1.0),
                raters,
                sure_need: 1.0 - share - reach,
                few_reports: raters < settings.enough_raters,
            }
        })
        .collect();
    let mut by_need: Vec<(usize, f64)> = concepts.iter().map(|c| c.sure_need).enumerate().collect();
    by_need.sort_by(|(a, a_need), (b, b_need)| b_need.total_cmp(a_need).then(a.cmp(b)));
    let ranking = by_need.into_iter().map(|(concept, _)| concept).collect();
    ClassEstimate {
        level_value: scale.level_value,
        student_shift: scale.student_shift,
        stretch: scale.stretch,
        concepts,
        ranking,
        probabilities: fit::probabilities(&sums, &fitted, settings),
    }
}

#[cfg(test)]
mod tests;
