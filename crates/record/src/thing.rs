//! What a call can ask for, as codes for the screens.

use serde::{Deserialize, Serialize};
use std::fmt;
use ts_rs::TS;

/// A kind of thing that a call asks for and that may not exist, or not any more.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Thing {
    /// An assignment.
    Assignment,
    /// A class.
    Class,
    /// A concept.
    Concept,
    /// A copy of a store.
    Copy,
    /// The desk.
    Desk,
    /// A device that hands in for a seat.
    Device,
    /// A note of what was taught again.
    Entry,
    /// An exercise.
    Exercise,
    /// A file that was picked.
    File,
    /// An import.
    Import,
    /// A long job.
    Job,
    /// A class pack that was picked.
    Pack,
    /// Removed rows to be restored.
    Removed,
    /// A report.
    Report,
    /// The sample class.
    Sample,
    /// A seat.
    Seat,
    /// A student.
    Student,
}

/// Writes the code, such as `seat`.
impl fmt::Display for Thing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.serialize(f)
    }
}
