//! The PIN for a shared tablet, hashed by argon2id.

use super::super::StoreError;
use super::StudentStore;
use rusqlite::{OptionalExtension, params};

/// A hashed PIN.
#[derive(Clone, PartialEq, Eq)]
pub struct PinRow {
    /// 16 random bytes.
    pub salt: [u8; 16],
    /// The hash that argon2id made of the PIN.
    pub hash: [u8; 32],
    /// Memory of argon2id in KiB.
    pub memory_kib: u32,
    /// Passes of argon2id.
    pub passes: u32,
    /// Wrong tries in a row.
    pub wrong_tries: u32,
}

impl StudentStore {
    /// Returns the hashed PIN, if one is set.
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

    /// Writes the hashed PIN and replaces the one before.
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

    /// Removes the PIN.
    pub fn remove_pin(&self) -> Result<(), StoreError> {
        self.connection.execute("DELETE FROM pin", [])?;
        Ok(())
    }
}
