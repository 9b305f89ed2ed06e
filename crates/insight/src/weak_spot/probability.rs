//! The probability that a student succeeds on a concept.

use crate::stats::{logistic, logit, normal_cdf, trigamma};
use statrs::function::gamma::digamma;

/// A student's probability of success on a concept: a beta distribution.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ProbabilityEstimate {
    /// Weight of success.
    pub success: f64,
    /// Weight of failure.
    pub failure: f64,
}

impl ProbabilityEstimate {
    /// Mean probability of success.
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.success / (self.success + self.failure)
    }

    /// Likely range at the normal quantile `z`, on the logit scale.
    #[must_use]
    pub fn range(&self, z: f64) -> (f64, f64) {
        let (middle, half) = self.logit_moments();
        (logistic(middle - z * half), logistic(middle + z * half))
    }

    /// How probable it is that the probability of success is below `pass_probability`.
    #[must_use]
    pub fn need(&self, pass_probability: f64) -> f64 {
        let (middle, half) = self.logit_moments();
        normal_cdf((logit(pass_probability) - middle) / half)
    }

    fn logit_moments(&self) -> (f64, f64) {
        let middle = digamma(self.success) - digamma(self.failure);
        let half = (trigamma(self.success) + trigamma(self.failure)).sqrt();
        (middle, half)
    }
}
