//! Multiplying and dividing whole numbers, factors, patterns.

pub mod facts;
pub mod many_steps;
pub mod numbers;
pub mod stories;
pub mod written;
