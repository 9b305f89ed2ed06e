//! Paper entries and observations: the day that the teacher fills in.

mod day;

pub use day::{entry_day, make_entry};
