//! Calls about the device: start, settings, jobs, copies, backups, removal, voice.
//!
//! Uses the other doors, because a device has the data of both sides. Must never know what a
//! student practises or what a board shows.

pub mod backups;
pub mod copies;
#[cfg(feature = "desk")]
pub mod desk_lock;
pub mod opened;
#[cfg(feature = "desk")]
pub mod projector;
pub mod removal;
pub mod restore;
#[cfg(feature = "desk")]
pub mod sample;
pub mod start;
pub mod voice;

use crate::context::Context;
use crate::context::copies::StoreName;
#[cfg(feature = "desk")]
use crate::context::jobs::JobResult;
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

    /// Refuses a call about a locked desk, or about a student whose PIN has not been typed. A store
    /// that is missing or cannot be opened asks for nothing.
    fn refuse_locked(&self, store: &StoreName) -> Result<(), CallError> {
        match store {
            StoreName::Desk => self.desk.refuse_locked(),
            StoreName::Student { student } => {
                match self.student.with_student(student, |_| Ok(())) {
                    Err(error @ CallError::Locked) => Err(error),
                    _ => Ok(()),
                }
            }
        }
    }

    /// The state of a long job.
    ///
    /// While the desk is locked, an import that has ended is shown as running, because its report
    /// names files.
    pub fn job(&self, id: JobId) -> Result<JobState, CallError> {
        self.shown(self.context.jobs.state(id, false)?)
    }

    #[cfg(not(feature = "desk"))]
    fn shown(&self, job: JobState) -> Result<JobState, CallError> {
        Ok(job)
    }

    #[cfg(feature = "desk")]
    fn shown(&self, mut job: JobState) -> Result<JobState, CallError> {
        let report = matches!(job.result, Some(JobResult::Import { .. }));
        if report && self.desk.refuse_locked().is_err() {
            job.result = None;
        }
        Ok(job)
    }

    /// Asks a long job to stop.
    pub fn cancel_job(&self, id: JobId) -> Result<JobState, CallError> {
        self.shown(self.context.jobs.state(id, true)?)
    }
}
