//! The log of the share-safe tables that were handed out.

use super::super::StoreError;
use super::super::columns::date_at;
use super::DeskStore;
use chrono::NaiveDate;
use rusqlite::params;
use std::collections::BTreeSet;

/// A share-safe table that was handed out.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ReleaseRow {
    /// The date on which it was made.
    pub made_on: NaiveDate,
    /// A mark for each seat that the class had.
    pub seat_marks: BTreeSet<String>,
}

impl DeskStore {
    /// Returns the tables of a class that were handed out, earliest first.
    pub fn releases(&self, class: &str) -> Result<Vec<ReleaseRow>, StoreError> {
        let lines: Vec<(i64, NaiveDate, String)> = self.rows(
            "SELECT r.place, r.made_on, s.seat_mark FROM share_release r
             JOIN share_release_seat s ON s.class = r.class AND s.place = r.place
             WHERE r.class = ?1 ORDER BY r.place, s.seat_mark",
            [class],
            |row| Ok((row.get(0)?, date_at(row, 1)?, row.get(2)?)),
        )?;
        let mut found: Vec<(i64, ReleaseRow)> = Vec::new();
        for (place, made_on, mark) in lines {
            match found.last_mut() {
                Some((last, release)) if *last == place => {
                    release.seat_marks.insert(mark);
                }
                _ => found.push((
                    place,
                    ReleaseRow {
                        made_on,
                        seat_marks: BTreeSet::from([mark]),
                    },
                )),
            }
        }
        Ok(found.into_iter().map(|(_, release)| release).collect())
    }

    /// Notes a table that is handed out.
    pub fn add_release(&self, class: &str, release: &ReleaseRow) -> Result<(), StoreError> {
        let place: i64 = self.connection.query_row(
            "SELECT coalesce(max(place), -1) + 1 FROM share_release WHERE class = ?1",
            [class],
            |row| row.get(0),
        )?;
        self.connection.execute(
            "INSERT INTO share_release (class, place, made_on) VALUES (?1, ?2, ?3)",
            params![class, place, release.made_on.to_string()],
        )?;
        for mark in &release.seat_marks {
            self.connection.execute(
                "INSERT INTO share_release_seat (class, place, seat_mark) VALUES (?1, ?2, ?3)",
                params![class, place, mark],
            )?;
        }
        Ok(())
    }
}
