//! Middle, spread and shape of data.

mod data_sets;
pub mod measures;
pub mod questions;
