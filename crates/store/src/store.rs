//! An opened store.

use crate::check::{
    BUSY_WAIT, IntegrityCheck, StoreKind, be_alone, check_file, inspect, read_only,
    refuse_by_header, use_alone,
};
use crate::copy::copy_into;
use crate::error::StoreError;
use crate::migrate;
use rusqlite::config::DbConfig;
use rusqlite::{Connection, MAIN_DB};
use std::ops::{Deref, DerefMut};
use std::path::Path;

/// How carefully an acknowledged write is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Durability {
    /// On disk before it is acknowledged: everything that a person enters.
    Full,
    /// Safe if the program crashes, but not if the machine does: the sample class.
    Relaxed,
}

/// The connection to an opened store. Closing it moves the log into the store's file.
#[derive(Debug)]
pub(crate) struct StoreConnection(Connection);

impl StoreConnection {
    pub(crate) fn new(connection: Connection) -> Self {
        Self(connection)
    }
}

impl Drop for StoreConnection {
    fn drop(&mut self) {
        // Waits for nobody. The next opening reads what is left in the log.
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

/// An opened store of one kind.
pub struct Store<K: StoreKind> {
    pub(crate) connection: StoreConnection,
    pub(crate) state: K::State,
}

impl<K: StoreKind> Store<K> {
    /// Opens the store at `path` and migrates it to this program's schema. Makes the store
    /// if the file is missing or empty.
    ///
    /// # Errors
    /// The file is unchanged after [`StoreError::OtherKind`], [`StoreError::Newer`] and
    /// [`StoreError::Damaged`].
    pub fn open(path: &Path, durability: Durability) -> Result<Self, StoreError> {
        Self::open_with(path, durability, IntegrityCheck::Always, false)
    }

    /// [`Store::open`] of a store that was checked shortly before, or that is only read:
    /// its pages are checked only before a migration.
    ///
    /// # Errors
    /// As [`Store::open`].
    pub fn open_again(path: &Path, durability: Durability) -> Result<Self, StoreError> {
        Self::open_with(path, durability, IntegrityCheck::BeforeMigration, false)
    }

    /// [`Store::open_again`] for whoever is about to put another file in the store's place: until
    /// this is dropped, nobody else can open it.
    ///
    /// # Errors
    /// [`StoreError::Busy`] while another program or connection has it open, even if idle; what it
    /// wrote later would be lost. Else as [`Store::open`].
    pub fn open_alone(path: &Path, durability: Durability) -> Result<Self, StoreError> {
        Self::open_with(path, durability, IntegrityCheck::BeforeMigration, true)
    }

    fn open_with(
        path: &Path,
        durability: Durability,
        integrity: IntegrityCheck,
        alone: bool,
    ) -> Result<Self, StoreError> {
        refuse_by_header::<K>(path)?;
        // Read first, because opening a file for writing can already change it.
        let integrity = match read_only(path).and_then(|file| inspect::<K>(&file, integrity)) {
            Ok(_) => IntegrityCheck::BeforeMigration,
            // The file is missing, or a write to it was interrupted. Opening it for writing
            // makes or repairs it, or fails with the reason.
            Err(StoreError::NotWritable { .. }) => integrity,
            Err(error) => return Err(error),
        };
        let mut connection = StoreConnection(Connection::open(path)?);
        // If the log exists, SQLite opens even a file that may not be written.
        if connection.is_readonly(MAIN_DB)? {
            return Err(StoreError::NotWritable {
                detail: "read-only".to_owned(),
            });
        }
        use_alone(&connection)?;
        connection.busy_timeout(BUSY_WAIT)?;
        if alone {
            be_alone(&connection)?;
        }
        let found = inspect::<K>(&connection, integrity)?;
        connection.pragma_update(None, "journal_mode", "WAL")?;
        // Where SQLite cannot keep a log, it keeps another journal in silence.
        #[cfg(target_family = "wasm")]
        if connection.pragma_query_value(None, "journal_mode", |row| row.get::<_, String>(0))?
            != "wal"
        {
            return Err(StoreError::NotWritable {
                detail: "no write-ahead log".to_owned(),
            });
        }
        connection.pragma_update(
            None,
            "synchronous",
            match durability {
                Durability::Full => "FULL",
                Durability::Relaxed => "NORMAL",
            },
        )?;
        // In a browser a closed store has no log, because a file can only be copied without one.
        if durability == Durability::Full && cfg!(not(target_family = "wasm")) {
            // A log that SQLite removes leaves its rows on the disk.
            connection.set_db_config(DbConfig::SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, true)?;
        }
        connection.pragma_update(None, "foreign_keys", true)?;
        connection.pragma_update(None, "secure_delete", true)?;
        // On Android the folder for temporary files may be out of reach.
        connection.pragma_update(None, "temp_store", "MEMORY")?;
        migrate::run::<K>(&mut connection, path, found)?;
        Ok(Self::of(connection))
    }

    /// Opens a copy for reading alone: nothing of it changes, not even its schema.
    ///
    /// # Errors
    /// As [`Store::check_file`].
    pub fn open_read_only(path: &Path) -> Result<Self, StoreError> {
        check_file::<K>(path)?;
        Ok(Self::of(StoreConnection(read_only(path)?)))
    }

    /// Checks, without changing it, that the file at `path` is a whole store of this kind
    /// that this program can open.
    ///
    /// # Errors
    /// [`StoreError::OtherKind`] (also for an empty file), [`StoreError::Newer`] or
    /// [`StoreError::Damaged`] if it is not.
    pub fn check_file(path: &Path) -> Result<(), StoreError> {
        check_file::<K>(path)
    }

    pub(crate) fn of(connection: StoreConnection) -> Self {
        Self {
            connection,
            state: K::State::default(),
        }
    }

    /// Runs `work` as one transaction: if it fails, none of its writes is stored.
    ///
    /// # Errors
    /// The error of `work`, or of the commit.
    pub fn transaction<T, E: From<StoreError>>(
        &self,
        work: impl FnOnce() -> Result<T, E>,
    ) -> Result<T, E> {
        let run = |sql: &str| self.connection.execute_batch(sql).map_err(StoreError::from);
        run("BEGIN IMMEDIATE")?;
        let outcome = work().and_then(|value| {
            run("COMMIT")?;
            Ok(value)
        });
        if outcome.is_err() {
            // A failed commit may have ended the transaction, so this may fail.
            let _ = self.connection.execute_batch("ROLLBACK");
        }
        outcome
    }

    /// Copies the store as it is now into a new file. If this fails, the new file must not
    /// be used.
    pub fn copy_into(&self, into: &Path) -> Result<(), StoreError> {
        copy_into(&self.connection, into)
    }

    /// Writes every row of the store into the empty file `into`, and nothing of what was
    /// deleted: pages that are freed or changed keep bytes of what was in them. If this
    /// fails, the new file must not be used.
    pub fn write_anew(&self, into: &Path) -> Result<(), StoreError> {
        let Some(into) = into.to_str() else {
            return Err(StoreError::NotWritable {
                detail: "the folder's name is not UTF-8".to_owned(),
            });
        };
        self.connection.execute("VACUUM INTO ?1", [into])?;
        Ok(())
    }

    /// Moves everything in the log into the store's file. Keeps the log's file, because
    /// removing it would leave its content on the disk.
    ///
    /// # Errors
    /// [`StoreError::Busy`] while another program uses the store; then call it again.
    pub fn empty_log(&self) -> Result<(), StoreError> {
        let (busy, pages, moved): (i64, i64, i64) =
            self.connection
                .query_row("PRAGMA wal_checkpoint(FULL)", [], |row| {
                    Ok((row.get(0)?, row.get(1)?, row.get(2)?))
                })?;
        if busy == 0 && pages == moved {
            Ok(())
        } else {
            Err(StoreError::Busy)
        }
    }
}
