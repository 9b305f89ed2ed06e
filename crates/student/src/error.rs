//! Why a student's use-case did not go through.

use surefoot_exchange::{Refusal, SeatCodeError};
use surefoot_store::StoreError;
use thiserror::Error;

/// Why a student's use-case did not go through. What was stored stays.
#[derive(Debug, Error)]
pub enum StudentError {
    /// Nobody has joined with this store.
    #[error("nobody has joined")]
    NotJoined,
    /// A date that cannot be rated: in the future, outside the year, or without school.
    #[error("this date cannot be rated")]
    NotADayToRate,
    /// The concept does not stand on that day, or not in this class.
    #[error("no such concept")]
    NoSuchConcept,
    /// The exercise is not the one that stands open.
    #[error("no such exercise")]
    NoSuchExercise,
    /// A value that cannot be taken.
    #[error("{field}: {rule}")]
    Invalid {
        /// Which value.
        field: &'static str,
        /// The rule it breaks.
        rule: &'static str,
    },
    /// An answer that cannot be read; it does not count.
    #[error("the answer cannot be read: {0}")]
    UnreadableAnswer(String),
    /// No exercise could be made; the item area's words.
    #[error("exercise: {0}")]
    Exercise(String),
    /// A class pack that was not taken.
    #[error(transparent)]
    Refused(#[from] Refusal),
    /// A seat code that was not taken.
    #[error(transparent)]
    SeatCode(#[from] SeatCodeError),
    /// The store's.
    #[error(transparent)]
    Store(#[from] StoreError),
}
