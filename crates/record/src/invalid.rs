//! The rules that values entered by a person must keep, as codes for the screens.

use serde::{Deserialize, Serialize};
use std::fmt;
use ts_rs::TS;

/// A value that a use-case checks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Field {
    /// Exercises of each concept of an assignment, or of a print.
    Amount,
    /// An answer to an own exercise.
    Answer,
    /// A class key.
    Class,
    /// A class pack.
    ClassPack,
    /// Concepts of a class, an assignment or an import.
    Concepts,
    /// Copies of the desk.
    Copies,
    /// Dates of lessons, entries or assignments.
    Dates,
    /// The lock of the desk.
    DeskLock,
    /// A device that hands in for a seat.
    Device,
    /// The unfinished answer of an open exercise.
    Draft,
    /// The slip that a student has now, to take another one.
    EarlierSlip,
    /// Evenings of practice a week.
    Evenings,
    /// Exercises of an evening.
    Exercises,
    /// The concepts that a student chose to practise.
    Focus,
    /// The folder of a new sample class.
    Folder,
    /// A student's goals.
    Goals,
    /// Small groups or wishes for them.
    Groups,
    /// Minutes until the desk locks itself.
    IdleMinutes,
    /// A long job.
    Job,
    /// Minutes for talk or practice.
    Minutes,
    /// Names of students.
    Names,
    /// What was done when a concept was taught again, in the teacher's words.
    Note,
    /// A student's nickname.
    Nickname,
    /// A student's PIN.
    Pin,
    /// The bounds of practice at home.
    Practice,
    /// Removed rows to be restored.
    Removed,
    /// A roster file.
    Roster,
    /// The seats of a class.
    Seats,
    /// A share-safe table.
    ShareTable,
    /// A student who comes from another class.
    Student,
    /// The students of a report.
    Students,
    /// A text to be read aloud.
    Text,
    /// The size of text on a student's screens.
    TextPercent,
    /// The title of a class.
    Title,
    /// Own data or the sample class.
    World,
}

/// A rule that a value breaks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Rule {
    /// The class is at this desk already.
    AlreadyHere,
    /// The wishes contradict one another.
    Contradiction,
    /// It has another number of digits than is allowed.
    Digits,
    /// Another computer does it.
    Elsewhere,
    /// It has no content.
    Empty,
    /// The evenings a week are out of bounds.
    Evenings,
    /// It is in the rotation.
    InRotation,
    /// It has a lock.
    Locked,
    /// The minutes of an evening are out of bounds.
    Minutes,
    /// It has no exercises.
    NoExercises,
    /// It does not exist.
    Missing,
    /// Nobody has reported yet.
    NoReports,
    /// It has content already.
    NotEmpty,
    /// No row of it may be shown.
    NothingToShow,
    /// It is not text in UTF-8.
    NotText,
    /// It is older than what is here.
    Older,
    /// It is open.
    Open,
    /// The dates are in the wrong order.
    Order,
    /// It is outside its range.
    Range,
    /// It has not ended.
    Running,
    /// The sample class is open.
    SampleOpen,
    /// Its number or id is in use.
    Taken,
    /// The day of the test is outside the year.
    TestOn,
    /// There are too few.
    TooFew,
    /// Too few ratings changed since an earlier table.
    TooFewChanged,
    /// It is too long.
    TooLong,
    /// There are too many.
    TooMany,
    /// It cannot be read.
    Unreadable,
}

/// Writes the code, such as `share_table`.
impl fmt::Display for Field {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.serialize(f)
    }
}

/// Writes the code, such as `too_long`.
impl fmt::Display for Rule {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.serialize(f)
    }
}
