//! The words that everything else uses: concepts, strands and their statements, the school
//! calendar, the rotation, first lessons, ratings and outcomes; the table of languages, texts
//! by language, the loader of messages, and how numbers are written.
//!
//! Also reads what a teacher brings of these: tables line by line, and own
//! catalogues.
//!
//! Knows nothing of exercises, students' records, files that travel, stores or
//! screens. Reads no clock and draws no random numbers.

pub mod calendar;
pub mod catalogue_file;
mod concept;
mod error;
mod language;
mod language_line;
mod load;
mod locale;
pub mod messages;
pub mod plain_date;
pub mod rating;
pub mod rotation;
pub mod seed;
mod standards;
pub mod table;
mod text;

pub use concept::{Concept, ConceptId, ConceptIdError, Strand};
pub use error::{CatalogueError, CatalogueFault};
pub use language::{
    Direction, ExtraLanguage, Language, LanguageLine, PaperSize, UnknownLanguage, register_language,
};
pub use load::Catalogue;
pub use locale::{Locale, NumberStyle, format_number, prose};
pub use standards::{CodeCoverage, Marking, Standard, coverage, standards};
pub use text::{NoText, Text, missing_in};
