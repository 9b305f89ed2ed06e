//! Tenths, hundredths and thousandths; the four operations.

pub mod operations;
pub mod order;
pub mod places;
pub mod words;
