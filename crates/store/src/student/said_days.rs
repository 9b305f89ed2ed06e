//! Days of the rotation that the student said.

use super::super::StoreError;
use super::super::columns::date_at;
use super::StudentStore;
use chrono::NaiveDate;
use rusqlite::params;

/// A day of the rotation that the student said, because the class pack was behind.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SaidDay {
    /// The date on which the class was on that day.
    pub date: NaiveDate,
    /// Day of the rotation, from 1.
    pub day: usize,
    /// The version of the class pack that the device had.
    pub pack_version: u32,
}

impl StudentStore {
    /// Returns the days that the student said, by date.
    pub fn said_days(&self) -> Result<Vec<SaidDay>, StoreError> {
        let mut query = self.connection.prepare_cached(
            "SELECT school_date, day, pack_version FROM said_day ORDER BY school_date",
        )?;
        let rows = query.query_map([], |row| {
            Ok(SaidDay {
                date: date_at(row, 0)?,
                day: row.get(1)?,
                pack_version: row.get(2)?,
            })
        })?;
        Ok(rows.collect::<Result<_, _>>()?)
    }

    /// Writes a day that the student said, in place of an earlier one for the same date.
    pub fn put_said_day(&self, said: SaidDay) -> Result<(), StoreError> {
        self.connection.execute(
            "INSERT INTO said_day (school_date, day, pack_version) VALUES (?1, ?2, ?3)
             ON CONFLICT (school_date) DO UPDATE SET day = ?2, pack_version = ?3",
            params![said.date.to_string(), said.day, said.pack_version],
        )?;
        Ok(())
    }

    /// Removes all days that the student said.
    pub fn remove_said_days(&self) -> Result<(), StoreError> {
        self.connection.execute("DELETE FROM said_day", [])?;
        Ok(())
    }
}
