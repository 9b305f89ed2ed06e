//! What the screen of own exercises and concepts shows.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::Language;
use surefoot_catalogue::table::LineRefused;
use surefoot_exercises::bank::OwnKind;
use surefoot_exercises::{Block, ItemView};
use surefoot_record::ConceptName;
use ts_rs::TS;

/// The own exercises and concepts of a class.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct OwnDesk {
    /// Own exercises, by concept.
    pub exercises: Vec<OwnExerciseLine>,
    /// Own concepts, in the rotation or not.
    pub concepts: Vec<OwnConceptLine>,
    /// Imports, newest first.
    pub imports: Vec<OwnImport>,
}

/// An own exercise in a line.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct OwnExerciseLine {
    /// Its id.
    pub id: String,
    /// Its concept.
    pub concept: ConceptName,
    /// Whether the concept is in the rotation; only then the class pack has the exercise.
    pub in_rotation: bool,
    /// 1 entry, 2 expected, 3 stretch.
    pub level: u8,
    /// The kind of its answer.
    pub kind: OwnKind,
    /// Its question, as plain text.
    pub question: String,
    /// The language of the question, if it is missing in the language of the screens.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub shown_in: Option<Language>,
    /// Its answer, as plain text.
    pub answer: String,
}

/// An own concept in a line.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct OwnConceptLine {
    /// The concept.
    pub concept: ConceptName,
    /// Its school grade.
    pub grade: u8,
    /// Codes of published standards.
    pub codes: Vec<String>,
    /// The titles of its prerequisites.
    pub before: Vec<String>,
    /// Whether it is in the rotation.
    pub in_rotation: bool,
    /// Own exercises for it.
    pub exercises: usize,
}

/// What was imported.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum OwnImportKind {
    /// Exercises.
    Exercises,
    /// Concepts.
    Concepts,
}

/// An import with its report.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct OwnImport {
    /// 1, 2, 3 ... in its class.
    pub number: u32,
    /// What was imported.
    pub kind: OwnImportKind,
    /// The date of the import.
    pub made_on: NaiveDate,
    /// Whether it was undone.
    pub undone: bool,
    /// The files.
    pub files: Vec<OwnFile>,
}

/// The report on a file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct OwnFile {
    /// Its name.
    pub file: String,
    /// What was imported.
    pub taken: Vec<OwnLineTaken>,
    /// What was refused, and why.
    pub refused: Vec<LineRefused>,
}

/// A line that was imported.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct OwnLineTaken {
    /// The line, from 1; 0 in a file without lines.
    pub line: u32,
    /// The id of the exercise or concept.
    pub id: String,
    /// Its question or title.
    pub words: String,
    /// Languages of the program in which one of its texts is missing.
    pub missing_in: Vec<Language>,
    /// Parts of the file that were left out.
    pub left_out: Vec<String>,
}

/// An own exercise to try.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct OwnExercisePage {
    /// Its id.
    pub id: String,
    /// Its concept.
    pub concept: ConceptName,
    /// As the student sees it.
    pub item: ItemView,
    /// Its hints.
    pub hints: Vec<Vec<Block>>,
}

/// The result of trying an exercise.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct OwnTried {
    /// Whether the answer was right.
    pub right: bool,
    /// The feedback.
    pub says: Vec<Block>,
    /// The right answer.
    pub answer: Vec<Block>,
    /// The worked steps.
    pub steps: Vec<Vec<Block>>,
}
