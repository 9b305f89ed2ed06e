//! The words that everything else uses: concepts, strands and their statements
//! by language, the school calendar, the rotation, first lessons, ratings and
//! outcomes, and how a language writes its numbers.
//!
//! Also reads what a teacher brings of these: tables line by line, and own
//! catalogues.
//!
//! Knows nothing of exercises, students' records, files that travel, stores or
//! screens. Reads no clock and draws no chance.

pub mod calendar;
pub mod catalogue_file;
mod concept;
mod error;
mod load;
mod locale;
pub mod plain_date;
pub mod rating;
pub mod rotation;
pub mod seed;
mod standards;
pub mod table;

pub use concept::{Concept, ConceptId, ConceptIdError, Language, Strand, Text2};
pub use error::{CatalogueError, CatalogueFault};
pub use load::Catalogue;
pub use locale::{Locale, NumberStyle};
pub use standards::{CodeCoverage, Marking, Standard, coverage, standards};
