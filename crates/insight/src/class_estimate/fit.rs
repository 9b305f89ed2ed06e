//! Step 2: the fit, in a fixed number of rounds.
//!
//! A round makes one Newton step for all effects. Between two rounds, each variance and the
//! scale of the ratings makes one step. For a given scale and given variances the likelihood
//! is concave; variances are bounded, and no step is longer than a given length. So every
//! input ends with finite numbers.

use super::constants::{PAIR_ROUNDS, PROBLEM_ROUNDS, ROUNDS};
use super::model::Model;
use super::round::{self, Round};
use super::weighed::Weighed;
use super::{rating_fit, residuals, variance_fit};
use crate::evidence::Evidence;

/// Fits the model to everything weighed.
pub(super) fn fit(evidence: &Evidence, weighed: &Weighed) -> (Model, Round) {
    let mut model = Model::start(evidence.students(), evidence.concepts());
    let has_ratings = weighed.has_ratings();
    let mut pairs = None;
    let mut round = round::step(&mut model, weighed);
    for done in 1..ROUNDS {
        model.variances = variance_fit::step(&model, &round, weighed);
        if PAIR_ROUNDS.contains(&done) {
            pairs = Some(variance_fit::from_pairs(&model, &round, weighed));
        }
        if let Some(pairs) = pairs {
            model.variances.own = pairs.correct(model.variances.own);
        }
        if PROBLEM_ROUNDS.contains(&done) {
            let residuals = residuals::of_reports(evidence, &model, weighed);
            model.variances.problem = variance_fit::between_problems(&residuals);
        }
        if has_ratings {
            model.scale = rating_fit::step(&model, weighed);
        }
        round = round::step(&mut model, weighed);
    }
    (model, round)
}
