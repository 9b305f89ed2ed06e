//! For tablets, which let no program watch a folder.

use super::DeskDoor;
use super::watch_view::Watch;
use crate::context::values::Nothing;
use crate::error::CallError;

impl DeskDoor {
    /// Answers that no folder can be watched.
    pub fn watch(&self, _: Nothing) -> Result<Watch, CallError> {
        Ok(Watch::NONE)
    }

    /// Answers that no folder can be watched.
    pub fn watch_folder(&self, _: Nothing) -> Result<Watch, CallError> {
        Ok(Watch::NONE)
    }

    /// Answers that no folder can be watched.
    pub fn unwatch_folder(&self, _: Nothing) -> Result<Watch, CallError> {
        Ok(Watch::NONE)
    }

    pub(crate) fn stop_watching(&self) {}
}
