//! Tablets give a program no folder to watch.

use super::DeskDoor;
use crate::context::jobs::JobId;
use crate::context::values::Nothing;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The folder that is watched for hand-ins.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Watch {
    /// Where it is; nothing when none is watched.
    pub folder: Option<String>,
    /// Whether this device can watch a folder at all.
    pub possible: bool,
    /// An import that the last look started.
    pub job: Option<JobId>,
    /// Why the folder could not be looked at.
    pub trouble: Option<CallError>,
}

const NONE: Watch = Watch {
    folder: None,
    possible: false,
    job: None,
    trouble: None,
};

impl DeskDoor {
    /// Says that no folder can be watched.
    pub fn watch(&self, _: Nothing) -> Result<Watch, CallError> {
        Ok(NONE)
    }

    /// Says that no folder can be watched.
    pub fn watch_folder(&self, _: Nothing) -> Result<Watch, CallError> {
        Ok(NONE)
    }

    /// Says that no folder can be watched.
    pub fn unwatch_folder(&self, _: Nothing) -> Result<Watch, CallError> {
        Ok(NONE)
    }

    pub(crate) fn stop_watching(&self) {}
}
