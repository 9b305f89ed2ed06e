//! The verdict on a concept that was taught again.

use super::super::stats::student_quantile;
use super::change::Change;
use super::regression::Comparison;

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
    /// The verdict on it.
    pub verdict: HelpVerdict,
    /// Results of those taught since then.
    pub answers: u32,
    /// Right ones among them.
    pub right: u32,
    /// How many would be right by the estimate of the day of teaching.
    pub foretold: f64,
    /// How many would be right if those taught had moved as the others did. What is right beyond
    /// that is the effect, times the variance of the results by chance.
    pub expected: f64,
    /// Low end of the likely range of what is right beyond the expected, in results.
    pub more_low: f64,
    /// High end of it.
    pub more_high: f64,
    /// How much the others rose in the same time, on the logit of success.
    pub others_logit: f64,
    /// Concepts compared with.
    pub concepts: usize,
}

/// One-sided probability of "rose more" by chance.
const SURE: f64 = 0.02;
/// One-sided probability of "likely rose more" by chance; its range is the likely one (80%).
const LIKELY: f64 = 0.1;
/// The effect, on the logit of success, that "no sign of it" rules out: from 5 to 7 of 10.
const CLEAR_EFFECT: f64 = 1.0;
/// Answers come whole, and a sum of a few is skewed: half an answer is taken off (Yates 1934).
const HALF_ANSWER: f64 = 0.5;

/// The verdict on a concept that was taught again.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum HelpVerdict {
    /// A clear effect is ruled out, and none was found.
    NoSign,
    /// The range holds both no effect and a clear one.
    CannotTell,
    /// It rose more than the others, by the likely range.
    LikelyRoseMore,
    /// It rose more than the others, by a range that misses one in fifty on this side.
    RoseMore,
}

/// The effect and its verdict. Chance, the differences between concepts and the uncertainty of what
/// was expected add up; the points are those of Student's distribution.
pub(super) fn effect(own: &Change, comparison: &Comparison) -> Effect {
    let logit = own.logit() - comparison.expected;
    let sd = (1.0 / own.information + comparison.between + comparison.variance).sqrt();
    let half = HALF_ANSWER / own.information;
    let point = |tail: f64| half + sd * student_quantile(1.0 - tail, comparison.freedom);
    let likely = point(LIKELY);
    let (low, high) = (logit - likely, logit + likely);
    let verdict = if logit > point(SURE) {
        HelpVerdict::RoseMore
    } else if low > 0.0 {
        HelpVerdict::LikelyRoseMore
    } else if high < CLEAR_EFFECT {
        HelpVerdict::NoSign
    } else {
        HelpVerdict::CannotTell
    };
    Effect {
        logit,
        sd,
        freedom: comparison.freedom,
        low,
        high,
        verdict,
        answers: own.answers,
        right: own.right,
        foretold: own.foretold,
        expected: own.foretold + comparison.expected * own.information,
        more_low: low * own.information,
        more_high: high * own.information,
        others_logit: comparison.expected,
        concepts: comparison.concepts,
    }
}
