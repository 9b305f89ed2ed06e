//! Whether a file is a sound store of a kind, found out without changing it.

use crate::error::StoreError;
use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags, OptionalExtension};
use std::fs::File;
use std::io::Read as _;
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

    /// What an opened store keeps in memory.
    type State: Default;

    /// Fills a new store, in the transaction that makes it.
    fn fill(_new: &Connection) -> Result<(), StoreError> {
        Ok(())
    }

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
    use_alone(&connection)?;
    connection.busy_timeout(BUSY_WAIT)?;
    connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
    Ok(connection)
}

/// In a browser, lets a new connection keep the index of its log in its own memory: there is none
/// that connections share. One connection has a file at a time, and one program has all files.
#[cfg(target_family = "wasm")]
pub(crate) fn use_alone(connection: &Connection) -> Result<(), StoreError> {
    Ok(connection.pragma_update(None, "locking_mode", "EXCLUSIVE")?)
}

/// Does nothing where connections share the memory of a log.
#[cfg(not(target_family = "wasm"))]
pub(crate) fn use_alone(_: &Connection) -> Result<(), StoreError> {
    Ok(())
}

/// Refuses what [`schema`] refuses by the first bytes of the file, if it has no log and no
/// journal whose content would count. SQLite makes a log and an index beside some files even
/// to read them. The bytes are those of <https://sqlite.org/fileformat2.html>, sections 1.3
/// and 1.6.
#[expect(
    clippy::disallowed_methods,
    reason = "a store is the program's own file, which no person chose"
)]
pub(crate) fn refuse_by_header<K: StoreKind>(path: &Path) -> Result<(), StoreError> {
    let has_beside = |end: &str| {
        let mut name = path.as_os_str().to_owned();
        name.push(end);
        Path::new(&name).exists()
    };
    // Asked first: on Unix, closing a file gives up all locks that this program has on it, and a
    // store that is open has a log. Another program that closes it would then remove the log.
    if has_beside("-wal") || has_beside("-journal") {
        return Ok(());
    }
    let mut head = [0; 108];
    if (File::open(path).and_then(|mut file| file.read_exact(&mut head))).is_err() {
        // SQLite makes the file, or says what is wrong.
        return Ok(());
    }
    let Some(b"SQLite format 3\0") = head.first_chunk() else {
        return Ok(());
    };
    let number = |at: usize| {
        let bytes = head.get(at..).and_then(<[u8]>::first_chunk);
        bytes.map_or(0, |bytes| i32::from_be_bytes(*bytes))
    };
    let (version, kind) = (number(60), number(68));
    // The first page is a leaf without a row.
    let has_tables = head.get(100) != Some(&0x0D) || head.get(103..105) != Some(&[0, 0]);
    schema_of::<K>(i64::from(kind), i64::from(version), has_tables).map(drop)
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
        // If we cannot open the file at all, nobody has it open.
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
    let has_tables = kind != 0 || found != 0 || has_tables(connection)?;
    schema_of::<K>(kind, found, has_tables)
}

/// As [`schema`], from what a file says of itself.
fn schema_of<K: StoreKind>(kind: i64, found: i64, has_tables: bool) -> Result<u32, StoreError> {
    if kind == 0 && found == 0 && !has_tables {
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
pub(crate) fn check_pages(connection: &Connection, pragma: &str) -> Result<(), StoreError> {
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
    refuse_by_header::<K>(path)?;
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
