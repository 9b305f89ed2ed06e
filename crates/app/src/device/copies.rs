//! The copies of a store.

use super::DeviceDoor;
use crate::context::copies::{StoreName, StoredCopy};
use crate::error::CallError;
use crate::lock::lock;
use serde::{Deserialize, Serialize};
use surefoot_store::desk::key_facts;
use ts_rs::TS;

/// The copies of a store.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Copies {
    /// The copies, newest first.
    pub copies: Vec<StoredCopy>,
    /// For a desk with a lock: how many of its copies may open without the passphrase. They are
    /// desks that were replaced, and copies that this program cannot read.
    pub readable: usize,
    /// Why the last daily copy failed, if it did.
    pub trouble: Option<CallError>,
    /// For a desk with a lock: why copies from before the lock could not be wiped, if they could
    /// not.
    pub lock_trouble: Option<CallError>,
}

impl DeviceDoor {
    /// The copies of a store.
    ///
    /// # Errors
    /// [`CallError::Locked`] until the student's PIN is typed, [`CallError::Files`].
    pub fn copies(&self, store: StoreName) -> Result<Copies, CallError> {
        let path = self.context.store_path(&store)?;
        self.refuse_locked(&store)?;
        let found = self.context.copy_paths(&store)?;
        let readable = match store {
            StoreName::Desk if self.desk.lock_state().has_lock => (found.iter())
                .filter(|(path, _)| key_facts(path).map_or(true, |facts| facts.lock.is_none()))
                .count(),
            _ => 0,
        };
        Ok(Copies {
            copies: found.into_iter().map(|(_, copy)| copy).collect(),
            readable,
            trouble: lock(&self.context.copy_trouble).get(&path).cloned(),
            lock_trouble: match store {
                StoreName::Desk => lock(&self.context.lock_trouble).clone(),
                StoreName::Student { .. } => None,
            },
        })
    }
}
