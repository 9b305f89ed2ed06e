//! What can be wrong with a catalogue.

use crate::Language;
use thiserror::Error;

/// A fault of a catalogue file, and its place.
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
    /// Not TOML, an unknown or missing field, or a value of the wrong type.
    #[error("{message}")]
    Unreadable {
        /// The reader's message.
        message: String,
    },
    /// An id that is not in the form of ids.
    #[error("{text:?} is not an id: lower-case letters and digits joined by single hyphens")]
    BadId {
        /// The text.
        text: String,
    },
    /// An unknown strand.
    #[error("concept {concept}: strand {strand:?} is not one of ours")]
    UnknownStrand {
        /// Which concept.
        concept: String,
        /// The strand's text.
        strand: String,
    },
    /// A grade outside 1 to 12.
    #[error("concept {concept}: grade {grade} is not 1 to 12")]
    BadGrade {
        /// Which concept.
        concept: String,
        /// The grade given.
        grade: i64,
    },
    /// Title and statement are missing in one language.
    #[error("concept {concept}: title and statement are missing in {language}")]
    MissingLanguage {
        /// Which concept.
        concept: String,
        /// The language.
        language: Language,
    },
    /// An id given twice.
    #[error("concept {concept} is given again; it is first in {first_file}, line {first_line}")]
    Duplicate {
        /// Which concept.
        concept: String,
        /// File of the first.
        first_file: String,
        /// Line of the first.
        first_line: usize,
    },
    /// A prerequisite that is no concept of the catalogue.
    #[error("concept {concept}: prerequisite {prerequisite} is not in the catalogue")]
    UnknownPrerequisite {
        /// Which concept.
        concept: String,
        /// The id asked for.
        prerequisite: String,
    },
    /// Prerequisites that lead back to where they start.
    #[error("prerequisites form a circle: {}", .path.join(" → "))]
    Cycle {
        /// The ids around the circle, the first again at the end.
        path: Vec<String>,
    },
}
