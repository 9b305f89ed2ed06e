//! Why a print failed.

use surefoot_exercises::ItemError;
use surefoot_exercises::messages::MessageError;
use thiserror::Error;

/// Why a print failed.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum ReportError {
    /// There is nothing to print: no exercise, no student, no row.
    #[error("there is nothing to print")]
    Nothing,
    /// There is no such concept, or it has no exercises.
    #[error("there is no concept {id}")]
    NoConcept {
        /// The id asked for.
        id: String,
    },
    /// More exercises were asked for than a sheet can have.
    #[error("{asked} exercises were asked for; a sheet has at most {most}")]
    TooMany {
        /// How many were asked for.
        asked: usize,
        /// The most that a sheet has.
        most: usize,
    },
    /// The generator failed.
    #[error(transparent)]
    Item(#[from] ItemError),
    /// An own exercise cannot be shown, which is a fault of the program.
    #[error("an own exercise cannot be shown: {0}")]
    Own(String),
    /// A message is missing.
    #[error(transparent)]
    Message(#[from] MessageError),
    /// The file could not be written, which is a fault of the program.
    #[error("the file could not be written: {0}")]
    Writer(String),
}
