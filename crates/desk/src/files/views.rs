//! What the Files screen shows.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_exchange::Flag;
use surefoot_exchange::Refusal;
use ts_rs::TS;

/// A line of an import report.
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
    /// Check-ins and practice counts that are new.
    pub new_entries: usize,
    /// What the teacher should check although the file was imported.
    pub flags: Vec<Flag>,
}

/// The verdict on a file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Verdict {
    /// The first of this seat.
    New,
    /// Newer than the one at the desk.
    Updated,
    /// The same as one at the desk.
    Known,
    /// Older than the one at the desk.
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
    /// The number of the import.
    #[ts(type = "number")]
    pub import: i64,
    /// The date it was made.
    pub made_on: NaiveDate,
    /// The files in the order of their names.
    pub files: Vec<FileReport>,
    /// Whether it was stopped; the files read before count.
    pub cancelled: bool,
    /// Whether it was undone.
    pub undone: bool,
}
