//! Concepts and exercises that the teacher brought along.

use super::super::StoreError;
use super::super::columns::{date_at, unknown};
use super::DeskStore;
use chrono::NaiveDate;
use rusqlite::params;

/// What an import brought.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OwnKindOfImport {
    /// Exercises.
    Exercises,
    /// Concepts.
    Concepts,
}

impl OwnKindOfImport {
    fn as_str(self) -> &'static str {
        match self {
            Self::Exercises => "exercises",
            Self::Concepts => "concepts",
        }
    }
}

/// An import as stored.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OwnImportRow {
    /// 1, 2, 3 ... in its class.
    pub number: u32,
    /// What it brought.
    pub kind: OwnKindOfImport,
    /// School date.
    pub made_on: NaiveDate,
    /// Taken back.
    pub undone: bool,
    /// Its account as JSON.
    pub account: String,
}

/// An own exercise as stored.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OwnExerciseRow {
    /// Its id as text.
    pub id: String,
    /// Its concept.
    pub concept: String,
    /// The import it came with.
    pub import: u32,
    /// As JSON.
    pub content: String,
}

/// An own concept as stored.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OwnConceptRow {
    /// Its id.
    pub id: String,
    /// The import it came with.
    pub import: u32,
    /// As JSON.
    pub content: String,
}

impl DeskStore {
    /// Imports of concepts and exercises of a class, the newest first.
    ///
    /// # Errors
    /// SQLite's, or an unreadable date.
    pub fn own_imports(&self, class: &str) -> Result<Vec<OwnImportRow>, StoreError> {
        self.rows(
            "SELECT number, kind, made_on, undone, report FROM own_import
             WHERE class = ?1 ORDER BY number DESC",
            [class],
            |row| {
                Ok(OwnImportRow {
                    number: row.get(0)?,
                    kind: match row.get_ref(1)?.as_str()? {
                        "concepts" => OwnKindOfImport::Concepts,
                        "exercises" => OwnKindOfImport::Exercises,
                        other => return Err(unknown(1, "kind of import", other)),
                    },
                    made_on: date_at(row, 2)?,
                    undone: row.get(3)?,
                    account: row.get(4)?,
                })
            },
        )
    }

    /// Notes an import; gives its number.
    ///
    /// # Errors
    /// SQLite's.
    pub fn add_own_import(
        &self,
        class: &str,
        kind: OwnKindOfImport,
        made_on: NaiveDate,
        account: &str,
    ) -> Result<u32, StoreError> {
        let number: u32 = self.connection.query_row(
            "SELECT coalesce(max(number), 0) + 1 FROM own_import WHERE class = ?1",
            [class],
            |row| row.get(0),
        )?;
        self.connection.execute(
            "INSERT INTO own_import (class, number, kind, made_on, report) VALUES (?1, ?2, ?3, ?4, ?5)",
            params![class, number, kind.as_str(), made_on.to_string(), account],
        )?;
        Ok(number)
    }

    /// Notes that an import was taken back.
    ///
    /// # Errors
    /// SQLite's.
    pub fn mark_own_import_undone(&self, class: &str, number: u32) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE own_import SET undone = 1 WHERE class = ?1 AND number = ?2",
            params![class, number],
        )?;
        Ok(())
    }

    /// The own exercises of a class, by concept and id.
    ///
    /// # Errors
    /// SQLite's.
    pub fn own_exercises(&self, class: &str) -> Result<Vec<OwnExerciseRow>, StoreError> {
        self.rows(
            "SELECT id, concept, import, content FROM own_exercise WHERE class = ?1 ORDER BY concept, id",
            [class],
            |row| {
                Ok(OwnExerciseRow {
                    id: row.get(0)?,
                    concept: row.get(1)?,
                    import: row.get(2)?,
                    content: row.get(3)?,
                })
            },
        )
    }

    /// Adds an own exercise.
    ///
    /// # Errors
    /// SQLite's.
    pub fn add_own_exercise(&self, class: &str, row: &OwnExerciseRow) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "INSERT INTO own_exercise (class, id, concept, import, content) VALUES (?1, ?2, ?3, ?4, ?5)",
            )?
            .execute(params![class, row.id, row.concept, row.import, row.content])?;
        Ok(())
    }

    /// Takes an own exercise away.
    ///
    /// # Errors
    /// [`StoreError::Missing`] for no such exercise; SQLite's.
    pub fn remove_own_exercise(&self, class: &str, id: &str) -> Result<(), StoreError> {
        let removed = self.connection.execute(
            "DELETE FROM own_exercise WHERE class = ?1 AND id = ?2",
            params![class, id],
        )?;
        if removed == 0 {
            return Err(StoreError::Missing("exercise"));
        }
        Ok(())
    }

    /// Takes away what an import brought.
    ///
    /// # Errors
    /// SQLite's.
    pub fn remove_own_of_import(&self, class: &str, number: u32) -> Result<(), StoreError> {
        for sql in [
            "DELETE FROM own_exercise WHERE class = ?1 AND import = ?2",
            "DELETE FROM own_concept WHERE class = ?1 AND import = ?2",
        ] {
            self.connection.execute(sql, params![class, number])?;
        }
        Ok(())
    }

    /// The own concepts of a class, by id.
    ///
    /// # Errors
    /// SQLite's.
    pub fn own_concepts(&self, class: &str) -> Result<Vec<OwnConceptRow>, StoreError> {
        self.rows(
            "SELECT id, import, content FROM own_concept WHERE class = ?1 ORDER BY id",
            [class],
            |row| {
                Ok(OwnConceptRow {
                    id: row.get(0)?,
                    import: row.get(1)?,
                    content: row.get(2)?,
                })
            },
        )
    }

    /// Adds an own concept.
    ///
    /// # Errors
    /// SQLite's.
    pub fn add_own_concept(&self, class: &str, row: &OwnConceptRow) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "INSERT INTO own_concept (class, id, import, content) VALUES (?1, ?2, ?3, ?4)",
            )?
            .execute(params![class, row.id, row.import, row.content])?;
        Ok(())
    }

    /// Gives a class everything that another one was brought: imports, concepts, exercises.
    ///
    /// # Errors
    /// SQLite's.
    pub fn copy_own(&self, from: &str, to: &str) -> Result<(), StoreError> {
        for sql in [
            "INSERT INTO own_import (class, number, kind, made_on, undone, report)
             SELECT ?2, number, kind, made_on, undone, report FROM own_import WHERE class = ?1",
            "INSERT INTO own_exercise (class, id, concept, import, content)
             SELECT ?2, id, concept, import, content FROM own_exercise WHERE class = ?1",
            "INSERT INTO own_concept (class, id, import, content)
             SELECT ?2, id, import, content FROM own_concept WHERE class = ?1",
        ] {
            self.connection.execute(sql, params![from, to])?;
        }
        Ok(())
    }
}
