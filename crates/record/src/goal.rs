//! A student's own goals.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A goal.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Goal {
    /// The sentence as the student wrote it.
    pub words: String,
    /// Whether the student marked it as reached.
    pub reached: bool,
}
