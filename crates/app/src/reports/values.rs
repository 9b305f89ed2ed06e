//! The fields of reports and their values.

use crate::error::CallError;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_exercises::Level;
use ts_rs::TS;

/// A field that a report asks for. Every report also asks for a language.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ReportField {
    /// A student.
    Seat,
    /// A student, or several; all students if left out.
    SeatOrAll,
    /// A small group: its concept and its seats.
    Group,
    /// The minutes of the talk.
    Minutes,
    /// The school day; today or the next one if left out.
    Day,
    /// Concepts in their order.
    Concepts,
    /// The level of the exercises.
    Level,
    /// Exercises of each concept.
    Count {
        /// The most.
        most: u32,
    },
    /// Whether the answer key follows on a page of its own; true if left out.
    Key,
    /// Whether it shows the names of the roster; true if left out.
    Names,
    /// The seed of the exercises; a random one if left out.
    Numbers,
    /// The paper.
    Paper,
    /// Space to work or write in.
    Space,
    /// Whether a page has two half-sheets to cut apart; true if left out.
    Halves,
}

/// The values of the fields of a report.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(default, deny_unknown_fields)]
#[ts(optional_fields)]
pub struct ReportValues {
    /// For [`ReportField::Seat`] and [`ReportField::SeatOrAll`].
    pub seat: Option<u32>,
    /// For [`ReportField::Group`]: the concept.
    pub concept: Option<String>,
    /// For [`ReportField::Group`] and [`ReportField::SeatOrAll`]: the seats.
    pub seats: Option<Vec<u32>>,
    /// For [`ReportField::Minutes`].
    pub minutes: Option<u32>,
    /// For [`ReportField::Day`].
    pub date: Option<NaiveDate>,
    /// For [`ReportField::Concepts`].
    pub concepts: Option<Vec<String>>,
    /// For [`ReportField::Level`].
    pub level: Option<Level>,
    /// For [`ReportField::Count`].
    pub count: Option<u32>,
    /// For [`ReportField::Key`].
    pub with_key: Option<bool>,
    /// For [`ReportField::Names`].
    pub with_names: Option<bool>,
    /// For [`ReportField::Numbers`].
    pub seed: Option<u32>,
    /// For [`ReportField::Halves`].
    pub halves: Option<bool>,
}

fn bad(detail: String) -> CallError {
    CallError::BadArguments { detail }
}

/// Returns a value that the report needs.
pub(super) fn needed<T>(value: Option<T>, name: &str) -> Result<T, CallError> {
    value.ok_or_else(|| bad(format!("the report asks for {name}")))
}

impl ReportValues {
    /// Refuses missing values and values that the report does not ask for.
    pub(super) fn check(&self, fields: &[ReportField]) -> Result<(), CallError> {
        let asked = |wanted: ReportField| fields.contains(&wanted);
        let counted = (fields.iter()).any(|field| matches!(field, ReportField::Count { .. }));
        // For each value: its name, and whether it is given, asked for, and optional.
        for (name, given, asked, optional) in [
            (
                "seat",
                self.seat.is_some(),
                asked(ReportField::Seat) || asked(ReportField::SeatOrAll),
                asked(ReportField::SeatOrAll),
            ),
            (
                "concept",
                self.concept.is_some(),
                asked(ReportField::Group),
                false,
            ),
            (
                "seats",
                self.seats.is_some(),
                asked(ReportField::Group) || asked(ReportField::SeatOrAll),
                asked(ReportField::SeatOrAll),
            ),
            (
                "minutes",
                self.minutes.is_some(),
                asked(ReportField::Minutes),
                false,
            ),
            ("date", self.date.is_some(), asked(ReportField::Day), true),
            (
                "concepts",
                self.concepts.is_some(),
                asked(ReportField::Concepts),
                false,
            ),
            (
                "level",
                self.level.is_some(),
                asked(ReportField::Level),
                false,
            ),
            ("count", self.count.is_some(), counted, false),
            (
                "with_key",
                self.with_key.is_some(),
                asked(ReportField::Key),
                true,
            ),
            (
                "with_names",
                self.with_names.is_some(),
                asked(ReportField::Names),
                true,
            ),
            (
                "seed",
                self.seed.is_some(),
                asked(ReportField::Numbers),
                true,
            ),
            (
                "halves",
                self.halves.is_some(),
                asked(ReportField::Halves),
                true,
            ),
        ] {
            if given && !asked {
                return Err(bad(format!("the report does not ask for {name}")));
            }
            if asked && !given && !optional {
                return Err(bad(format!("the report asks for {name}")));
            }
        }
        Ok(())
    }
}
