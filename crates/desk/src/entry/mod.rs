//! Paper entries and observations: the day that the teacher fills in.

mod day;
mod views;

pub use day::{entry_day, make_entry};
pub use views::*;
