//! What the Talk, Enter and comparing screens are given.

use crate::groups::views::{GroupMember, SampleExercise};
use crate::views::{MistakeCount, Trend};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_catalogue::rotation::Phase;
use surefoot_record::ConceptName;
use ts_rs::TS;

/// Today's few minutes. It holds no name and no seat.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct TalkView {
    /// The class.
    pub class_title: String,
    /// The school day it is for.
    pub date: NaiveDate,
    /// Whether that is today; otherwise today is without school.
    pub is_today: bool,
    /// Day of the rotation, from 1; nothing when the year is over.
    pub day: Option<usize>,
    /// Minutes there are.
    pub minutes: u32,
    /// Minutes the chosen concepts take.
    pub minutes_used: u32,
    /// Every concept of the day: the chosen ones first, in the order of the review.
    pub concepts: Vec<TalkConcept>,
}

/// A concept of the day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct TalkConcept {
    /// The concept.
    pub concept: ConceptName,
    /// Its phase.
    pub phase: Phase,
    /// Whether it deserves the minutes.
    pub chosen: bool,
    /// Whether it was talked about on that day.
    pub talked: bool,
    /// How to go about it; nothing before the first lesson or without a report.
    pub way: Option<TalkWay>,
    /// Minutes that takes.
    pub minutes: u32,
    /// What it would bring, in students put right.
    pub worth: f64,
    /// Estimated share of the class that has it.
    pub has_it: Option<f64>,
    /// Low end of its likely range.
    pub low: Option<f64>,
    /// High end of its likely range.
    pub high: Option<f64>,
    /// Students expected to get it wrong, of those there.
    pub expected_wrong: f64,
    /// Of these, expected among those whose last rating was On my own or Could teach it.
    pub sure_wrong: f64,
    /// Which way it is moving.
    pub trend: Trend,
    /// Whether it was talked about in this pass or the last.
    pub talked_lately: bool,
    /// Concepts building on it whose first lesson is within ten school days.
    pub dependants_soon: Vec<ConceptName>,
    /// The commonest mistakes.
    pub mistakes: Vec<MistakeCount>,
    /// One exercise to discuss, with the common slip.
    pub exercise: Option<SampleExercise>,
}

/// How to go about a concept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum TalkWay {
    /// Teach it again.
    TeachAgain,
    /// Students explain it in pairs.
    PairTalk,
    /// A short look together.
    ShortLook,
}

/// A class's day to fill in: paper charts and the teacher's observations.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct EntryDay {
    /// The school date.
    pub date: NaiveDate,
    /// Day of the rotation, from 1; nothing on a day without school.
    pub day: Option<usize>,
    /// The school day before, if any.
    pub earlier: Option<NaiveDate>,
    /// The school day after, up to today.
    pub later: Option<NaiveDate>,
    /// The concepts of the day in the order of the review.
    pub concepts: Vec<ConceptName>,
    /// One row a seat.
    pub rows: Vec<EntryRow>,
}

/// A student's row.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct EntryRow {
    /// The seat.
    pub seat: u32,
    /// Its name.
    pub name: Option<String>,
    /// One cell a concept.
    pub cells: Vec<EntryCell>,
}

/// What stands of one student on one concept of the day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, TS)]
pub struct EntryCell {
    /// The rating typed in from paper.
    pub rating: Option<Confidence>,
    /// The result typed in from paper.
    pub outcome: Option<Outcome>,
    /// The rating that a device handed in.
    pub device_rating: Option<Confidence>,
    /// The result that a device handed in.
    pub device_outcome: Option<Outcome>,
    /// What the teacher saw.
    pub seen: Option<Confidence>,
    /// After a small group: whether the student has it.
    pub group_result: Option<bool>,
}

/// A cell as filled in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct EntryMade {
    /// The seat.
    pub seat: u32,
    /// The concept.
    pub concept: String,
    /// What was filled in.
    pub value: EntryValue,
}

/// What can be filled in; nothing takes it away.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum EntryValue {
    /// A rating from a paper chart.
    Rating {
        /// The rating.
        rating: Option<Confidence>,
    },
    /// A result from a paper chart.
    Outcome {
        /// The result.
        outcome: Option<Outcome>,
    },
    /// What the teacher saw.
    Seen {
        /// On the students' own scale.
        rating: Option<Confidence>,
    },
    /// What was recorded after a small group, put back.
    GroupResult {
        /// Whether the student has it.
        has_it: bool,
    },
}

