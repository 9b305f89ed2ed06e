//! Faults of a built-in catalogue file.

use crate::Language;
use thiserror::Error;

/// A fault and its place.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("{file}, line {line}: {fault}")]
pub struct CatalogueError {
    /// The file's name.
    pub file: String,
    /// The line, from 1.
    pub line: usize,
    /// What is wrong there.
    pub fault: CatalogueFault,
}

/// What is wrong.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum CatalogueFault {
    /// The file is not TOML, or a field is unknown, missing or of the wrong type.
    #[error("{message}")]
    Unreadable {
        /// The reader's message.
        message: String,
    },
    /// An id is not written as an id.
    #[error("{text:?} is not an id: lower-case letters and digits joined by single hyphens")]
    BadId {
        /// The id as written, cut to 80 characters.
        text: String,
    },
    /// There is no such strand.
    #[error("concept {concept}: there is no strand {strand:?}")]
    UnknownStrand {
        /// Which concept.
        concept: String,
        /// The strand as written.
        strand: String,
    },
    /// A grade is outside 1 to 12.
    #[error("concept {concept}: grade {grade} is not 1 to 12")]
    BadGrade {
        /// Which concept.
        concept: String,
        /// The grade as written.
        grade: i64,
    },
    /// The title or the statement is missing in a language.
    #[error("concept {concept}: the title or the statement is missing in {language}")]
    MissingLanguage {
        /// Which concept.
        concept: String,
        /// The language.
        language: Language,
    },
    /// Two concepts have the same id.
    #[error("there is a concept {concept} already, in {first_file}, line {first_line}")]
    Duplicate {
        /// The id.
        concept: String,
        /// File of the first.
        first_file: String,
        /// Line of the first.
        first_line: usize,
    },
    /// A prerequisite is not in the catalogue.
    #[error("concept {concept}: prerequisite {prerequisite} is not in the catalogue")]
    UnknownPrerequisite {
        /// Which concept.
        concept: String,
        /// The id of the prerequisite.
        prerequisite: String,
    },
    /// A concept is a prerequisite of itself, directly or through others.
    #[error("prerequisites form a circle: {}", .path.join(" → "))]
    Cycle {
        /// The ids around the circle, the first again at the end.
        path: Vec<String>,
    },
}
