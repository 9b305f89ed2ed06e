//! Whether a file is a sound store of a kind, found out without changing it.

use crate::error::StoreError;
use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags, OptionalExtension};
use std::path::Path;
use std::time::Duration;

/// How long a connection waits for another program that writes, such as a second window.
pub(crate) const BUSY_WAIT: Duration = Duration::from_secs(5);

/// A kind of store.
pub trait StoreKind {
    /// The number that marks a file of this kind, in `application_id`.
    const ID: i32;
    /// The SQL of each schema version. The first leads to version 1.
    const MIGRATIONS: &'static [&'static str];

    /// Returns the newest schema version that this program knows.
    fn newest_schema() -> u32 {
        u32::try_from(Self::MIGRATIONS.len()).unwrap_or(u32::MAX)
    }
}

/// Whether SQLite's pages are checked as a store is opened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum IntegrityCheck {
    /// Always.
    Always,
    /// Only if the store is about to be migrated.
    BeforeMigration,
}

/// Opens a file for reading alone. Closing it leaves its log as it is.
pub(crate) fn read_only(path: &Path) -> Result<Connection, StoreError> {
    let connection = Connection::open_with_flags(
        path,
        OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX,
    )?;
    connection.busy_timeout(BUSY_WAIT)?;
    connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
    Ok(connection)
}

/// Checks that no other program or connection has a store open, even if idle: what it writes after
/// the store was replaced would be lost. The file stays as it is, also a damaged one.
///
/// # Errors
/// [`StoreError::Busy`] if one has.
pub fn nobody_has_open(path: &Path) -> Result<(), StoreError> {
    // SQLite would remove the log of an emptied store.
    if path.metadata().map_or(0, |file| file.len()) == 0 {
        return Ok(());
    }
    let alone = || -> Result<(), StoreError> {
        let connection = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_WRITE)?;
        connection.busy_timeout(BUSY_WAIT)?;
        connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
        be_alone(&connection)
    };
    match alone() {
        Err(StoreError::Busy) => Err(StoreError::Busy),
        // A file that cannot be opened at all, nobody has open.
        _ => Ok(()),
    }
}

/// Locks the store as a whole until the connection is closed. Must come before its first read.
pub(crate) fn be_alone(connection: &Connection) -> Result<(), StoreError> {
    connection.pragma_update(None, "locking_mode", "EXCLUSIVE")?;
    Ok(connection.execute_batch("BEGIN EXCLUSIVE; ROLLBACK")?)
}

/// Returns the schema version of a store, 0 for an empty file.
///
/// # Errors
/// [`StoreError::OtherKind`] for a file of another kind or program, which must stay as it
/// is, and [`StoreError::Newer`] for a store that a newer program has migrated.
pub(crate) fn schema<K: StoreKind>(connection: &Connection) -> Result<u32, StoreError> {
    let number = |pragma: &str| -> Result<i64, StoreError> {
        Ok(connection.pragma_query_value(None, pragma, |row| row.get(0))?)
    };
    let (kind, found) = (number("application_id")?, number("user_version")?);
    if kind == 0 && found == 0 && !has_tables(connection)? {
        return Ok(0);
    }
    if kind != i64::from(K::ID) {
        return Err(StoreError::OtherKind);
    }
    let known = K::newest_schema();
    match u32::try_from(found).unwrap_or(u32::MAX) {
        found if found > known => Err(StoreError::Newer { found, known }),
        found => Ok(found),
    }
}

fn has_tables(connection: &Connection) -> Result<bool, StoreError> {
    Ok(connection
        .query_row("SELECT 1 FROM sqlite_schema LIMIT 1", [], |_| Ok(()))
        .optional()?
        .is_some())
}

/// Returns the schema version of a store that may be opened, 0 for an empty file.
///
/// # Errors
/// As [`schema`], and [`StoreError::Damaged`] if the pages are checked and damaged.
pub(crate) fn inspect<K: StoreKind>(
    connection: &Connection,
    integrity: IntegrityCheck,
) -> Result<u32, StoreError> {
    let found = schema::<K>(connection)?;
    if integrity == IntegrityCheck::Always || found < K::newest_schema() {
        check_pages(connection, "quick_check")?;
    }
    Ok(found)
}

/// Checks every page by SQLite's `quick_check` or `integrity_check`.
///
/// # Errors
/// [`StoreError::Damaged`] with the first fault that SQLite finds.
fn check_pages(connection: &Connection, pragma: &str) -> Result<(), StoreError> {
    let found: String = connection
        .query_row(&format!("PRAGMA {pragma}(1)"), [], |row| row.get(0))
        .map_err(StoreError::from)?;
    if found == "ok" {
        Ok(())
    } else {
        Err(StoreError::Damaged { detail: found })
    }
}

/// Checks that a file is a whole store of this kind that this program can open.
///
/// # Errors
/// As [`inspect`]. An empty file is [`StoreError::OtherKind`]; a row that refers to a
/// missing one is [`StoreError::Damaged`].
pub(crate) fn check_file<K: StoreKind>(path: &Path) -> Result<(), StoreError> {
    let connection = read_only(path)?;
    if schema::<K>(&connection)? == 0 {
        return Err(StoreError::OtherKind);
    }
    check_pages(&connection, "integrity_check")?;
    let strays: i64 =
        connection.query_row("SELECT count(*) FROM pragma_foreign_key_check", [], |row| {
            row.get(0)
        })?;
    if strays > 0 {
        return Err(StoreError::Damaged {
            detail: format!("{strays} rows refer to rows that are missing"),
        });
    }
    Ok(())
}