/// Ratings beside what came of it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Comparison {
    /// Last rating high, yet it went wrong; most wrong first.
    pub sure_but_wrong: Vec<Mismatch>,
    /// Last rating low, yet it went right; most right first.
    pub unsure_but_right: Vec<Mismatch>,
    /// How far each student's ratings can be believed.
    pub students: Vec<StudentCalibration>,
    /// The commonest mistakes over all concepts.
    pub mistakes: Vec<ConceptMistake>,
    /// Mistakes beyond these that are not listed.
    pub mistakes_left_out: usize,
    /// Students' ratings against the teacher's observations.
    pub agreement: Agreement,
}

/// A student whose rating and results disagree on a concept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Mismatch {
    /// Who.
    pub student: GroupMember,
    /// On what.
    pub concept: ConceptName,
    /// The last rating.
    pub rating: Confidence,
    /// Results since that rating, self-marked or seen by the teacher: right and wrong.
    pub results: [u32; 2],
    /// Practice answers since that rating: alone, with help, wrong.
    pub practice: [u32; 3],
}

/// How far a student's ratings can be believed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct StudentCalibration {
    /// Who.
    pub student: GroupMember,
    /// Answers with a rating before them.
    pub answers: usize,
    /// The word on it.
    pub verdict: CalibrationVerdict,
    /// Claimed minus found share right; nothing below 20 answers.
    pub bias: Option<f64>,
    /// Low end of its 95% interval.
    pub low: Option<f64>,
    /// High end of its 95% interval.
    pub high: Option<f64>,
    /// Goodman and Kruskal's gamma: whether surer answers were more often right.
    pub gamma: Option<f64>,
    /// How good ratings are as forecasts; nothing below 60 answers, or when all
    /// stand at one rating.
    pub brier: Option<ForecastScore>,
}

/// The Brier score of ratings taken as forecasts of being right, in Murphy's three
/// parts (1973): score = reliability - resolution + uncertainty.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, TS)]
pub struct ForecastScore {
    /// Mean squared distance of what was claimed from what came; 0 is best, 1 worst.
    pub score: f64,
    /// How far each rating is from the share right after it; 0 is best.
    pub reliability: f64,
    /// How much the shares right differ between ratings; more is better.
    pub resolution: f64,
    /// The spread of the results themselves, the same for any ratings.
    pub uncertainty: f64,
}

/// The word on a student's ratings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum CalibrationVerdict {
    /// Claims clearly more than is found.
    Over,
    /// Claims clearly less than is found.
    Under,
    /// Claims close to what is found.
    Near,
    /// The interval is too wide to tell.
    Unclear,
    /// Too few answers.
    TooLittle,
}

/// A mistake on a concept.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ConceptMistake {
    /// The concept.
    pub concept: ConceptName,
    /// The mistake's code.
    pub code: String,
    /// How often it was made.
    pub count: u32,
    /// By how many students.
    pub students: usize,
    /// Days since it was last made.
    #[ts(type = "number")]
    pub newest_days: i64,
}

/// Students' ratings against the teacher's observations of the same pass.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Agreement {
    /// Rows: the student's rating; columns: the teacher's. Counts of pairs.
    pub table: [[u32; 4]; 4],
    /// Pairs of ratings.
    pub pairs: usize,
    /// Weighted kappa (quadratic weights); nothing below ten pairs, or when
    /// both always said the same one thing.
    pub kappa: Option<f64>,
    /// Its standard error.
    pub standard_error: Option<f64>,
}

/// A student over all concepts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct StudentPage {
    /// Who.
    pub student: GroupMember,
    /// How far the ratings can be believed.
    pub calibration: StudentCalibration,
    /// Concepts with a report, those needed most first.
    pub concepts: Vec<StudentConcept>,
    /// Concepts without a report.
    pub without_report: usize,
}

/// A student on one concept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct StudentConcept {
    /// The concept.
    pub concept: ConceptName,
    /// Its phase today.
    pub phase: Phase,
    /// Chance of having it, 0 to 1.
    pub has_it: f64,
    /// The last rating.
    pub rating: Option<Confidence>,
    /// The last result marked.
    pub outcome: Option<Outcome>,
    /// Practice answers: alone, with help, wrong.
    pub practice: [u32; 3],
    /// Whether the teacher last saw that the student has it.
    pub seen: Option<bool>,
    /// Days since the newest report.
    #[ts(type = "number")]
    pub newest_days: i64,
}
