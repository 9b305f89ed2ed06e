//! The teacher's use-cases, one function each.

pub mod pacing;
pub mod roster;
pub mod views;
