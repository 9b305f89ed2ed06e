//! A student's own settings.

use super::{StudentDoor, StudentId};
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::Language;
use surefoot_record::Appearance;
use surefoot_student::Wishes;
use surefoot_student::views::StudentSettings;
use ts_rs::TS;

/// A student's own settings.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewStudentSettings {
    /// The profile's id.
    pub student: String,
    /// Language of the screens.
    pub language: Language,
    /// Minutes of an evening, within the teacher's bounds.
    pub minutes: u32,
    /// Exercises of an evening; `None` if it ends after the minutes.
    pub exercises: Option<u32>,
    /// Evenings a week, within the teacher's bounds.
    pub evenings: u32,
    /// How the screens look and sound.
    pub appearance: Appearance,
}

impl StudentDoor {
    /// The student's settings.
    pub fn student_settings(&self, id: StudentId) -> Result<StudentSettings, CallError> {
        self.as_student(&id.student, |_, joined| {
            Ok(surefoot_student::settings(joined, self.context.today()))
        })
    }

    /// Saves the student's settings.
    pub fn save_student_settings(
        &self,
        new: NewStudentSettings,
    ) -> Result<StudentSettings, CallError> {
        self.as_student(&new.student, |store, joined| {
            Ok(surefoot_student::save_settings(
                store,
                joined,
                self.context.today(),
                Wishes {
                    language: new.language,
                    minutes: new.minutes,
                    exercises: new.exercises,
                    evenings: new.evenings,
                    appearance: new.appearance,
                },
            )?)
        })
    }
}
