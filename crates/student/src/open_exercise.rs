//! The open exercise as stored, and the exercise made from it.

use super::{Joined, StudentError, own_turn};
use surefoot_exercises::{Item, Level};
use surefoot_store::StudentStore;
use surefoot_store::student::OpenRow;

/// Returns the open exercise.
///
/// # Errors
/// [`StudentError::NoSuchExercise`] if it has another name than `exercise`, or none is open.
pub(super) fn open_row(store: &StudentStore, exercise: &str) -> Result<OpenRow, StudentError> {
    store
        .open_exercise()?
        .filter(|row| row.exercise == exercise)
        .ok_or(StudentError::NoSuchExercise)
}

/// Returns the exercise of a row: the own exercise that it names, or one generated from its
/// seed.
pub(super) fn make(joined: &Joined, row: &OpenRow) -> Result<Item, StudentError> {
    if let Some(id) = own_turn::own_id(row) {
        return own_turn::own_item(&joined.facts, row.concept.as_str(), id)
            .ok_or(StudentError::NoSuchExercise);
    }
    let level = Level::try_from(row.level).map_err(StudentError::Fault)?;
    surefoot_exercises::generate(row.concept.as_str(), level, row.seed)
        .map_err(|e| StudentError::Fault(e.to_string()))
}

/// Returns whether the exercise of a row can still be made. A newer class pack may lack it.
pub(super) fn can_be_made(joined: &Joined, row: &OpenRow) -> bool {
    match own_turn::own_id(row) {
        Some(id) => own_turn::own_item(&joined.facts, row.concept.as_str(), id).is_some(),
        None => surefoot_exercises::has_generator(row.concept.as_str()),
    }
}
