//! Imports, their reports, and the hand-ins.

use super::super::StoreError;
use super::super::columns::{date_at, unknown};
use super::DeskStore;
use super::cells::{FILE_NAME, HAND_IN};
use chrono::NaiveDate;
use rusqlite::{OptionalExtension, Row, params};
use std::collections::BTreeMap;
use std::fmt::Display;
use surefoot_record::Thing;

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
    /// The state after the teacher's decision; `None` quarantines.
    #[must_use]
    pub fn of_decision(accept: Option<bool>) -> Self {
        match accept {
            Some(true) => Self::Accepted,
            Some(false) => Self::Rejected,
            None => Self::Quarantined,
        }
    }

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
    /// The version of the class pack that its device had.
    pub pack_version: u32,
    /// Tells this payload from others of the device. Must not be computable from the rest of the
    /// row, because it is not sealed.
    pub content_hash: String,
    /// The payload, deflated JSON.
    pub content: Vec<u8>,
}

/// The newest hand-in of a device.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NewestHandIn {
    /// Its school date, or the date of its import if that is earlier.
    pub made_on: NaiveDate,
    /// The version of the class pack that its device had.
    pub pack_version: u32,
}

/// What an import did with a file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LineOfFile {
    /// The file's name.
    pub file_name: String,
    /// The verdict, JSON.
    pub verdict: String,
    /// The class it belongs to.
    pub class: Option<String>,
    /// The seat it belongs to.
    pub seat: Option<u32>,
    /// The date of the import.
    pub read_on: NaiveDate,
}

/// An import in the journal.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ImportRow {
    /// Its number; a later import has a higher one.
    pub number: i64,
    /// The date of the import.
    pub made_on: NaiveDate,
    /// Whether the teacher cancelled it.
    pub cancelled: bool,
    /// Whether it was undone.
    pub undone: bool,
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

const IMPORTS: &str = "SELECT id, made_on, cancelled, undone FROM import
    WHERE id < ?1 ORDER BY id DESC LIMIT ?2";

const COUNTS: &str = "SELECT kind, count(*), sum(rank = 0)
    FROM import_file INDEXED BY import_file_shown WHERE import = ?1 GROUP BY kind";

const LINES: &str =
    "SELECT file_name, verdict, class, seat, new_entries, flags, place FROM import_file
    WHERE import = ?1 ORDER BY rank, place LIMIT ?3 OFFSET ?2";

