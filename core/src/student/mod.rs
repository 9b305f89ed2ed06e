//! The student's use-cases, one function each.

pub mod practice_views;
pub mod views;
