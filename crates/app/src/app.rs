//! The opened program.

use crate::context::Context;
use crate::context::clock::Clock;
use crate::context::file_dialogs::FileDialogs;
use crate::desk::DeskDoor;
use crate::device::DeviceDoor;
use crate::error::CallError;
use crate::student::StudentDoor;
use crate::voice::Voice;
use std::path::Path;
use std::sync::Arc;

/// The opened program: three doors, which share clock, files, settings and jobs.
pub struct App {
    /// Start, settings, jobs, copies, backups, removal and voice.
    pub device: DeviceDoor,
    /// The student's screens.
    pub student: Arc<StudentDoor>,
    /// The teacher's desk.
    pub desk: Arc<DeskDoor>,
}

impl App {
    /// Opens the program on its data folder.
    ///
    /// # Errors
    /// Returns [`CallError::Files`] if the folder cannot be made.
    pub fn open(
        data: &Path,
        dialogs: Box<dyn FileDialogs>,
        clock: Box<dyn Clock>,
        voice: Box<dyn Voice>,
    ) -> Result<Self, CallError> {
        let context = Arc::new(Context::open(data, dialogs, clock)?);
        let student = Arc::new(StudentDoor::new(Arc::clone(&context)));
        let desk = Arc::new(DeskDoor::new(Arc::clone(&context)));
        desk.finish_lock_at_start();
        Ok(Self {
            device: DeviceDoor::new(context, Arc::clone(&student), Arc::clone(&desk), voice),
            student,
            desk,
        })
    }
}
