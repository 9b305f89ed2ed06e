//! What the teacher chose for the warm-up.

use super::super::StoreError;
use super::DeskStore;
use rusqlite::params;

/// What the teacher chose for one concept in the warm-up of a pass.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WarmUpRow {
    /// Complete passes before it.
    pub pass: u32,
    /// The concept.
    pub concept: String,
    /// How often its exercise was swapped for another.
    pub swaps: u32,
    /// The level, 1 to 3; none for that of the phase.
    pub level: Option<u8>,
    /// The id of the own exercise in its place.
    pub own_exercise: Option<String>,
    /// Whether the concept is left out.
    pub left_out: bool,
}

impl DeskStore {
    /// Writes what the teacher chose. It replaces the row of the same pass and concept.
    pub fn put_warm_up(&self, class: &str, row: &WarmUpRow) -> Result<(), StoreError> {
        self.connection.execute(
            "INSERT INTO warm_up_choice (class, pass, concept, swaps, level, own_exercise, left_out)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)
             ON CONFLICT (class, pass, concept)
               DO UPDATE SET swaps = ?4, level = ?5, own_exercise = ?6, left_out = ?7",
            params![
                class,
                row.pass,
                row.concept,
                row.swaps,
                row.level,
                row.own_exercise,
                row.left_out
            ],
        )?;
        Ok(())
    }

    /// Returns what the teacher chose for the warm-ups of a pass, by concept.
    pub fn warm_up(&self, class: &str, pass: u32) -> Result<Vec<WarmUpRow>, StoreError> {
        self.rows(
            "SELECT pass, concept, swaps, level, own_exercise, left_out FROM warm_up_choice
             WHERE class = ?1 AND pass = ?2 ORDER BY concept",
            params![class, pass],
            |row| {
                Ok(WarmUpRow {
                    pass: row.get(0)?,
                    concept: row.get(1)?,
                    swaps: row.get(2)?,
                    level: row.get(3)?,
                    own_exercise: row.get(4)?,
                    left_out: row.get(5)?,
                })
            },
        )
    }
}
