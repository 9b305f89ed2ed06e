//! Copies of a store, and whether a file is a sound store.

use super::migrate::Migration;
use super::{BUSY_WAIT, StoreError};
use rusqlite::backup::Backup;
use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags};
use std::path::Path;
use std::time::Duration;

/// Pages copied before others may write again.
const PAGES_A_STEP: i32 = 512;

/// Copies a store as it stands into a new file, also while it is in use. The
/// copy is one plain file without a log beside it.
///
/// # Errors
/// SQLite's; then the file at `into` is not a copy.
pub(super) fn copy_into(connection: &Connection, into: &Path) -> Result<(), StoreError> {
    let mut copy = Connection::open(into)?;
    Backup::new(connection, &mut copy)?.run_to_completion(PAGES_A_STEP, Duration::ZERO, None)?;
    // The copied header says WAL; a copy that is only kept needs no log.
    copy.pragma_update(None, "journal_mode", "DELETE")?;
    copy.close().map_err(|(_, error)| StoreError::from(error))
}

/// Copies the store in the file `from`, with what its log holds, into a new file.
///
/// # Errors
/// [`StoreError::Damaged`] for a file that is no store, else SQLite's.
pub fn copy_file(from: &Path, into: &Path) -> Result<(), StoreError> {
    copy_into(&read_only(from)?, into)
}

/// Looks through every page of the store.
///
/// # Errors
/// [`StoreError::Damaged`] with SQLite's first finding.
pub(super) fn check_pages(connection: &Connection, pragma: &str) -> Result<(), StoreError> {
    let found: String = connection
        .query_row(&format!("PRAGMA {pragma}(1)"), [], |row| row.get(0))
        .map_err(StoreError::from)?;
    if found == "ok" {
        Ok(())
    } else {
        Err(StoreError::Damaged { detail: found })
    }
}

/// Opens a store that is not to be changed.
pub(super) fn read_only(path: &Path) -> Result<Connection, StoreError> {
    let connection = Connection::open_with_flags(
        path,
        OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX,
    )?;
    connection.busy_timeout(BUSY_WAIT)?;
    connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
    Ok(connection)
}

/// Checks that the file at `path` is a whole store of this kind that this
/// program can open, without changing it.
pub(super) fn check_file(path: &Path, migrations: &[Migration]) -> Result<(), StoreError> {
    let connection = read_only(path)?;
    check_pages(&connection, "integrity_check")?;
    let number = |pragma: &str| -> Result<i64, StoreError> {
        Ok(connection.pragma_query_value(None, pragma, |row| row.get(0))?)
    };
    let kind = migrations.first().map_or(0, |m| i64::from(m.kind));
    if number("application_id")? != kind {
        return Err(StoreError::OtherKind);
    }
    let known = u32::try_from(migrations.len()).unwrap_or(u32::MAX);
    let found = u32::try_from(number("user_version")?).unwrap_or(u32::MAX);
    if found > known {
        return Err(StoreError::Newer { found, known });
    }
    let strays: i64 =
        connection.query_row("SELECT count(*) FROM pragma_foreign_key_check", [], |row| {
            row.get(0)
        })?;
    if found == 0 || strays > 0 {
        return Err(StoreError::Damaged {
            detail: format!("schema {found}, {strays} rows without what they belong to"),
        });
    }
    Ok(())
}

/// Writes every row of the store into the empty file `into`, and nothing of what was deleted:
/// pages that are only freed or changed keep bytes of what was in them.
pub(super) fn write_anew(connection: &Connection, into: &Path) -> Result<(), StoreError> {
    let Some(into) = into.to_str() else {
        return Err(StoreError::NotWritable {
            detail: "the folder's name is not UTF-8".to_owned(),
        });
    };
    connection.execute("VACUUM INTO ?1", [into])?;
    Ok(())
}

/// Brings everything in the log into the store's file. The log stays as a file, because its
/// blocks on the disk would otherwise be given back as they are.
pub(super) fn empty_log(connection: &Connection) -> Result<(), StoreError> {
    let (busy, pages, moved): (i64, i64, i64) =
        connection.query_row("PRAGMA wal_checkpoint(FULL)", [], |row| {
            Ok((row.get(0)?, row.get(1)?, row.get(2)?))
        })?;
    if busy == 0 && pages == moved {
        Ok(())
    } else {
        Err(StoreError::Busy)
    }
}
