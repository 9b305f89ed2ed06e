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

/// How many files of an import have each verdict.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, TS)]
pub struct Tally {
    /// [`Verdict::New`].
    pub new: u32,
    /// [`Verdict::Updated`].
    pub updated: u32,
    /// [`Verdict::Known`].
    pub known: u32,
    /// [`Verdict::Older`].
    pub older: u32,
    /// [`Verdict::Quarantined`].
    pub quarantined: u32,
    /// [`Verdict::Refused`].
    pub refused: u32,
}

impl Tally {
    /// All files.
    #[must_use]
    pub fn files(&self) -> u32 {
        self.new + self.updated + self.known + self.older + self.quarantined + self.refused
    }
}

/// The report on an import.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct ImportReport {
    /// Names the import in the journal.
    #[ts(type = "number")]
    pub import: i64,
    /// The date it was made.
    pub made_on: NaiveDate,
    /// How many files it read.
    pub tally: Tally,
    /// How many of them are to be looked at: refused, quarantined or flagged.
    pub to_look_at: u32,
    /// The first files, at most [`LINES_A_PAGE`]: those to look at, then those that brought
    /// something, then the others, each in the order of the import.
    pub files: Vec<FileReport>,
    /// Whether it was stopped before the end; what was read counts.
    pub cancelled: bool,
    /// Whether it was undone since.
    pub undone: bool,
}

/// A page of the journal of imports.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Journal {
    /// At most [`IMPORTS_A_PAGE`], newest first.
    pub imports: Vec<ImportReport>,
    /// Whether there are older ones.
    pub older: bool,
    /// The import that can be undone.
    pub undoable: Option<Undoable>,
}

/// The newest import that was not undone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Undoable {
    /// The date it was made.
    pub made_on: NaiveDate,
    /// How many files it read.
    pub files: u32,
}

/// Imports of one page of the journal.
pub const IMPORTS_A_PAGE: usize = 10;

/// Files of an import that are reported at once.
pub const LINES_A_PAGE: usize = 50;
