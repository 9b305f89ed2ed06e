//! The talk plan of a day.

mod nameless;
mod plan;
mod views;

pub use nameless::{ClassTitle, ProjectorConcept, ProjectorDay, class_titles, projector_day};
pub use plan::{MOST_TALK_MINUTES, day_to_show, note_talk, talk};
pub use views::*;
