//! Copies of a store.

use crate::check::{read_only, use_alone};
use crate::error::StoreError;
use rusqlite::Connection;
use rusqlite::backup::Backup;
use std::path::Path;
use std::time::Duration;

/// Pages copied before other connections may write again.
pub(crate) const PAGES_A_STEP: i32 = 512;

/// Copies a store that may be in use into a new file, which has no log beside it. If this
/// fails, the new file must not be used.
pub(crate) fn copy_into(connection: &Connection, into: &Path) -> Result<(), StoreError> {
    let mut copy = Connection::open(into)?;
    use_alone(&copy)?;
    // A connection that is alone keeps its journal, and a file beside one cannot be copied on. The
    // new file needs none: it is not used if this fails.
    #[cfg(target_family = "wasm")]
    copy.pragma_update(None, "journal_mode", "OFF")?;
    Backup::new(connection, &mut copy)?.run_to_completion(PAGES_A_STEP, Duration::ZERO, None)?;
    // The copied header asks for a write-ahead log, which a copy that is only kept needs not.
    copy.pragma_update(None, "journal_mode", "DELETE")?;
    copy.close().map_err(|(_, error)| StoreError::from(error))
}

/// Copies the store in the file `from`, with the content of its log, into a new file. If
/// this fails, the new file must not be used.
pub fn copy_file(from: &Path, into: &Path) -> Result<(), StoreError> {
    copy_into(&read_only(from)?, into)
}
