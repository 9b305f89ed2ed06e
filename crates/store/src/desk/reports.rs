//! Reports: check-ins, practice counts and mistakes as derived from the hand-ins.

use super::super::StoreError;
use super::super::columns::{confidence_at, date_at, outcome_at};
use super::{DeskStore, PAPER};
use chrono::NaiveDate;
use rusqlite::{Row, params};
use std::collections::BTreeMap;
use surefoot_catalogue::rating::{Confidence, Outcome};

/// A check-in that counts.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CheckInReport {
    /// The seat.
    pub seat: u32,
    /// The device it was tapped on.
    pub device: String,
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: String,
    /// Its place among the student's events.
    pub sequence: u64,
    /// The rating.
    pub confidence: Option<Confidence>,
    /// How it went.
    pub outcome: Option<Outcome>,
}

/// Practice of a concept on a date by how sure the student said to be.
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
    /// Sequence of the entry that this is a part of.
    pub sequence: u32,
    /// How sure, if said.
    pub sure: Option<Confidence>,
    /// Right alone.
    pub alone: u32,
    /// Right with help.
    pub with_help: u32,
    /// Wrong.
    pub wrong: u32,
}

/// How often a mistake was made on a date.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MistakeReport {
    /// The seat.
    pub seat: u32,
    /// The device.
    pub device: String,
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: String,
    /// The mistake's code.
    pub code: String,
    /// How often.
    pub times: u32,
}

/// A check-in as it is read, without copies of its texts.
pub struct CheckInLine<'r> {
    /// The seat.
    pub seat: u32,
    /// The device, or [`PAPER`].
    pub device: &'r str,
    /// School date.
    pub date: NaiveDate,
    /// Concept.
    pub concept: &'r str,
    /// Its place among the student's events; 0 on paper.
    pub sequence: u64,
    /// The rating.
    pub confidence: Option<Confidence>,
    /// How it went.
    pub outcome: Option<Outcome>,
}

impl DeskStore {
    /// Takes all derived reports of a seat away.
    ///
    /// # Errors
    /// SQLite's.
    pub fn clear_reports(&self, class: &str, seat: u32) -> Result<(), StoreError> {
        for sql in [
            "DELETE FROM check_in WHERE class = ?1 AND seat = ?2",
            "DELETE FROM practice_count WHERE class = ?1 AND seat = ?2",
            "DELETE FROM mistake_count WHERE class = ?1 AND seat = ?2",
        ] {
            self.connection
                .prepare_cached(sql)?
                .execute(params![class, seat])?;
        }
        Ok(())
    }

    /// The check-ins of a class by seat, date, concept, then sequence and device;
    /// what was typed in from paper comes last of its date, under [`PAPER`].
    ///
    /// # Errors
    /// SQLite's, or an unreadable value.
    pub fn check_ins(&self, class: &str) -> Result<Vec<CheckInReport>, StoreError> {
        self.rows(
            "SELECT seat, device, school_date, concept, sequence, confidence, outcome, 0 AS typed
             FROM check_in WHERE class = ?1
             UNION ALL
             SELECT seat, ?2, school_date, concept, 0, confidence, outcome, 1
             FROM paper_check_in WHERE class = ?1
             ORDER BY seat, school_date, concept, typed, sequence, device",
            [class, PAPER],
            check_in_at,
        )
    }

