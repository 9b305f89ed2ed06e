//! What the Enter screen shows and sends.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::rating::Confidence;
use surefoot_catalogue::rating::Outcome;
use surefoot_record::ConceptName;
use ts_rs::TS;

/// A day to fill in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct EntryDay {
    /// The school date.
    pub date: NaiveDate,
    /// Day of the rotation, from 1; none on a day without school.
    pub day: Option<usize>,
    /// The school day before it, if any.
    pub earlier: Option<NaiveDate>,
    /// The school day after it, if not in the future.
    pub later: Option<NaiveDate>,
    /// The concepts of the day in the order of the review.
    pub concepts: Vec<ConceptName>,
    /// One row for each seat.
    pub rows: Vec<EntryRow>,
}

/// A student's row.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct EntryRow {
    /// The seat.
    pub seat: u32,
    /// Its name.
    pub name: Option<String>,
    /// One cell for each concept.
    pub cells: Vec<EntryCell>,
}

/// The entries of one student on one concept of the day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, TS)]
pub struct EntryCell {
    /// The rating from paper.
    pub rating: Option<Confidence>,
    /// The outcome from paper.
    pub outcome: Option<Outcome>,
    /// The rating from a device.
    pub device_rating: Option<Confidence>,
    /// The outcome from a device.
    pub device_outcome: Option<Outcome>,
    /// The observation.
    pub seen: Option<Confidence>,
    /// The record after a small group: whether the student has it.
    pub group_result: Option<bool>,
}

/// A filled-in cell.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct EntryMade {
    /// The seat.
    pub seat: u32,
    /// The concept.
    pub concept: String,
    /// The value.
    pub value: EntryValue,
}

/// A value of a cell; `None` removes it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum EntryValue {
    /// A rating from a paper chart.
    Rating {
        /// The rating.
        rating: Option<Confidence>,
    },
    /// An outcome from a paper chart.
    Outcome {
        /// The outcome.
        outcome: Option<Outcome>,
    },
    /// The observation.
    Seen {
        /// On the students' scale.
        rating: Option<Confidence>,
    },
    /// The record after a small group.
    GroupResult {
        /// Whether the student has it.
        has_it: bool,
    },
}
