//! Fits how much students, concepts and problems vary: step 4 to 6 of the fit.

use super::constants::{
    ABILITY, CONCEPT_SHIFT, EASE, FIXED_POINT_WEIGHT, LEAST_INFORMATION, LEAST_PAIRS,
    MOST_FITTED_SHARE, MOST_VARIANCE, OWN, OWN_RANGE, PAIR_NOISE, PROBLEM, PROBLEM_RANGE, Prior,
    STUDENT_SHIFT,
};
use super::model::Model;
use super::probabilities::Probability;
use super::residuals::Residual;
use super::round::Round;
use super::variances::Variances;
use super::weighed::Weighed;
use crate::grid::Grid;

/// One step of every variance but that of the problems, by the fixed point of MacKay (1992,
/// from memory): the squared effects that were found, over the number of effects that the
/// evidence determines.
pub(super) fn step(model: &Model, round: &Round, weighed: &Weighed) -> Variances {
    let now = model.variances;
    let covariance = &round.covariance;
    let students = || {
        let effects = model.effects.students.iter().enumerate();
        effects.map(|(student, effect)| (*effect, covariance.student(student)))
    };
    let concepts = || {
        let effects = model.effects.concepts.iter().enumerate();
        effects.map(|(concept, effect)| (*effect, covariance.concept(concept)))
    };
    // What a concept adds on a typical problem: without the part of the problems met.
    let ease = concepts()
        .zip(&weighed.concepts)
        .map(|((effect, own), of)| {
            let problems = now.of_problems(of.occasions);
            let kept = now.ease / (now.ease + problems);
            (
                kept * effect.logit,
                kept * problems + kept * kept * own.logit,
            )
        });
    let own = model.own.places().map(|(student, concept)| {
        let others = round.others[(student, concept)];
        let cell = &round.cells[(student, concept)];
        (model.own[(student, concept)], cell.own_variance(others))
    });
    Variances {
        ability: fixed_point(
            &ABILITY,
            now.ability,
            students().map(|(effect, own)| (effect.logit, own.logit)),
        ),
        ease: fixed_point(&EASE, now.ease, ease),
        own: fixed_point(&OWN, now.own, own),
        student_shift: fixed_point(
            &STUDENT_SHIFT,
            now.student_shift,
            students().map(|(effect, own)| (effect.shift, own.shift)),
        ),
        concept_shift: fixed_point(
            &CONCEPT_SHIFT,
            now.concept_shift,
            concepts().map(|(effect, own)| (effect.shift, own.shift)),
        ),
        problem: now.problem,
    }
}

/// `effects` are the means and variances found.
fn fixed_point(prior: &Prior, now: f64, effects: impl Iterator<Item = (f64, f64)>) -> f64 {
    let (mut squares, mut determined) = (prior.weight * prior.variance, prior.weight);
    for (mean, variance) in effects {
        squares += mean * mean;
        determined += 1.0 - variance / now;
    }
    (squares / determined).min(MOST_VARIANCE)
}

/// The variance of the own effects, from pairs of answers in one cell. The fixed point finds
/// too little where a cell has one or two answers.
#[derive(Debug, Clone, Copy)]
pub(super) struct FromPairs {
    variance: f64,
    information: f64,
}

impl FromPairs {
    /// The mean with the variance of the fixed point.
    pub fn correct(&self, own: f64) -> f64 {
        let corrected = (FIXED_POINT_WEIGHT * own + self.information * self.variance)
            / (FIXED_POINT_WEIGHT + self.information);
        corrected.clamp(OWN_RANGE.0, OWN_RANGE.1)
    }
}

/// Compares the answers of each cell with one another: the products of the distances of two
/// answers from the probability that the other effects give.
pub(super) fn from_pairs(model: &Model, round: &Round, weighed: &Weighed) -> FromPairs {
    let (mut products, mut squares) = (0.0, 0.0);
    for (student, concept) in model.own.places() {
        let cell = &weighed.cells[(student, concept)];
        let pairs = cell.answers * cell.answers - cell.answers_squared;
        if pairs <= LEAST_PAIRS {
            continue;
        }
        let outer = model.effects.cell(student, concept).logit;
        let expected = Probability::at(outer, model.variances.own);
        let others = round.others[(student, concept)];
        let fitted = round.cells[(student, concept)].fitted_share(others);
        let wrong_squared = cell.answers_squared - cell.right_squared;
        let distance = cell.right - cell.answers * expected.value;
        products += distance * distance / (1.0 - fitted.min(MOST_FITTED_SHARE))
            - cell.right_squared * (1.0 - expected.value).powi(2)
            - wrong_squared * expected.value.powi(2);
        squares += pairs * expected.slope * expected.slope;
    }
    FromPairs {
        variance: if squares > 0.0 {
            (products / squares).max(0.0)
        } else {
            0.0
        },
        information: squares / 2.0,
    }
}

/// The variance between the problems of a concept: how much the class differs from one pass
/// to the next that tells enough. Differences of neighbours cancel a trend (von Neumann 1941,
/// from memory).
pub(super) fn between_problems(residuals: &Grid<Residual>) -> f64 {
    let mut weights = PROBLEM.weight;
    let mut sum = PROBLEM.weight * PROBLEM.variance;
    for row in residuals.rows() {
        let telling = row.iter().filter(|r| r.information > LEAST_INFORMATION);
        for (earlier, later) in telling.clone().zip(telling.skip(1)) {
            let noise = 1.0 / earlier.information + 1.0 / later.information;
            let weight = (PAIR_NOISE / (PAIR_NOISE + noise)).powi(2);
            let change = earlier.distance() - later.distance();
            sum += weight * (change * change - noise) / 2.0;
            weights += weight;
        }
    }
    (sum / weights).clamp(PROBLEM_RANGE.0, PROBLEM_RANGE.1)
}
