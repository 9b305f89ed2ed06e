//! What was taught again, when, and to whom.

use super::super::StoreError;
use super::super::columns::{date_at, unknown};
use super::DeskStore;
use super::cells::TAUGHT_NOTE;
use chrono::NaiveDate;
use rusqlite::params;

/// Where an entry came from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CameFrom {
    /// The talk with the class.
    Talk,
    /// A small group.
    Group,
    /// An assignment.
    Assignment,
    /// Entered by hand.
    Hand,
}

impl CameFrom {
    fn word(self) -> &'static str {
        match self {
            Self::Talk => "talk",
            Self::Group => "group",
            Self::Assignment => "assignment",
            Self::Hand => "hand",
        }
    }
}

/// A concept that was taught again.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TaughtAgainRow {
    /// Its number at this desk; 0 before it is stored.
    pub id: i64,
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: String,
    /// Where the entry came from.
    pub came_from: CameFrom,
    /// Whether it was for everybody who was there.
    pub whole_class: bool,
    /// The seats of those who were taught.
    pub seats: Vec<u32>,
    /// What was done, in the teacher's words.
    pub note: Option<String>,
}

impl DeskStore {
    /// Returns what was taught again in a class, oldest first.
    pub fn taught_again(&self, class: &str) -> Result<Vec<TaughtAgainRow>, StoreError> {
        let key = self.key()?;
        let mut found = self.rows(
            "SELECT id, school_date, concept, came_from, whole_class, note FROM taught_again
             WHERE class = ?1 ORDER BY school_date, id",
            [class],
            |row| {
                let id: i64 = row.get(0)?;
                let note = match row.get_ref(5)? {
                    rusqlite::types::ValueRef::Null => None,
                    _ => Some(key.text_at(row, 5, &TAUGHT_NOTE, &[&class, &id])?),
                };
                Ok(TaughtAgainRow {
                    id,
                    date: date_at(row, 1)?,
                    concept: row.get(2)?,
                    came_from: match row.get_ref(3)?.as_str()? {
                        "talk" => CameFrom::Talk,
                        "group" => CameFrom::Group,
                        "assignment" => CameFrom::Assignment,
                        "hand" => CameFrom::Hand,
                        other => return Err(unknown(3, "origin", other)),
                    },
                    whole_class: row.get(4)?,
                    seats: Vec::new(),
                    note,
                })
            },
        )?;
        for entry in &mut found {
            entry.seats = self.rows(
                "SELECT seat FROM taught_again_seat WHERE class = ?1 AND entry = ?2 ORDER BY seat",
                params![class, entry.id],
                |row| row.get(0),
            )?;
        }
        Ok(found)
    }

    /// Writes an entry. Id 0 gets a number that no entry had; any other replaces the entry with it.
    /// Returns the id.
    ///
    /// # Errors
    /// Fails if the class has no such seat.
    pub fn put_taught_again(&self, class: &str, entry: &TaughtAgainRow) -> Result<i64, StoreError> {
        self.drop_taught_again(class, entry.id)?;
        self.connection.execute(
            "INSERT INTO taught_again (id, class, school_date, concept, came_from, whole_class)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
            params![
                (entry.id > 0).then_some(entry.id),
                class,
                entry.date.to_string(),
                entry.concept,
                entry.came_from.word(),
                entry.whole_class,
            ],
        )?;
        let id = self.connection.last_insert_rowid();
        if let Some(note) = &entry.note {
            let cell = (self.key()?).seal(&TAUGHT_NOTE, &[&class, &id], note.as_bytes())?;
            self.connection.execute(
                "UPDATE taught_again SET note = ?2 WHERE id = ?1",
                params![id, cell],
            )?;
        }
        for seat in &entry.seats {
            self.connection.execute(
                "INSERT OR IGNORE INTO taught_again_seat (class, entry, seat) VALUES (?1, ?2, ?3)",
                params![class, id, seat],
            )?;
        }
        Ok(id)
    }

    /// Removes an entry, if there is one.
    pub fn drop_taught_again(&self, class: &str, id: i64) -> Result<(), StoreError> {
        self.connection.execute(
            "DELETE FROM taught_again WHERE class = ?1 AND id = ?2",
            params![class, id],
        )?;
        Ok(())
    }
}
