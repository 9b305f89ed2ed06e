//! A student's settings.

use super::views::StudentSettings;
use super::{Joined, StudentError};
use chrono::NaiveDate;
use surefoot_catalogue::Language;
use surefoot_exchange::{SigningKey, fingerprint};
use surefoot_practice::workload::exercise_bounds;
use surefoot_record::{Appearance, Field, PracticeRules, Rule};
use surefoot_store::StudentStore;
use surefoot_store::student::Student;

/// The settings that a student chose.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Wishes {
    /// Language of the screens.
    pub language: Language,
    /// Minutes of an evening, within the teacher's bounds.
    pub minutes: u32,
    /// Exercises of an evening, as many as fit the teacher's bounds in minutes; `None` if it
    /// ends by minutes.
    pub exercises: Option<u32>,
    /// Evenings of a week, within the teacher's bounds.
    pub evenings: u32,
    /// How the screens look and sound.
    pub appearance: Appearance,
}

/// Returns the settings with the teacher's bounds.
#[must_use]
pub fn settings(joined: &Joined, today: NaiveDate) -> StudentSettings {
    settings_of(&joined.student, joined.pack.practice, today)
}

fn settings_of(student: &Student, bounds: PracticeRules, today: NaiveDate) -> StudentSettings {
    let (exercises_least, exercises_most) =
        exercise_bounds(bounds.minutes_least, bounds.minutes_most);
    StudentSettings {
        language: student.language,
        minutes: student.minutes,
        minutes_least: bounds.minutes_least,
        minutes_most: bounds.minutes_most,
        exercises: student.exercises,
        exercises_least,
        exercises_most,
        evenings: student.evenings,
        evenings_least: bounds.evenings_least,
        evenings_most: bounds.evenings_most,
        test_on: bounds.test_on.filter(|test| *test > today),
        appearance: student.appearance,
        fingerprint: fingerprint(
            &SigningKey::from_seed(&student.signing_seed).public(),
            &student.device,
        ),
    }
}

/// Writes the settings.
///
/// # Errors
/// [`StudentError::Invalid`] if a value is outside the teacher's bounds, or a text size is not
/// offered.
pub fn save_settings(
    store: &StudentStore,
    joined: &Joined,
    today: NaiveDate,
    wishes: Wishes,
) -> Result<StudentSettings, StudentError> {
    let bounds = joined.pack.practice;
    let (exercises_least, exercises_most) =
        exercise_bounds(bounds.minutes_least, bounds.minutes_most);
    for (field, found, least, most) in [
        (
            Field::Minutes,
            wishes.minutes,
            bounds.minutes_least,
            bounds.minutes_most,
        ),
        (
            Field::Exercises,
            wishes.exercises.unwrap_or(exercises_least),
            exercises_least,
            exercises_most,
        ),
        (
            Field::Evenings,
            wishes.evenings,
            bounds.evenings_least,
            bounds.evenings_most,
        ),
    ] {
        if !(least..=most).contains(&found) {
            return Err(StudentError::Invalid {
                field,
                rule: Rule::Range,
            });
        }
    }
    if !wishes.appearance.is_offered() {
        return Err(StudentError::Invalid {
            field: Field::TextPercent,
            rule: Rule::Range,
        });
    }
    let student = Student {
        language: wishes.language,
        minutes: wishes.minutes,
        exercises: wishes.exercises,
        evenings: wishes.evenings,
        appearance: wishes.appearance,
        ..joined.student.clone()
    };
    store.transaction(|| {
        // With another decimal sign, the draft would be read as another number.
        if student.appearance.decimal_sign != joined.student.appearance.decimal_sign {
            store.put_draft(None)?;
        }
        store.put_student(&student)
    })?;
    Ok(settings_of(&student, bounds, today))
}
