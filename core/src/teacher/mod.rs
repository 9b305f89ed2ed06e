//! The teacher's use-cases, one function each.

pub mod views;
