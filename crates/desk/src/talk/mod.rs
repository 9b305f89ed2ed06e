//! The talk plan of a day.

mod plan;

pub use plan::{MOST_TALK_MINUTES, note_talk, talk};
