//! The probabilities of an answer and of a rating, and how they change with the logit.
//!
//! The logit is not known exactly. The probability is averaged over its variance: for
//! x ~ N(m, v), E σ(x) ≈ σ(κm) with κ = 1/√(1 + πv/8) (MacKay 1992, from memory).

use super::constants::LEAST_PROBABILITY;
use crate::stats::logistic;

/// κ.
fn averaging(variance: f64) -> f64 {
    1.0 / (1.0 + std::f64::consts::PI * variance / 8.0).sqrt()
}

/// A probability with its slope, the derivative by the mean of the logit.
#[derive(Debug, Clone, Copy)]
pub(super) struct Probability {
    pub value: f64,
    pub slope: f64,
}

impl Probability {
    /// The probability at a logit with this mean and variance.
    pub fn at(mean: f64, variance: f64) -> Self {
        let averaging = averaging(variance);
        let value = logistic(averaging * mean);
        Self {
            value,
            slope: averaging * value * (1.0 - value),
        }
    }
}

/// The four ratings at one feeling of being sure.
#[derive(Debug, Clone, Copy)]
pub(super) struct RatingProbabilities {
    /// The probability of each rating, at least 1e-9.
    pub of: [f64; 4],
    /// Slopes of the probabilities to reach each threshold.
    pub slopes: [f64; 3],
    /// For one report of each rating: the derivative of its log likelihood by the feeling.
    score: [f64; 4],
    /// For one report of each rating: the information about the feeling.
    information: [f64; 4],
}

impl RatingProbabilities {
    /// The probabilities at a feeling with this mean and variance.
    pub fn at(mean: f64, variance: f64, thresholds: [f64; 3]) -> Self {
        let averaging = averaging(variance);
        let [f1, f2, f3] = thresholds.map(|threshold| logistic(averaging * (mean - threshold)));
        let [s1, s2, s3] = [f1, f2, f3].map(|f| averaging * f * (1.0 - f));
        Self {
            of: [1.0 - f1, f1 - f2, f2 - f3, f3]
                .map(|probability| probability.max(LEAST_PROBABILITY)),
            slopes: [s1, s2, s3],
            score: [-f1, 1.0 - f1 - f2, 1.0 - f2 - f3, 1.0 - f3],
            information: [s1, s1 + s2, s2 + s3, s3],
        }
    }

    /// The derivative of the log likelihood of these numbers of ratings.
    pub fn score(&self, ratings: &[f64; 4]) -> f64 {
        weighted_sum(ratings, &self.score)
    }

    /// Their information.
    pub fn information(&self, ratings: &[f64; 4]) -> f64 {
        weighted_sum(ratings, &self.information)
    }
}

fn weighted_sum(weights: &[f64; 4], values: &[f64; 4]) -> f64 {
    weights.iter().zip(values).map(|(w, v)| w * v).sum()
}
