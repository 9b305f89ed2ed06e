//! What the Assign screen shows and sends.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_record::ConceptName;
use ts_rs::TS;

/// How much of an assignment is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AssignedAmount {
    /// Exercises done.
    pub done: u32,
    /// Exercises assigned.
    pub of: u32,
}

/// An assignment to make.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewAssignment {
    /// The concepts, 1 to 6.
    pub concepts: Vec<String>,
    /// Exercises of each concept, 1 to 20.
    pub items_each: u32,
    /// First evening.
    pub from: NaiveDate,
    /// Last evening.
    pub due: NaiveDate,
    /// The seats; empty for the whole class.
    pub seats: Vec<u32>,
}

/// An assignment and its progress.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AssignmentReport {
    /// Its id.
    pub id: String,
    /// Its concepts.
    pub concepts: Vec<ConceptName>,
    /// Exercises of each concept.
    pub items_each: u32,
    /// First evening.
    pub from: NaiveDate,
    /// Last evening.
    pub due: NaiveDate,
    /// Whether it is for the whole class.
    pub whole_class: bool,
    /// Whether the last class pack carries it.
    pub in_pack: bool,
    /// Whether it is withdrawn; it can be restored.
    pub withdrawn: bool,
    /// Seats without a device. The assignment cannot be sealed for them until their first hand-in.
    pub waiting: Vec<u32>,
    /// The progress of each student.
    pub progress: Vec<SeatProgress>,
}

/// The progress of a student with an assignment.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeatProgress {
    /// The seat.
    pub seat: u32,
    /// Its name.
    pub name: Option<String>,
    /// The amount done.
    pub amount: AssignedAmount,
}
