//! The PIN of a shared tablet, as argon2id left it.

use super::super::StoreError;
use super::StudentStore;
use rusqlite::{OptionalExtension, params};

/// A PIN as stored.
#[derive(Clone, PartialEq, Eq)]
pub struct PinRow {
    /// 16 random bytes.
    pub salt: [u8; 16],
    /// What argon2id made of the PIN.
    pub hash: [u8; 32],
    /// Memory of argon2id in KiB.
    pub memory_kib: u32,
    /// Passes of argon2id.
    pub passes: u32,
    /// Wrong tries in a row.
    pub wrong_tries: u32,
}

impl StudentStore {
    /// The PIN, if one is set.
    ///
    /// # Errors
    /// SQLite's.
    pub fn pin(&self) -> Result<Option<PinRow>, StoreError> {
        Ok(self
            .connection
            .query_row(
                "SELECT salt, hash, memory_kib, passes, wrong_tries FROM pin",
                [],
                |row| {
                    Ok(PinRow {
                        salt: row.get(0)?,
                        hash: row.get(1)?,
                        memory_kib: row.get(2)?,
                        passes: row.get(3)?,
                        wrong_tries: row.get(4)?,
                    })
                },
            )
            .optional()?)
    }

    /// Sets the PIN, replacing the one that stood there.
    ///
    /// # Errors
    /// SQLite's.
    pub fn put_pin(&self, pin: &PinRow) -> Result<(), StoreError> {
        self.connection.execute(
            "INSERT OR REPLACE INTO pin (id, salt, hash, memory_kib, passes, wrong_tries)
             VALUES (1, ?1, ?2, ?3, ?4, ?5)",
            params![
                pin.salt,
                pin.hash,
                pin.memory_kib,
                pin.passes,
                pin.wrong_tries
            ],
        )?;
        Ok(())
    }

    /// Takes the PIN away.
    ///
    /// # Errors
    /// SQLite's.
    pub fn remove_pin(&self) -> Result<(), StoreError> {
        self.connection.execute("DELETE FROM pin", [])?;
        Ok(())
    }
}
