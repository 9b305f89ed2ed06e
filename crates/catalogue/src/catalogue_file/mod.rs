//! Own catalogues: concepts from a file of a teacher or a publisher.
//!
//! A file gives drafts, each with its place. The teacher picks the drafts that become
//! concepts, and [`concepts_of`] checks them together. `docs/own-catalogue.md` describes the
//! files: comma-separated text, and a `CFPackage` of 1EdTech CASE 1.1.

mod case;
mod csv;
mod draft;
mod reading;
#[cfg(test)]
mod tests;

pub use draft::{ConceptDraft, Held, Taken, concepts_of};
pub use reading::{CatalogueFormat, CatalogueReading};

use crate::Language;
use crate::table::{LineFault, LineRefused, without_mark};

/// The most bytes of a file.
pub const MOST_CATALOGUE_BYTES: usize = 16 * 1024 * 1024;

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
        if let Err(refused) = case::read(bytes, main, &mut reading) {
            reading.refused.push(refused);
        }
    } else {
        csv::read(bytes, main, &mut reading);
    }
    reading
}
