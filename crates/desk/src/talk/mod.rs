//! The talk plan of a day.

mod nameless;
mod plan;
mod views;

pub use nameless::{ClassTitle, class_titles, talk_without_names};
pub use plan::{MOST_TALK_MINUTES, note_talk, talk};
pub use views::*;
