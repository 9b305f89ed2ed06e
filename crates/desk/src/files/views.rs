//! What the Files screen shows.

use crate::class::NamedSeat;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
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
    /// The number of the import.
    #[ts(type = "number")]
    pub import: i64,
    /// The date it was made.
    pub made_on: NaiveDate,
    /// How many files it read.
    pub tally: Tally,
    /// How many of them the teacher must look at: refused, quarantined or flagged.
    pub to_check: u32,
    /// The first files, at most [`LINES_A_PAGE`]: those that the teacher must look at, then those
    /// that brought something, then the others, each in the order of the import.
    pub files: Vec<FileReport>,
    /// Whether it was stopped; the files read before count.
    pub cancelled: bool,
    /// Whether it was undone.
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

/// The newest import that can be undone and was not.
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

/// What is missing in a class.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct WhoHasNot {
    /// Today's date.
    pub today: NaiveDate,
    /// School days without a hand-in until a seat is listed.
    pub school_days: usize,
    /// Version of the last class pack; 0 if none was made.
    pub pack_version: u32,
    /// A line for each thing that is missing: what waits for the teacher first.
    pub lacking: Vec<Lacking>,
    /// Seats that never handed in, since the first class pack or so long that it is late.
    pub not_joined: Vec<NamedSeat>,
}

/// Something that is missing.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Lacking {
    /// The seat; none if it is not known.
    pub seat: Option<u32>,
    /// The seat's name.
    pub name: Option<String>,
    /// What is missing.
    pub what: LackingKind,
}

/// What is missing of a seat.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum LackingKind {
    /// A decision about a quarantined device.
    Quarantined {
        /// Its fingerprint.
        fingerprint: String,
        /// The date of the import that brought its first hand-in.
        first_seen_on: NaiveDate,
        /// Hand-ins that wait.
        hand_ins: usize,
    },
    /// A good hand-in of the seat in place of a damaged file.
    Damaged {
        /// The file's name.
        file_name: String,
        /// The date of the import that refused it.
        read_on: NaiveDate,
        /// Why it was refused.
        refusal: Refusal,
    },
    /// Good hand-ins in place of damaged files of nobody knows whom.
    DamagedOfNobody {
        /// How many files.
        files: usize,
        /// The name of the last of them.
        file_name: String,
        /// The date of the import that refused it.
        read_on: NaiveDate,
    },
    /// A new hand-in.
    Late {
        /// The date of the newest one.
        last_on: NaiveDate,
        /// School days since, without today.
        school_days: usize,
    },
    /// The newest class pack, on a device that handed in with an older one.
    OldPack {
        /// The version that it had.
        version: u32,
        /// The newest version.
        newest: u32,
        /// The date of that hand-in.
        handed_in_on: NaiveDate,
        /// Whether year or rotation differ, so that it may show another day.
        other_days: bool,
    },
    /// The newest class pack, on every device of the class.
    PackWithNobody {
        /// The newest version.
        newest: u32,
        /// Devices, all with an older one.
        devices: usize,
    },
}

impl WhoHasNot {
    /// How much there is to look at: students, and lines that are about no student.
    #[must_use]
    pub fn count(&self) -> usize {
        let named = self.lacking.iter().filter_map(|one| one.seat);
        let seats: BTreeSet<u32> = named
            .chain(self.not_joined.iter().map(|one| one.seat))
            .collect();
        let of_nobody = self.lacking.iter().filter(|one| one.seat.is_none());
        seats.len() + of_nobody.count()
    }
}

/// What a transfer holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TransferHoldings {
    /// Ratings and outcomes from devices.
    pub check_ins: usize,
    /// Practice results.
    pub practice: usize,
    /// Entries from paper.
    pub paper: usize,
    /// The date of the oldest of them.
    pub first_date: Option<NaiveDate>,
    /// The date of the newest.
    pub last_date: Option<NaiveDate>,
}

/// What came of a transfer.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TransferTaken {
    /// The new seat.
    pub seat: u32,
    /// The student's name, if the file has it.
    pub name: Option<String>,
    /// What the file holds.
    pub holds: TransferHoldings,
    /// Entries of it that are dated outside this class's year or in the future.
    pub outside_year: usize,
    /// Concepts of it that are not in this class's rotation.
    pub other_concepts: usize,
}
