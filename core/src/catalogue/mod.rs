//! Concepts, strands, "I can" statements, prerequisites and alignments.

mod concept;

pub use concept::{Concept, ConceptId, ConceptIdError, Language, Strand, Text2};
