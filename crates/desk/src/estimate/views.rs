//! Values of the estimate that several screens show.

use serde::{Deserialize, Serialize};
use surefoot_store::desk::PracticeReport;
use ts_rs::TS;

/// Sums of results: outcomes and observations.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ResultSums {
    /// Right.
    pub right: u32,
    /// Wrong.
    pub wrong: u32,
}

impl ResultSums {
    pub(crate) fn add(&mut self, right: bool) {
        let sum = if right {
            &mut self.right
        } else {
            &mut self.wrong
        };
        *sum = sum.saturating_add(1);
    }
}

/// Sums of practice answers.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PracticeSums {
    /// Right without help.
    pub alone: u32,
    /// Right with help.
    pub with_help: u32,
    /// Wrong.
    pub wrong: u32,
}

impl PracticeSums {
    pub(crate) fn add(&mut self, report: &PracticeReport) {
        self.alone = self.alone.saturating_add(report.alone);
        self.with_help = self.with_help.saturating_add(report.with_help);
        self.wrong = self.wrong.saturating_add(report.wrong);
    }
}

/// A misconception and how often it led to an answer.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MisconceptionCount {
    /// The misconception's code.
    pub code: String,
    /// How often it led to an answer.
    pub count: u32,
}

/// A student, with the probability of having a concept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupMember {
    /// The seat.
    pub seat: u32,
    /// Its name.
    pub name: Option<String>,
    /// Probability that the student has the concept; none while ratings are alone.
    pub has_it: Option<f64>,
}
