//! A student's own goals.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A goal in the student's own words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(deny_unknown_fields)]
pub struct Goal {
    /// A short note, as the student wrote it.
    pub words: String,
    /// Whether the student ticked it as reached.
    pub reached: bool,
}
