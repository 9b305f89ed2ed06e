//! The teacher's side: one function for each use-case of the desk.
//!
//! A folder for each thing that a teacher does: `class` (set-up, seats, roster, calendar),
//! `files` (import, class packs, class keys), `entry` (paper and observations), `board`,
//! `talk`, `groups`, `assign`, `own` (exercises and concepts), `share` and `print`. All of
//! them use `class`; those that read reports use `estimate`, which estimates the class.
//! The types that screens show are in the `views` of the folder that makes them.
//!
//! This crate reads and writes the desk's store only. It knows no files, no clock, no
//! random numbers and no texts of the screens: bytes, dates and seeds are arguments.

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
mod share;
mod talk;
#[cfg(test)]
mod tests;

pub use assign::*;
pub use board::*;
pub use class::*;
pub use entry::*;
pub use error::{DeskError, Field, Rule};
pub use estimate::*;
pub use files::*;
pub use groups::*;
pub use own::*;
pub use print::*;
pub use sample::{SampleExercise, SampleMisconception};
pub use share::*;
pub use talk::*;
