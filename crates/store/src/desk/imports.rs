//! Imports, their reports, and the hand-ins.

use super::super::StoreError;
use super::super::columns::{date_at, unknown};
use super::DeskStore;
use chrono::NaiveDate;
use rusqlite::{OptionalExtension, Row, params};
use std::collections::BTreeMap;

/// Whether a device's hand-ins count.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DeviceState {
    /// They count.
    Accepted,
    /// The teacher has not decided yet.
    Quarantined,
    /// The teacher decided that they do not count.
    Rejected,
}

impl DeviceState {
    pub(super) fn word(self) -> &'static str {
        match self {
            Self::Accepted => "accepted",
            Self::Quarantined => "quarantined",
            Self::Rejected => "rejected",
        }
    }

    pub(super) fn at(row: &Row<'_>, index: usize) -> rusqlite::Result<Self> {
        match row.get_ref(index)?.as_str()? {
            "accepted" => Ok(Self::Accepted),
            "quarantined" => Ok(Self::Quarantined),
            "rejected" => Ok(Self::Rejected),
            other => Err(unknown(index, "device state", other)),
        }
    }
}

/// A hand-in that the desk keeps.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HandInKept {
    /// The import that brought it.
    pub import: i64,
    /// The seat.
    pub seat: u32,
    /// The number of the device that it came from.
    pub device: i64,
    /// Its revision.
    pub revision: u32,
    /// Its school date.
    pub made_on: NaiveDate,
    /// How many check-ins and practice results it has.
    pub entries: usize,
    /// SHA-256 of the payload, hex.
    pub content_hash: String,
    /// The payload, deflated JSON.
    pub content: Vec<u8>,
}

/// A line of an import report.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ImportFileRow {
    /// The file's name.
    pub file_name: String,
    /// The verdict, JSON.
    pub verdict: String,
    /// The class it belongs to.
    pub class: Option<String>,
    /// The seat it belongs to.
    pub seat: Option<u32>,
    /// Entries that were new.
    pub new_entries: usize,
    /// Flags, JSON.
    pub flags: String,
}

impl DeskStore {
    /// Adds an import and returns its id.
    pub fn begin_import(&self, made_on: NaiveDate) -> Result<i64, StoreError> {
        self.connection.execute(
            "INSERT INTO import (made_on) VALUES (?1)",
            [made_on.to_string()],
        )?;
        Ok(self.connection.last_insert_rowid())
    }

