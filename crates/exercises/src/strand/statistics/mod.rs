//! Middle, spread and shape of data.

pub mod measures;
pub mod questions;
