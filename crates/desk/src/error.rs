//! Why a use-case of the desk failed.

use surefoot_catalogue::calendar::CalendarError;
use surefoot_catalogue::rotation::RotationError;
use surefoot_exchange::Refusal;
use surefoot_insight::EvidenceError;
use surefoot_store::StoreError;
use thiserror::Error;

/// Why a use-case of the desk failed. The store is unchanged.
#[derive(Debug, Error)]
pub enum DeskError {
    /// No such class, seat, concept, device or assignment.
    #[error("no such {0}")]
    NotFound(&'static str),
    /// A value that is not allowed.
    #[error("{field}: {rule}")]
    Invalid {
        /// Which value.
        field: &'static str,
        /// The rule it breaks.
        rule: &'static str,
    },
    /// An invalid school year.
    #[error(transparent)]
    Calendar(#[from] CalendarError),
    /// An invalid rotation.
    #[error(transparent)]
    Rotation(#[from] RotationError),
    /// A file that cannot be made or is refused.
    #[error(transparent)]
    Refused(#[from] Refusal),
    /// More reports than a class can have.
    #[error(transparent)]
    Evidence(#[from] EvidenceError),
    /// The built-in catalogue or a stored value is faulty.
    #[error("{0}")]
    Faulty(String),
    /// An error of the store.
    #[error(transparent)]
    Store(#[from] StoreError),
}

impl DeskError {
    /// A [`DeskError::Invalid`].
    pub(super) fn invalid(field: &'static str, rule: &'static str) -> Self {
        Self::Invalid { field, rule }
    }
}

/// A [`DeskError::Faulty`] from another error.
pub(crate) fn faulty(error: impl std::fmt::Display) -> DeskError {
    DeskError::Faulty(error.to_string())
}
