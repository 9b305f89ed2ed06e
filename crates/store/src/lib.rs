//! The two SQLite stores: a student's, and the teacher's desk.
//!
//! Only this room knows SQLite. A store is opened by [`open`] with the
//! migrations of its kind; what a call acknowledged is on disk (WAL,
//! `synchronous = FULL`).

mod columns;
mod copy;
pub mod desk;
mod error;
mod migrate;
pub mod student;
#[cfg(test)]
#[expect(clippy::disallowed_methods, reason = "looks at files it made")]
mod trouble;

pub use copy::copy_file;
pub use desk::DeskStore;
pub use error::StoreError;
pub use student::StudentStore;

use migrate::Migration;
use rusqlite::config::DbConfig;
use rusqlite::{Connection, MAIN_DB};
use std::ops::{Deref, DerefMut};
use std::path::Path;
use std::time::Duration;

/// How long a writer waits for another one, for instance a second window.
const BUSY_WAIT: Duration = Duration::from_secs(5);

/// How carefully an acknowledged write is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Durability {
    /// On disk before it is acknowledged: everything a person enters.
    Full,
    /// Safe against a crash of the program, not of the machine: the invented class.
    Relaxed,
}

/// Whether every page is looked through as a store is opened.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Look {
    /// Before anything is changed.
    Through,
    /// It was, shortly before; a migration looks through it all the same.
    Past,
}

fn open(
    path: &Path,
    durability: Durability,
    migrations: &[Migration],
    look: Look,
) -> Result<StoreConnection, StoreError> {
    // Nothing of a file is changed before it is known to be ours.
    match copy::read_only(path) {
        Ok(looked) => migrate::known_version(&looked, migrations).map(drop)?,
        // It is not there yet, or the opening says why it cannot be.
        Err(StoreError::NotWritable { .. }) => {}
        Err(error) => return Err(error),
    }
    let mut connection = StoreConnection(Connection::open(path)?);
    // SQLite opens what it may not write all the same, if the log is there already.
    if connection.is_readonly(MAIN_DB)? {
        return Err(StoreError::NotWritable {
            detail: "read-only".to_owned(),
        });
    }
    connection.busy_timeout(BUSY_WAIT)?;
    connection.pragma_update(None, "journal_mode", "WAL")?;
    connection.pragma_update(
        None,
        "synchronous",
        match durability {
            Durability::Full => "FULL",
            Durability::Relaxed => "NORMAL",
        },
    )?;
    if durability == Durability::Full {
        // A log that SQLite removes leaves its rows on the disk.
        connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
    }
    connection.pragma_update(None, "foreign_keys", true)?;
    connection.pragma_update(None, "secure_delete", true)?;
    // Temporary files of other places may be out of reach on Android.
    connection.pragma_update(None, "temp_store", "MEMORY")?;
    // Before anything is changed: a damaged store is left as it was found.
    if look == Look::Through || !migrate::is_current(&connection, migrations)? {
        copy::check_pages(&connection, "quick_check")?;
    }
    migrate::run(&mut connection, path, migrations)?;
    Ok(connection)
}

/// An open store. When it is closed, its file holds what its log holds.
pub(crate) struct StoreConnection(Connection);

impl Drop for StoreConnection {
    fn drop(&mut self) {
        // Waits for nobody. What stays in the log is found there by the next opening.
        let _ = self
            .0
            .query_row("PRAGMA wal_checkpoint(PASSIVE)", [], |_| Ok(()));
    }
}

impl Deref for StoreConnection {
    type Target = Connection;

    fn deref(&self) -> &Connection {
        &self.0
    }
}

impl DerefMut for StoreConnection {
    fn deref_mut(&mut self) -> &mut Connection {
        &mut self.0
    }
}

/// Runs several writes as one transaction.
fn together<T, E: From<StoreError>>(
    connection: &Connection,
    work: impl FnOnce() -> Result<T, E>,
) -> Result<T, E> {
    let run = |sql: &str| connection.execute_batch(sql).map_err(StoreError::from);
    run("BEGIN IMMEDIATE")?;
    let outcome = work().and_then(|value| match run("COMMIT") {
        Ok(()) => Ok(value),
        Err(error) => Err(error.into()),
    });
    if outcome.is_err() {
        // After a failed commit the transaction may stand or not; either way it ends here.
        let _ = connection.execute_batch("ROLLBACK");
    }
    outcome
}
