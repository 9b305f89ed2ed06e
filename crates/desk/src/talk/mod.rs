//! The talk plan of a day.

mod nameless;
mod plan;
mod views;

pub use nameless::{ClassTitle, ProjectorConcept, ProjectorDay, class_titles, projector_day};
pub use plan::{MOST_TALK_MINUTES, note_talk, talk, talk_of};
pub use views::*;
