//! Multiplying and dividing whole numbers, factors, patterns.

pub mod facts;
pub mod numbers;
pub mod stories;
pub mod written;
