//! What was taught again, and whether it helped.

mod entries;
mod verdicts;
mod views;

pub(crate) use entries::note_group;
pub use entries::{drop_taught_again, note_taught_again};
pub(crate) use verdicts::newest_verdict;
pub use verdicts::taught_again;
pub use views::*;
