//! Which concepts are weak now, for the class and for each student.
//!
//! Ratings are read on the scale of results: what a rating is worth is
//! learned from the class's own pairs of rating and result, per student;
//! old reports fade; every student has one vote per concept; and a small
//! count is pulled towards the rest of the class. Steps, formulas and their
//! sources: `docs/insight.md`, "Weak spots".

mod fit;
mod scale;

use super::evidence::Evidence;
use super::stats::{logistic, logit, normal_cdf, trigamma};
use statrs::function::gamma::digamma;

/// The settings of the estimate, all named in `docs/insight.md`.
#[derive(Debug, Clone, PartialEq)]
pub struct Settings {
    /// Passes after which a report counts half.
    pub half_life_passes: f64,
    /// Weight of a fresh rating.
    pub rating_weight: f64,
    /// Weight of a fresh result.
    pub result_weight: f64,
    /// How alike practice answers of one pass are (design effect, Kish 1965,
    /// from memory).
    pub practice_likeness: f64,
    /// Share right expected at each rating before any result is known.
    pub level_anchors: [f64; 4],
    /// Answers the anchors count for.
    pub anchor_weight: f64,
    /// Shrinkage of a student's shift.
    pub shift_shrinkage: f64,
    /// Weight of evidence at which a student has half a vote.
    pub half_vote_weight: f64,
    /// Shrinkage of concept effects.
    pub concept_shrinkage: f64,
    /// Shrinkage of student effects.
    pub student_shrinkage: f64,
    /// Weight of the class picture in a student's own estimate.
    pub class_weight: f64,
    /// Normal point of the 80% interval.
    pub interval_z: f64,
    /// Sweeps of the additive fit.
    pub sweeps: usize,
    /// Stretch expected before any pair is known.
    pub stretch_prior: f64,
    /// Weight of that expectation.
    pub stretch_prior_weight: f64,
    /// Standard deviation left however many report.
    pub floor_sd: f64,
    /// Chance of success below which a student needs help.
    pub pass_chance: f64,
    /// Fewest students with a report before a concept is ranked without a tag.
    pub enough_raters: usize,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            half_life_passes: 3.0,
            rating_weight: 0.75,
            result_weight: 1.0,
            practice_likeness: 0.2,
            level_anchors: [0.20, 0.45, 0.70, 0.90],
            anchor_weight: 20.0,
            shift_shrinkage: 4.0,
            half_vote_weight: 1.0,
            concept_shrinkage: 1.0,
            student_shrinkage: 2.0,
            class_weight: 3.0,
            interval_z: 1.2816,
            sweeps: 30,
            stretch_prior: 1.6,
            stretch_prior_weight: 1.0,
            floor_sd: 0.06,
            pass_chance: 0.6,
            enough_raters: 5,
        }
    }
}

/// Weight of evidence from which a student counts as having reported.
const REPORTED_WEIGHT: f64 = 0.1;

/// A concept, for the class.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ConceptEstimate {
    /// Estimated share of the class that would succeed now, 0.02 to 0.98.
    pub share: f64,
    /// Standard deviation of that estimate.
    pub sd: f64,
    /// Low end of the likely range (80%), at least 0.
    pub low: f64,
    /// High end of the likely range (80%), at most 1.
    pub high: f64,
    /// Students with a report that still counts.
    pub raters: usize,
    /// The sure part of need: share in need less its uncertainty. Larger is
    /// weaker; concepts are ranked by it.
    pub sure_need: f64,
    /// Fewer than five students reported: ask first, do not teach on this.
    pub few_reports: bool,
}

/// A student's chance of success on a concept: a beta distribution.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChanceEstimate {
    /// Weight of success.
    pub success: f64,
    /// Weight of failure.
    pub failure: f64,
}

impl ChanceEstimate {
    /// Mean chance of success.
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.success / (self.success + self.failure)
    }

    /// Likely range at normal point `z`, on the logistic scale.
    #[must_use]
    pub fn range(&self, z: f64) -> (f64, f64) {
        let (middle, half) = self.logit_moments();
        (logistic(middle - z * half), logistic(middle + z * half))
    }

    /// Chance that the chance of success is below `pass_chance`.
    #[must_use]
    pub fn need(&self, pass_chance: f64) -> f64 {
        let (middle, half) = self.logit_moments();
        normal_cdf((logit(pass_chance) - middle) / half)
    }

    fn logit_moments(&self) -> (f64, f64) {
        let middle = digamma(self.success) - digamma(self.failure);
        let half = (trigamma(self.success) + trigamma(self.failure)).sqrt();
        (middle, half)
    }
}

/// The class picture up to one pass.
#[derive(Debug, Clone)]
pub struct ClassPicture {
    /// Share right at each rating, over the class.
    pub level_value: [f64; 4],
    /// How much a student's ratings over- or understate, on the logit scale:
    /// below 0 is less right than the ratings say.
    pub student_shift: Vec<f64>,
    /// How much ratings compress the differences between concepts, 1 to 4.
    pub stretch: f64,
    /// Every concept, in concept order.
    pub concepts: Vec<ConceptEstimate>,
    /// Concept numbers, weakest first.
    pub ranking: Vec<usize>,
    chances: Vec<ChanceEstimate>,
}

impl ClassPicture {
    /// The estimate for a student on a concept; `None` outside the class.
    #[must_use]
    pub fn chance(&self, student: usize, concept: usize) -> Option<ChanceEstimate> {
        if concept >= self.concepts.len() {
            return None;
        }
        self.chances
            .get(student * self.concepts.len() + concept)
            .copied()
    }
}

/// Estimates the class picture from everything reported up to `last_pass`.
#[must_use]
pub fn class_picture(evidence: &Evidence, last_pass: usize, settings: &Settings) -> ClassPicture {
    let scale = scale::learn(evidence, last_pass, settings);
    let sums = fit::weigh(evidence, last_pass, &scale, settings);
    let fitted = fit::additive(&sums, settings);

    let concepts: Vec<ConceptEstimate> = (0..evidence.concepts())
        .map(|c| {
            let (share, sd) = (fitted.share[c], fitted.sd[c]);
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
    let mut ranking: Vec<usize> = (0..concepts.len()).collect();
    ranking.sort_by(|a, b| {
        concepts[*b]
            .sure_need
            .total_cmp(&concepts[*a].sure_need)
            .then(a.cmp(b))
    });
    ClassPicture {
        level_value: scale.level_value,
        student_shift: scale.student_shift,
        stretch: scale.stretch,
        concepts,
        ranking,
        chances: fit::chances(&sums, &fitted, settings),
    }
}

#[cfg(test)]
mod tests;
