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

    /// The state of a long job.
    pub fn job(&self, id: JobId) -> Result<JobState, CallError> {
        self.context.jobs.state(id, false)
    }

    /// Asks a long job to stop.
    pub fn cancel_job(&self, id: JobId) -> Result<JobState, CallError> {
        self.context.jobs.state(id, true)
    }
}
