//! The data key of the desk, and the lock that guards it.
//!
//! Without a lock the data key is in the store as it is, beside the cells that it seals, which
//! protects nothing. With a lock it is sealed by a key that argon2id makes of a passphrase. To
//! set, change or remove the lock, the whole desk is sealed anew with another data key.

use super::super::StoreError;
use super::super::check::{IntegrityCheck, check_pages, inspect, read_only};
use super::super::copy::PAGES_A_STEP;
use super::super::migrate;
use super::super::store::StoreConnection;
use super::cells::{DataKey, SEALED, SealedColumn, open};
use super::kept_key::{KeptKey, LockRow, key_row, put_key_row};
use super::{DeskKind, DeskStore};
use rusqlite::backup::Backup;
use rusqlite::types::Value;
use rusqlite::{Connection, MAIN_DB, params};
use std::fmt::Display;
use std::path::Path;
use std::time::Duration;

/// Where the header of SQLite says that a store has a write-ahead log, which none in memory has.
const LOG_MARKS: std::ops::Range<usize> = 18..20;
const NO_LOG: u8 = 1;

/// What a desk's file says of its data key to somebody without the passphrase.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct KeyFacts {
    /// The number of the data key.
    pub number: [u8; 16],
    /// The lock, if there is one.
    pub lock: Option<LockRow>,
}

/// Reads what the file of a desk, or of a copy of it, says of its data key.
///
/// # Errors
/// As [`DeskStore::open_read_only`]; the pages are not checked.
pub fn key_facts(path: &Path) -> Result<KeyFacts, StoreError> {
    let connection = read_only(path)?;
    if inspect::<DeskKind>(&connection, IntegrityCheck::BeforeMigration)? == 0 {
        return Err(StoreError::OtherKind);
    }
    let row = key_row(&connection)?;
    Ok(KeyFacts {
        number: row.number,
        lock: row.lock(),
    })
}

impl DeskStore {
    /// Returns the key of the sealed cells.
    ///
    /// # Errors
    /// [`StoreError::Locked`] until the key of a locked desk was given.
    pub(super) fn key(&self) -> Result<&DataKey, StoreError> {
        if self.state.get().is_none() {
            let key = key_row(&self.connection)?.key()?;
            // Only one thread uses a connection, so it is still empty.
            let _ = self.state.set(key);
        }
        self.state.get().ok_or(StoreError::Locked)
    }

    /// Returns the lock of the desk, if it has one.
    pub fn lock(&self) -> Result<Option<LockRow>, StoreError> {
        Ok(key_row(&self.connection)?.lock())
    }

    /// Returns the data key of a locked desk, or `None` for a wrong passphrase. Takes about half a
    /// second and 128 MiB. Without a lock every passphrase gives the key.
    pub fn key_by(&self, passphrase: &str) -> Result<Option<DataKey>, StoreError> {
        let row = key_row(&self.connection)?;
        let Some(stretch) = row.stretch else {
            return row.key().map(Some);
        };
        let guard = stretch.key(passphrase)?;
        let secret = open(&guard, &stretch.place(&row.number), &row.secret);
        Ok(secret.and_then(|secret| DataKey::of(row.number, &secret)))
    }

    /// Gives the data key of a locked desk.
    ///
    /// # Errors
    /// [`StoreError::Locked`] if it is the key of another desk.
    pub fn use_key(&self, key: DataKey) -> Result<(), StoreError> {
        if key_row(&self.connection)?.number != key.number {
            return Err(StoreError::Locked);
        }
        let _ = self.state.set(key);
        Ok(())
    }

    /// Returns the data key with the way in which this store keeps it.
    ///
    /// # Errors
    /// [`StoreError::Locked`] until the key of a locked desk was given.
    pub fn kept_key(&self) -> Result<KeptKey, StoreError> {
        Ok(KeptKey {
            key: self.key()?.clone(),
            row: key_row(&self.connection)?,
        })
    }

    /// Writes how many passphrases in a row were wrong.
    pub fn put_wrong_tries(&self, tries: u32) -> Result<(), StoreError> {
        self.connection
            .execute("UPDATE data_key SET wrong_tries = ?1", [tries])?;
        Ok(())
    }

    /// Writes after how many minutes without use the desk locks itself.
    pub fn put_idle_minutes(&self, minutes: Option<u32>) -> Result<(), StoreError> {
        self.connection
            .execute("UPDATE data_key SET idle_minutes = ?1", [minutes])?;
        Ok(())
    }

