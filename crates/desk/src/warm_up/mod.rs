//! The warm-up of a day: one fresh exercise of each concept, for a class without a review of its
//! own or for a day it failed. It is an offer, so nothing else of the desk depends on it.
//!
//! `day` has the exercises. The screens (`plan`) and the print (`paper`) take them from there, so
//! that both show the same.

mod day;
mod exercise;
mod paper;
mod plan;
mod views;

pub use paper::{WarmUpExercise, WarmUpPaper, warm_up_paper};
pub use plan::{MOST_SWAPS, choose_warm_up, warm_up};
pub use views::*;
