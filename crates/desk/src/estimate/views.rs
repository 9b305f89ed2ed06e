//! Values of the estimate that several screens show.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

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
    /// Probability that the student has the concept; none while the level is not known.
    pub has_it: Option<f64>,
}
