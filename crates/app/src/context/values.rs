//! Arguments and results that several doors have.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// No arguments, or no result.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, TS)]
pub struct Nothing {}

/// A file that a call made.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FileMade {
    /// Its suggested name.
    pub file_name: String,
    /// Where it was saved, in words; `None` if the person cancelled.
    pub place: Option<String>,
}
