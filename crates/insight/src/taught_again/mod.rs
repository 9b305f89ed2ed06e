//! Whether teaching a concept again helped: difference in differences with a modelled start.
//!
//! The class estimate of the day of teaching foretells each answer that comes afterwards, for
//! what was taught again and for what was not. [`change`] sums how far the answers of a concept
//! lie from that; [`regression`] says what would be expected of the concept by how the others moved;
//! [`judge`] turns the difference and its range into one of four verdicts. In plain words, with
//! every formula, constant and source: `docs/insight.md`, "Taught again".

mod change;
mod judge;
mod regression;

use super::class_estimate::ClassEstimate;
use super::evidence::Evidence;
pub use judge::{HelpVerdict, passes_to_tell};
use regression::Comparison;
use std::collections::BTreeSet;

/// Information of the answers of a concept, from which it is compared with.
const LEAST_INFORMATION: f64 = 0.05;
/// Fewest concepts to compare with.
const FEWEST_CONCEPTS: usize = 6;
/// Fewest concepts to compare with if the other students are looked at too.
const FEWEST_CONCEPTS_WITH_OTHERS: usize = 10;
/// Information of the answers of the other students, from which they are looked at.
const LEAST_OTHERS: f64 = 1.0;

/// What was taught again, and what it is compared with.
#[derive(Debug, Clone, Copy)]
pub struct TaughtAgain<'t> {
    /// The concept.
    pub concept: usize,
    /// The students who were taught.
    pub students: &'t [usize],
    /// The concepts to compare with: reviewed in the same time and not new. The taught concept is
    /// passed over.
    pub others: &'t BTreeSet<usize>,
    /// Further cells, by student and concept, that were taught again near that time.
    pub left_out: &'t BTreeSet<(usize, usize)>,
}

/// What came of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effect {
    /// How much more those taught rose than expected, on the logit of success.
    pub logit: f64,
    /// Its standard deviation.
    pub sd: f64,
    /// Degrees of freedom: concepts compared with, less the numbers fitted to them.
    pub freedom: usize,
    /// Low end of the likely range (80%).
    pub low: f64,
    /// High end of the likely range (80%).
    pub high: f64,
    /// What is said of it.
    pub verdict: HelpVerdict,
    /// Answers of those taught since then: results and practice.
    pub answers: u32,
    /// Right ones among them.
    pub right: u32,
    /// How many would be right by the estimate of the day of teaching.
    pub foretold: f64,
    /// How many would be right if those taught had moved as the others did.
    pub expected: f64,
    /// The same at the low and the high end of the likely range of the effect.
    pub expected_low: f64,
    /// See `expected_low`.
    pub expected_high: f64,
    /// How much the others rose in the same time, on the logit of success.
    pub others_logit: f64,
    /// Concepts compared with.
    pub concepts: usize,
}

/// Why nothing can be said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoEffect {
    /// Those taught have no answer since then.
    NoAnswers,
    /// Too few other concepts have answers in the same time.
    FewOthers,
}

/// Compares what was taught again with what was not. `before` is the class estimate from all
/// reports up to the teaching; `since` holds the reports afterwards alone, of the same students and
/// concepts.
///
/// # Errors
/// Returns [`NoEffect`] if there is too little to compare.
pub fn taught_again(
    before: &ClassEstimate,
    since: &Evidence,
    taught: &TaughtAgain<'_>,
) -> Result<Effect, NoEffect> {
    let members: BTreeSet<usize> = taught.students.iter().copied().collect();
    let changes = change::by_concept(before, since, &members, taught.left_out);
    let Some(own) = changes
        .members
        .get(taught.concept)
        .filter(|c| c.answers > 0)
    else {
        return Err(NoEffect::NoAnswers);
    };
    let comparison = Comparison::of(own, &changes, taught).ok_or(NoEffect::FewOthers)?;
    Ok(judge::effect(own, &comparison))
}

#[cfg(test)]
mod tests;
