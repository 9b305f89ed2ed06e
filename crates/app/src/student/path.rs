//! My path: the year, the focus and the goals.

use super::{StudentDoor, StudentId};
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_record::Goal;
use surefoot_student::views::MyPath;
use ts_rs::TS;

/// The concepts that a student chose to work on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Focus {
    /// The profile's id.
    pub student: String,
    /// The concepts, at most three.
    pub concepts: Vec<String>,
}

/// All goals of a student.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Goals {
    /// The profile's id.
    pub student: String,
    /// The goals, at most three, in their order.
    pub goals: Vec<Goal>,
}

impl StudentDoor {
    /// The student's year.
    pub fn my_path(&self, id: StudentId) -> Result<MyPath, CallError> {
        let today = self.context.today();
        self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::my_path(store, joined, today)?)
        })
    }

    /// Sets the focus.
    pub fn set_focus(&self, focus: Focus) -> Result<MyPath, CallError> {
        let today = self.context.today();
        self.as_student(&focus.student, |store, joined| {
            surefoot_student::set_focus(store, joined, &focus.concepts)?;
            Ok(surefoot_student::my_path(store, joined, today)?)
        })
    }

    /// Saves the goals.
    pub fn set_goals(&self, goals: Goals) -> Result<MyPath, CallError> {
        let today = self.context.today();
        self.as_student(&goals.student, |store, joined| {
            surefoot_student::set_goals(store, &goals.goals)?;
            Ok(surefoot_student::my_path(store, joined, today)?)
        })
    }
}