fn import_at(row: &Row<'_>) -> rusqlite::Result<ImportRow> {
    Ok(ImportRow {
        number: row.get(0)?,
        made_on: date_at(row, 1)?,
        cancelled: row.get(2)?,
        undone: row.get(3)?,
    })
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

    /// Adds the import of a transfer and returns its id. It is not undone like others, but by removing
    /// the seat.
    pub fn begin_transfer(&self, made_on: NaiveDate) -> Result<i64, StoreError> {
        self.connection.execute(
            "INSERT INTO import (made_on, transfer) VALUES (?1, 1)",
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

    /// Returns at most `most` imports, newest first: those before the import `before`, or
    /// the newest.
    pub fn imports(&self, before: Option<i64>, most: usize) -> Result<Vec<ImportRow>, StoreError> {
        self.rows(
            IMPORTS,
            params![before.unwrap_or(i64::MAX), most],
            import_at,
        )
    }

    /// Returns the import of this number.
    ///
    /// # Errors
    /// [`StoreError::Missing`] if there is none.
    pub fn import(&self, number: i64) -> Result<ImportRow, StoreError> {
        self.rows(
            "SELECT id, made_on, cancelled, undone FROM import WHERE id = ?1",
            [number],
            import_at,
        )?
        .pop()
        .ok_or(StoreError::Missing(Thing::Import))
    }

    /// Removes an import that brought nothing, with its lines.
    pub fn drop_import(&self, number: i64) -> Result<(), StoreError> {
        self.connection
            .execute("DELETE FROM import WHERE id = ?1", [number])?;
        Ok(())
    }

    /// Returns the newest import that can be undone and was not. One whose files were all refused
    /// has nothing to undo.
    pub fn last_import(&self) -> Result<Option<ImportRow>, StoreError> {
        let found = self.rows(
            "SELECT id, made_on, cancelled, undone FROM import WHERE undone = 0 AND transfer = 0
               AND EXISTS (SELECT 1 FROM import_file f WHERE f.import = import.id AND f.kind <> 'refused')
             ORDER BY id DESC LIMIT 1",
            [],
            import_at,
        )?;
        Ok(found.into_iter().next())
    }

    /// Returns, for each kind of verdict, how many lines of an import have it, and how many
    /// of those the teacher must look at.
    pub fn import_counts(&self, import: i64) -> Result<Vec<(String, u32, u32)>, StoreError> {
        self.rows(COUNTS, [import], |row| {
            Ok((row.get(0)?, row.get(1)?, row.get(2)?))
        })
    }

    /// Appends a line to an import report.
    pub fn add_import_file(&self, import: i64, file: &ImportFileRow) -> Result<(), StoreError> {
        let place: i64 = self
            .connection
            .prepare_cached(
                "SELECT coalesce(max(place), -1) + 1 FROM import_file WHERE import = ?1",
            )?
            .query_row([import], |row| row.get(0))?;
        let name = file.file_name.as_bytes();
        self.connection
            .prepare_cached(
                "INSERT INTO import_file (import, place, file_name, verdict, class, seat, new_entries, flags)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)",
            )?
            .execute(params![
                import,
                place,
                self.key()?.seal(&FILE_NAME, &[&import, &place], name)?,
                file.verdict,
                file.class,
                file.seat,
                file.new_entries,
                file.flags
            ])?;
        Ok(())
    }

    /// Returns at most `most` lines of an import report from the line `from` on. The lines
    /// that the teacher must look at come first, then those that brought something, each in
    /// the order of the import.
    pub fn import_files(
        &self,
        import: i64,
        from: usize,
        most: usize,
    ) -> Result<Vec<ImportFileRow>, StoreError> {
        let key = self.key()?;
        self.rows(LINES, params![import, from, most], |row| {
            let place: i64 = row.get(6)?;
            Ok(ImportFileRow {
                file_name: key.text_at(row, 0, &FILE_NAME, &[&import, &place])?,
                verdict: row.get(1)?,
                class: row.get(2)?,
                seat: row.get(3)?,
                new_entries: row.get(4)?,
                flags: row.get(5)?,
            })
        })
    }

    /// Keeps a hand-in.
    pub fn keep_hand_in(&self, class: &str, kept: &HandInKept) -> Result<(), StoreError> {
        let place: [&dyn Display; 2] = [&kept.device, &kept.content_hash];
        let cell = self.key()?.seal(&HAND_IN, &place, &kept.content)?;
        self.connection
            .prepare_cached(
                "INSERT INTO hand_in (import, class, seat, device, revision, made_on, entries, content_hash,
                   content, pack_version) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10)",
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
                cell,
                kept.pack_version
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

    /// Returns device and bytes of the cell of each hand-in that is kept of a seat: each device's in the order
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

    /// Returns for each device of a class its newest hand-in, by revision.
    pub fn newest_hand_ins(&self, class: &str) -> Result<BTreeMap<i64, NewestHandIn>, StoreError> {
        // SQLite takes the other columns from the row that has the maximum.
        let all = self.rows(
            "SELECT h.device, max(h.revision), min(h.made_on, i.made_on), h.pack_version
             FROM hand_in h JOIN import i ON i.id = h.import WHERE h.class = ?1 GROUP BY h.device",
            [class],
            |row| {
                let newest = NewestHandIn {
                    made_on: date_at(row, 2)?,
                    pack_version: row.get(3)?,
                };
                Ok((row.get(0)?, newest))
            },
        )?;
        Ok(all.into_iter().collect())
    }

    /// Returns the lines of import reports that tell what became of a file name, in the order
    /// of the imports: all lines of the imports from the date `since` on, and of the earlier
    /// ones those that were the first of their file. Lines of undone imports are left out.
    pub fn lines_of_files(&self, since: NaiveDate) -> Result<Vec<LineOfFile>, StoreError> {
        let key = self.key()?;
        self.rows(
            "SELECT f.import, f.place, f.file_name, f.verdict, f.class, f.seat, i.made_on
             FROM import_file f JOIN import i ON i.id = f.import
             WHERE i.undone = 0 AND (i.made_on >= ?1 OR f.kind IN ('new', 'updated', 'older'))
             ORDER BY f.import, f.place",
            [since.to_string()],
            |row| {
                let (import, place): (i64, i64) = (row.get(0)?, row.get(1)?);
                Ok(LineOfFile {
                    file_name: key.text_at(row, 2, &FILE_NAME, &[&import, &place])?,
                    verdict: row.get(3)?,
                    class: row.get(4)?,
                    seat: row.get(5)?,
                    read_on: date_at(row, 6)?,
                })
            },
        )
    }

    /// Returns a device's hand-in of a date, two before a revision: its number and content.
    pub fn hand_in_two_before(
        &self,
        device: i64,
        made_on: NaiveDate,
        revision: u32,
    ) -> Result<Option<(i64, Vec<u8>)>, StoreError> {
        let key = self.key()?;
        Ok(self
            .connection
            .prepare_cached(
                "SELECT id, content_hash, content FROM hand_in
                 WHERE device = ?1 AND made_on = ?2 AND revision < ?3
                 ORDER BY revision DESC, id DESC LIMIT 1 OFFSET 1",
            )?
            .query_row(params![device, made_on.to_string(), revision], |row| {
                let content_hash: String = row.get(1)?;
                let place: [&dyn Display; 2] = [&device, &content_hash];
                Ok((row.get(0)?, key.bytes_at(row, 2, &HAND_IN, &place)?))
            })
            .optional()?)
    }

    /// Removes a hand-in whose whole content another one has.
    pub fn drop_hand_in(&self, id: i64) -> Result<(), StoreError> {
        self.connection
            .execute("DELETE FROM hand_in WHERE id = ?1", [id])?;
        Ok(())
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
        let key = self.key()?;
        self.rows(
            "SELECT import, device, revision, made_on, entries, content_hash, content, pack_version FROM hand_in
             WHERE class = ?1 AND seat = ?2 ORDER BY id",
            params![class, seat],
            |row| {
                let (device, content_hash): (i64, String) = (row.get(1)?, row.get(5)?);
                Ok(HandInKept {
                    import: row.get(0)?,
                    seat,
                    device,
                    revision: row.get(2)?,
                    made_on: date_at(row, 3)?,
                    entries: row.get(4)?,
                    content: key.bytes_at(row, 6, &HAND_IN, &[&device, &content_hash])?,
                    content_hash,
                    pack_version: row.get(7)?,
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Durability;

    fn line(number: usize) -> ImportFileRow {
        let kind = ["known", "refused", "new"][number % 3];
        ImportFileRow {
            file_name: format!("{number}.sfhandin"),
            verdict: format!("{{\"kind\":\"{kind}\"}}"),
            class: None,
            seat: None,
            new_entries: number,
            flags: if number == 0 { "[1]" } else { "[]" }.into(),
        }
    }

    #[test]
    fn a_page_of_the_journal_reads_its_own_lines_alone() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("desk.sqlite");
        let desk = DeskStore::open(&path, Durability::Relaxed).unwrap();
        let day = "2026-09-01".parse().unwrap();
        let numbers: Vec<i64> = (0..5).map(|_| desk.begin_import(day).unwrap()).collect();
        for number in 0..12 {
            desk.add_import_file(numbers[2], &line(number)).unwrap();
        }
        let found = |before, most| -> Vec<i64> {
            let found = desk.imports(before, most).unwrap();
            found.iter().map(|import| import.number).collect()
        };
        assert_eq!(found(None, 2), [numbers[4], numbers[3]]);
        assert_eq!(found(Some(numbers[3]), 2), [numbers[2], numbers[1]]);
        assert_eq!(found(Some(numbers[1]), 2), [numbers[0]]);
        // The others have nothing to undo.
        assert_eq!(desk.last_import().unwrap().unwrap().number, numbers[2]);
        desk.mark_import(numbers[2], false, true).unwrap();
        assert_eq!(desk.last_import().unwrap(), None);
        desk.mark_import(numbers[2], false, false).unwrap();

        let names = |from, most| -> Vec<usize> {
            let lines = desk.import_files(numbers[2], from, most).unwrap();
            lines.iter().map(|line| line.new_entries).collect()
        };
        assert_eq!(names(0, 6), [0, 1, 4, 7, 10, 2]);
        assert_eq!(names(6, 100), [5, 8, 11, 3, 6, 9]);
        let mut counts = desk.import_counts(numbers[2]).unwrap();
        counts.sort();
        let wanted = [("known", 4, 1), ("new", 4, 0), ("refused", 4, 4)]
            .map(|(kind, lines, looks)| (kind.to_owned(), lines, looks));
        assert_eq!(counts, wanted);

        let plan = |sql: &str| {
            let sql = format!("EXPLAIN QUERY PLAN {sql}");
            let mut query = desk.connection.prepare(&sql).unwrap();
            let many = query.parameter_count();
            let args = rusqlite::params_from_iter(std::iter::repeat_n(1, many));
            let steps = query.query_map(args, |row| row.get(3)).unwrap();
            steps
                .collect::<Result<Vec<String>, _>>()
                .unwrap()
                .join("; ")
        };
        assert_eq!(
            plan(LINES),
            "SEARCH import_file USING INDEX import_file_shown (import=?)"
        );
        assert_eq!(
            plan(IMPORTS),
            "SEARCH import USING INTEGER PRIMARY KEY (rowid<?)"
        );
        let counts = plan(COUNTS);
        assert!(
            counts.contains("INDEX import_file_shown (import=?)"),
            "{counts}"
        );
    }
}
