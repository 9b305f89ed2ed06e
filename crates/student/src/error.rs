//! Why a student's use-case failed.

use surefoot_exchange::{Refusal, SeatCodeError};
use surefoot_record::{Field, Rule};
use surefoot_store::StoreError;
use thiserror::Error;

/// Why a student's use-case failed. What was stored before is unchanged.
#[derive(Debug, Error)]
pub enum StudentError {
    /// Nobody has joined with this store.
    #[error("nobody has joined")]
    NotJoined,
    /// The date is in the future or no school day.
    #[error("this date cannot be rated")]
    NotADayToRate,
    /// The concept is not in the review of that date, or not in this class.
    #[error("no such concept")]
    NoSuchConcept,
    /// The exercise is not open.
    #[error("no such exercise")]
    NoSuchExercise,
    /// A value breaks a rule.
    #[error("{field}: {rule}")]
    Invalid {
        /// Which value.
        field: Field,
        /// The rule it breaks.
        rule: Rule,
    },
    /// The answer cannot be read, so it does not count as a try.
    #[error("the answer cannot be read: {0}")]
    UnreadableAnswer(String),
    /// A fault of the program, such as an exercise that could not be generated.
    #[error("fault of the program: {0}")]
    Fault(String),
    /// A class pack or a carry file was not taken.
    #[error(transparent)]
    Refused(#[from] Refusal),
    /// The seat code was not taken.
    #[error(transparent)]
    SeatCode(#[from] SeatCodeError),
    /// The store could not be used.
    #[error(transparent)]
    Store(#[from] StoreError),
}
