//! An opened store.

use crate::check::{BUSY_WAIT, IntegrityCheck, StoreKind, check_file, inspect, read_only};
use crate::copy::copy_into;
use crate::error::StoreError;
use crate::migrate;
use rusqlite::Connection;
use std::marker::PhantomData;
use std::path::Path;

/// How carefully an acknowledged write is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Durability {
    /// On disk before it is acknowledged: everything that a person enters.
    Full,
    /// Safe if the program crashes, but not if the machine does: the sample class.
    Relaxed,
}

/// An opened store of one kind.
pub struct Store<K> {
    pub(crate) connection: Connection,
    kind: PhantomData<K>,
}

impl<K: StoreKind> Store<K> {
    /// Opens the store at `path` and migrates it to this program's schema. Makes the store
    /// if the file is missing or empty.
    ///
    /// # Errors
    /// The file is unchanged after [`StoreError::OtherKind`], [`StoreError::Newer`] and
    /// [`StoreError::Damaged`].
    pub fn open(path: &Path, durability: Durability) -> Result<Self, StoreError> {
        Self::open_with(path, durability, IntegrityCheck::Always)
    }

    /// [`Store::open`] of a store that was checked shortly before, or that is only read:
    /// its pages are checked only before a migration.
    ///
    /// # Errors
    /// As [`Store::open`].
    pub fn open_again(path: &Path, durability: Durability) -> Result<Self, StoreError> {
        Self::open_with(path, durability, IntegrityCheck::BeforeMigration)
    }

    fn open_with(
        path: &Path,
        durability: Durability,
        integrity: IntegrityCheck,
    ) -> Result<Self, StoreError> {
        // Read first, because opening a file for writing can already change it.
        let integrity = match read_only(path).and_then(|file| inspect::<K>(&file, integrity)) {
            Ok(_) => IntegrityCheck::BeforeMigration,
            // The file is missing, or a write to it was interrupted. Opening it for writing
            // makes or repairs it, or fails with the reason.
            Err(StoreError::NotWritable { .. }) => integrity,
            Err(error) => return Err(error),
        };
        let mut connection = Connection::open(path)?;
        connection.busy_timeout(BUSY_WAIT)?;
        let found = inspect::<K>(&connection, integrity)?;
        connection.pragma_update(None, "journal_mode", "WAL")?;
        connection.pragma_update(
            None,
            "synchronous",
            match durability {
                Durability::Full => "FULL",
                Durability::Relaxed => "NORMAL",
            },
        )?;
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
        Ok(Self::of(read_only(path)?))
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

    fn of(connection: Connection) -> Self {
        Self {
            connection,
            kind: PhantomData,
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

    /// Overwrites what was deleted, so that nothing of it is left in the store's files.
    ///
    /// # Errors
    /// [`StoreError::Busy`] while another program reads the store; then call it again.
    pub fn erase_deleted(&self) -> Result<(), StoreError> {
        // Freed pages are overwritten by `secure_delete`. This gives them back, and then
        // empties the log.
        self.connection.execute_batch("VACUUM")?;
        // The row holds: busy, pages in the log, pages moved.
        let busy: i64 =
            self.connection
                .query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |row| row.get(0))?;
        if busy == 0 {
            Ok(())
        } else {
            Err(StoreError::Busy)
        }
    }
}
