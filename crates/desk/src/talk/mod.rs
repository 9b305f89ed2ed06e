//! The talk plan of a day.

mod plan;
mod views;

pub use plan::{MOST_TALK_MINUTES, note_talk, talk};
pub use views::*;
