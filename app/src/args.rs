//! What the calls are given.

use serde::{Deserialize, Serialize};
use surefoot_core::item::Response;
use surefoot_core::rating::{Confidence, Outcome};
use surefoot_core::student::views::Language;
use surefoot_core::teacher::views::{NewAssignment, NewClass};
use ts_rs::TS;

/// A student's day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StudentDay {
    /// The profile's id.
    pub student: String,
    /// The day asked for; nothing for today.
    pub date: Option<chrono::NaiveDate>,
}

/// A tap on Today: both values as they stand after the tap.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CheckInTap {
    /// The profile's id.
    pub student: String,
    /// The school date.
    pub date: chrono::NaiveDate,
    /// The concept.
    pub concept: String,
    /// The rating.
    pub confidence: Option<Confidence>,
    /// How it went.
    pub outcome: Option<Outcome>,
}

/// An exercise that stands open.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ExerciseId {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
}

/// How sure a student says to be before answering.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Sure {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
    /// How sure.
    pub sure: Confidence,
}

/// An answer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct AnswerGiven {
    /// The profile's id.
    pub student: String,
    /// The exercise.
    pub exercise: String,
    /// What was filled in.
    pub response: Response,
    /// Seconds since the exercise was shown or last answered, by the screen's own count.
    pub seconds: u32,
}

/// The concepts a student chose to work on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Focus {
    /// The profile's id.
    pub student: String,
    /// At most three concepts.
    pub concepts: Vec<String>,
}

/// Practice of one concept asked for from My path; nothing for tonight's queue.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PracticeAsked {
    /// The profile's id.
    pub student: String,
    /// The concept asked for.
    pub concept: Option<String>,
    /// Whether to go on though tonight's minutes are done.
    pub more: bool,
}

/// A student's own settings.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewStudentSettings {
    /// The profile's id.
    pub student: String,
    /// Language of the screens.
    pub language: Language,
    /// Minutes of an evening, within the teacher's bounds.
    pub minutes: u32,
}

/// Roster text as pasted: a name a line, or a column of a table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RosterText {
    /// The text.
    pub text: String,
}

/// The names found in a roster text.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RosterNames {
    /// One a seat.
    pub names: Vec<String>,
    /// Lines left out, each with its number from 1: empty, too long, or twice.
    pub left_out: Vec<usize>,
}

/// A new class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CreateClass {
    /// What it is made from.
    pub class: NewClass,
}

/// A seat's new name.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NameSeat {
    /// The class.
    pub class: String,
    /// The seat's number.
    pub seat: u32,
    /// The name; nothing to take it away.
    pub name: Option<String>,
}

/// More seats.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AddSeats {
    /// The class.
    pub class: String,
    /// Their names; an empty text is a seat without a name.
    pub names: Vec<String>,
}

/// The date of a concept's first lesson.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TaughtFrom {
    /// The class.
    pub class: String,
    /// The concept.
    pub concept: String,
    /// The date; nothing for "not this year".
    pub date: Option<chrono::NaiveDate>,
}

/// The rotation as edited.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewRotation {
    /// The class.
    pub class: String,
    /// Concept ids day by day.
    pub days: Vec<Vec<String>>,
}

/// The closures as edited.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewClosures {
    /// The class.
    pub class: String,
    /// Dates without school.
    pub closures: Vec<chrono::NaiveDate>,
}

/// What to import.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum ImportFrom {
    /// A folder the person picks.
    Folder,
    /// Files the person picks.
    Files,
    /// The sample class's shared folder; only in the sample class.
    SampleFolder,
}

/// An import asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ImportAsked {
    /// Where from.
    pub from: ImportFrom,
}

/// A concept of a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassConcept {
    /// The class.
    pub class: String,
    /// The concept.
    pub concept: String,
}

/// A device that claims a seat.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DeviceDecision {
    /// The class.
    pub class: String,
    /// The seat's number.
    pub seat: u32,
    /// The device's id.
    pub device: String,
    /// Whether its hand-ins count from now on; otherwise it is put aside.
    pub accept: bool,
}

/// A new assignment.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Assign {
    /// The class.
    pub class: String,
    /// What it is made from.
    pub assignment: NewAssignment,
}

/// An assignment to take back.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AssignmentId {
    /// The class.
    pub class: String,
    /// The assignment.
    pub assignment: String,
}

/// Something from the catalogue.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CatalogueAsked {
    /// Grades asked for.
    pub grades: Vec<u8>,
}
