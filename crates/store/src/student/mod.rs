//! A student's store: one SQLite file for each student.

mod events;
mod exercise;
mod goals;
mod identity;
mod pin;
mod said_days;

pub use events::PracticeAnswer;
pub use exercise::OpenRow;
pub use identity::{HandInRow, Student};
pub use pin::{Hashed, PinRow};
pub use said_days::SaidDay;

use crate::check::StoreKind;
use crate::store::Store;

/// The kind of a student's store.
pub enum StudentKind {}

impl StoreKind for StudentKind {
    /// "SFst": a Surefoot student's store.
    const ID: i32 = 0x5346_7374;
    const MIGRATIONS: &'static [&'static str] = &[include_str!("schema_1.sql")];

    type State = ();
}

/// A student's opened store.
pub type StudentStore = Store<StudentKind>;
