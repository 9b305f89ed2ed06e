//! What several screens show of the estimate.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A misconception and how often it led to an answer.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MisconceptionCount {
    /// The misconception's code.
    pub code: String,
    /// How often.
    pub count: u32,
}

/// A student of a group.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupMember {
    /// The seat.
    pub seat: u32,
    /// Its name.
    pub name: Option<String>,
    /// Probability that the student has the concept; none while ratings are alone.
    pub has_it: Option<f64>,
}
