//! Assigned practice.

use super::{ClassId, DeskDoor};
use crate::context::random;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_desk::{AssignmentReport, NewAssignment};
use ts_rs::TS;

/// A new assignment.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Assign {
    /// The class.
    pub class: String,
    /// The new assignment.
    pub assignment: NewAssignment,
}

/// An assignment by id.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AssignmentId {
    /// The class.
    pub class: String,
    /// The assignment.
    pub assignment: String,
}

impl DeskDoor {
    /// Assigns practice.
    pub fn assign(&self, new: Assign) -> Result<Vec<AssignmentReport>, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        let id = random::hex::<8>()?;
        self.with_class(&new.class, |desk, class| {
            surefoot_desk::assign(desk, class, &new.assignment, &id, today)?;
            Ok(surefoot_desk::assignments(desk, class, language, today)?)
        })
    }

    /// The assignments of a class.
    pub fn assignments(&self, id: ClassId) -> Result<Vec<AssignmentReport>, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::assignments(desk, class, language, today)?)
        })
    }

    /// Withdraws an assignment.
    pub fn withdraw_assignment(
        &self,
        id: AssignmentId,
    ) -> Result<Vec<AssignmentReport>, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&id.class, |desk, class| {
            surefoot_desk::withdraw_assignment(desk, class, &id.assignment)?;
            Ok(surefoot_desk::assignments(desk, class, language, today)?)
        })
    }

    /// Restores an assignment that was withdrawn.
    pub fn restore_assignment(&self, id: AssignmentId) -> Result<Vec<AssignmentReport>, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&id.class, |desk, class| {
            surefoot_desk::restore_assignment(desk, class, &id.assignment)?;
            Ok(surefoot_desk::assignments(desk, class, language, today)?)
        })
    }
}
