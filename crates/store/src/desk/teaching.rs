//! What the teacher enters: paper charts, observations, and the concepts talked about.

use super::super::StoreError;
use super::super::columns::{confidence_at, date_at, outcome_at, outcome_word};
use super::DeskStore;
use chrono::NaiveDate;
use rusqlite::{Row, params};
use surefoot_catalogue::rating::{Confidence, Outcome};

/// A paper entry.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PaperCheckIn {
    /// The seat.
    pub seat: u32,
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: String,
    /// The rating.
    pub confidence: Option<Confidence>,
    /// The outcome.
    pub outcome: Option<Outcome>,
}

/// An observation.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ObservationRow {
    /// The seat.
    pub seat: u32,
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: String,
    /// The confidence that the teacher saw; `None` after a small group, where the teacher
    /// enters only `has_it`.
    pub confidence: Option<Confidence>,
    /// Whether the student can do it.
    pub has_it: bool,
}

impl DeskStore {
    /// Writes a paper entry. One with neither rating nor outcome is removed.
    pub fn put_paper(&self, class: &str, entry: &PaperCheckIn) -> Result<(), StoreError> {
        let date = entry.date.to_string();
        if entry.confidence.is_none() && entry.outcome.is_none() {
            self.connection
                .prepare_cached(
                    "DELETE FROM paper_check_in
                     WHERE class = ?1 AND seat = ?2 AND school_date = ?3 AND concept = ?4",
                )?
                .execute(params![class, entry.seat, date, entry.concept])?;
        } else {
            self.connection
                .prepare_cached(
                    "INSERT INTO paper_check_in (class, seat, school_date, concept, confidence, outcome)
                     VALUES (?1, ?2, ?3, ?4, ?5, ?6)
                     ON CONFLICT (class, seat, school_date, concept)
                       DO UPDATE SET confidence = ?5, outcome = ?6",
                )?
                .execute(params![
                    class,
                    entry.seat,
                    date,
                    entry.concept,
                    entry.confidence.map(u8::from),
                    entry.outcome.map(outcome_word)
                ])?;
        }
        Ok(())
    }

    /// Returns the paper entries of a date by seat and concept.
    pub fn paper(&self, class: &str, date: NaiveDate) -> Result<Vec<PaperCheckIn>, StoreError> {
        self.rows(
            "SELECT seat, school_date, concept, confidence, outcome FROM paper_check_in
             WHERE class = ?1 AND school_date = ?2 ORDER BY seat, concept",
            params![class, date.to_string()],
            paper_at,
        )
    }

    /// Returns the paper entries of a seat by date and concept.
    pub fn paper_of(&self, class: &str, seat: u32) -> Result<Vec<PaperCheckIn>, StoreError> {
        self.rows(
            "SELECT seat, school_date, concept, confidence, outcome FROM paper_check_in
             WHERE class = ?1 AND seat = ?2 ORDER BY school_date, concept",
            params![class, seat],
            paper_at,
        )
    }

    /// Writes an observation. It replaces the one of the same seat, date and concept.
    pub fn put_observation(&self, class: &str, seen: &ObservationRow) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "INSERT INTO observation (class, seat, school_date, concept, confidence, has_it)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6)
                 ON CONFLICT (class, seat, school_date, concept)
                   DO UPDATE SET confidence = ?5, has_it = ?6",
            )?
            .execute(params![
                class,
                seen.seat,
                seen.date.to_string(),
                seen.concept,
                seen.confidence.map(u8::from),
                seen.has_it
            ])?;
        Ok(())
    }

    /// Removes an observation, if there is one.
    pub fn drop_observation(
        &self,
        class: &str,
        seat: u32,
        date: NaiveDate,
        concept: &str,
    ) -> Result<(), StoreError> {
        self.connection.execute(
            "DELETE FROM observation
             WHERE class = ?1 AND seat = ?2 AND school_date = ?3 AND concept = ?4",
            params![class, seat, date.to_string(), concept],
        )?;
        Ok(())
    }

    /// Returns the observations of a class, oldest first.
    pub fn observations(&self, class: &str) -> Result<Vec<ObservationRow>, StoreError> {
        self.rows(
            "SELECT seat, school_date, concept, confidence, has_it FROM observation
             WHERE class = ?1 ORDER BY school_date, seat, concept",
            [class],
            |row| {
                Ok(ObservationRow {
                    seat: row.get(0)?,
                    date: date_at(row, 1)?,
                    concept: row.get(2)?,
                    confidence: confidence_at(row, 3)?,
                    has_it: row.get(4)?,
                })
            },
        )
    }

    /// Notes whether a concept was talked about on a date.
    pub fn put_talked_about(
        &self,
        class: &str,
        date: NaiveDate,
        concept: &str,
        talked: bool,
    ) -> Result<(), StoreError> {
        let sql = if talked {
            "INSERT OR IGNORE INTO talked_about (class, school_date, concept) VALUES (?1, ?2, ?3)"
        } else {
            "DELETE FROM talked_about WHERE class = ?1 AND school_date = ?2 AND concept = ?3"
        };
        self.connection
            .execute(sql, params![class, date.to_string(), concept])?;
        Ok(())
    }

    /// Returns the concepts talked about with their dates, oldest first.
    pub fn talked_about(&self, class: &str) -> Result<Vec<(NaiveDate, String)>, StoreError> {
        self.rows(
            "SELECT school_date, concept FROM talked_about WHERE class = ?1
             ORDER BY school_date, concept",
            [class],
            |row| Ok((date_at(row, 0)?, row.get(1)?)),
        )
    }
}

fn paper_at(row: &Row<'_>) -> rusqlite::Result<PaperCheckIn> {
    Ok(PaperCheckIn {
        seat: row.get(0)?,
        date: date_at(row, 1)?,
        concept: row.get(2)?,
        confidence: confidence_at(row, 3)?,
        outcome: outcome_at(row, 4)?,
    })
}
