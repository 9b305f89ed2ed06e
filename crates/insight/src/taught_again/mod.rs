//! Whether teaching a concept again helped: difference in differences with a modelled start.
//!
//! The class estimate of the day of teaching gives a forecast of each later result, on concepts
//! that were taught again and on others. [`change`] sums how far the results on a concept lie from
//! the forecast. [`regression`] says what change to expect of the concept from that of the others.
//! [`judge`] turns the difference and its range into one of four verdicts. In plain words, with
//! every formula, constant and source: `docs/insight.md`, "Taught again".

mod change;
mod judge;
mod regression;

use super::class_estimate::ClassEstimate;
use super::evidence::Evidence;
pub use judge::{Effect, HelpVerdict};
use regression::Comparison;
use std::collections::BTreeSet;

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

/// Why nothing can be said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoEffect {
    /// Those taught have no result since then.
    NoAnswers,
    /// Too few other concepts have results in the same time.
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
    let comparison =
        Comparison::of(own, &changes, taught.concept, taught.others).ok_or(NoEffect::FewOthers)?;
    Ok(judge::effect(own, &comparison))
}

#[cfg(test)]
mod tests;
