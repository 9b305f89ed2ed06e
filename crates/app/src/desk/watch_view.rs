//! What the screens show of the watched folder.

use crate::context::jobs::JobId;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The folder that is watched for hand-ins.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Watch {
    /// Its path; `None` if no folder is watched.
    pub folder: Option<String>,
    /// Whether this device can watch a folder.
    pub possible: bool,
    /// The import that this call started.
    pub job: Option<JobId>,
    /// Why the folder could not be read.
    pub trouble: Option<CallError>,
}

impl Watch {
    /// No folder is watched.
    pub(super) const NONE: Self = Self {
        folder: None,
        possible: cfg!(not(any(target_os = "android", target_os = "ios"))),
        job: None,
        trouble: None,
    };
}
