//! Why a use-case of the desk failed.

use std::fmt;
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
    Store(#[from] StoreError),
}

impl DeskError {
    /// Makes a [`DeskError::Invalid`].
    pub(super) fn invalid(field: Field, rule: Rule) -> Self {
        Self::Invalid { field, rule }
    }
}

/// A value that a use-case checks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Field {
    /// Exercises of each concept of an assignment.
    Amount,
    /// An answer to an own exercise.
    Answer,
    /// A class key.
    Class,
    /// Concepts of a class, an assignment or an import.
    Concepts,
    /// Dates of lessons, entries or assignments.
    Dates,
    /// A device that hands in for a seat.
    Device,
    /// Small groups or wishes for them.
    Groups,
    /// Minutes for talk.
    Minutes,
    /// Names of students.
    Names,
    /// The bounds of practice at home.
    Practice,
    /// Removed rows to be restored.
    Removed,
    /// A roster file.
    Roster,
    /// The seats of a class.
    Seats,
    /// A share-safe table.
    ShareTable,
    /// The title of a class.
    Title,
}

impl Field {
    /// Its code for the screens.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Amount => "amount",
            Self::Answer => "answer",
            Self::Class => "class",
            Self::Concepts => "concepts",
            Self::Dates => "dates",
            Self::Device => "device",
            Self::Groups => "groups",
            Self::Minutes => "minutes",
            Self::Names => "names",
            Self::Practice => "practice",
            Self::Removed => "removed",
            Self::Roster => "roster",
            Self::Seats => "seats",
            Self::ShareTable => "share_table",
            Self::Title => "title",
        }
    }
}

impl fmt::Display for Field {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.as_str())
    }
}

/// A rule that a value breaks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rule {
    /// The class is at this desk already.
    AlreadyHere,
    /// The wishes contradict one another.
    Contradiction,
    /// It has no content.
    Empty,
    /// It is in the rotation.
    InRotation,
    /// It has no exercises.
    NoExercises,
    /// No row of it may be shown.
    Nothing,
    /// It is not text in UTF-8.
    NotText,
    /// The dates are in the wrong order.
    Order,
    /// It is outside its range.
    Range,
    /// Its number or id is in use.
    Taken,
    /// There are too few.
    TooFew,
    /// Too few ratings changed since an earlier table.
    TooFewChanged,
    /// It is too long.
    TooLong,
    /// There are too many.
    TooMany,
    /// It cannot be read.
    Unreadable,
    /// A bound of practice at home, by the code of `PracticeRules::fault`.
    Practice(&'static str),
}

impl Rule {
    /// Its code for the screens.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::AlreadyHere => "already_here",
            Self::Contradiction => "contradiction",
            Self::Empty => "empty",
            Self::InRotation => "in_rotation",
            Self::NoExercises => "no_exercises",
            Self::Nothing => "nothing",
            Self::NotText => "not_text",
            Self::Order => "order",
            Self::Range => "range",
            Self::Taken => "taken",
            Self::TooFew => "too_few",
            Self::TooFewChanged => "too_few_changed",
            Self::TooLong => "too_long",
            Self::TooMany => "too_many",
            Self::Unreadable => "unreadable",
            Self::Practice(word) => word,
        }
    }
}

impl fmt::Display for Rule {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.as_str())
    }
}

/// Turns another error into a [`DeskError::Faulty`].
pub(crate) fn faulty(error: impl std::fmt::Display) -> DeskError {
    DeskError::Faulty(error.to_string())
}
