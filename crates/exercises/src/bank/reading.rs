//! What the readers of both formats find in a file.

use super::own::OwnExercise;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::table::{LineFault, LineRefused};

/// What a class has under a concept's name in a file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ConceptFound {
    /// One concept.
    One(ConceptId),
    /// None.
    None,
    /// More than one.
    Several,
}

/// A line that is taken.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LineTaken {
    /// From 1.
    pub line: u32,
    /// The exercise.
    pub own: OwnExercise,
    /// Parts of the file that were left out.
    pub left_out: Vec<String>,
}

/// The lines of one file.
#[derive(Default)]
pub(super) struct FileLines {
    pub taken: Vec<LineTaken>,
    pub refused: Vec<LineRefused>,
}

impl FileLines {
    pub fn refuse(&mut self, line: u32, fault: LineFault) {
        self.refused.push(LineRefused::line(line, fault));
    }
}
