//! What the Talk screen shows.

use crate::board::Trend;
use crate::estimate::MisconceptionCount;
use crate::sample::SampleExercise;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::rotation::Phase;
use surefoot_record::ConceptName;
use ts_rs::TS;

/// The talk plan of a day. It has no name and no seat.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct TalkView {
    /// The class.
    pub class_title: String,
    /// The school day it is for.
    pub date: NaiveDate,
    /// Whether that is today; otherwise today has no school.
    pub is_today: bool,
    /// The next two school days that a plan can be for; fewer at the end of the year.
    pub school_days: Vec<NaiveDate>,
    /// Day of the rotation, from 1; none after the year.
    pub day: Option<usize>,
    /// Minutes for the talk.
    pub minutes: u32,
    /// Minutes for the chosen concepts.
    pub minutes_used: u32,
    /// Whether there are results and practice enough for shares. Otherwise the plan goes by the
    /// order of the concepts alone.
    pub level_known: bool,
    /// Every concept of the day: first the chosen ones, then the others, each in the order of the review.
    pub concepts: Vec<TalkConcept>,
}

/// A concept of the day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct TalkConcept {
    /// The concept.
    pub concept: ConceptName,
    /// Its phase.
    pub phase: Phase,
    /// Whether it is chosen.
    pub chosen: bool,
    /// Whether it was discussed on that day.
    pub talked: bool,
    /// How to discuss it; none before the first lesson or without a report.
    pub way: Option<TalkWay>,
    /// The minutes that it takes.
    pub minutes: u32,
    /// Its value: how many more students are expected to get it right afterwards. This and the
    /// numbers below are none while the level is not known.
    pub worth: Option<f64>,
    /// Estimated share of the class that has it; none without a report.
    pub has_it: Option<f64>,
    /// Low end of its likely range.
    pub low: Option<f64>,
    /// High end of its likely range.
    pub high: Option<f64>,
    /// How many present students are expected to get it wrong.
    pub expected_wrong: Option<f64>,
    /// How many of these last rated On my own or Could teach it.
    pub sure_wrong: Option<f64>,
    /// Its trend.
    pub trend: Trend,
    /// Whether it was discussed in this pass or the last.
    pub talked_lately: bool,
    /// Its dependants whose first lesson is within ten school days.
    pub dependants_soon: Vec<ConceptName>,
    /// The commonest misconceptions.
    pub misconceptions: Vec<MisconceptionCount>,
    /// An exercise to discuss.
    pub exercise: Option<SampleExercise>,
}

/// How to discuss a concept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum TalkWay {
    /// Teach it again.
    TeachAgain,
    /// Students explain it in pairs.
    PairTalk,
    /// A short look at it together.
    ShortLook,
}
