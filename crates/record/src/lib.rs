//! What both sides know of a class and a student: the class's year, concepts and
//! own exercises; the rules of practice at home, and why an exercise is in a queue; a
//! student's appearance and goals; a check-in, a practice result and their keys; in
//! [`counts`] the one rule of what counts.
//!
//! Today, the carry file, sealing, import and the board all use these types and
//! that rule.
//!
//! Does not know where an entry comes from or is stored: nothing of files, stores,
//! screens or estimates.
#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

mod appearance;
mod class;
pub mod counts;
mod entry;
mod goal;
mod ids;
mod invalid;
mod practice_rules;
mod reason;
mod thing;
mod union;
pub mod wire;

pub use appearance::{Appearance, AppearanceTheme, DecimalSign, TEXT_PERCENTS};
pub use class::{Class, ConceptName};
pub use counts::{CheckInSource, Counted, CountedDates, Counting, what_counts};
pub use entry::{AnswerCount, CheckIn, Key, Practice, Said};
pub use goal::Goal;
pub use ids::{AssignmentId, ClassId, DeviceId, MisconceptionCode, SEAT_SIGNS, SeatToken};
pub use invalid::{Field, Rule};
pub use practice_rules::PracticeRules;
pub use reason::Reason;
pub use thing::Thing;
pub use union::Record;
