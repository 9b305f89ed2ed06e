//! The teacher's own concepts and exercises.

use super::super::StoreError;
use super::super::columns::{date_at, unknown};
use super::DeskStore;
use super::cells::OWN_REPORT;
use chrono::NaiveDate;
use rusqlite::params;
use surefoot_record::Thing;

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

/// An import of own concepts or exercises.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OwnImportRow {
    /// Its number in the class, from 1.
    pub number: u32,
    /// What it brought.
    pub kind: OwnKindOfImport,
    /// School date.
    pub made_on: NaiveDate,
    /// Whether it was undone.
    pub undone: bool,
    /// Its report as JSON.
    pub report: String,
}

/// An own exercise.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OwnExerciseRow {
    /// Its id.
    pub id: String,
    /// Its concept.
    pub concept: String,
    /// The import it came with.
    pub import: u32,
    /// As JSON.
    pub content: String,
}

/// An own concept.
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
    /// Returns the imports of own concepts and exercises of a class, newest first.
    pub fn own_imports(&self, class: &str) -> Result<Vec<OwnImportRow>, StoreError> {
        let key = self.key()?;
        self.rows(
            "SELECT number, kind, made_on, undone, report FROM own_import
             WHERE class = ?1 ORDER BY number DESC",
            [class],
            |row| {
                let number: u32 = row.get(0)?;
                Ok(OwnImportRow {
                    number,
                    kind: match row.get_ref(1)?.as_str()? {
                        "concepts" => OwnKindOfImport::Concepts,
                        "exercises" => OwnKindOfImport::Exercises,
                        other => return Err(unknown(1, "kind of import", other)),
                    },
                    made_on: date_at(row, 2)?,
                    undone: row.get(3)?,
                    report: key.text_at(row, 4, &OWN_REPORT, &[&class, &number])?,
                })
            },
        )
    }

    /// Adds an import and returns its number.
    pub fn add_own_import(
        &self,
        class: &str,
        kind: OwnKindOfImport,
        made_on: NaiveDate,
        report: &str,
    ) -> Result<u32, StoreError> {
        let number: u32 = self.connection.query_row(
            "SELECT coalesce(max(number), 0) + 1 FROM own_import WHERE class = ?1",
            [class],
            |row| row.get(0),
        )?;
        self.put_own_import(
            class,
            &OwnImportRow {
                number,
                kind,
                made_on,
                undone: false,
                report: report.to_owned(),
            },
        )?;
        Ok(number)
    }

    fn put_own_import(&self, class: &str, row: &OwnImportRow) -> Result<(), StoreError> {
        let report = row.report.as_bytes();
        self.connection.execute(
            "INSERT INTO own_import (class, number, kind, made_on, undone, report)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
            params![
                class,
                row.number,
                row.kind.as_str(),
                row.made_on.to_string(),
                row.undone,
                self.key()?
                    .seal(&OWN_REPORT, &[&class, &row.number], report)?
            ],
        )?;
        Ok(())
    }

    /// Notes that an import was undone.
    pub fn mark_own_import_undone(&self, class: &str, number: u32) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE own_import SET undone = 1 WHERE class = ?1 AND number = ?2",
            params![class, number],
        )?;
        Ok(())
    }

    /// Returns the own exercises of a class, by concept and id.
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
    pub fn add_own_exercise(&self, class: &str, row: &OwnExerciseRow) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "INSERT INTO own_exercise (class, id, concept, import, content) VALUES (?1, ?2, ?3, ?4, ?5)",
            )?
            .execute(params![class, row.id, row.concept, row.import, row.content])?;
        Ok(())
    }

    /// Removes an own exercise.
    ///
    /// # Errors
    /// [`StoreError::Missing`] if there is no such exercise.
    pub fn remove_own_exercise(&self, class: &str, id: &str) -> Result<(), StoreError> {
        let removed = self.connection.execute(
            "DELETE FROM own_exercise WHERE class = ?1 AND id = ?2",
            params![class, id],
        )?;
        if removed == 0 {
            return Err(StoreError::Missing(Thing::Exercise));
        }
        Ok(())
    }

    /// Removes the concepts and exercises that an import brought.
    pub fn remove_own_of_import(&self, class: &str, number: u32) -> Result<(), StoreError> {
        for sql in [
            "DELETE FROM own_exercise WHERE class = ?1 AND import = ?2",
            "DELETE FROM own_concept WHERE class = ?1 AND import = ?2",
        ] {
            self.connection.execute(sql, params![class, number])?;
        }
        Ok(())
    }

    /// Returns the own concepts of a class, by id.
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
    pub fn add_own_concept(&self, class: &str, row: &OwnConceptRow) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "INSERT INTO own_concept (class, id, import, content) VALUES (?1, ?2, ?3, ?4)",
            )?
            .execute(params![class, row.id, row.import, row.content])?;
        Ok(())
    }

    /// Copies the imports, own concepts and own exercises of one class to another.
    pub fn copy_own(&self, from: &str, to: &str) -> Result<(), StoreError> {
        for import in self.own_imports(from)? {
            self.put_own_import(to, &import)?;
        }
        for sql in [
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
