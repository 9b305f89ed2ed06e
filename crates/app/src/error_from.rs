//! Turns the errors of the crates below into those of calls.

use crate::error::CallError;
#[cfg(feature = "desk")]
use surefoot_desk::DeskError;
use surefoot_exchange::{Refusal, SeatCodeError};
use surefoot_record::{Field, Rule, Thing};
#[cfg(feature = "desk")]
use surefoot_report::ReportError;
use surefoot_store::StoreError;
use surefoot_student::StudentError;

impl From<StoreError> for CallError {
    fn from(error: StoreError) -> Self {
        match error {
            StoreError::Newer { found, known } => Self::NewerStore { found, known },
            StoreError::Damaged { detail } => Self::DamagedStore { detail },
            StoreError::OtherKind => Self::DamagedStore {
                detail: error.to_string(),
            },
            StoreError::Full => Self::DiskFull,
            StoreError::NotWritable { detail } => Self::NotWritable { detail },
            StoreError::Busy => Self::StoreBusy,
            StoreError::Locked => Self::DeskLocked,
            StoreError::Missing(what) => Self::NotFound { what },
            other => Self::Storage {
                detail: other.to_string(),
            },
        }
    }
}

impl From<Refusal> for CallError {
    fn from(refusal: Refusal) -> Self {
        Self::Refused { refusal }
    }
}

impl From<SeatCodeError> for CallError {
    fn from(error: SeatCodeError) -> Self {
        Self::SeatCode { error }
    }
}

impl From<StudentError> for CallError {
    fn from(error: StudentError) -> Self {
        let not_found = |what| Self::NotFound { what };
        match error {
            StudentError::NotJoined => not_found(Thing::Student),
            StudentError::NoSuchConcept => not_found(Thing::Concept),
            StudentError::NoSuchExercise => not_found(Thing::Exercise),
            StudentError::NotADayToRate => Self::Invalid {
                field: Field::Dates,
                rule: Rule::Range,
            },
            StudentError::Invalid { field, rule } => Self::Invalid { field, rule },
            StudentError::UnreadableAnswer(detail) => Self::UnreadableAnswer { detail },
            StudentError::Fault(detail) => Self::Internal { detail },
            StudentError::Refused(refusal) => refusal.into(),
            StudentError::SeatCode(error) => error.into(),
            StudentError::Store(error) => error.into(),
        }
    }
}

#[cfg(feature = "desk")]
impl From<DeskError> for CallError {
    fn from(error: DeskError) -> Self {
        match error {
            DeskError::NotFound(what) => Self::NotFound { what },
            DeskError::Invalid { field, rule } => Self::Invalid { field, rule },
            DeskError::Calendar(error) => Self::Calendar { error },
            DeskError::Rotation(error) => Self::Rotation { error },
            DeskError::Refused(refusal) => refusal.into(),
            DeskError::Evidence(error) => Self::Storage {
                detail: error.to_string(),
            },
            DeskError::Faulty(detail) => Self::Storage { detail },
            DeskError::Store(error) => error.into(),
        }
    }
}

impl From<std::io::Error> for CallError {
    fn from(error: std::io::Error) -> Self {
        match error.kind() {
            std::io::ErrorKind::StorageFull => Self::DiskFull,
            _ => Self::Files {
                detail: error.to_string(),
            },
        }
    }
}

#[cfg(feature = "desk")]
impl From<ReportError> for CallError {
    fn from(error: ReportError) -> Self {
        let amount = |rule| Self::Invalid {
            field: Field::Amount,
            rule,
        };
        match error {
            ReportError::Nothing => amount(Rule::TooFew),
            ReportError::TooMany { .. } => amount(Rule::TooMany),
            ReportError::NoConcept { .. } => Self::NotFound {
                what: Thing::Concept,
            },
            other => Self::Internal {
                detail: other.to_string(),
            },
        }
    }
}
