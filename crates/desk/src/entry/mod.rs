//! Paper entries and observations of a day.

mod day;
mod views;

pub use day::{entry_day, make_entry};
pub use views::*;
