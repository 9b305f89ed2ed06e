//! What the screens show of the lock of the desk.

use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The lock of the desk.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DeskLock {
    /// Whether the desk has a lock.
    pub has_lock: bool,
    /// Whether it is locked now.
    pub locked: bool,
    /// The minutes without use after which it locks itself; `None`: never.
    pub idle_minutes: Option<u32>,
}