    /// Returns the number of the data key before this one while copies of the desk may still
    /// have it.
    pub fn replaced_key(&self) -> Result<Option<[u8; 16]>, StoreError> {
        Ok(self
            .connection
            .query_row("SELECT replaces FROM data_key", [], |row| row.get(0))?)
    }

    /// Notes that no copy has the data key before this one any more.
    pub fn forget_replaced_key(&self) -> Result<(), StoreError> {
        self.connection
            .execute("UPDATE data_key SET replaces = NULL", [])?;
        Ok(())
    }

    /// Returns a copy of this desk in memory with all cells sealed by another key. It notes that
    /// it replaces the key of this desk if `replaces` is true.
    ///
    /// # Errors
    /// [`StoreError::Damaged`] if a page is damaged, [`StoreError::Unreadable`] if a cell is.
    pub fn resealed(&self, by: &KeptKey, replaces: bool) -> Result<Self, StoreError> {
        let before = self.key()?;
        let mut memory = Connection::open_in_memory()?;
        Backup::new(&self.connection, &mut memory)?.run_to_completion(
            PAGES_A_STEP,
            Duration::ZERO,
            None,
        )?;
        check_pages(&memory, "integrity_check")?;
        let desk = Self::of(StoreConnection::new(memory));
        desk.transaction(|| -> Result<(), StoreError> {
            for column in &SEALED {
                desk.reseal(column, before, &by.key)?;
            }
            put_key_row(&desk.connection, &by.row, replaces.then_some(before.number))
        })?;
        // Freed bytes of the pages may still hold the key before, or cells that it seals.
        desk.connection.execute_batch("VACUUM")?;
        let _ = desk.state.set(by.key.clone());
        Ok(desk)
    }

    fn reseal(
        &self,
        column: &SealedColumn,
        before: &DataKey,
        after: &DataKey,
    ) -> Result<(), StoreError> {
        let (table, cell, row) = (column.table, column.column, column.row.join(", "));
        let all: Vec<(i64, Vec<u8>, Vec<String>)> = self.rows(
            &format!("SELECT rowid, {cell}, {row} FROM {table} WHERE {cell} IS NOT NULL"),
            [],
            |row| {
                let place = (2..2 + column.row.len())
                    .map(|at| match row.get(at)? {
                        Value::Text(text) => Ok(text),
                        Value::Integer(number) => Ok(number.to_string()),
                        _ => Err(rusqlite::Error::InvalidQuery),
                    })
                    .collect::<rusqlite::Result<_>>()?;
                Ok((row.get(0)?, row.get(1)?, place))
            },
        )?;
        let mut update = self
            .connection
            .prepare(&format!("UPDATE {table} SET {cell} = ?2 WHERE rowid = ?1"))?;
        for (rowid, cell, place) in all {
            let place: Vec<&dyn Display> = place.iter().map(|part| part as &dyn Display).collect();
            let content = before.open(column, &place, &cell)?;
            update.execute(params![rowid, after.seal(column, &place, &content)?])?;
        }
        Ok(())
    }

    /// Returns the bytes of a store in memory, as its file would have them.
    pub fn into_bytes(mut self) -> Result<Vec<u8>, StoreError> {
        let mut bytes = self.connection.serialize(MAIN_DB)?.to_vec();
        if let Some(marks) = bytes.get_mut(LOG_MARKS) {
            marks.fill(NO_LOG);
        }
        Ok(bytes)
    }

    /// Opens the bytes of a desk's file in memory and checks them.
    ///
    /// # Errors
    /// As [`DeskStore::open_read_only`].
    pub fn from_bytes(mut bytes: Vec<u8>) -> Result<Self, StoreError> {
        if let Some(marks) = bytes.get_mut(LOG_MARKS) {
            marks.fill(NO_LOG);
        }
        let mut memory = Connection::open_in_memory()?;
        memory.deserialize_read_exact(MAIN_DB, bytes.as_slice(), bytes.len(), false)?;
        let found = inspect::<DeskKind>(&memory, IntegrityCheck::Always)?;
        if found == 0 {
            return Err(StoreError::OtherKind);
        }
        migrate::apply::<DeskKind>(&mut memory)?;
        Ok(Self::of(StoreConnection::new(memory)))
    }
}
