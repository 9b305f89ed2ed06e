//! The settings of the estimate.

/// The settings of the estimate; `docs/insight.md` describes them.
#[derive(Debug, Clone, PartialEq)]
pub struct Settings {
    /// Passes after which the weight of a report is halved.
    pub half_life_passes: f64,
    /// Weight of a fresh rating.
    pub rating_weight: f64,
    /// Weight of a fresh result.
    pub result_weight: f64,
    /// Correlation of the practice answers of one pass (design effect, Kish 1965, from
    /// memory).
    pub practice_likeness: f64,
    /// Share of right answers expected at each rating without results.
    pub level_anchors: [f64; 4],
    /// Number of answers that the anchors count as.
    pub anchor_weight: f64,
    /// Shrinkage of a student's shift.
    pub shift_shrinkage: f64,
    /// Weight of evidence at which a student has half a vote.
    pub half_vote_weight: f64,
    /// Shrinkage of concept effects.
    pub concept_shrinkage: f64,
    /// Shrinkage of student effects.
    pub student_shrinkage: f64,
    /// Weight of the class estimate in a student's own estimate.
    pub class_weight: f64,
    /// Quantile of the normal distribution for the 80% interval.
    pub interval_z: f64,
    /// Sweeps of the additive fit.
    pub sweeps: usize,
    /// Stretch expected without pairs.
    pub stretch_prior: f64,
    /// Weight of that expectation.
    pub stretch_prior_weight: f64,
    /// Standard deviation at least, however many students report.
    pub floor_sd: f64,
    /// Probability of success below which a student needs help.
    pub pass_probability: f64,
    /// Students with a report from which a concept is ranked without a note.
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
            pass_probability: 0.6,
            enough_raters: 5,
        }
    }
}
