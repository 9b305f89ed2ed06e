//! How a student wants to practise.

use super::views::StudentSettings;
use super::{Joined, StudentError};
use crate::catalogue::Language;
use crate::store::StudentStore;

/// The settings with the teacher's bounds.
#[must_use]
pub fn settings(joined: &Joined) -> StudentSettings {
    StudentSettings {
        language: joined.student.language,
        minutes: joined.student.minutes,
        minutes_least: joined.pack.practice.minutes_least,
        minutes_most: joined.pack.practice.minutes_most,
    }
}

/// Writes the settings.
///
/// # Errors
/// [`StudentError::Invalid`] for minutes outside the teacher's bounds, or the store's.
pub fn save_settings(
    store: &StudentStore,
    joined: &Joined,
    language: Language,
    minutes: u32,
) -> Result<StudentSettings, StudentError> {
    let bounds = joined.pack.practice;
    if minutes < bounds.minutes_least || minutes > bounds.minutes_most {
        return Err(StudentError::Invalid {
            field: "minutes",
            rule: "range",
        });
    }
    let mut student = joined.student.clone();
    student.language = language;
    student.minutes = minutes;
    store.put_student(&student)?;
    Ok(StudentSettings {
        language,
        minutes,
        minutes_least: bounds.minutes_least,
        minutes_most: bounds.minutes_most,
    })
}
