//! The estimates of a concept, and of a student on a concept.

use super::probabilities::Probability;
use crate::stats::{logit, normal_cdf};

/// A concept, for the class or for some of its students.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ConceptEstimate {
    /// Estimated share of the students who would succeed now on a typical problem.
    pub share: f64,
    /// Standard deviation of that estimate, for the order. The range has its own.
    pub sd: f64,
    /// Low end of the likely range (80%).
    pub low: f64,
    /// High end of the likely range (80%).
    pub high: f64,
    /// Students with a report that still counts.
    pub reporters: usize,
    /// The share in need less its uncertainty. Concepts are ranked by it, the largest first.
    pub certain_need: f64,
    /// Fewer than five students reported, so the teacher should ask before teaching by it.
    pub few_reports: bool,
    /// The students feel sure, and their answers show that most cannot do it.
    pub sure_and_wrong: bool,
}

/// A student on a concept: the logit of success, as a normal distribution.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StudentEstimate {
    /// Mean of the logit.
    pub logit: f64,
    /// Standard deviation of the logit.
    pub sd: f64,
}

impl StudentEstimate {
    /// Mean probability of success.
    #[must_use]
    pub fn mean(&self) -> f64 {
        Probability::at(self.logit, self.sd * self.sd).value
    }

    /// The probability that the probability of success is below `pass_probability`.
    #[must_use]
    pub fn need(&self, pass_probability: f64) -> f64 {
        normal_cdf((logit(pass_probability) - self.logit) / self.sd)
    }
}
