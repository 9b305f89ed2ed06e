//! Today: the concepts of the review and the student's check-ins.

use super::StudentDoor;
use crate::error::CallError;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_student::Tap;
use surefoot_student::views::Today;
use ts_rs::TS;

/// A student's day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StudentDay {
    /// The profile's id.
    pub student: String,
    /// The day; `None` for today.
    pub date: Option<NaiveDate>,
}

/// A tap of a student.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CheckInTap {
    /// The profile's id.
    pub student: String,
    /// The tap.
    #[serde(flatten)]
    pub tap: Tap,
}

/// The day of the rotation that a student said.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DaySaid {
    /// The profile's id.
    pub student: String,
    /// The date on which the class was on that day.
    pub date: NaiveDate,
    /// The day of the rotation, from 1; `None` for the days of the class pack.
    pub day: Option<usize>,
}

impl StudentDoor {
    /// The review of a day.
    pub fn today(&self, day: StudentDay) -> Result<Today, CallError> {
        let today = self.context.today();
        self.as_student(&day.student, |store, joined| {
            Ok(surefoot_student::today(store, joined, today, day.date)?)
        })
    }

    /// Writes which day of the rotation the class was on, and returns the review of that date.
    pub fn say_day(&self, said: DaySaid) -> Result<Today, CallError> {
        let today = self.context.today();
        self.as_student(&said.student, |store, joined| {
            Ok(surefoot_student::say_day(
                store, joined, today, said.date, said.day,
            )?)
        })?;
        self.today(StudentDay {
            student: said.student,
            date: Some(said.date),
        })
    }

    /// Writes a tap on Today, which is on disk when this returns. Returns the recent school
    /// days that still have a concept without a rating, newest first.
    pub fn check_in(&self, asked: CheckInTap) -> Result<Vec<NaiveDate>, CallError> {
        let today = self.context.today();
        self.as_student(&asked.student, |store, joined| {
            surefoot_student::check_in(store, joined, today, &asked.tap)?;
            Ok(surefoot_student::catch_up(store, joined, today)?)
        })
    }
}
