//! The teacher's use-cases, one function each.

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
pub use error::DeskError;
pub use estimate::*;
pub use files::*;
pub use groups::*;
pub use own::*;
pub use print::*;
pub use sample::{SampleExercise, SampleMisconception};
pub use share::*;
pub use talk::*;
