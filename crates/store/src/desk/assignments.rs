//! Assignments.

use super::super::StoreError;
use super::super::columns::date_at;
use super::DeskStore;
use chrono::NaiveDate;
use rusqlite::params;
use surefoot_record::Thing;

/// An assignment as stored.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct AssignmentRow {
    /// Its id.
    pub id: String,
    /// Concepts in order.
    pub concepts: Vec<String>,
    /// Exercises of each concept.
    pub items_each: u32,
    /// First evening.
    pub from: NaiveDate,
    /// Last evening.
    pub due: NaiveDate,
    /// Whether it is for the whole class.
    pub whole_class: bool,
    /// The seats it is for, if not for the whole class.
    pub seats: Vec<u32>,
    /// Whether it is withdrawn. A withdrawn assignment can be restored.
    pub withdrawn: bool,
}

impl DeskStore {
    /// Returns the assignments of a class that are not withdrawn, latest due date first.
    pub fn assignments(&self, class: &str) -> Result<Vec<AssignmentRow>, StoreError> {
        let mut all = self.all_assignments(class)?;
        all.retain(|row| !row.withdrawn);
        Ok(all)
    }

    /// Returns all assignments of a class, withdrawn ones last, each part by latest due date.
    pub fn all_assignments(&self, class: &str) -> Result<Vec<AssignmentRow>, StoreError> {
        let mut found = self.rows(
            "SELECT id, items_each, from_date, due_date, whole_class, withdrawn FROM assignment
             WHERE class = ?1 ORDER BY withdrawn, due_date DESC, from_date DESC, id",
            [class],
            |row| {
                Ok(AssignmentRow {
                    id: row.get(0)?,
                    concepts: Vec::new(),
                    items_each: row.get(1)?,
                    from: date_at(row, 2)?,
                    due: date_at(row, 3)?,
                    whole_class: row.get(4)?,
                    seats: Vec::new(),
                    withdrawn: row.get(5)?,
                })
            },
        )?;
        for assignment in &mut found {
            assignment.concepts = self.rows(
                "SELECT concept FROM assignment_concept WHERE class = ?1 AND assignment = ?2 ORDER BY place",
                params![class, assignment.id],
                |row| row.get(0),
            )?;
            assignment.seats = self.rows(
                "SELECT seat FROM assignment_seat WHERE class = ?1 AND assignment = ?2 ORDER BY seat",
                params![class, assignment.id],
                |row| row.get(0),
            )?;
        }
        Ok(found)
    }

    /// Adds an assignment.
    pub fn add_assignment(&self, class: &str, row: &AssignmentRow) -> Result<(), StoreError> {
        self.transaction(|| {
            self.connection.execute(
                "INSERT INTO assignment (class, id, items_each, from_date, due_date, whole_class)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
                params![
                    class,
                    row.id,
                    row.items_each,
                    row.from.to_string(),
                    row.due.to_string(),
                    row.whole_class
                ],
            )?;
            for (place, concept) in row.concepts.iter().enumerate() {
                self.connection.execute(
                    "INSERT INTO assignment_concept (class, assignment, place, concept) VALUES (?1, ?2, ?3, ?4)",
                    params![class, row.id, place, concept],
                )?;
            }
            for seat in &row.seats {
                self.connection.execute(
                    "INSERT INTO assignment_seat (class, assignment, seat) VALUES (?1, ?2, ?3)",
                    params![class, row.id, seat],
                )?;
            }
            Ok(())
        })
    }

    /// Withdraws an assignment, which stays in the store, or restores it.
    ///
    /// # Errors
    /// [`StoreError::Missing`] if there is no such assignment, or it is in that state already.
    pub fn withdraw_assignment(
        &self,
        class: &str,
        id: &str,
        withdrawn: bool,
    ) -> Result<(), StoreError> {
        let changed = self.connection.execute(
            "UPDATE assignment SET withdrawn = ?3 WHERE class = ?1 AND id = ?2 AND withdrawn <> ?3",
            params![class, id, withdrawn],
        )?;
        if changed == 0 {
            return Err(StoreError::Missing(Thing::Assignment));
        }
        Ok(())
    }
}
