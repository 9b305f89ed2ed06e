//! The PIN for a shared tablet and the PIN signs of the slip, hashed by argon2id.

use super::super::StoreError;
use super::StudentStore;
use rusqlite::{OptionalExtension, params};
use std::collections::BTreeMap;

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

    /// Removes the hashed PIN signs of the slip of a seat.
    pub fn remove_pin_signs(&self, seat: &str) -> Result<(), StoreError> {
        (self.connection).execute("DELETE FROM pin_signs WHERE seat = ?1", [seat])?;
        Ok(())
    }

    /// Returns the hashed PIN signs that were typed, each with the token of its slip's seat.
    pub fn pin_signs(&self) -> Result<BTreeMap<String, Hashed>, StoreError> {
        let mut read = self
            .connection
            .prepare_cached("SELECT salt, hash, memory_kib, passes, seat FROM pin_signs")?;
        let rows = read.query_map([], |row| Ok((row.get(4)?, hashed_at(row)?)))?;
        Ok(rows.collect::<Result<_, _>>()?)
    }

    /// Writes the hashed PIN signs of the slip of a seat.
    pub fn put_pin_signs(&self, seat: &str, signs: &Hashed) -> Result<(), StoreError> {
        self.connection.execute(
            "INSERT OR REPLACE INTO pin_signs (seat, salt, hash, memory_kib, passes)
             VALUES (?1, ?2, ?3, ?4, ?5)",
            params![seat, signs.salt, signs.hash, signs.memory_kib, signs.passes],
        )?;
        Ok(())
    }
}
