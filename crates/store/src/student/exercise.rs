//! The open exercise.

use super::super::StoreError;
use super::super::columns::{concept_at, confidence_at, date_at, misconception_at};
use super::StudentStore;
use chrono::NaiveDate;
use rusqlite::types::Type;
use rusqlite::{OptionalExtension, params};
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::Confidence;
use surefoot_record::{MisconceptionCode, Reason};

/// The open exercise: all that is needed to show it again after the program was closed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OpenRow {
    /// Its name in the calls.
    pub exercise: String,
    /// When it was opened.
    pub opened_on: NaiveDate,
    /// Concept.
    pub concept: ConceptId,
    /// Level, 1 to 3.
    pub level: u8,
    /// Seed.
    pub seed: u64,
    /// Why it is in the queue.
    pub reason: Reason,
    /// Whether the student asked for it from My path, outside tonight's queue.
    pub asked: bool,
    /// The confidence that the student gave before answering, if any.
    pub confidence: Option<Confidence>,
    /// Hints taken.
    pub hints: u32,
    /// Wrong answers so far.
    pub tries: u8,
    /// Seconds spent so far.
    pub seconds: u32,
    /// The misconception recognised in the first wrong answer, if any.
    pub misconception: Option<MisconceptionCode>,
    /// The first wrong answer, as JSON.
    pub response: Option<String>,
    /// The draft, as JSON.
    pub draft: Option<String>,
}

impl StudentStore {
    /// Returns the open exercise, if there is one.
    pub fn open_exercise(&self) -> Result<Option<OpenRow>, StoreError> {
        self.connection
            .query_row(
                "SELECT exercise, opened_on, concept, level, seed, reason, asked, confidence, hints, tries, seconds, misconception,
                   response, draft FROM open_exercise",
                [],
                |row| {
                    Ok(OpenRow {
                        exercise: row.get(0)?,
                        opened_on: date_at(row, 1)?,
                        concept: concept_at(row, 2)?,
                        level: row.get(3)?,
                        seed: row.get::<_, i64>(4)?.unsigned_abs(),
                        reason: serde_json::from_str(row.get_ref(5)?.as_str()?)
                            .map_err(|e| rusqlite::Error::FromSqlConversionFailure(5, Type::Text, Box::new(e)))?,
                        asked: row.get(6)?,
                        confidence: confidence_at(row, 7)?,
                        hints: row.get(8)?,
                        tries: row.get(9)?,
                        seconds: row.get(10)?,
                        misconception: misconception_at(row, 11)?,
                        response: row.get(12)?,
                        draft: row.get(13)?,
                    })
                },
            )
            .optional()
            .map_err(Into::into)
    }

    /// Writes the open exercise and replaces the one before.
    pub fn put_open_exercise(&self, open: &OpenRow) -> Result<(), StoreError> {
        let seed = i64::try_from(open.seed).map_err(|e| StoreError::unreadable("seed", e))?;
        let reason =
            serde_json::to_string(&open.reason).map_err(|e| StoreError::unreadable("reason", e))?;
        self.connection.execute(
            "INSERT OR REPLACE INTO open_exercise (id, exercise, opened_on, concept, level, seed, reason, asked, confidence,
               hints, tries, seconds, misconception, response, draft)
             VALUES (1, ?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14)",
            params![
                open.exercise,
                open.opened_on.to_string(),
                open.concept.as_str(),
                open.level,
                seed,
                reason,
                open.asked,
                open.confidence.map(u8::from),
                open.hints,
                open.tries,
                open.seconds,
                open.misconception.as_ref().map(MisconceptionCode::as_str),
                open.response,
                open.draft
            ],
        )?;
        Ok(())
    }

    /// Writes the draft of the open exercise, as JSON, or removes it.
    pub fn put_draft(&self, draft: Option<&str>) -> Result<(), StoreError> {
        self.connection
            .execute("UPDATE open_exercise SET draft = ?1", params![draft])?;
        Ok(())
    }

    /// Removes the open exercise.
    pub fn close_exercise(&self) -> Result<(), StoreError> {
        self.connection.execute("DELETE FROM open_exercise", [])?;
        Ok(())
    }
}
