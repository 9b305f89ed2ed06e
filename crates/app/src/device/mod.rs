//! Calls about the device: start, settings, jobs, copies, backups, removal, voice.
//!
//! Uses the other doors, because a device has the data of both sides. Must never know what a
//! student practises or what a board shows.

pub mod backups;
pub mod copies;
pub mod opened;
pub mod removal;
pub mod restore;
pub mod sample;
pub mod start;
pub mod voice;

use crate::context::Context;
use crate::context::copies::StoreName;
use crate::context::jobs::{JobId, JobState};
use crate::desk::DeskDoor;
use crate::error::CallError;
use crate::student::StudentDoor;
use crate::voice::Voice;
use std::sync::Arc;

/// The device's door.
pub struct DeviceDoor {
    context: Arc<Context>,
    student: Arc<StudentDoor>,
    desk: Arc<DeskDoor>,
    voice: Box<dyn Voice>,
}

impl DeviceDoor {
    pub(crate) fn new(
        context: Arc<Context>,
        student: Arc<StudentDoor>,
        desk: Arc<DeskDoor>,
        voice: Box<dyn Voice>,
    ) -> Self {
        Self {
            context,
            student,
            desk,
            voice,
        }
    }

    /// Refuses a call about a student whose PIN has not been typed. A store that is missing or
    /// cannot be opened asks for no PIN.
    fn refuse_locked(&self, store: &StoreName) -> Result<(), CallError> {
        match store {
            StoreName::Desk => Ok(()),
            StoreName::Student { student } => {
                match self.student.with_student(student, |_| Ok(())) {
                    Err(error @ CallError::Locked) => Err(error),
                    _ => Ok(()),
                }
            }
        }
    }

    /// The state of a long job.
    pub fn job(&self, id: JobId) -> Result<JobState, CallError> {
        self.context.jobs.state(id, false)
    }

    /// Asks a long job to stop.
    pub fn cancel_job(&self, id: JobId) -> Result<JobState, CallError> {
        self.context.jobs.state(id, true)
    }
}
