//! What a student did, appended and never edited.

use super::super::StoreError;
use super::super::columns::{
    confidence_at, date_at, outcome_at, outcome_word, result_at, result_word,
};
use super::StudentStore;
use chrono::NaiveDate;
use rusqlite::{Row, params};
use surefoot_catalogue::rating::{AnswerResult, Confidence, Outcome};

/// A check-in as it was tapped.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CheckInEvent {
    /// Where it was tapped.
    pub device: String,
    /// Its place among all events of this student; the highest counts.
    pub sequence: i64,
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: String,
    /// The rating, if one stands.
    pub confidence: Option<Confidence>,
    /// How it went, if marked.
    pub outcome: Option<Outcome>,
}

/// A finished exercise.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PracticeAnswer {
    /// Where it was answered.
    pub device: String,
    /// Its place among all events of this student.
    pub sequence: i64,
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: String,
    /// 1 to 3.
    pub level: u8,
    /// Version of the generator.
    pub generator_version: u32,
    /// Seed of the exercise.
    pub seed: u64,
    /// How sure the student said to be before.
    pub sure: Option<Confidence>,
    /// What came of it.
    pub result: AnswerResult,
    /// The recognised mistake of a wrong answer.
    pub mistake: Option<String>,
    /// Seconds it took.
    pub seconds: u32,
    /// What was filled in, as JSON; stays on the device.
    pub response: String,
}

fn check_in_of(row: &Row<'_>) -> rusqlite::Result<CheckInEvent> {
    Ok(CheckInEvent {
        device: row.get(0)?,
        sequence: row.get(1)?,
        date: date_at(row, 2)?,
        concept: row.get(3)?,
        confidence: confidence_at(row, 4)?,
        outcome: outcome_at(row, 5)?,
    })
}

impl StudentStore {
    /// The sequence number for the next event.
    ///
    /// # Errors
    /// SQLite's.
    pub fn next_sequence(&self) -> Result<i64, StoreError> {
        Ok(self.connection.query_row(
            "SELECT 1 + max(coalesce((SELECT max(sequence) FROM check_in), 0),
                            coalesce((SELECT max(sequence) FROM practice_answer), 0))",
            [],
            |row| row.get(0),
        )?)
    }

    /// Whether an event of a device is here, of either kind.
    ///
    /// # Errors
    /// SQLite's.
    pub fn has_event(&self, device: &str, sequence: i64) -> Result<bool, StoreError> {
        Ok(self
            .connection
            .prepare_cached(
                "SELECT EXISTS (SELECT 1 FROM check_in WHERE device = ?1 AND sequence = ?2)
                   OR EXISTS (SELECT 1 FROM practice_answer WHERE device = ?1 AND sequence = ?2)",
            )?
            .query_row(params![device, sequence], |row| row.get(0))?)
    }

    /// Appends a check-in.
    ///
    /// # Errors
    /// SQLite's.
    pub fn add_check_in(&self, event: &CheckInEvent) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "INSERT INTO check_in (device, sequence, school_date, concept, confidence, outcome)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
            )?
            .execute(params![
                event.device,
                event.sequence,
                event.date.to_string(),
                event.concept,
                event.confidence.map(u8::from),
                event.outcome.map(outcome_word)
            ])?;
        Ok(())
    }

    /// The check-ins that count, one a (device, date, concept), by date and sequence.
    ///
    /// # Errors
    /// SQLite's, or an unreadable value.
    pub fn check_ins(&self) -> Result<Vec<CheckInEvent>, StoreError> {
        let mut query = self.connection.prepare_cached(
            "SELECT device, max(sequence), school_date, concept, confidence, outcome FROM check_in
             GROUP BY device, school_date, concept ORDER BY school_date, 2, device",
        )?;
        let rows = query.query_map([], check_in_of)?;
        Ok(rows.collect::<Result<_, _>>()?)
    }

    /// The check-ins that count on one date.
    ///
    /// # Errors
    /// SQLite's, or an unreadable value.
    pub fn check_ins_on(&self, date: NaiveDate) -> Result<Vec<CheckInEvent>, StoreError> {
        let mut query = self.connection.prepare_cached(
            "SELECT device, max(sequence), school_date, concept, confidence, outcome FROM check_in
             WHERE school_date = ?1 GROUP BY device, concept ORDER BY 2, device",
        )?;
        let rows = query.query_map([date.to_string()], check_in_of)?;
        Ok(rows.collect::<Result<_, _>>()?)
    }

    /// Appends a finished exercise.
    ///
    /// # Errors
    /// SQLite's, or a seed above 2^63.
    pub fn add_practice_answer(&self, answer: &PracticeAnswer) -> Result<(), StoreError> {
        let seed = i64::try_from(answer.seed).map_err(|e| StoreError::unreadable("seed", e))?;
        self.connection
            .prepare_cached(
                "INSERT INTO practice_answer (device, sequence, school_date, concept, level, generator_version, seed,
                   sure, result, mistake, seconds, response)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)",
            )?
            .execute(params![
                answer.device,
                answer.sequence,
                answer.date.to_string(),
                answer.concept,
                answer.level,
                answer.generator_version,
                seed,
                answer.sure.map(u8::from),
                result_word(answer.result),
                answer.mistake,
                answer.seconds,
                answer.response
            ])?;
        Ok(())
    }

    /// All finished exercises in the order of their sequence.
    ///
    /// # Errors
    /// SQLite's, or an unreadable value.
    pub fn practice_answers(&self) -> Result<Vec<PracticeAnswer>, StoreError> {
        let mut query = self.connection.prepare_cached(
            "SELECT device, sequence, school_date, concept, level, generator_version, seed, sure, result, mistake,
               seconds, response
             FROM practice_answer ORDER BY sequence, device",
        )?;
        let rows = query.query_map([], |row| {
            Ok(PracticeAnswer {
                device: row.get(0)?,
                sequence: row.get(1)?,
                date: date_at(row, 2)?,
                concept: row.get(3)?,
                level: row.get(4)?,
                generator_version: row.get(5)?,
                seed: row.get::<_, i64>(6)?.unsigned_abs(),
                sure: confidence_at(row, 7)?,
                result: result_at(row, 8)?,
                mistake: row.get(9)?,
                seconds: row.get(10)?,
                response: row.get(11)?,
            })
        })?;
        Ok(rows.collect::<Result<_, _>>()?)
    }
}