    /// Notes whether an import was cancelled and whether it was undone.
    pub fn mark_import(
        &self,
        import: i64,
        cancelled: bool,
        undone: bool,
    ) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE import SET cancelled = ?2, undone = ?3 WHERE id = ?1",
            params![import, cancelled, undone],
        )?;
        Ok(())
    }

    /// Returns the imports, newest first: id, date, whether cancelled, whether undone.
    pub fn imports(&self) -> Result<Vec<(i64, NaiveDate, bool, bool)>, StoreError> {
        self.rows(
            "SELECT id, made_on, cancelled, undone FROM import ORDER BY id DESC",
            [],
            |row| Ok((row.get(0)?, date_at(row, 1)?, row.get(2)?, row.get(3)?)),
        )
    }

    /// Appends a line to an import report.
    pub fn add_import_file(&self, import: i64, file: &ImportFileRow) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "INSERT INTO import_file (import, place, file_name, verdict, class, seat, new_entries, flags)
                 VALUES (?1, (SELECT coalesce(max(place), -1) + 1 FROM import_file WHERE import = ?1), ?2, ?3, ?4, ?5, ?6, ?7)",
            )?
            .execute(params![
                import,
                file.file_name,
                file.verdict,
                file.class,
                file.seat,
                file.new_entries,
                file.flags
            ])?;
        Ok(())
    }

    /// Returns the lines of an import report in their order.
    pub fn import_files(&self, import: i64) -> Result<Vec<ImportFileRow>, StoreError> {
        self.rows(
            "SELECT file_name, verdict, class, seat, new_entries, flags FROM import_file
             WHERE import = ?1 ORDER BY place",
            [import],
            |row| {
                Ok(ImportFileRow {
                    file_name: row.get(0)?,
                    verdict: row.get(1)?,
                    class: row.get(2)?,
                    seat: row.get(3)?,
                    new_entries: row.get(4)?,
                    flags: row.get(5)?,
                })
            },
        )
    }

    /// Keeps a hand-in.
    pub fn keep_hand_in(&self, class: &str, kept: &HandInKept) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "INSERT INTO hand_in (import, class, seat, device, revision, made_on, entries, content_hash,
                   content) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)",
            )?
            .execute(params![
                kept.import,
                class,
                kept.seat,
                kept.device,
                kept.revision,
                kept.made_on.to_string(),
                kept.entries,
                kept.content_hash,
                kept.content
            ])?;
        Ok(())
    }

    /// Returns the newest revision that is kept of a device.
    pub fn newest_revision(&self, device: i64) -> Result<Option<u32>, StoreError> {
        Ok(self
            .connection
            .prepare_cached("SELECT max(revision) FROM hand_in WHERE device = ?1")?
            .query_row([device], |row| row.get(0))
            .optional()?
            .flatten())
    }

    /// Returns whether a hand-in of a device with this content is kept.
    pub fn has_hand_in(&self, device: i64, content_hash: &str) -> Result<bool, StoreError> {
        Ok(self
            .connection
            .prepare_cached(
                "SELECT EXISTS (SELECT 1 FROM hand_in WHERE device = ?1 AND content_hash = ?2)",
            )?
            .query_row(params![device, content_hash], |row| row.get(0))?)
    }

    /// Returns device and bytes of each hand-in that is kept of a seat: each device's in the order
    /// of their revisions, newest first.
    pub fn hand_in_sizes(&self, class: &str, seat: u32) -> Result<Vec<(i64, u64)>, StoreError> {
        self.rows(
            "SELECT device, length(content) FROM hand_in WHERE class = ?1 AND seat = ?2
             ORDER BY device, revision DESC, id DESC",
            params![class, seat],
            |row| Ok((row.get(0)?, row.get(1)?)),
        )
    }

    /// Returns for each device of a class how many hand-ins are kept, and how many entries the newest
    /// has.
    pub fn brought(&self, class: &str) -> Result<BTreeMap<i64, (usize, usize)>, StoreError> {
        // SQLite takes `entries` from the row that has the maximum.
        let all = self.rows(
            "SELECT device, count(*), max(revision), entries FROM hand_in WHERE class = ?1
             GROUP BY device",
            [class],
            |row| Ok((row.get(0)?, (row.get(1)?, row.get(3)?))),
        )?;
        Ok(all.into_iter().collect())
    }

    /// Keeps only the newest hand-ins of a device, by revision.
    pub fn keep_newest(&self, device: i64, most: usize) -> Result<(), StoreError> {
        self.connection.execute(
            "DELETE FROM hand_in WHERE device = ?1 AND id NOT IN
               (SELECT id FROM hand_in WHERE device = ?1 ORDER BY revision DESC, id DESC LIMIT ?2)",
            params![device, most],
        )?;
        Ok(())
    }

    /// Returns the hand-ins that are kept of a seat.
    pub fn hand_ins(&self, class: &str, seat: u32) -> Result<Vec<HandInKept>, StoreError> {
        self.rows(
            "SELECT import, device, revision, made_on, entries, content_hash, content FROM hand_in
             WHERE class = ?1 AND seat = ?2 ORDER BY id",
            params![class, seat],
            |row| {
                Ok(HandInKept {
                    import: row.get(0)?,
                    seat,
                    device: row.get(1)?,
                    revision: row.get(2)?,
                    made_on: date_at(row, 3)?,
                    entries: row.get(4)?,
                    content_hash: row.get(5)?,
                    content: row.get(6)?,
                })
            },
        )
    }

    /// Removes the hand-ins of an import. Returns the class and seat of each.
    pub fn drop_hand_ins(&self, import: i64) -> Result<Vec<(String, u32)>, StoreError> {
        let touched = self.rows(
            "SELECT DISTINCT class, seat FROM hand_in WHERE import = ?1 ORDER BY class, seat",
            [import],
            |row| Ok((row.get(0)?, row.get(1)?)),
        )?;
        self.connection
            .execute("DELETE FROM hand_in WHERE import = ?1", [import])?;
        // A device is unknown again if only that import brought it, and so is a seat's first one.
        self.connection.execute(
            "DELETE FROM device WHERE NOT EXISTS (SELECT 1 FROM hand_in h WHERE h.device = device.id)",
            [],
        )?;
        self.connection.execute(
            "UPDATE seat SET first_device_in = NULL WHERE first_device_in = ?1",
            [import],
        )?;
        Ok(touched)
    }
}
