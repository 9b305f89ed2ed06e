//! Why a use-case of the desk failed.

use surefoot_catalogue::calendar::CalendarError;
use surefoot_catalogue::rotation::RotationError;
use surefoot_exchange::Refusal;
use surefoot_insight::EvidenceError;
pub use surefoot_record::{Field, Rule, Thing};
use surefoot_store::StoreError;
use thiserror::Error;

/// Why a use-case of the desk failed. The store is unchanged.
#[derive(Debug, Error)]
pub enum DeskError {
    /// It does not exist, or not any more.
    #[error("no such {0}")]
    NotFound(Thing),
    /// A value that is not allowed.
    #[error("{field}: {rule}")]
    Invalid {
        /// Which value.
        field: Field,
        /// The rule it breaks.
        rule: Rule,
    },
    /// The school year is invalid.
    #[error(transparent)]
    Calendar(#[from] CalendarError),
    /// The rotation is invalid.
    #[error(transparent)]
    Rotation(#[from] RotationError),
    /// A file that is refused or cannot be made.
    #[error(transparent)]
    Refused(#[from] Refusal),
    /// More reports than a class can have.
    #[error(transparent)]
    Evidence(#[from] EvidenceError),
    /// The built-in catalogue or a stored value is faulty.
    #[error("{0}")]
    Faulty(String),
    /// The store failed.
    #[error(transparent)]
    Store(StoreError),
}

impl From<StoreError> for DeskError {
    fn from(error: StoreError) -> Self {
        match error {
            StoreError::Missing(what) => Self::NotFound(what),
            other => Self::Store(other),
        }
    }
}

impl DeskError {
    /// Makes a [`DeskError::Invalid`].
    pub(super) fn invalid(field: Field, rule: Rule) -> Self {
        Self::Invalid { field, rule }
    }
}

/// Turns another error into a [`DeskError::Faulty`].
pub(crate) fn faulty(error: impl std::fmt::Display) -> DeskError {
    DeskError::Faulty(error.to_string())
}
