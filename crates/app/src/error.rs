//! The errors of calls: codes that the screens put into words.

use serde::{Deserialize, Serialize};
use surefoot_catalogue::calendar::CalendarError;
use surefoot_catalogue::rotation::RotationError;
use surefoot_exchange::{Refusal, SeatCodeError};
use surefoot_record::{Field, Rule, Thing};
use thiserror::Error;
use ts_rs::TS;

/// Why a call failed. Everything stored before is still stored.
#[derive(Debug, Clone, PartialEq, Eq, Error, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum CallError {
    /// No call has this name, because screens and program have different versions.
    #[error("no call {name}")]
    UnknownCall {
        /// The unknown name.
        name: String,
    },
    /// The arguments do not fit the call.
    #[error("arguments do not fit: {detail}")]
    BadArguments {
        /// What does not fit.
        detail: String,
    },
    /// The thing asked for does not exist, or not any more.
    #[error("no such {what}")]
    NotFound {
        /// The kind of thing.
        what: Thing,
    },
    /// A value that a person entered is not allowed.
    #[error("{field} cannot be taken: {rule}")]
    Invalid {
        /// Which value.
        field: Field,
        /// The rule it breaks.
        rule: Rule,
    },
    /// The school year is invalid.
    #[error("{error}")]
    Calendar {
        /// Why.
        error: CalendarError,
    },
    /// The rotation is invalid.
    #[error("{error}")]
    Rotation {
        /// Why.
        error: RotationError,
    },
    /// A file is refused.
    #[error("{refusal}")]
    Refused {
        /// Why.
        refusal: Refusal,
    },
    /// A seat code is refused.
    #[error("{error}")]
    SeatCode {
        /// Why.
        error: SeatCodeError,
    },
    /// An answer cannot be read; it does not count as wrong.
    #[error("the answer cannot be read: {detail}")]
    UnreadableAnswer {
        /// What is wrong with it.
        detail: String,
    },
    /// The store was made by a newer program.
    #[error("the store has schema {found}, newer than {known}")]
    NewerStore {
        /// Its schema version.
        found: u32,
        /// The newest version that this program knows.
        known: u32,
    },
    /// The store is damaged and left unchanged. The person can restore a copy.
    #[error("the store is damaged: {detail}")]
    DamagedStore {
        /// For the log.
        detail: String,
    },
    /// The disk is full.
    #[error("the disk is full")]
    DiskFull,
    /// The store's file or folder is missing or cannot be written.
    #[error("the store cannot be written: {detail}")]
    NotWritable {
        /// For the log.
        detail: String,
    },
    /// Another program or call uses the store.
    #[error("the store is in use")]
    StoreBusy,
    /// The student's PIN has not been typed.
    #[error("locked by a PIN")]
    Locked,
    /// The desk is locked until its passphrase is typed.
    #[error("the desk is locked")]
    DeskLocked,
    /// The store could not be read or written.
    #[error("store: {detail}")]
    Storage {
        /// For the log; holds no names.
        detail: String,
    },
    /// A fault of the program.
    #[error("fault of the program: {detail}")]
    Internal {
        /// For the log; holds no names.
        detail: String,
    },
    /// A file or folder could not be read or written.
    #[error("file: {detail}")]
    Files {
        /// For the log.
        detail: String,
    },
    /// This device cannot read aloud.
    #[error("no voice: {missing:?}")]
    NoVoice {
        /// What is missing.
        missing: VoiceMissing,
    },
    /// The browser gives the program no place for its data.
    #[error("no place for data: {why:?}")]
    NoPlace {
        /// Why.
        why: PlaceTrouble,
    },
    /// A part of the program is not on this device, and could not be loaded. Only the page in a
    /// browser makes it.
    #[error("a part of the program could not be loaded")]
    NotLoaded,
    /// The person stopped a long job.
    #[error("stopped")]
    Cancelled,
}

/// What this device lacks to read aloud.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum VoiceMissing {
    /// The Linux package `speech-dispatcher`.
    SpeechDispatcher,
    /// A voice of the operating system (Windows, macOS).
    SystemVoice,
    /// A voice for the language, or the speech service of the tablet.
    TabletVoice,
    /// This shell cannot read aloud.
    Everything,
}

/// Why a browser gives the program no place for its data.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum PlaceTrouble {
    /// Another tab or window has it.
    OtherTab,
    /// This browser has none, or none in a private window.
    Missing,
    /// The browser was told to keep nothing.
    Refused,
    /// It is full.
    Full,
}

/// A file or folder that could not be used.
pub(crate) fn files(error: impl std::fmt::Display) -> CallError {
    CallError::Files {
        detail: error.to_string(),
    }
}
