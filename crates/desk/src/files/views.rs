//! What the import and export screens show.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_exchange::Flag;
use surefoot_exchange::Refusal;
use ts_rs::TS;

/// What became of one file of an import.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct FileReport {
    /// The file's name.
    pub file_name: String,
    /// The verdict.
    pub verdict: Verdict,
    /// The seat it belongs to.
    pub seat: Option<u32>,
    /// The seat's name.
    pub name: Option<String>,
    /// The class it belongs to.
    pub class_title: Option<String>,
    /// Check-ins and practice counts that were new.
    pub new_entries: usize,
    /// Things to look at that did not stop the import.
    pub flags: Vec<Flag>,
}

/// The verdict on a file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Verdict {
    /// The first from this seat.
    New,
    /// Newer than what the desk had.
    Updated,
    /// Exactly what the desk has already.
    Known,
    /// Older than what the desk has; nothing changed.
    Older,
    /// From a quarantined device: stored, and counted once the teacher accepts the device.
    Quarantined,
    /// Refused; the file itself is unchanged.
    Refused {
        /// Why.
        refusal: Refusal,
    },
}

/// The report on an import.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct ImportReport {
    /// Names the import in the journal.
    #[ts(type = "number")]
    pub import: i64,
    /// The date it was made.
    pub made_on: NaiveDate,
    /// File by file, in the order of their names.
    pub files: Vec<FileReport>,
    /// Whether it was stopped before the end; what was read counts.
    pub cancelled: bool,
    /// Whether it was undone since.
    pub undone: bool,
}
