//! Reports: the check-ins, practice counts and misconceptions derived from the hand-ins.

use super::super::StoreError;
use super::super::columns::{concept_at, confidence_at, date_at, device_at, outcome_at, said};
use super::DeskStore;
use chrono::NaiveDate;
use rusqlite::{Row, params};
use std::collections::BTreeMap;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rating::Confidence;
use surefoot_record::{
    AnswerCount, CheckIn, CheckInSource, CountedDates, MisconceptionCode, Practice, Record,
};

/// The tables of what is derived from the hand-ins.
pub(super) const DERIVED: [&str; 3] = ["check_in", "practice_count", "misconception_count"];

/// Which rows of these are a seat's, given its class and number.
pub(super) const OF_SEAT: &str =
    "brought_by IN (SELECT id FROM device WHERE class = ?1 AND seat = ?2)";

/// How a seat's practice of one concept on one date went, for one degree of confidence.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PracticeReport {
    /// The seat.
    pub seat: u32,
    /// The device.
    pub device: String,
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: String,
    /// Sequence of the entry that this is part of.
    pub sequence: u32,
    /// The confidence that the student gave before answering, if any.
    pub confidence: Option<Confidence>,
    /// Exercises answered right without help.
    pub alone: u32,
    /// Exercises answered right with help.
    pub with_help: u32,
    /// Exercises answered wrong.
    pub wrong: u32,
}

/// How often a misconception was recognised in a seat's answers on a date.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MisconceptionReport {
    /// The seat.
    pub seat: u32,
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: String,
    /// Its code.
    pub code: String,
    /// How often.
    pub times: u32,
}

/// The seat, school date and concept of a report. It borrows its text from the row.
#[derive(Debug, Clone, Copy)]
pub struct ReportRow<'r> {
    /// The seat.
    pub seat: u32,
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: &'r str,
}

impl DeskStore {
    /// Removes all derived reports of a seat.
    pub fn clear_reports(&self, class: &str, seat: u32) -> Result<(), StoreError> {
        for table in DERIVED {
            let sql = format!("DELETE FROM {table} WHERE {OF_SEAT}");
            self.connection
                .prepare_cached(&sql)?
                .execute(params![class, seat])?;
        }
        Ok(())
    }

