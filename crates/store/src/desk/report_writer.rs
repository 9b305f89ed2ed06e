//! Writing the reports of a seat: thousands of rows, with the statements at hand
//! and no copies of their texts.

use super::super::StoreError;
use super::super::columns::outcome_word;
use super::DeskStore;
use chrono::NaiveDate;
use rusqlite::{CachedStatement, ToSql};
use surefoot_record::{AnswerCount, CheckInState};

const CHECK_IN: &str = "INSERT INTO check_in (class, seat, device, school_date, concept, sequence, confidence, outcome)
     VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)";
const PRACTICE: &str =
    "INSERT INTO practice_count (class, seat, device, school_date, concept, sure, alone, with_help,
       wrong, sequence) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10)";
const MISTAKE: &str =
    "INSERT INTO mistake_count (class, seat, device, school_date, concept, code, times)
     VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)";

/// Where a report belongs: the device it was made on, its school date, its concept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ReportPlace<'r> {
    /// The device.
    pub device: &'r str,
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: &'r str,
}

/// Writes the reports of one seat.
pub struct ReportWriter<'d> {
    check_in: CachedStatement<'d>,
    practice: CachedStatement<'d>,
    mistake: CachedStatement<'d>,
    date: (NaiveDate, String),
}

impl DeskStore {
    /// A writer of the reports of a seat.
    ///
    /// # Errors
    /// SQLite's.
    pub fn report_writer(&self, class: &str, seat: u32) -> Result<ReportWriter<'_>, StoreError> {
        let for_seat = |sql| -> rusqlite::Result<CachedStatement<'_>> {
            let mut statement = self.connection.prepare_cached(sql)?;
            // These stay bound from row to row.
            bind(&mut statement, 1, class)?;
            bind(&mut statement, 2, seat)?;
            Ok(statement)
        };
        Ok(ReportWriter {
            check_in: for_seat(CHECK_IN)?,
            practice: for_seat(PRACTICE)?,
            mistake: for_seat(MISTAKE)?,
            date: (NaiveDate::MIN, String::new()),
        })
    }
}

impl ReportWriter<'_> {
    /// Writes a check-in that counts.
    ///
    /// # Errors
    /// SQLite's.
    pub fn check_in(
        &mut self,
        place: ReportPlace<'_>,
        state: CheckInState,
    ) -> Result<(), StoreError> {
        write_out(&mut self.date, place.date);
        let row = &mut self.check_in;
        bind_place(row, place, &self.date.1)?;
        bind(row, 6, state.sequence)?;
        bind(row, 7, state.confidence.map(u8::from))?;
        bind(row, 8, state.outcome.map(outcome_word))?;
        row.raw_execute()?;
        Ok(())
    }

    /// Writes practice counts; `sequence` is that of the entry they are a part of.
    ///
    /// # Errors
    /// SQLite's.
    pub fn practice(
        &mut self,
        place: ReportPlace<'_>,
        sequence: u32,
        count: AnswerCount,
    ) -> Result<(), StoreError> {
        write_out(&mut self.date, place.date);
        let row = &mut self.practice;
        bind_place(row, place, &self.date.1)?;
        bind(
            row,
            6,
            count.sure.map_or(-1, |sure| i64::from(u8::from(sure))),
        )?;
        bind(row, 7, count.alone)?;
        bind(row, 8, count.with_help)?;
        bind(row, 9, count.wrong)?;
        bind(row, 10, sequence)?;
        row.raw_execute()?;
        Ok(())
    }

    /// Writes how often a mistake was made.
    ///
    /// # Errors
    /// SQLite's.
    pub fn mistake(
        &mut self,
        place: ReportPlace<'_>,
        code: &str,
        times: u32,
    ) -> Result<(), StoreError> {
        write_out(&mut self.date, place.date);
        let row = &mut self.mistake;
        bind_place(row, place, &self.date.1)?;
        bind(row, 6, code)?;
        bind(row, 7, times)?;
        row.raw_execute()?;
        Ok(())
    }
}

/// Writes a date out, if it is not the one written out last.
fn write_out(held: &mut (NaiveDate, String), date: NaiveDate) {
    if held.0 != date || held.1.is_empty() {
        *held = (date, date.to_string());
    }
}

fn bind(statement: &mut CachedStatement<'_>, at: usize, value: impl ToSql) -> rusqlite::Result<()> {
    statement.raw_bind_parameter(at, value)
}

fn bind_place(
    statement: &mut CachedStatement<'_>,
    place: ReportPlace<'_>,
    date: &str,
) -> rusqlite::Result<()> {
    bind(statement, 3, place.device)?;
    bind(statement, 4, date)?;
    bind(statement, 5, place.concept)
}
