//! How much students, concepts and problems vary.

use super::constants::{ABILITY, CONCEPT_SHIFT, EASE, OWN, PROBLEM, STUDENT_SHIFT};

/// The variances of the effects; see the priors of the same names in
/// [`super::constants`].
#[derive(Debug, Clone, Copy)]
pub(super) struct Variances {
    pub ability: f64,
    pub ease: f64,
    pub own: f64,
    pub student_shift: f64,
    pub concept_shift: f64,
    pub problem: f64,
}

impl Variances {
    /// Before any evidence.
    pub fn start() -> Self {
        Self {
            ability: ABILITY.variance,
            ease: EASE.variance,
            own: OWN.variance,
            student_shift: STUDENT_SHIFT.variance,
            concept_shift: CONCEPT_SHIFT.variance,
            problem: PROBLEM.variance,
        }
    }

    /// The variance of the problems that a concept was met with, after the mean over its
    /// occasions. A concept without evidence counts as if it had been met once.
    pub fn of_problems(&self, occasions: f64) -> f64 {
        self.problem / if occasions > 0.0 { occasions } else { 1.0 }
    }
}
