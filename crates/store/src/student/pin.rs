//! The PIN for a shared tablet and the PIN signs of the slip, hashed by argon2id.

use super::super::StoreError;
use super::StudentStore;
use rusqlite::{OptionalExtension, params};

/// What argon2id made of something secret.
#[derive(Clone, PartialEq, Eq)]
pub struct Hashed {
    /// 16 random bytes.
    pub salt: [u8; 16],
    /// The hash.
    pub hash: [u8; 32],
    /// Memory of argon2id in KiB.
    pub memory_kib: u32,
    /// Passes of argon2id.
    pub passes: u32,
}

/// A hashed PIN.
#[derive(Clone, PartialEq, Eq)]
pub struct PinRow {
    /// The hash.
    pub hashed: Hashed,
    /// Wrong tries in a row.
    pub wrong_tries: u32,
}

fn hashed_at(row: &rusqlite::Row<'_>) -> rusqlite::Result<Hashed> {
    Ok(Hashed {
        salt: row.get(0)?,
        hash: row.get(1)?,
        memory_kib: row.get(2)?,
        passes: row.get(3)?,
    })
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
                        hashed: hashed_at(row)?,
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
                pin.hashed.salt,
                pin.hashed.hash,
                pin.hashed.memory_kib,
                pin.hashed.passes,
                pin.wrong_tries
            ],
        )?;
        Ok(())
    }

    /// Removes the PIN. The hashed PIN signs stay.
    pub fn remove_pin(&self) -> Result<(), StoreError> {
        self.connection.execute("DELETE FROM pin", [])?;
        Ok(())
    }

    /// Removes the PIN and the hashed PIN signs, when another slip takes the place of theirs.
    pub fn remove_pin_and_signs(&self) -> Result<(), StoreError> {
        self.remove_pin()?;
        self.connection.execute("DELETE FROM pin_signs", [])?;
        Ok(())
    }

    /// Returns the hashed PIN signs of the slip, once they were typed.
    pub fn pin_signs(&self) -> Result<Option<Hashed>, StoreError> {
        Ok(self
            .connection
            .query_row(
                "SELECT salt, hash, memory_kib, passes FROM pin_signs",
                [],
                hashed_at,
            )
            .optional()?)
    }

    /// Writes the hashed PIN signs of the slip.
    pub fn put_pin_signs(&self, signs: &Hashed) -> Result<(), StoreError> {
        self.connection.execute(
            "INSERT OR REPLACE INTO pin_signs (id, salt, hash, memory_kib, passes)
             VALUES (1, ?1, ?2, ?3, ?4)",
            params![signs.salt, signs.hash, signs.memory_kib, signs.passes],
        )?;
        Ok(())
    }
}