    /// Calls `each` for the check-ins of a class, from devices and from paper, in no fixed
    /// order; only for those of the date `on`, if it is given.
    pub fn each_check_in(
        &self,
        class: &str,
        on: Option<NaiveDate>,
        mut each: impl FnMut(ReportRow<'_>, CheckInSource),
    ) -> Result<(), StoreError> {
        let on = on.map(|date| date.to_string());
        let (first, last) = match &on {
            Some(date) => (date.as_str(), date.as_str()),
            None => ("", "~"), // sort before and after every date
        };
        let mut query = self.connection.prepare_cached(
            "SELECT d.seat, c.school_date, c.concept, c.confidence_at, c.confidence, c.outcome_at, c.outcome
             FROM device d CROSS JOIN check_in c ON c.brought_by = d.id
             WHERE d.class = ?1 AND c.school_date BETWEEN ?2 AND ?3",
        )?;
        let mut rows = query.query([class, first, last])?;
        while let Some(row) = rows.next()? {
            each(
                report_row(row)?,
                CheckInSource::Device(
                    said(row.get(3)?, confidence_at(row, 4)?),
                    said(row.get(5)?, outcome_at(row, 6)?),
                ),
            );
        }
        let mut query = self.connection.prepare_cached(
            "SELECT seat, school_date, concept, confidence, outcome
             FROM paper_check_in WHERE class = ?1 AND school_date BETWEEN ?2 AND ?3",
        )?;
        let mut rows = query.query([class, first, last])?;
        while let Some(row) = rows.next()? {
            each(
                report_row(row)?,
                CheckInSource::Paper(confidence_at(row, 3)?, outcome_at(row, 4)?),
            );
        }
        Ok(())
    }

    /// Calls `each` for the practice counts of a class by seat, device, date, concept and
    /// confidence, of which "not said" is first.
    pub fn each_practice(
        &self,
        class: &str,
        mut each: impl FnMut(PracticeReport),
    ) -> Result<(), StoreError> {
        let mut query = self.connection.prepare_cached(
            // Both keys have this order, so nothing is sorted.
            "SELECT d.seat, c.device, c.school_date, c.concept, nullif(c.confidence, -1), c.alone, c.with_help,
               c.wrong, c.sequence
             FROM device d CROSS JOIN practice_count c ON c.brought_by = d.id WHERE d.class = ?1
             ORDER BY d.seat, d.device, d.signing_key, c.device, c.school_date, c.concept, c.confidence",
        )?;
        let mut rows = query.query([class])?;
        while let Some(row) = rows.next()? {
            each(practice_at(row)?);
        }
        Ok(())
    }

    /// Returns the check-ins and practice counts that came by one signing key: `brought_by` is the
    /// first device of the seat with that key.
    pub fn record_of(&self, brought_by: i64) -> Result<Record, StoreError> {
        let mut query = self.connection.prepare_cached(
            "SELECT device, school_date, concept, confidence_at, confidence, outcome_at, outcome
             FROM check_in WHERE brought_by = ?1",
        )?;
        let mut rows = query.query([brought_by])?;
        let mut check_ins = Vec::new();
        while let Some(row) = rows.next()? {
            check_ins.push(CheckIn {
                device: device_at(row, 0)?,
                date: date_at(row, 1)?,
                concept: concept_at(row, 2)?,
                confidence: said(row.get(3)?, confidence_at(row, 4)?),
                outcome: said(row.get(5)?, outcome_at(row, 6)?),
            });
        }
        let mut query = self.connection.prepare_cached(
            "SELECT device, school_date, concept, sequence, nullif(confidence, -1), alone, with_help, wrong
             FROM practice_count WHERE brought_by = ?1
             ORDER BY device, school_date, concept, practice_count.confidence",
        )?;
        let mut rows = query.query([brought_by])?;
        let mut practice: Vec<Practice> = Vec::new();
        while let Some(row) = rows.next()? {
            let entry = Practice {
                device: device_at(row, 0)?,
                date: date_at(row, 1)?,
                concept: concept_at(row, 2)?,
                sequence: row.get(3)?,
                answers: vec![AnswerCount {
                    confidence: confidence_at(row, 4)?,
                    alone: row.get(5)?,
                    with_help: row.get(6)?,
                    wrong: row.get(7)?,
                }],
                misconceptions: BTreeMap::new(),
            };
            match practice.last_mut().filter(|last| last.key() == entry.key()) {
                Some(last) => last.answers.extend(entry.answers),
                None => practice.push(entry),
            }
        }
        let mut query = self.connection.prepare_cached(
            "SELECT device, school_date, concept, code, times
             FROM misconception_count WHERE brought_by = ?1",
        )?;
        let mut rows = query.query([brought_by])?;
        while let Some(row) = rows.next()? {
            let (device, date, concept) =
                (device_at(row, 0)?, date_at(row, 1)?, concept_at(row, 2)?);
            let of = practice.binary_search_by(|entry| entry.key().cmp(&(&device, date, &concept)));
            // Every entry of practice has a row of counts, also one without answers.
            let entry = (of.ok().and_then(|at| practice.get_mut(at))).ok_or_else(|| {
                StoreError::unreadable("misconception", format!("{concept} without practice"))
            })?;
            let code = MisconceptionCode::new(row.get::<_, String>(3)?)
                .map_err(|error| StoreError::unreadable("misconception", error))?;
            entry.misconceptions.insert(code, row.get(4)?);
        }
        Ok(Record::from_entries(check_ins, practice))
    }

    /// Counts the check-ins and practice results that the tables have of one seat: those within a
    /// year, and the others.
    pub fn entries_of(
        &self,
        class: &str,
        seat: u32,
        year: &SchoolYear,
    ) -> Result<(usize, usize), StoreError> {
        Ok(self
            .connection
            .prepare_cached(
                &format!(
                    "SELECT coalesce(sum(school_date BETWEEN ?3 AND ?4), 0),
                            coalesce(sum(school_date NOT BETWEEN ?3 AND ?4), 0)
                     FROM (SELECT school_date FROM check_in WHERE {OF_SEAT}
                           UNION ALL
                           SELECT school_date FROM (SELECT DISTINCT brought_by, device, school_date, concept
                             FROM practice_count WHERE {OF_SEAT}))"
                ),
            )?
            .query_row(
                params![class, seat, year.first_day.to_string(), year.last_day.to_string()],
                |row| Ok((row.get(0)?, row.get(1)?)),
            )?)
    }

    /// Returns the practice counts of a class by seat, date and concept.
    pub fn practice(&self, class: &str) -> Result<Vec<PracticeReport>, StoreError> {
        self.rows(
            "SELECT d.seat, c.device, c.school_date, c.concept, nullif(c.confidence, -1), c.alone, c.with_help,
               c.wrong, c.sequence
             FROM device d CROSS JOIN practice_count c ON c.brought_by = d.id WHERE d.class = ?1
             ORDER BY d.seat, c.school_date, c.concept, c.device, c.confidence",
            [class],
            practice_at,
        )
    }

    /// Returns the misconceptions of a class on the dates that count, summed by seat, concept
    /// and code, each with the date of the newest.
    pub fn misconceptions_by_seat(
        &self,
        class: &str,
        dates: CountedDates,
    ) -> Result<Vec<MisconceptionReport>, StoreError> {
        self.rows(
            "SELECT d.seat, max(c.school_date), c.concept, c.code, min(sum(c.times), 4294967295)
             FROM device d CROSS JOIN misconception_count c ON c.brought_by = d.id
             WHERE d.class = ?1 AND c.school_date BETWEEN ?2 AND ?3
             GROUP BY d.seat, c.concept, c.code ORDER BY d.seat, c.concept, 5 DESC, c.code",
            params![class, dates.first().to_string(), dates.last().to_string()],
            |row| {
                Ok(MisconceptionReport {
                    seat: row.get(0)?,
                    date: date_at(row, 1)?,
                    concept: row.get(2)?,
                    code: row.get(3)?,
                    times: row.get(4)?,
                })
            },
        )
    }

    /// Returns the date of each seat's newest report on the dates that count.
    pub fn newest_reports(
        &self,
        class: &str,
        dates: CountedDates,
    ) -> Result<BTreeMap<u32, NaiveDate>, StoreError> {
        Ok(self
            .rows(
                "SELECT seat, max(school_date) FROM (
                   SELECT d.seat, c.school_date FROM device d CROSS JOIN check_in c ON c.brought_by = d.id
                     WHERE d.class = ?1 AND c.school_date BETWEEN ?2 AND ?3
                   UNION ALL
                   SELECT seat, school_date FROM paper_check_in WHERE class = ?1 AND school_date BETWEEN ?2 AND ?3
                   UNION ALL
                   SELECT d.seat, c.school_date FROM device d CROSS JOIN practice_count c ON c.brought_by = d.id
                     WHERE d.class = ?1 AND c.school_date BETWEEN ?2 AND ?3
                 ) GROUP BY seat",
                params![class, dates.first().to_string(), dates.last().to_string()],
                |row| Ok((row.get(0)?, date_at(row, 1)?)),
            )?
            .into_iter()
            .collect())
    }
}

fn report_row<'r>(row: &'r Row<'_>) -> rusqlite::Result<ReportRow<'r>> {
    Ok(ReportRow {
        seat: row.get(0)?,
        date: date_at(row, 1)?,
        concept: row.get_ref(2)?.as_str()?,
    })
}

fn practice_at(row: &Row<'_>) -> rusqlite::Result<PracticeReport> {
    Ok(PracticeReport {
        seat: row.get(0)?,
        device: row.get(1)?,
        date: date_at(row, 2)?,
        concept: row.get(3)?,
        confidence: confidence_at(row, 4)?,
        alone: row.get(5)?,
        with_help: row.get(6)?,
        wrong: row.get(7)?,
        sequence: row.get(8)?,
    })
}
