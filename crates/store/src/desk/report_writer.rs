//! Writes the reports of a seat. There are thousands of rows, so the statements are prepared
//! once and texts are not copied.

use super::super::StoreError;
use super::super::columns::outcome_word;
use super::DeskStore;
use chrono::NaiveDate;
use rusqlite::{CachedStatement, ToSql};
use surefoot_record::{AnswerCount, CheckIn, Key, Practice, Record};

const CHECK_IN: &str = "INSERT INTO check_in (brought_by, device, school_date, concept,
       confidence_at, confidence, outcome_at, outcome) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)
     ON CONFLICT DO UPDATE SET confidence_at = excluded.confidence_at,
       confidence = excluded.confidence, outcome_at = excluded.outcome_at, outcome = excluded.outcome";
const PRACTICE: &str =
    "INSERT INTO practice_count (brought_by, device, school_date, concept, confidence, alone,
       with_help, wrong, sequence) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)";
const MISCONCEPTION: &str =
    "INSERT INTO misconception_count (brought_by, device, school_date, concept, code, times)
     VALUES (?1, ?2, ?3, ?4, ?5, ?6)";

const HAS_PRACTICE: &str = "SELECT EXISTS (SELECT 1 FROM practice_count WHERE brought_by = ?1)";
const DROP_PRACTICE: &str = "DELETE FROM practice_count
     WHERE brought_by = ?1 AND device = ?2 AND school_date = ?3 AND concept = ?4";
const DROP_MISCONCEPTIONS: &str = "DELETE FROM misconception_count
     WHERE brought_by = ?1 AND device = ?2 AND school_date = ?3 AND concept = ?4";

/// Writes the reports that one signing key brought.
pub struct ReportWriter<'d> {
    check_in: CachedStatement<'d>,
    practice: CachedStatement<'d>,
    misconception: CachedStatement<'d>,
    drop_practice: CachedStatement<'d>,
    drop_misconceptions: CachedStatement<'d>,
    has_practice: bool,
    date: (NaiveDate, String),
}

impl DeskStore {
    /// Returns a writer of the reports that came by one signing key: `brought_by` is the first
    /// device of the seat with that key.
    pub fn report_writer(&self, brought_by: i64) -> Result<ReportWriter<'_>, StoreError> {
        let brought = |sql| -> rusqlite::Result<CachedStatement<'_>> {
            let mut statement = self.connection.prepare_cached(sql)?;
            // The same for every row.
            bind(&mut statement, 1, brought_by)?;
            Ok(statement)
        };
        let has_practice = (self.connection.prepare_cached(HAS_PRACTICE)?)
            .query_row([brought_by], |row| row.get(0))?;
        Ok(ReportWriter {
            has_practice,
            check_in: brought(CHECK_IN)?,
            practice: brought(PRACTICE)?,
            misconception: brought(MISCONCEPTION)?,
            drop_practice: brought(DROP_PRACTICE)?,
            drop_misconceptions: brought(DROP_MISCONCEPTIONS)?,
            date: (NaiveDate::MIN, String::new()),
        })
    }
}

impl ReportWriter<'_> {
    /// Writes a record. Each entry replaces the one that has its key.
    pub fn write(&mut self, record: &Record) -> Result<(), StoreError> {
        for entry in record.check_ins() {
            self.check_in(entry)?;
        }
        for entry in record.practice() {
            self.practice(entry)?;
        }
        self.has_practice = true;
        Ok(())
    }

    fn check_in(&mut self, entry: &CheckIn) -> Result<(), StoreError> {
        format_date(&mut self.date, entry.date);
        let row = &mut self.check_in;
        bind_key(row, entry.key(), &self.date.1)?;
        bind(row, 5, entry.confidence.map(|said| said.at))?;
        let confidence = entry.confidence.and_then(|said| said.value);
        bind(row, 6, confidence.map(u8::from))?;
        bind(row, 7, entry.outcome.map(|said| said.at))?;
        let outcome = entry.outcome.and_then(|said| said.value);
        bind(row, 8, outcome.map(outcome_word))?;
        row.raw_execute()?;
        Ok(())
    }

    fn practice(&mut self, entry: &Practice) -> Result<(), StoreError> {
        format_date(&mut self.date, entry.date);
        // Most of a year comes where nothing was before, and there is nothing to replace then.
        if self.has_practice {
            for row in [&mut self.drop_practice, &mut self.drop_misconceptions] {
                bind_key(row, entry.key(), &self.date.1)?;
                row.raw_execute()?;
            }
        }
        // An entry without answers has a row too, because the row keeps its sequence.
        let nothing = [AnswerCount {
            confidence: None,
            alone: 0,
            with_help: 0,
            wrong: 0,
        }];
        let counts: &[AnswerCount] = if entry.answers.is_empty() {
            &nothing
        } else {
            &entry.answers
        };
        let row = &mut self.practice;
        bind_key(row, entry.key(), &self.date.1)?;
        for count in counts {
            bind(
                row,
                5,
                count
                    .confidence
                    .map_or(-1, |confidence| i64::from(u8::from(confidence))),
            )?;
            bind(row, 6, count.alone)?;
            bind(row, 7, count.with_help)?;
            bind(row, 8, count.wrong)?;
            bind(row, 9, entry.sequence)?;
            row.raw_execute()?;
        }
        let row = &mut self.misconception;
        bind_key(row, entry.key(), &self.date.1)?;
        for (code, times) in &entry.misconceptions {
            bind(row, 5, code.as_str())?;
            bind(row, 6, times)?;
            row.raw_execute()?;
        }
        Ok(())
    }
}

/// Formats a date, unless it is the one formatted last.
fn format_date(last: &mut (NaiveDate, String), date: NaiveDate) {
    if last.0 != date || last.1.is_empty() {
        *last = (date, date.to_string());
    }
}

fn bind(statement: &mut CachedStatement<'_>, at: usize, value: impl ToSql) -> rusqlite::Result<()> {
    statement.raw_bind_parameter(at, value)
}

fn bind_key(
    statement: &mut CachedStatement<'_>,
    (device, _, concept): Key<'_>,
    date: &str,
) -> rusqlite::Result<()> {
    bind(statement, 2, device.as_str())?;
    bind(statement, 3, date)?;
    bind(statement, 4, concept.as_str())
}
