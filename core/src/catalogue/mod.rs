//! Concepts, strands, "I can" statements, prerequisites and alignments.

mod concept;
mod error;
mod load;
mod standards;

pub use concept::{Concept, ConceptId, ConceptIdError, Language, Strand, Text2};
pub use error::{CatalogueError, CatalogueFault};
pub use load::Catalogue;
pub use standards::{CodeCoverage, Marking, Standard, coverage, standards};
