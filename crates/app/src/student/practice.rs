//! Practice: the exercises of an evening.

use super::{StudentDoor, StudentId};
use crate::context::random;
use crate::context::values::Nothing;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::rating::Confidence;
use surefoot_exercises::Response;
use surefoot_student::draft::Draft;
use surefoot_student::practice_views::{Feedback, OpenExercise, PracticeStep, Summary};
use ts_rs::TS;

/// A request for the next exercise.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PracticeAsked {
    /// The profile's id.
    pub student: String,
    /// The concept, if chosen on My path; `None` for the queue.
    pub concept: Option<String>,
    /// Whether to go on after the end of the evening.
    pub more: bool,
}

/// The open exercise.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ExerciseId {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
}

/// How sure a student is before answering.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ConfidenceSaid {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
    /// How sure.
    pub confidence: Confidence,
}

/// An answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct AnswerGiven {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
    /// The response.
    pub response: Response,
    /// Seconds since the exercise was shown or last answered, counted by the screen.
    pub seconds: u32,
}

/// The draft of the open exercise.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct DraftKept {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
    /// The draft; `None` if it is empty.
    pub draft: Option<Draft>,
}

impl StudentDoor {
    /// The next step of practice.
    pub fn practice(&self, asked: PracticeAsked) -> Result<PracticeStep, CallError> {
        let (today, seed) = (self.context.today(), random::number()?);
        self.as_student(&asked.student, |store, joined| {
            let concept = asked.concept.as_deref();
            Ok(surefoot_student::practice(
                store, joined, today, concept, asked.more, seed,
            )?)
        })
    }

    /// Stores how sure the student is.
    pub fn say_confidence(&self, said: ConfidenceSaid) -> Result<OpenExercise, CallError> {
        let today = self.context.today();
        self.as_student(&said.student, |store, joined| {
            Ok(surefoot_student::say_confidence(
                store,
                joined,
                today,
                &said.exercise,
                said.confidence,
            )?)
        })
    }

    /// Shows the next hint.
    pub fn hint(&self, id: ExerciseId) -> Result<OpenExercise, CallError> {
        let today = self.context.today();
        self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::hint(store, joined, today, &id.exercise)?)
        })
    }

    /// Marks an answer.
    pub fn answer(&self, given: AnswerGiven) -> Result<Feedback, CallError> {
        let today = self.context.today();
        self.as_student(&given.student, |store, joined| {
            Ok(surefoot_student::answer(
                store,
                joined,
                today,
                &given.exercise,
                &given.response,
                given.seconds,
            )?)
        })
    }

    /// Stores the draft.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] for a draft that is too long.
    pub fn keep_draft(&self, kept: DraftKept) -> Result<Nothing, CallError> {
        self.as_student(&kept.student, |store, _| {
            surefoot_student::keep_draft(store, &kept.exercise, kept.draft.as_ref())?;
            Ok(Nothing {})
        })
    }

    /// Shows the worked steps instead of taking an answer.
    pub fn show_steps(&self, id: ExerciseId) -> Result<Feedback, CallError> {
        let today = self.context.today();
        self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::show_steps(
                store,
                joined,
                today,
                &id.exercise,
            )?)
        })
    }

    /// The summary of the evening.
    pub fn practice_summary(&self, id: StudentId) -> Result<Summary, CallError> {
        let today = self.context.today();
        self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::practice_summary(store, joined, today)?)
        })
    }
}
