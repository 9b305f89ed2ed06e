//! The inputs of the schedule: the class's plan, what happened, and the evening.

use chrono::NaiveDate;
use surefoot_catalogue::rating::{AnswerResult, Confidence, Outcome};
use surefoot_exercises::Level;
use surefoot_record::Reason;

/// What the class's plan says about a concept.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ConceptFacts {
    /// Its id.
    pub key: String,
    /// Ids of its prerequisites.
    pub prerequisites: Vec<String>,
    /// First day on which it may be practised at home; `None` if not this year.
    pub open_from: Option<NaiveDate>,
    /// Whether it can be practised at home.
    pub has_exercises: bool,
    /// Dates of its class reviews this year, rising (empty if not known).
    pub meetings: Vec<NaiveDate>,
}

/// Something that happened. Events are added in the order of their dates.
#[derive(Debug, Clone, PartialEq)]
pub struct Event {
    /// School date.
    pub date: NaiveDate,
    /// Place in the student's own order of events.
    pub sequence: u32,
    /// Concept.
    pub concept: String,
    /// What happened.
    pub kind: EventKind,
}

/// Kinds of events.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum EventKind {
    /// A check-in.
    CheckIn {
        /// The rating.
        confidence: Option<Confidence>,
        /// How it went.
        outcome: Option<Outcome>,
        /// Whether it was before the concept's first lesson, so that it is no evidence.
        preview: bool,
    },
    /// A finished exercise.
    Answer {
        /// 1 to 3.
        level: u8,
        /// What came of it.
        result: AnswerResult,
        /// Minutes it took.
        minutes: f64,
    },
}

/// Practice assigned by the teacher.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Assigned {
    /// Concepts.
    pub concepts: Vec<String>,
    /// Exercises of each.
    pub items_each: u32,
    /// First evening.
    pub from: NaiveDate,
    /// Last evening.
    pub due: NaiveDate,
}

/// The evening to plan.
#[derive(Debug, Clone, PartialEq)]
pub struct Evening {
    /// Its date.
    pub today: NaiveDate,
    /// Minutes after which it is over.
    pub minutes: f64,
    /// Minutes after which assigned work ends too.
    pub most_minutes: f64,
    /// Exercises after which it is over too, if it ends by exercises.
    pub exercises: Option<u32>,
    /// Evenings a week on which the student practises, 1 to 7.
    pub evenings_a_week: u32,
    /// The student's focus.
    pub focus: Vec<String>,
    /// Assignments that may ask for practice tonight.
    pub assigned: Vec<Assigned>,
    /// The date aimed at: a test or the year's end; `None` for 60 days ahead.
    pub goal: Option<NaiveDate>,
}

/// A place in the queue.
#[derive(Debug, Clone, PartialEq)]
pub struct QueueEntry {
    /// The concept.
    pub concept: String,
    /// The level.
    pub level: Level,
    /// Why.
    pub reason: Reason,
    /// Minutes it will likely take.
    pub minutes: f64,
}
