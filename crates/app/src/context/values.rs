//! Values that several doors are given or give.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Nothing to say.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, TS)]
pub struct Nothing {}

/// A file that was made for a person.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct FileMade {
    /// Suggested name.
    pub file_name: String,
    /// Where it was saved, in words; nothing when the person decided against it.
    pub place: Option<String>,
    /// Its size in bytes.
    pub bytes: usize,
}
