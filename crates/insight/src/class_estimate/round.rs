//! A Newton step for all effects: steps 1 to 3 of a round.

use super::constants::{COMMON_SHIFT_VARIANCE, LEVEL, MOST_STEP};
use super::model::Model;
use super::pair::{Block, Effects, Pair};
use super::solve::{Covariance, solve};
use super::weighed::{CellEvidence, ConceptEvidence, Weighed};
use crate::grid::Grid;

/// A student on a concept, after the effect of this cell alone was eliminated. The letters
/// are those of `docs/insight.md`.
#[derive(Debug, Clone, Copy)]
pub(super) struct Cell {
    /// A: the information about the logit of success.
    information: f64,
    /// B: the information that logit and shift share.
    shared: f64,
    /// W: the variance of the cell's own effect, if all others were known.
    pub variance: f64,
    /// λW: the part of a change of the other effects that the own effect leaves.
    pub left: f64,
    /// G: the gradient of the own effect.
    gradient: f64,
    /// The gradient of the sum of the other effects.
    outer_gradient: Pair,
    /// The curvature of that sum.
    outer_curvature: Block,
}

impl Cell {
    /// The cell at the present model.
    fn at(model: &Model, student: usize, concept: usize, evidence: &CellEvidence) -> Self {
        let inverse_variance = 1.0 / model.variances.own;
        let (mut score, mut information) = (0.0, 0.0);
        if evidence.answers > 0.0 {
            let success = model.success(student, concept);
            score = evidence.right - evidence.answers * success.value;
            information = evidence.answers * success.slope;
        }
        let (mut rating_score, mut rating_information) = (0.0, 0.0);
        if evidence.has_ratings() {
            let probabilities = model.ratings(student, concept);
            rating_score = probabilities.score(&evidence.ratings);
            rating_information = probabilities.information(&evidence.ratings);
        }
        let slope = model.scale.slope(student);
        score += slope * rating_score;
        information += slope * slope * rating_information;
        let shared = slope * rating_information;
        let variance = 1.0 / (information + inverse_variance);
        let gradient = score - inverse_variance * model.own[(student, concept)];
        let left = inverse_variance * variance;
        Self {
            information,
            shared,
            variance,
            left,
            gradient,
            outer_gradient: Pair {
                logit: score - information * variance * gradient,
                shift: rating_score - shared * variance * gradient,
            },
            outer_curvature: Block {
                logit: information * left,
                cross: shared * left,
                shift: rating_information - shared * shared * variance,
            },
        }
    }

    /// The weights of the other effects in the logit of success.
    pub fn weights(&self) -> Pair {
        Pair {
            logit: self.left,
            shift: -self.shared * self.variance,
        }
    }

    /// The weights of the other effects in the own effect.
    fn own_weights(&self) -> Pair {
        Pair {
            logit: -self.information * self.variance,
            shift: -self.shared * self.variance,
        }
    }

    /// The variance of the own effect; `others` is the covariance of the other effects.
    pub fn own_variance(&self, others: Block) -> f64 {
        self.variance + others.form(self.own_weights())
    }

    /// The part of the variance of an answer that the fit of the other effects takes away.
    pub fn fitted_share(&self, others: Block) -> f64 {
        self.information * self.left * others.logit
    }

    /// The covariance of logit and shift; `others` is that of the other effects.
    fn spread(&self, others: Block) -> Block {
        let weights = self.weights();
        let with_others = others.times(weights);
        Block {
            logit: self.variance + weights.dot(with_others),
            cross: with_others.shift,
            shift: others.shift,
        }
    }
}

/// What a round leaves beside the model.
pub(super) struct Round {
    pub cells: Grid<Cell>,
    /// The covariance of logit and shift of each cell, without its own effect.
    pub others: Grid<Block>,
    pub covariance: Covariance,
}

/// Moves all effects of the model one step towards the best.
pub(super) fn step(model: &mut Model, weighed: &Weighed) -> Round {
    let (students, concepts) = (model.effects.students.len(), model.effects.concepts.len());
    let cells = Grid::build(students, concepts, |student, concept| {
        Cell::at(model, student, concept, &weighed.cells[(student, concept)])
    });
    let priors = priors(model, &weighed.concepts);
    let gradient = gradient(model, &cells, &priors);
    let curvature = Grid::build(students, concepts, |student, concept| {
        cells[(student, concept)].outer_curvature
    });
    let solved = solve(&curvature, &priors, &gradient);

    let mut longest: f64 = 0.0;
    let own = Grid::build(students, concepts, |student, concept| {
        let cell = &cells[(student, concept)];
        let outer = solved.step.cell(student, concept);
        let own = cell.gradient * cell.variance + cell.own_weights().dot(outer);
        longest = longest
            .max((outer.logit + own).abs())
            .max(outer.shift.abs());
        own
    });
    let part = if longest > MOST_STEP {
        MOST_STEP / longest
    } else {
        1.0
    };
    for (effect, step) in model.effects.pairs_mut().zip(solved.step.pairs()) {
        *effect += *step * part;
    }
    let covariance = solved.covariance;
    let round = Round {
        cells,
        others: Grid::build(students, concepts, |student, concept| {
            covariance.cell(student, concept)
        }),
        covariance,
    };
    model.own = Grid::build(students, concepts, |student, concept| {
        model.own[(student, concept)] + part * own[(student, concept)]
    });
    model.spread = Grid::build(students, concepts, |student, concept| {
        round.cells[(student, concept)].spread(round.others[(student, concept)])
    });
    round
}

/// The inverse prior variances of the effects.
fn priors(model: &Model, concepts: &[ConceptEvidence]) -> Effects {
    let variances = &model.variances;
    Effects {
        class: Pair {
            logit: 1.0 / LEVEL.1,
            shift: 1.0 / COMMON_SHIFT_VARIANCE,
        },
        students: vec![
            Pair {
                logit: 1.0 / variances.ability,
                shift: 1.0 / variances.student_shift,
            };
            model.effects.students.len()
        ],
        concepts: concepts
            .iter()
            .map(|concept| Pair {
                logit: 1.0 / (variances.ease + variances.of_problems(concept.occasions)),
                shift: 1.0 / variances.concept_shift,
            })
            .collect(),
    }
}

/// The gradient of the effects: of the evidence, less the pull of the priors.
fn gradient(model: &Model, cells: &Grid<Cell>, priors: &Effects) -> Effects {
    let mut found = Effects::zero(priors.students.len(), priors.concepts.len());
    for (row, of_student) in cells.rows().zip(&mut found.students) {
        for (cell, of_concept) in row.iter().zip(&mut found.concepts) {
            found.class += cell.outer_gradient;
            *of_student += cell.outer_gradient;
            *of_concept += cell.outer_gradient;
        }
    }
    for ((sum, effect), prior) in found
        .pairs_mut()
        .zip(model.effects.pairs())
        .zip(priors.pairs())
    {
        sum.logit -= prior.logit * effect.logit;
        sum.shift -= prior.shift * effect.shift;
    }
    found.class.logit += priors.class.logit * LEVEL.0;
    found
}
