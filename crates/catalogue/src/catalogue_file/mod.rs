//! A teacher's or a publisher's own catalogue: concepts out of a file.
//!
//! A file gives drafts, each with its place; the teacher picks which of them become
//! concepts, and [`concepts_of`] checks the picked ones together. `docs/own-catalogue.md`
//! describes the files: comma-separated text, and a `CFPackage` of 1EdTech CASE 1.1.

mod case;
mod csv;
mod draft;
#[cfg(test)]
mod tests;

pub use draft::{ConceptDraft, Held, concepts_of};

use crate::Language;
use crate::table::{LineFault, LineRefused, without_mark};
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Own concepts of a class at most.
pub const MOST_OWN_CONCEPTS: usize = 300;
/// Bytes of a file at most.
pub const MOST_CATALOGUE_BYTES: usize = 16 * 1024 * 1024;
/// Items of a package at most.
pub const MOST_PACKAGE_ITEMS: usize = 20_000;
/// Characters of a title: what fits a tile.
pub const MOST_TITLE_CHARS: usize = 60;
/// Characters of an "I can" statement.
pub const MOST_I_CAN_CHARS: usize = 300;
/// Characters of a published code.
pub const MOST_CODE_CHARS: usize = 80;
/// Codes, or concepts before, of one concept at most.
pub const MOST_PARTS: usize = 12;

/// What every own concept's id begins with, so that no built-in one is ever called the same.
pub const OWN_PREFIX: &str = "own-";

/// Which kind of file was read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum CatalogueFormat {
    /// Comma-separated text: every line is meant to become a concept.
    Csv,
    /// A CASE package: the teacher picks.
    Case,
}

/// What a file says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CatalogueReading {
    /// The file's name.
    pub file: String,
    /// Its kind.
    pub format: CatalogueFormat,
    /// The title of the package; empty for a table.
    pub title: String,
    /// What could become a concept, in the order of the file.
    pub drafts: Vec<ConceptDraft>,
    /// What could not, and why.
    pub refused: Vec<LineRefused>,
}

/// Reads a file: JSON as a CASE package, everything else as a table. `main` is the language
/// of texts for which the file names none.
#[must_use]
pub fn read_catalogue(name: &str, bytes: &[u8], main: Language) -> CatalogueReading {
    let is_json = without_mark(bytes)
        .iter()
        .find(|b| !b.is_ascii_whitespace())
        .is_some_and(|b| *b == b'{');
    let mut reading = CatalogueReading {
        file: name.to_owned(),
        format: if is_json {
            CatalogueFormat::Case
        } else {
            CatalogueFormat::Csv
        },
        title: String::new(),
        drafts: Vec::new(),
        refused: Vec::new(),
    };
    if bytes.len() > MOST_CATALOGUE_BYTES {
        let fault = LineFault::FileTooLarge {
            most_bytes: MOST_CATALOGUE_BYTES as u64,
        };
        reading.refused.push(LineRefused::line(1, fault));
    } else if is_json {
        case::read(bytes, main, &mut reading);
    } else {
        csv::read(bytes, main, &mut reading);
    }
    reading
}
