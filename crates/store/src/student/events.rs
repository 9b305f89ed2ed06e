//! A student's check-ins and practice, which are appended and never edited.

use super::super::StoreError;
use super::super::columns::{
    concept_at, confidence_at, date_at, device_at, misconception_at, outcome_at, outcome_word,
    result_at, result_word, said,
};
use super::StudentStore;
use chrono::NaiveDate;
use rusqlite::{OptionalExtension, Row, params};
use serde::{Deserialize, Serialize};
use std::ops::RangeInclusive;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{AnswerResult, Confidence};
use surefoot_record::wire::school_date;
use surefoot_record::{CheckIn, DeviceId, MisconceptionCode};

/// A finished exercise.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PracticeAnswer {
    /// The device on which it was answered.
    pub device: DeviceId,
    /// Its place in the student's own order of events.
    pub sequence: u32,
    /// School date.
    #[serde(with = "school_date")]
    pub date: NaiveDate,
    /// Concept.
    pub concept: ConceptId,
    /// Level, 1 to 3.
    pub level: u8,
    /// Version of the generator.
    pub generator_version: u32,
    /// Seed of the exercise.
    pub seed: u64,
    /// The confidence that the student gave before answering, if any.
    pub confidence: Option<Confidence>,
    /// What came of it.
    pub result: AnswerResult,
    /// The misconception recognised in the first wrong answer, if any.
    pub misconception: Option<MisconceptionCode>,
    /// Seconds it took.
    pub seconds: u32,
    /// The first response, as JSON. It never leaves the student's devices.
    pub response: String,
}

fn check_in_of(row: &Row<'_>) -> rusqlite::Result<CheckIn> {
    Ok(CheckIn {
        device: device_at(row, 0)?,
        date: date_at(row, 1)?,
        concept: concept_at(row, 2)?,
        confidence: said(row.get(3)?, confidence_at(row, 4)?),
        outcome: said(row.get(5)?, outcome_at(row, 6)?),
    })
}

impl StudentStore {
    /// Returns the sequence of the next event.
    pub fn next_sequence(&self) -> Result<u32, StoreError> {
        Ok(self.connection.query_row(
            "SELECT 1 + max(coalesce((SELECT max(sequence) FROM check_in), 0),
                            coalesce((SELECT max(sequence) FROM practice_answer), 0))",
            [],
            |row| row.get(0),
        )?)
    }

    /// Appends a check-in: what its device has of one concept and date after a tap.
    pub fn add_check_in(&self, entry: &CheckIn) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "INSERT OR REPLACE INTO check_in (device, sequence, school_date, concept,
                   confidence_at, confidence, outcome_at, outcome)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)",
            )?
            .execute(params![
                entry.device.as_str(),
                entry.sequence(),
                entry.date.to_string(),
                entry.concept.as_str(),
                entry.confidence.map(|said| said.at),
                entry.confidence.and_then(|said| said.value).map(u8::from),
                entry.outcome.map(|said| said.at),
                entry.outcome.and_then(|said| said.value).map(outcome_word)
            ])?;
        Ok(())
    }

    /// Returns the newest check-in of each device, date and concept.
    pub fn check_ins(&self) -> Result<Vec<CheckIn>, StoreError> {
        let mut query = self.connection.prepare_cached(
            "SELECT device, school_date, concept, confidence_at, confidence, outcome_at, outcome,
               max(sequence)
             FROM check_in GROUP BY device, school_date, concept",
        )?;
        let rows = query.query_map([], check_in_of)?;
        Ok(rows.collect::<Result<_, _>>()?)
    }

    /// Returns the newest check-in of each device, date and concept on some dates.
    pub fn check_ins_in(
        &self,
        dates: RangeInclusive<NaiveDate>,
    ) -> Result<Vec<CheckIn>, StoreError> {
        let mut query = self.connection.prepare_cached(
            "SELECT device, school_date, concept, confidence_at, confidence, outcome_at, outcome,
               max(sequence)
             FROM check_in WHERE school_date BETWEEN ?1 AND ?2
             GROUP BY device, school_date, concept",
        )?;
        let dates = [dates.start().to_string(), dates.end().to_string()];
        let rows = query.query_map(dates, check_in_of)?;
        Ok(rows.collect::<Result<_, _>>()?)
    }

    /// Returns the first of some dates that has a check-in.
    pub fn first_check_in_date(
        &self,
        dates: RangeInclusive<NaiveDate>,
    ) -> Result<Option<NaiveDate>, StoreError> {
        let mut query = self.connection.prepare_cached(
            "SELECT school_date FROM check_in WHERE school_date BETWEEN ?1 AND ?2
             ORDER BY school_date LIMIT 1",
        )?;
        let dates = [dates.start().to_string(), dates.end().to_string()];
        let date = query.query_row(dates, |row| date_at(row, 0)).optional()?;
        Ok(date)
    }

    /// Returns the newest check-in of each device for one date and concept.
    pub fn check_ins_of(
        &self,
        date: NaiveDate,
        concept: &ConceptId,
    ) -> Result<Vec<CheckIn>, StoreError> {
        let mut query = self.connection.prepare_cached(
            "SELECT device, school_date, concept, confidence_at, confidence, outcome_at, outcome,
               max(sequence)
             FROM check_in WHERE school_date = ?1 AND concept = ?2 GROUP BY device",
        )?;
        let rows = query.query_map(params![date.to_string(), concept.as_str()], check_in_of)?;
        Ok(rows.collect::<Result<_, _>>()?)
    }

    /// Appends a finished exercise.
    ///
    /// # Errors
    /// Fails if the seed is 2^63 or more.
    pub fn add_practice_answer(&self, answer: &PracticeAnswer) -> Result<(), StoreError> {
        let seed = i64::try_from(answer.seed).map_err(|e| StoreError::unreadable("seed", e))?;
        self.connection
            .prepare_cached(
                "INSERT INTO practice_answer (device, sequence, school_date, concept, level, generator_version, seed,
                   confidence, result, misconception, seconds, response)
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)",
            )?
            .execute(params![
                answer.device.as_str(),
                answer.sequence,
                answer.date.to_string(),
                answer.concept.as_str(),
                answer.level,
                answer.generator_version,
                seed,
                answer.confidence.map(u8::from),
                result_word(answer.result),
                answer.misconception.as_ref().map(MisconceptionCode::as_str),
                answer.seconds,
                answer.response
            ])?;
        Ok(())
    }

    /// Returns all finished exercises in the order of their sequences.
    pub fn practice_answers(&self) -> Result<Vec<PracticeAnswer>, StoreError> {
        let mut query = self.connection.prepare_cached(
            "SELECT device, sequence, school_date, concept, level, generator_version, seed, confidence, result, misconception,
               seconds, response
             FROM practice_answer ORDER BY sequence, device",
        )?;
        let rows = query.query_map([], |row| {
            Ok(PracticeAnswer {
                device: device_at(row, 0)?,
                sequence: row.get(1)?,
                date: date_at(row, 2)?,
                concept: concept_at(row, 3)?,
                level: row.get(4)?,
                generator_version: row.get(5)?,
                seed: row.get::<_, i64>(6)?.unsigned_abs(),
                confidence: confidence_at(row, 7)?,
                result: result_at(row, 8)?,
                misconception: misconception_at(row, 9)?,
                seconds: row.get(10)?,
                response: row.get(11)?,
            })
        })?;
        Ok(rows.collect::<Result<_, _>>()?)
    }
}
