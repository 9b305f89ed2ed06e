//! Why a file or a seat code is refused, and what is flagged in a file that is taken.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// Why a file is refused. The file itself stays unchanged.
#[derive(Debug, Clone, PartialEq, Eq, Error, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum Refusal {
    /// The file is larger than any file of its kind.
    #[error("the file has {found_bytes} bytes, the limit is {most_bytes}")]
    TooLarge {
        /// Its size, or the size at which reading stopped.
        #[ts(type = "number")]
        found_bytes: u64,
        /// The limit.
        #[ts(type = "number")]
        most_bytes: u64,
    },
    /// The file unpacks to more than any file of its kind.
    #[error("the file unpacks to more than {most_bytes} bytes")]
    UnpacksTooLarge {
        /// The limit.
        #[ts(type = "number")]
        most_bytes: u64,
    },
    /// The file has more entries than a school year.
    #[error("the file has more than {most} entries")]
    TooManyEntries {
        /// The limit.
        #[ts(type = "number")]
        most: u64,
    },
    /// The file and those picked with it are too large together.
    #[error("too large together with the other files; take fewer at a time")]
    TooMuchAtOnce,
    /// The file is not of this kind.
    #[error("the file is not of this kind")]
    NotOurs,
    /// The file is sealed for another class, or names another class.
    #[error("the file is for another class")]
    WrongClass,
    /// The file was changed or cut short.
    #[error("the file is damaged")]
    Damaged,
    /// The signature does not fit the content.
    #[error("the signature does not fit the content")]
    BadSignature,
    /// A newer program made the file.
    #[error("format {found} is newer than {known}, the newest that this program knows")]
    NewerFormat {
        /// Its format.
        found: u32,
        /// The newest format that this program knows.
        known: u32,
    },
    /// The content breaks the schema.
    #[error("the content breaks the schema at {at}")]
    BadContent {
        /// The place, as a path into the content.
        at: String,
    },
    /// The class does not have the seat.
    #[error("the class has no such seat")]
    SeatUnknown,
    /// The desk keeps no more of this seat, or of its quarantined devices.
    #[error("the desk keeps no more of this seat; discard its quarantined devices")]
    SeatFull,
    /// The class pack is not newer than that of the device.
    #[error("version {found} is not newer than version {held} on this device")]
    NotNewer {
        /// Its version.
        found: u32,
        /// The version on the device.
        held: u32,
    },
    /// The passphrase does not open the file.
    #[error("the passphrase does not open the file")]
    WrongPassphrase,
    /// The file needs more work to open than this program does.
    #[error("the file has work factor {found}, the limit is {most}")]
    TooMuchWork {
        /// Its scrypt work factor, log2 of N.
        found: u8,
        /// The limit.
        most: u8,
    },
    /// The name of the file leads out of its zip.
    #[error("the name of the file leads out of its zip")]
    UnsafeName,
    /// The system could not read the file.
    #[error("the file could not be read")]
    Unreadable,
}

/// What the teacher should look at in a hand-in that is taken.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum Flag {
    /// Entries are dated after today. They are stored, and count once their date has come.
    FutureDate {
        /// The date that is furthest off.
        date: NaiveDate,
        /// The number of entries.
        entries: usize,
    },
    /// Entries are dated outside the school year. They are stored and never count.
    OutsideYear {
        /// The date that is furthest off.
        date: NaiveDate,
        /// The number of entries.
        entries: usize,
    },
    /// The class does not know a concept. Its entries are stored and not shown.
    UnknownConcept {
        /// The number of concepts.
        concepts: usize,
    },
}

/// Why a seat code or PIN signs are refused.
#[derive(Debug, Clone, PartialEq, Eq, Error, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum SeatCodeError {
    /// The code has too few or too many signs.
    #[error("the code has {expected} signs, not {found}")]
    Length {
        /// The number of signs, without spaces and dashes.
        found: usize,
        /// The number of signs that it should have.
        expected: usize,
    },
    /// No code has this sign.
    #[error("no code has the sign {sign:?}")]
    Sign {
        /// The sign.
        #[ts(type = "string")]
        sign: char,
    },
    /// The check character does not fit: there is a typing error.
    #[error("the check character does not fit")]
    Check,
    /// The code is that of another class.
    #[error("the code belongs to another class")]
    OtherClass,
    /// The code is that of another seat.
    #[error("the code belongs to another seat")]
    OtherSeat,
}
