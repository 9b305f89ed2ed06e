//! What a call can fail with, as codes the screens put into words.

use serde::{Deserialize, Serialize};
use surefoot_catalogue::calendar::CalendarError;
use surefoot_catalogue::rotation::RotationError;
use surefoot_exchange::{Refusal, SeatCodeError};
use thiserror::Error;
use ts_rs::TS;

/// Why a call failed. In every case what was stored before is still there.
#[derive(Debug, Clone, PartialEq, Eq, Error, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum CallError {
    /// No call has this name: the screens and the program do not fit together.
    #[error("no call {name}")]
    UnknownCall {
        /// The name asked for.
        name: String,
    },
    /// The arguments do not fit the call.
    #[error("arguments do not fit: {detail}")]
    BadArguments {
        /// What the reader said.
        detail: String,
    },
    /// The thing named is not there (any more).
    #[error("no such {what}")]
    NotFound {
        /// `student`, `class`, `seat`, `concept`, `exercise`, `assignment`, `job`, `pack`, `copy`, `file`.
        what: String,
    },
    /// A value that a person entered cannot be taken.
    #[error("{field} cannot be taken: {rule}")]
    Invalid {
        /// The field: `title`, `names`, `dates`, `concepts`, `amount`, `nickname`, `minutes`, `seats`, `goals`.
        field: String,
        /// The rule it breaks: `empty`, `too_long`, `too_many`, `too_few`, `order`, `range`, `not_today`.
        rule: String,
    },
    /// A school year that cannot be.
    #[error("{error}")]
    Calendar {
        /// Why.
        error: CalendarError,
    },
    /// A rotation that cannot be.
    #[error("{error}")]
    Rotation {
        /// Why.
        error: RotationError,
    },
    /// A file that was not taken.
    #[error("{refusal}")]
    Refused {
        /// Why.
        refusal: Refusal,
    },
    /// A seat code that was not taken.
    #[error("{error}")]
    SeatCode {
        /// Why.
        error: SeatCodeError,
    },
    /// An answer that cannot be read as an answer; it does not count as wrong.
    #[error("the answer cannot be read: {detail}")]
    UnreadableAnswer {
        /// What was wrong with it.
        detail: String,
    },
    /// The store was made by a newer program.
    #[error("the store has schema {found}, newer than {known}")]
    NewerStore {
        /// Its schema version.
        found: u32,
        /// The newest known here.
        known: u32,
    },
    /// The store is damaged. It stays as it was found; a copy can take its place.
    #[error("the store is damaged: {detail}")]
    DamagedStore {
        /// For the log.
        detail: String,
    },
    /// No room on the disk.
    #[error("the disk is full")]
    DiskFull,
    /// The store's file or folder is missing or cannot be written.
    #[error("the store cannot be written: {detail}")]
    NotWritable {
        /// For the log.
        detail: String,
    },
    /// Another program, or a call still under way, keeps the store.
    #[error("the store is in use")]
    StoreBusy,
    /// The student's PIN has not been typed.
    #[error("locked by a PIN")]
    Locked,
    /// A wait after wrong tries is not over.
    #[error("wait {wait_seconds} s")]
    PinWait {
        /// Seconds left.
        wait_seconds: u32,
    },
    /// The store could not be read or written. What was acknowledged before is on disk.
    #[error("store: {detail}")]
    Storage {
        /// For the log; holds no names.
        detail: String,
    },
    /// A fault of the program itself. What was stored before is still there.
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
    /// Nothing can be read aloud here.
    #[error("no voice: {missing:?}")]
    NoVoice {
        /// What is missing.
        missing: VoiceMissing,
    },
    /// A long job was stopped by the person.
    #[error("stopped")]
    Cancelled,
}

/// What is missing where nothing can be read aloud; the page says what helps.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum VoiceMissing {
    /// The Linux package `speech-dispatcher`.
    SpeechDispatcher,
    /// A voice on a computer that brings its own.
    SystemVoice,
    /// A voice for the language, or the tablet's reading service.
    TabletVoice,
    /// This shell has no voice at all.
    Everything,
}

/// A file or folder that could not be used.
pub(crate) fn files(error: impl std::fmt::Display) -> CallError {
    CallError::Files {
        detail: error.to_string(),
    }
}
