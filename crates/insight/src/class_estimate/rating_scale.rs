//! How a student's ratings follow success: slopes and thresholds.

use super::constants::{MIDDLE_THRESHOLD, THRESHOLD_GAP};
use super::pair::Block;
use super::probabilities::RatingProbabilities;

/// The scale of the ratings.
#[derive(Debug, Clone)]
pub(super) struct RatingScale {
    /// Logarithm of the slope of the class.
    pub log_slope: f64,
    /// What each student adds to that logarithm.
    pub log_own: Vec<f64>,
    /// Logarithms of the distances of the outer thresholds from the middle one.
    pub log_gaps: [f64; 2],
    /// How far each student's ratings follow success.
    pub slopes: Vec<f64>,
    /// Those distances.
    pub gaps: [f64; 2],
}

impl RatingScale {
    /// The scale with these logarithms.
    pub fn new(log_slope: f64, log_own: Vec<f64>, log_gaps: [f64; 2]) -> Self {
        Self {
            slopes: log_own.iter().map(|own| (log_slope + own).exp()).collect(),
            gaps: log_gaps.map(f64::exp),
            log_slope,
            log_own,
            log_gaps,
        }
    }

    /// The scale before any evidence.
    pub fn start(students: usize) -> Self {
        Self::new(0.0, vec![0.0; students], [THRESHOLD_GAP.ln(); 2])
    }

    /// How far this student's ratings follow success.
    pub fn slope(&self, student: usize) -> f64 {
        self.slopes.get(student).copied().unwrap_or(1.0)
    }

    /// The thresholds between the four ratings.
    pub fn thresholds(&self) -> [f64; 3] {
        let [below, above] = self.gaps;
        [
            MIDDLE_THRESHOLD - below,
            MIDDLE_THRESHOLD,
            MIDDLE_THRESHOLD + above,
        ]
    }

    /// The probabilities of a student's ratings at a logit of success and a shift, with their
    /// covariance.
    pub fn probabilities(
        &self,
        student: usize,
        logit: f64,
        shift: f64,
        spread: Block,
    ) -> RatingProbabilities {
        let slope = self.slope(student);
        let variance = slope * slope * spread.logit + 2.0 * slope * spread.cross + spread.shift;
        RatingProbabilities::at(slope * logit + shift, variance, self.thresholds())
    }
}
