//! What can go wrong with a store.

use thiserror::Error;

/// What happened to a store. What was acknowledged before is still on disk.
#[derive(Debug, Error)]
pub enum StoreError {
    /// The store was made by a newer program and stays as it is.
    #[error("the store has schema {found}, newer than {known}")]
    Newer {
        /// Its schema version.
        found: u32,
        /// The newest known here.
        known: u32,
    },
    /// Another kind of SQLite file.
    #[error("not a store of this kind")]
    OtherKind,
    /// Something with this key is not in the store.
    #[error("no such {0}")]
    Missing(&'static str),
    /// A value in the store is not what this program writes.
    #[error("unreadable {what} in the store: {detail}")]
    Unreadable {
        /// Which value.
        what: &'static str,
        /// What the reader said.
        detail: String,
    },
    /// SQLite's own words.
    #[error("{0}")]
    Sqlite(#[from] rusqlite::Error),
}

impl StoreError {
    /// An [`StoreError::Unreadable`].
    pub(super) fn unreadable(what: &'static str, detail: impl ToString) -> Self {
        Self::Unreadable {
            what,
            detail: detail.to_string(),
        }
    }
}
