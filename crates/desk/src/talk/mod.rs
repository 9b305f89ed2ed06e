//! The talk plan of a day.

mod nameless;
mod plan;
mod views;

pub use nameless::{
    ClassTitle, ProjectorConcept, ProjectorDay, class_titles, concept_to_show, projector_day,
};
pub(crate) use plan::talk_from;
pub use plan::{
    MOST_TALK_MINUTES, TalkDay, USUAL_TALK_MINUTES, day_to_show, note_talk, talk, talk_of, talk_on,
};
pub use views::*;
