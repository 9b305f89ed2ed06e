//! Why a file was not taken, and what to look at in one that was.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// Why a file was refused. The file itself stays untouched where it is.
#[derive(Debug, Clone, PartialEq, Eq, Error, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum Refusal {
    /// Larger than any file of this kind can be.
    #[error("{found_bytes} bytes are more than the {most_bytes} taken")]
    TooLarge {
        /// Size found, or the size at which reading stopped.
        #[ts(type = "number")]
        found_bytes: u64,
        /// The cap.
        #[ts(type = "number")]
        most_bytes: u64,
    },
    /// Unpacks to more than any file of this kind can hold.
    #[error("unpacks to more than {most_bytes} bytes")]
    UnpacksTooLarge {
        /// The cap.
        #[ts(type = "number")]
        most_bytes: u64,
    },
    /// More entries than a school year can have.
    #[error("holds more than {most} entries")]
    TooManyEntries {
        /// The cap.
        #[ts(type = "number")]
        most: u64,
    },
    /// More than is read at once, together with the files picked with it.
    #[error("too large together with the other files; take fewer at a time")]
    TooMuchAtOnce,
    /// Not one of Surefoot's files.
    #[error("not a file of this kind")]
    NotOurs,
    /// Sealed for, or made for, another class.
    #[error("belongs to another class")]
    WrongClass,
    /// Changed or cut short on its way.
    #[error("damaged on its way")]
    Damaged,
    /// The signature does not fit the content.
    #[error("the signature does not fit")]
    BadSignature,
    /// Made by a newer program.
    #[error("format {found} is newer than {known}")]
    NewerFormat {
        /// Its format number.
        found: u32,
        /// The newest format known here.
        known: u32,
    },
    /// Something in it is not as the schema says.
    #[error("content not as described, at {at}")]
    BadContent {
        /// Where, as a path into the content.
        at: String,
    },
    /// A seat that the class does not have.
    #[error("no such seat in the class")]
    SeatUnknown,
    /// A class pack older than, or the same as, the one held.
    #[error("version {found} is not newer than {held}")]
    NotNewer {
        /// Its version.
        found: u32,
        /// The version held.
        held: u32,
    },
    /// A class pack signed by another teacher.
    #[error("signed by another teacher")]
    OtherTeacher,
    /// The passphrase does not open it.
    #[error("the passphrase does not open it")]
    WrongPassphrase,
    /// Its passphrase was stretched by more work than this device takes on.
    #[error("asks for work factor {found}, at most {most} is taken")]
    TooMuchWork {
        /// Work factor asked for, log2 of scrypt's N.
        found: u8,
        /// The cap.
        most: u8,
    },
    /// Inside a zip, under a name that leads out of it.
    #[error("its name leads out of the zip")]
    UnsafeName,
    /// The file could not be read from where it is.
    #[error("could not be read")]
    Unreadable,
}

/// Something to look at that did not stop the import.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum Flag {
    /// Entries dated after today: kept, and shown only once their date has come.
    FutureDate {
        /// The furthest date.
        date: NaiveDate,
        /// How many entries.
        entries: usize,
    },
    /// Entries dated outside the school year: kept, not counted.
    OutsideYear {
        /// The furthest date.
        date: NaiveDate,
        /// How many entries.
        entries: usize,
    },
    /// A concept that the class's catalogue does not have: kept, not shown.
    UnknownConcept {
        /// How many concepts.
        concepts: usize,
    },
}

/// Why a seat code was not taken.
#[derive(Debug, Clone, PartialEq, Eq, Error, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum SeatCodeError {
    /// Too few or too many signs.
    #[error("a seat code has {expected} signs, not {found}")]
    Length {
        /// Signs typed, without spaces and dashes.
        found: usize,
        /// Signs a code has.
        expected: usize,
    },
    /// A sign that no code has.
    #[error("{sign:?} stands in no seat code")]
    Sign {
        /// The sign.
        #[ts(type = "string")]
        sign: char,
    },
    /// The check character does not fit: a typing slip.
    #[error("the check character does not fit")]
    Check,
    /// Typed without a slip, but from the slip of another class.
    #[error("the code belongs to another class")]
    OtherClass,
}
