//! The values that every other crate uses: concepts, strands and statements; the school
//! calendar and the rotation; confidence and outcome; languages, texts, messages, and how
//! numbers are written.
//!
//! Also reads a teacher's tables and own catalogue files.
//!
//! Knows nothing of exercises, students' records, files that travel, stores or
//! screens. Reads no clock and draws no random numbers.
#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

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
mod signs;
mod standards;
pub mod table;
mod text;
mod text_id;

pub use concept::{Concept, ConceptId, GRADES, Strand};
pub use error::{CatalogueError, CatalogueFault};
pub use language::{ExtraLanguage, Language, UnknownLanguage, register_language};
pub use language_line::{Direction, LanguageLine, NumberStyle, PaperSize};
pub use load::Catalogue;
pub use locale::{Locale, format_number, prose};
pub use signs::{steers, without_turns};
pub use standards::{CodeCoverage, CodePart, Marking, Standard, code_parts, coverage, standards};
pub use text::{NoText, Text, missing_in};
pub use text_id::{IdError, is_hyphenated};
