//! Why a store could not be used.

use rusqlite::ErrorCode;
use rusqlite::ffi::SQLITE_IOERR_WRITE;
use surefoot_record::Thing;
use thiserror::Error;

/// Why a store could not be used. Every write that was acknowledged is still on disk.
#[derive(Debug, Error)]
pub enum StoreError {
    /// A newer program has migrated the store. It is unchanged.
    #[error("the store has schema {found}, newer than {known}")]
    Newer {
        /// Its schema version.
        found: u32,
        /// The newest that this program knows.
        known: u32,
    },
    /// The file is another kind of store, or belongs to another program. It is unchanged.
    #[error("not a store of this kind")]
    OtherKind,
    /// The file is no SQLite file, or is damaged. It is unchanged.
    #[error("the store is damaged: {detail}")]
    Damaged {
        /// The first fault found.
        detail: String,
    },
    /// The disk is full. Nothing was written in part.
    #[error("the disk is full")]
    Full,
    /// The file or its folder is missing, or may not be written.
    #[error("the store cannot be opened or written: {detail}")]
    NotWritable {
        /// SQLite's message.
        detail: String,
    },
    /// Another program was still using the store at the end of the wait.
    #[error("another program is using the store")]
    Busy,
    /// The desk has a lock, and its key was not given.
    #[error("the desk is locked")]
    Locked,
    /// The store holds nothing of this kind with the key asked for.
    #[error("no such {0} in the store")]
    Missing(Thing),
    /// Removed rows do not fit into the store any more.
    #[error("the place of the removed rows is taken")]
    PlaceTaken,
    /// A value cannot be read or written.
    #[error("the {what} cannot be read or written: {detail}")]
    Unreadable {
        /// Which value.
        what: &'static str,
        /// The reader's message.
        detail: String,
    },
    /// Any other error of SQLite.
    #[error("{0}")]
    Sqlite(rusqlite::Error),
}

impl StoreError {
    /// Returns a [`StoreError::Unreadable`].
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
            // In a browser without room a write falls short.
            Some(ErrorCode::SystemIoFailure)
                if cfg!(target_family = "wasm")
                    && (error.sqlite_error())
                        .is_some_and(|found| found.extended_code == SQLITE_IOERR_WRITE) =>
            {
                Self::Full
            }
            Some(ErrorCode::CannotOpen | ErrorCode::ReadOnly | ErrorCode::PermissionDenied) => {
                Self::NotWritable { detail }
            }
            Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => Self::Busy,
            _ => Self::Sqlite(error),
        }
    }
}
