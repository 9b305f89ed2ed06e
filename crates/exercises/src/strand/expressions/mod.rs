//! Expressions, equations and inequalities.

pub mod equations;
pub mod numbers;
pub mod read;
pub mod rewrite;
