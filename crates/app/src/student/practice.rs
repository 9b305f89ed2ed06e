//! Practice: the evening, one exercise after the other.

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

/// Practice of one concept asked for from My path; nothing for tonight's queue.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PracticeAsked {
    /// The profile's id.
    pub student: String,
    /// The concept asked for.
    pub concept: Option<String>,
    /// Whether to go on though the evening is over.
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

/// How sure a student says to be before answering.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Sure {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
    /// How sure.
    pub sure: Confidence,
}

/// An answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct AnswerGiven {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
    /// What was filled in.
    pub response: Response,
    /// Seconds since the exercise was shown or last answered, by the screen's own count.
    pub seconds: u32,
}

/// The draft of the open exercise.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct DraftKept {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
    /// The draft; nothing when it was emptied.
    pub draft: Option<Draft>,
}

impl StudentDoor {
    /// What to practise now.
    pub fn practice(&self, asked: PracticeAsked) -> Result<PracticeStep, CallError> {
        let (today, seed) = (self.context.today(), random::number()?);
        self.as_student(&asked.student, |store, joined| {
            let concept = asked.concept.as_deref();
            Ok(surefoot_student::practice(
                store, joined, today, concept, asked.more, seed,
            )?)
        })
    }

    /// How sure the student says to be.
    pub fn sure(&self, said: Sure) -> Result<OpenExercise, CallError> {
        let today = self.context.today();
        self.as_student(&said.student, |store, joined| {
            Ok(surefoot_student::sure(
                store,
                joined,
                today,
                &said.exercise,
                said.sure,
            )?)
        })
    }

    /// The next hint.
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

    /// Stores the draft, so that stopping loses nothing of it.
    ///
    /// # Errors
    /// [`CallError::NotFound`], [`CallError::Invalid`] for one that is too long.
    pub fn keep_draft(&self, kept: DraftKept) -> Result<Nothing, CallError> {
        self.as_student(&kept.student, |store, _| {
            surefoot_student::keep_draft(store, &kept.exercise, kept.draft.as_ref())?;
            Ok(Nothing {})
        })
    }

    /// The worked steps instead of an answer.
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

    /// Tonight's practice, looked back on.
    pub fn practice_summary(&self, id: StudentId) -> Result<Summary, CallError> {
        let today = self.context.today();
        self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::practice_summary(store, joined, today)?)
        })
    }
}
