//! What both sides know of a class and a student: the class's year, concepts and
//! own exercises, a check-in, a practice result, and their keys.
//!
//! Knows nothing of files, stores, screens or estimates.

mod appearance;
mod class;
mod entry;
mod goal;
mod ids;
mod union;
mod view;
pub mod wire;

pub use appearance::{DecimalSign, StudentLook, StudentTheme, TEXT_PERCENTS};
pub use class::{Class, ConceptName};
pub use entry::{AnswerCount, CheckIn, Practice};
pub use goal::Goal;
pub use ids::{AssignmentId, ClassId, DeviceId, IdError, MistakeCode, SEAT_SIGNS, SeatToken};
pub use union::{CheckInState, Key, PracticeState, Record};
pub use view::{DayOfConcept, Said, View};
