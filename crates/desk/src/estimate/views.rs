//! What several screens show of the estimate.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A mistake and how often it was made.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MistakeCount {
    /// The mistake's code.
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
    /// Chance of having the concept, 0 to 1.
    pub has_it: Option<f64>,
}