    /// Goes through the check-ins of a class, in no order to rely on.
    ///
    /// # Errors
    /// SQLite's, or an unreadable value.
    pub fn each_check_in(
        &self,
        class: &str,
        mut each: impl FnMut(CheckInLine<'_>),
    ) -> Result<(), StoreError> {
        for (sql, typed) in [
            (
                "SELECT seat, device, school_date, concept, sequence, confidence, outcome
                 FROM check_in WHERE class = ?1",
                false,
            ),
            (
                "SELECT seat, NULL, school_date, concept, 0, confidence, outcome
                 FROM paper_check_in WHERE class = ?1",
                true,
            ),
        ] {
            let mut query = self.connection.prepare_cached(sql)?;
            let mut rows = query.query([class])?;
            while let Some(row) = rows.next()? {
                let sequence = row.get::<_, i64>(4)?;
                each(CheckInLine {
                    seat: row.get(0)?,
                    device: if typed {
                        PAPER
                    } else {
                        row.get_ref(1)?.as_str().map_err(rusqlite::Error::from)?
                    },
                    date: date_at(row, 2)?,
                    concept: row.get_ref(3)?.as_str().map_err(rusqlite::Error::from)?,
                    sequence: sequence.unsigned_abs(),
                    confidence: confidence_at(row, 5)?,
                    outcome: outcome_at(row, 6)?,
                });
            }
        }
        Ok(())
    }

    /// Goes through the practice counts of a class: each seat's by device,
    /// date, concept, then how sure, "not said" first.
    ///
    /// # Errors
    /// SQLite's, or an unreadable value.
    pub fn each_practice(
        &self,
        class: &str,
        mut each: impl FnMut(PracticeReport),
    ) -> Result<(), StoreError> {
        let mut query = self.connection.prepare_cached(
            "SELECT seat, device, school_date, concept, nullif(sure, -1), alone, with_help, wrong, sequence
             FROM practice_count WHERE class = ?1 ORDER BY class, seat, device, school_date, concept, practice_count.sure",
        )?;
        let mut rows = query.query([class])?;
        while let Some(row) = rows.next()? {
            each(practice_at(row)?);
        }
        Ok(())
    }

    /// [`DeskStore::check_ins`] of one date.
    ///
    /// # Errors
    /// SQLite's, or an unreadable value.
    pub fn check_ins_on(
        &self,
        class: &str,
        date: NaiveDate,
    ) -> Result<Vec<CheckInReport>, StoreError> {
        self.rows(
            "SELECT seat, device, school_date, concept, sequence, confidence, outcome, 0 AS typed
             FROM check_in WHERE class = ?1 AND school_date = ?3
             UNION ALL
             SELECT seat, ?2, school_date, concept, 0, confidence, outcome, 1
             FROM paper_check_in WHERE class = ?1 AND school_date = ?3
             ORDER BY seat, school_date, concept, typed, sequence, device",
            params![class, PAPER, date.to_string()],
            check_in_at,
        )
    }

    /// The check-ins that devices handed in for one seat.
    ///
    /// # Errors
    /// SQLite's, or an unreadable value.
    pub fn check_ins_of(&self, class: &str, seat: u32) -> Result<Vec<CheckInReport>, StoreError> {
        self.rows(
            "SELECT seat, device, school_date, concept, sequence, confidence, outcome FROM check_in
             WHERE class = ?1 AND seat = ?2",
            params![class, seat],
            check_in_at,
        )
    }

    /// The practice counts of a class by seat, date and concept.
    ///
    /// # Errors
    /// SQLite's, or an unreadable value.
    pub fn practice(&self, class: &str) -> Result<Vec<PracticeReport>, StoreError> {
        self.rows(
            "SELECT seat, device, school_date, concept, nullif(sure, -1), alone, with_help, wrong, sequence
             FROM practice_count WHERE class = ?1 ORDER BY seat, school_date, concept, device, sure",
            [class],
            practice_at,
        )
    }

    /// The practice counts of one seat, "not said" first in each entry.
    ///
    /// # Errors
    /// SQLite's, or an unreadable value.
    pub fn practice_of(&self, class: &str, seat: u32) -> Result<Vec<PracticeReport>, StoreError> {
        self.rows(
            "SELECT seat, device, school_date, concept, nullif(sure, -1), alone, with_help, wrong, sequence
             FROM practice_count WHERE class = ?1 AND seat = ?2
             ORDER BY device, school_date, concept, practice_count.sure",
            params![class, seat],
            practice_at,
        )
    }

    /// The mistakes of one seat.
    ///
    /// # Errors
    /// SQLite's, or an unreadable value.
    pub fn mistakes_of(&self, class: &str, seat: u32) -> Result<Vec<MistakeReport>, StoreError> {
        self.rows(
            "SELECT seat, device, school_date, concept, code, times FROM mistake_count
             WHERE class = ?1 AND seat = ?2",
            params![class, seat],
            |row| {
                Ok(MistakeReport {
                    seat: row.get(0)?,
                    device: row.get(1)?,
                    date: date_at(row, 2)?,
                    concept: row.get(3)?,
                    code: row.get(4)?,
                    times: row.get(5)?,
                })
            },
        )
    }

    /// Takes one check-in of a device away.
    ///
    /// # Errors
    /// SQLite's.
    pub fn drop_check_in(
        &self,
        class: &str,
        seat: u32,
        device: &str,
        date: NaiveDate,
        concept: &str,
    ) -> Result<(), StoreError> {
        self.connection
            .prepare_cached(
                "DELETE FROM check_in WHERE class = ?1 AND seat = ?2 AND device = ?3
                 AND school_date = ?4 AND concept = ?5",
            )?
            .execute(params![class, seat, device, date.to_string(), concept])?;
        Ok(())
    }

    /// Takes the practice counts and mistakes of one device, date and concept away.
    ///
    /// # Errors
    /// SQLite's.
    pub fn drop_practice(
        &self,
        class: &str,
        seat: u32,
        device: &str,
        date: NaiveDate,
        concept: &str,
    ) -> Result<(), StoreError> {
        for sql in [
            "DELETE FROM practice_count WHERE class = ?1 AND seat = ?2 AND device = ?3
             AND school_date = ?4 AND concept = ?5",
            "DELETE FROM mistake_count WHERE class = ?1 AND seat = ?2 AND device = ?3
             AND school_date = ?4 AND concept = ?5",
        ] {
            self.connection.prepare_cached(sql)?.execute(params![
                class,
                seat,
                device,
                date.to_string(),
                concept
            ])?;
        }
        Ok(())
    }

    /// Mistakes of a class up to `today`, summed by seat, concept and code; the
    /// date is that of the newest.
    ///
    /// # Errors
    /// SQLite's, or an unreadable date.
    pub fn mistakes_by_seat(
        &self,
        class: &str,
        today: NaiveDate,
    ) -> Result<Vec<MistakeReport>, StoreError> {
        self.rows(
            "SELECT seat, max(school_date), concept, code, sum(times) FROM mistake_count
             WHERE class = ?1 AND school_date <= ?2
             GROUP BY seat, concept, code ORDER BY seat, concept, 5 DESC, code",
            params![class, today.to_string()],
            |row| {
                Ok(MistakeReport {
                    seat: row.get(0)?,
                    device: String::new(),
                    date: date_at(row, 1)?,
                    concept: row.get(2)?,
                    code: row.get(3)?,
                    times: row.get(4)?,
                })
            },
        )
    }

    /// The newest report of each seat between two dates, both counted.
    ///
    /// # Errors
    /// SQLite's, or an unreadable date.
    pub fn newest_reports(
        &self,
        class: &str,
        first: NaiveDate,
        last: NaiveDate,
    ) -> Result<BTreeMap<u32, NaiveDate>, StoreError> {
        Ok(self
            .rows(
                "SELECT seat, max(school_date) FROM (
                   SELECT seat, school_date FROM check_in WHERE class = ?1 AND school_date BETWEEN ?2 AND ?3
                   UNION ALL
                   SELECT seat, school_date FROM paper_check_in WHERE class = ?1 AND school_date BETWEEN ?2 AND ?3
                   UNION ALL
                   SELECT seat, school_date FROM practice_count WHERE class = ?1 AND school_date BETWEEN ?2 AND ?3
                 ) GROUP BY seat",
                params![class, first.to_string(), last.to_string()],
                |row| Ok((row.get(0)?, date_at(row, 1)?)),
            )?
            .into_iter()
            .collect())
    }
}

fn check_in_at(row: &Row<'_>) -> rusqlite::Result<CheckInReport> {
    Ok(CheckInReport {
        seat: row.get(0)?,
        device: row.get(1)?,
        date: date_at(row, 2)?,
        concept: row.get(3)?,
        sequence: row.get::<_, i64>(4)?.unsigned_abs(),
        confidence: confidence_at(row, 5)?,
        outcome: outcome_at(row, 6)?,
    })
}

fn practice_at(row: &Row<'_>) -> rusqlite::Result<PracticeReport> {
    Ok(PracticeReport {
        seat: row.get(0)?,
        device: row.get(1)?,
        date: date_at(row, 2)?,
        concept: row.get(3)?,
        sure: confidence_at(row, 4)?,
        alone: row.get(5)?,
        with_help: row.get(6)?,
        wrong: row.get(7)?,
        sequence: row.get(8)?,
    })
}
