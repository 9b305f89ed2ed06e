//! What the readers of both formats find in a file.

use super::draft::ConceptDraft;
use crate::table::LineRefused;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The format of a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum CatalogueFormat {
    /// Comma-separated text; all its lines become concepts.
    Csv,
    /// A CASE package; the teacher picks items.
    Case,
}

/// What a file says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CatalogueReading {
    /// The file's name.
    pub file: String,
    /// Its format.
    pub format: CatalogueFormat,
    /// The title of the package; empty for a table.
    pub title: String,
    /// What could become a concept, in the order of the file.
    pub drafts: Vec<ConceptDraft>,
    /// What could not, and why.
    pub refused: Vec<LineRefused>,
}
