//! The model of a class: what it holds, and the probabilities that follow.

use super::constants::LEVEL;
use super::pair::{Block, Effects};
use super::probabilities::{Probability, RatingProbabilities};
use super::rating_scale::RatingScale;
use super::variances::Variances;
use crate::grid::Grid;

/// The model at some point of the fit.
pub(super) struct Model {
    /// For the class, each student and each concept: on the logit of success, and on the shift
    /// of the ratings.
    pub effects: Effects,
    /// What a student on a concept adds to the logit of success.
    pub own: Grid<f64>,
    pub variances: Variances,
    pub scale: RatingScale,
    /// The covariance of logit and shift, by student and concept.
    pub spread: Grid<Block>,
}

impl Model {
    /// The model before any evidence.
    pub fn start(students: usize, concepts: usize) -> Self {
        let mut effects = Effects::zero(students, concepts);
        effects.class.logit = LEVEL.0;
        Self {
            effects,
            own: Grid::filled(students, concepts, 0.0),
            variances: Variances::start(),
            scale: RatingScale::start(students),
            spread: Grid::filled(students, concepts, Block::default()),
        }
    }

    /// The mean of the logit of success of a student on a concept.
    pub fn logit(&self, student: usize, concept: usize) -> f64 {
        self.effects.cell(student, concept).logit + self.own[(student, concept)]
    }

    /// The probability that the student answers a problem of the concept right.
    pub fn success(&self, student: usize, concept: usize) -> Probability {
        let spread = self.spread[(student, concept)];
        Probability::at(self.logit(student, concept), spread.logit)
    }

    /// The probabilities of the student's ratings of the concept.
    pub fn ratings(&self, student: usize, concept: usize) -> RatingProbabilities {
        self.scale.probabilities(
            student,
            self.logit(student, concept),
            self.effects.cell(student, concept).shift,
            self.spread[(student, concept)],
        )
    }
}
