//! What the warm-up shows on screens.

use crate::sample::SampleExercise;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::Language;
use surefoot_catalogue::rotation::Phase;
use surefoot_exercises::Level;
use surefoot_record::ConceptName;
use ts_rs::TS;

/// The warm-up of a day. It has no name, no seat and nothing that the class reported.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct WarmUp {
    /// The school day it is for; none after the year.
    pub date: Option<NaiveDate>,
    /// Day of the rotation, from 1; none after the year.
    pub day: Option<usize>,
    /// The days to choose from: today if it has school, and the next school day.
    pub days: Vec<WarmUpDay>,
    /// Every concept of the day in the order of the review, also those left out.
    pub concepts: Vec<WarmUpConcept>,
}

/// A day that a warm-up can be for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct WarmUpDay {
    /// The school date.
    pub date: NaiveDate,
    /// Whether that is today.
    pub is_today: bool,
}

/// A concept of the day with its exercise.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct WarmUpConcept {
    /// The concept.
    pub concept: ConceptName,
    /// Its phase on that day.
    pub phase: Phase,
    /// The level of its exercise.
    pub level: Level,
    /// What the teacher chose.
    pub choice: WarmUpChoice,
    /// The own exercises of the concept.
    pub own: Vec<WarmUpOwn>,
    /// Its exercise, without a misconception; none for a concept without exercises.
    pub exercise: Option<SampleExercise>,
}

/// An own exercise that can be put into the warm-up.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct WarmUpOwn {
    /// Its id.
    pub id: String,
    /// Its question, as plain text.
    pub question: String,
    /// The language of the question, if it is missing in the language of the screens.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub shown_in: Option<Language>,
}

/// What the teacher chose for a concept. It holds for the pass of the day.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct WarmUpChoice {
    /// How often the exercise was swapped for another.
    pub swaps: u32,
    /// The level; none for that of the phase.
    pub level: Option<Level>,
    /// The id of an own exercise in its place.
    pub own: Option<String>,
    /// Whether the concept is left out.
    pub left_out: bool,
}
