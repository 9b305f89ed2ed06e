//! Tablets give a program no folder to watch.

use crate::app::App;
use crate::{CallError, Nothing, Watch};

/// Nothing is watched.
pub(crate) struct Watching;

const NONE: Watch = Watch {
    folder: None,
    possible: false,
    job: None,
    trouble: None,
};

impl App {
    /// Says that no folder can be watched.
    ///
    /// # Errors
    /// None.
    pub fn watch(&self, _: Nothing) -> Result<Watch, CallError> {
        Ok(NONE)
    }

    /// Says that no folder can be watched.
    ///
    /// # Errors
    /// None.
    pub fn watch_folder(&self, _: Nothing) -> Result<Watch, CallError> {
        Ok(NONE)
    }

    /// Says that no folder can be watched.
    ///
    /// # Errors
    /// None.
    pub fn unwatch_folder(&self, _: Nothing) -> Result<Watch, CallError> {
        Ok(NONE)
    }

    pub(crate) fn stop_watching(&self) {}
}
