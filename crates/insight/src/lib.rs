//! The numbers from the reports of a class: class estimate, trend, calibration, groups, talk plan and
//! disclosure control.
//!
//! This crate takes and returns numbers. Students, concepts and passes are numbered from 0; the caller
//! keeps their lists and maps dates to passes. Every estimate comes with its uncertainty.
//! Randomness comes from a seed, so that every device finds the same plan.
//!
//! This crate must not know records, stores, files, or words for people. Formulas, sources
//! and measured figures are in `docs/insight.md`.
#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

pub mod calibration;
pub mod class_estimate;
pub mod disclosure;
pub mod evidence;
mod grid;
pub mod groups;
pub mod stats;
pub mod talk;
pub mod taught_again;
pub mod trend;

pub use evidence::{Evidence, EvidenceError, PracticeCount};
