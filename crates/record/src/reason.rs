//! Why a concept is in tonight's queue.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The reason shown beside an exercise, put into words as `reason-<code>`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum Reason {
    /// Assigned by the teacher.
    Assigned {
        /// Last evening.
        due: NaiveDate,
        /// Exercises done of it.
        done: u32,
        /// Exercises asked for.
        of: u32,
    },
    /// The student marked it Not yet.
    MarkedNotYet {
        /// The check-in's date.
        on: NaiveDate,
    },
    /// The student marked it With help.
    MarkedWithHelp {
        /// The check-in's date.
        on: NaiveDate,
    },
    /// The last answer was wrong.
    WrongLastTime {
        /// That answer's date.
        on: NaiveDate,
    },
    /// Met long enough ago to be worth another exercise.
    TimeToSeeAgain {
        /// Days since it was last met.
        days: u32,
    },
    /// Chosen by the student as a focus.
    Focus,
    /// Asked for by the student just now.
    Chosen,
    /// Taught in class, not practised yet.
    FirstPractice,
    /// Another concept builds on it, and the student has trouble with that one.
    Before {
        /// The concept that builds on it.
        concept: String,
    },
}
