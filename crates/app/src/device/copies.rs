//! The copies of a store.

use super::DeviceDoor;
use crate::context::copies::{StoreName, StoredCopy};
use crate::error::CallError;
use crate::lock::lock;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The copies of a store.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Copies {
    /// The copies, newest first.
    pub copies: Vec<StoredCopy>,
    /// Why the last daily copy failed, if it did.
    pub trouble: Option<CallError>,
}

impl DeviceDoor {
    /// The copies of a store.
    ///
    /// # Errors
    /// [`CallError::Locked`] until the student's PIN is typed, [`CallError::Files`].
    pub fn copies(&self, store: StoreName) -> Result<Copies, CallError> {
        let path = self.context.store_path(&store)?;
        self.refuse_locked(&store)?;
        Ok(Copies {
            copies: self
                .context
                .copy_paths(&store)?
                .into_iter()
                .map(|(_, copy)| copy)
                .collect(),
            trouble: lock(&self.context.copy_trouble).get(&path).cloned(),
        })
    }
}
