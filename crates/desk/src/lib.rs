//! The teacher's side: one function for each use-case of the desk.
//!
//! A folder for each thing that a teacher does: `class` (set-up, seats, roster, calendar),
//! `files` (import, class packs, class keys), `entry` (paper and observations), `board`,
//! `talk`, `warm_up`, `groups`, `taught_again`, `sentences` (the first screen), `assign`, `own`
//! (exercises and concepts), `share` and `print`. All of
//! them use `class`; those that need reports use `estimate`, which makes the class estimate.
//! The types that screens show are in the `views` of the folder that makes them.
//!
//! This crate reads and writes only the store of the desk. Bytes, dates and seeds are arguments, so
//! it knows no files, no clock and no random numbers. It has no words of the screens.

#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

mod assign;
mod board;
mod class;
mod entry;
mod error;
mod estimate;
mod files;
mod groups;
mod own;
mod print;
mod sample;
mod sentences;
mod share;
mod talk;
mod taught_again;
#[cfg(test)]
mod tests;
mod warm_up;

pub use assign::*;
pub use board::*;
pub use class::*;
pub use entry::*;
pub use error::{DeskError, Field, Rule, Thing};
pub use estimate::*;
pub use files::*;
pub use groups::*;
pub use own::*;
pub use print::*;
pub use sample::{SampleExercise, SampleMisconception};
pub use sentences::*;
pub use share::*;
pub use talk::*;
pub use taught_again::*;
pub use warm_up::*;
