//! What can go wrong with a store.

use rusqlite::ErrorCode;
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
    /// The file is not, or no longer, a whole store.
    #[error("the store is damaged: {detail}")]
    Damaged {
        /// What was found.
        detail: String,
    },
    /// No room on the disk. Nothing was half-written.
    #[error("the disk is full")]
    Full,
    /// The file or its folder is missing, or not for us to write.
    #[error("the store cannot be opened or written: {detail}")]
    NotWritable {
        /// SQLite's words.
        detail: String,
    },
    /// Another program kept the store for longer than we wait.
    #[error("another program is writing to the store")]
    Busy,
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
    Sqlite(rusqlite::Error),
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

impl From<rusqlite::Error> for StoreError {
    fn from(error: rusqlite::Error) -> Self {
        let detail = error.to_string();
        match error.sqlite_error_code() {
            Some(ErrorCode::DatabaseCorrupt | ErrorCode::NotADatabase) => Self::Damaged { detail },
            Some(ErrorCode::DiskFull) => Self::Full,
            Some(ErrorCode::CannotOpen | ErrorCode::ReadOnly | ErrorCode::PermissionDenied) => {
                Self::NotWritable { detail }
            }
            Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => Self::Busy,
            _ => Self::Sqlite(error),
        }
    }
}
