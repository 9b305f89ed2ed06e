//! Why a teacher's use-case did not go through.

use surefoot_catalogue::calendar::CalendarError;
use surefoot_catalogue::rotation::RotationError;
use surefoot_exchange::Refusal;
use surefoot_insight::EvidenceError;
use surefoot_store::StoreError;
use thiserror::Error;

/// Why a teacher's use-case did not go through. What was stored stays.
#[derive(Debug, Error)]
pub enum DeskError {
    /// No such class, seat, concept, device or assignment.
    #[error("no such {0}")]
    NotFound(&'static str),
    /// A value that cannot be taken.
    #[error("{field}: {rule}")]
    Invalid {
        /// Which value.
        field: &'static str,
        /// The rule it breaks.
        rule: &'static str,
    },
    /// A school year that cannot be.
    #[error(transparent)]
    Calendar(#[from] CalendarError),
    /// A rotation that cannot be.
    #[error(transparent)]
    Rotation(#[from] RotationError),
    /// A file that cannot be made or read.
    #[error(transparent)]
    Refused(#[from] Refusal),
    /// More reports than a class can have.
    #[error(transparent)]
    Evidence(#[from] EvidenceError),
    /// The built-in catalogue or a stored value is faulty.
    #[error("{0}")]
    Faulty(String),
    /// The store's.
    #[error(transparent)]
    Store(#[from] StoreError),
}

impl DeskError {
    /// A [`DeskError::Invalid`].
    pub(super) fn invalid(field: &'static str, rule: &'static str) -> Self {
        Self::Invalid { field, rule }
    }
}

/// A [`DeskError::Faulty`] from what another part says.
pub(crate) fn faulty(error: impl std::fmt::Display) -> DeskError {
    DeskError::Faulty(error.to_string())
}
