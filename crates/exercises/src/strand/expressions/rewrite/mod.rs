//! Expressions with letters: writing, naming parts, rewriting.

pub mod equal;
pub mod write;
