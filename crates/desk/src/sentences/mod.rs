//! The first screen: what the class needs now, in sentences, and the next two school days.
//!
//! A sentence is values, made from the views that the board, Talk, Groups and the comparison show;
//! the words are in the messages. A new kind of sentence is a variant of [`SentenceKind`], a
//! function, and its line in the table of `kinds`.

mod certainty;
mod days;
mod kinds;
mod now;
mod picture;

pub use certainty::{Certainty, ENOUGH_SHARE};
pub use days::{DayPlan, DayPlanConcept};
pub use kinds::{Heads, Sentence, SentenceAction, SentenceKind};
pub use now::{ClassNow, Knowledge, MOST_SENTENCES, class_now};
