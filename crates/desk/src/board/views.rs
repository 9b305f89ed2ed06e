//! What the board, a concept's page, a student's page and the comparison show.

use crate::assign::AssignedAmount;
use crate::estimate::{GroupMember, MisconceptionCount, PracticeSums, ResultSums};
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::rating::Confidence;
use surefoot_catalogue::rating::Outcome;
use surefoot_catalogue::rotation::Phase;
use surefoot_record::ConceptName;
use ts_rs::TS;

/// The concepts of a class, weakest first.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Board {
    /// The class.
    pub class_title: String,
    /// The date.
    pub today: NaiveDate,
    /// The group of seats; empty for the whole class.
    pub group: Vec<u32>,
    /// The pass of the date, from 0.
    pub pass: usize,
    /// Day of the rotation, from 1; none on a day without school.
    pub day: Option<usize>,
    /// Passes in the year.
    pub pass_count: usize,
    /// Seats in the class.
    pub seats: usize,
    /// Seats with a report.
    pub seats_reporting: usize,
    /// Days since the newest report.
    #[ts(type = "number | null")]
    pub newest_report_days: Option<i64>,
    /// The median over the reporting seats of the days since their newest report.
    #[ts(type = "number | null")]
    pub typical_report_days: Option<i64>,
    /// Whether there are results and practice enough for shares. Ratings give the order alone.
    pub level_known: bool,
    /// One row for each concept: weakest first, then those not taught yet, then those without a report.
    pub rows: Vec<BoardRow>,
    /// The commonest misconceptions over all concepts, those of most students first.
    pub misconceptions: Vec<ConceptMisconception>,
    /// How many more misconceptions there are.
    pub misconceptions_left_out: usize,
}

/// A concept on the board.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct BoardRow {
    /// The concept.
    pub concept: ConceptName,
    /// Grade 3 to 6.
    pub grade: u8,
    /// Its phase today.
    pub phase: Phase,
    /// Day of the rotation, from 1.
    pub day: usize,
    /// Rank, 1 is weakest; none before its first lesson or without a report.
    pub rank: Option<usize>,
    /// Estimated share of the class that has it, 0 to 1; none while the level is not known.
    pub has_it: Option<f64>,
    /// The likely range of that share, low end.
    pub low: Option<f64>,
    /// The likely range of that share, high end.
    pub high: Option<f64>,
    /// Students with at least one report on it.
    pub reporters: usize,
    /// Whether so few reported that the teacher should ask first.
    pub ask_first: bool,
    /// Whether the students feel sure and most answers are wrong.
    pub sure_and_wrong: bool,
    /// How many reporters last chose each rating, `NotYet` first.
    pub latest: [u32; 4],
    /// How many reporters last marked right, and wrong.
    pub results: ResultSums,
    /// Practice answers of all students.
    pub practice: PracticeSums,
    /// Days since the newest report on it.
    #[ts(type = "number | null")]
    pub newest_days: Option<i64>,
    /// Its trend.
    pub trend: Trend,
    /// The passes, in order.
    pub passes: Vec<PassCell>,
    /// The commonest misconceptions, most frequent first, at most five.
    pub misconceptions: Vec<MisconceptionCount>,
}

/// The trend of a concept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Trend {
    /// Ratings rise more than by chance.
    Rising,
    /// Ratings fall more than by chance.
    Falling,
    /// Ratings perhaps rise: clear for this concept alone, not among so many concepts.
    MaybeRising,
    /// Ratings perhaps fall.
    MaybeFalling,
    /// Ratings change no more than by chance.
    NoClearChange,
    /// Fewer than six passes with three raters.
    TooSoon,
}

/// A concept in one pass.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PassCell {
    /// Students who rated it.
    pub rated: u32,
    /// Of these, those who chose Not yet or With help.
    pub needs: u32,
    /// The newest rating of the pass.
    pub last_on: Option<NaiveDate>,
}

/// The page of a concept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct ConceptReports {
    /// The board's row for the concept.
    pub row: BoardRow,
    /// The test of its trend.
    pub trend_test: TrendTest,
    /// One line for each seat, who needs it most first.
    pub students: Vec<StudentReport>,
}

/// The test of a trend. It compares the ratings of each student over the passes (Mann 1945), with a
/// wider variance for changes that the whole class shares in a pass. The false discovery rate over
/// all concepts is one in ten (Benjamini and Hochberg 1995).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, TS)]
pub struct TrendTest {
    /// Passes with at least three raters; a trend needs six.
    pub passes: usize,
    /// Median change of the rating (0 to 3) per pass; none below two passes.
    pub slope: Option<f64>,
    /// Low end of its 95% interval (Sen 1968).
    pub low: Option<f64>,
    /// High end of its 95% interval.
    pub high: Option<f64>,
    /// Two-sided p-value.
    pub p: f64,
    /// Concepts tested together.
    pub concepts: usize,
}

/// One student's reports on one concept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct StudentReport {
    /// The seat.
    pub seat: u32,
    /// Its name.
    pub name: Option<String>,
    /// Probability that the student has it; none without a report, and while the level is
    /// not known.
    pub has_it: Option<f64>,
    /// The check-ins, oldest first.
    pub history: Vec<DatedReport>,
    /// Observations, oldest first.
    pub seen: Vec<DatedObservation>,
    /// Practice answers.
    pub practice: PracticeSums,
    /// Days since the newest report on it.
    #[ts(type = "number | null")]
    pub newest_days: Option<i64>,
    /// Assigned practice of this concept.
    pub assigned: Option<AssignedAmount>,
}

/// An observation on a date.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DatedObservation {
    /// School date.
    pub date: NaiveDate,
    /// The confidence that the teacher saw, if entered.
    pub confidence: Option<Confidence>,
    /// Whether the student has it.
    pub has_it: bool,
}

/// A check-in on the page of a concept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DatedReport {
    /// School date.
    pub date: NaiveDate,
    /// The pass of the date, from 0.
    pub pass: usize,
    /// The rating.
    pub confidence: Option<Confidence>,
    /// The outcome.
    pub outcome: Option<Outcome>,
}

/// Comparison of ratings with results.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Comparison {
    /// Students with a high last rating and wrong results, most wrong first.
    pub sure_but_wrong: Vec<Contradiction>,
    /// Students with a low last rating and right results, most right first.
    pub unsure_but_right: Vec<Contradiction>,
    /// Each student's calibration.
    pub students: Vec<StudentCalibration>,
    /// How students' ratings agree with the teacher's observations.
    pub agreement: Agreement,
}

/// A student whose rating and results disagree on a concept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Contradiction {
    /// The student.
    pub student: GroupMember,
    /// The concept.
    pub concept: ConceptName,
    /// The last rating.
    pub rating: Confidence,
    /// Results since that rating, by outcomes and observations.
    pub results: ResultSums,
    /// Practice answers since that rating.
    pub practice: PracticeSums,
}

/// A student's calibration: how well ratings agree with results.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct StudentCalibration {
    /// The student.
    pub student: GroupMember,
    /// Answers with a rating before them.
    pub answers: usize,
    /// The verdict.
    pub verdict: CalibrationVerdict,
    /// Claimed minus observed share of right answers; none below 20 answers.
    pub bias: Option<f64>,
    /// Low end of its 95% interval.
    pub low: Option<f64>,
    /// High end of its 95% interval.
    pub high: Option<f64>,
    /// Goodman and Kruskal's gamma: whether surer answers were more often right.
    pub gamma: Option<f64>,
    /// How good the ratings are as forecasts; none below 60 answers, or if all
    /// answers have the same rating.
    pub brier: Option<ForecastScore>,
}

/// The Brier score of ratings taken as forecasts of being right, in Murphy's three
/// parts (1973): score = reliability - resolution + uncertainty.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, TS)]
pub struct ForecastScore {
    /// Mean squared difference of forecast and result; 0 is best, 1 is worst.
    pub score: f64,
    /// How far each rating is from the share right after it; 0 is best.
    pub reliability: f64,
    /// How much the shares right differ between ratings; more is better.
    pub resolution: f64,
    /// The spread of the results themselves, the same for any ratings.
    pub uncertainty: f64,
}

/// The verdict on a student's ratings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum CalibrationVerdict {
    /// Ratings are clearly higher than the results.
    Over,
    /// Ratings are clearly lower than the results.
    Under,
    /// Ratings are close to the results.
    Near,
    /// The interval is too wide for a verdict.
    Unclear,
    /// Too few answers.
    TooLittle,
}

/// A misconception on a concept.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ConceptMisconception {
    /// The concept.
    pub concept: ConceptName,
    /// The misconception's code.
    pub code: String,
    /// How often it led to an answer.
    pub count: u32,
    /// How many students have it.
    pub students: usize,
    /// Days since it last led to an answer.
    #[ts(type = "number")]
    pub newest_days: i64,
}

/// How students' ratings agree with the teacher's observations in the same pass.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Agreement {
    /// Counts of pairs; rows by the student's rating, columns by the teacher's.
    pub table: [[u32; 4]; 4],
    /// Pairs of ratings.
    pub pairs: usize,
    /// Weighted kappa (quadratic weights); none below ten pairs, or if all ratings are the same.
    pub kappa: Option<f64>,
    /// Its standard error.
    pub standard_error: Option<f64>,
}

/// The page of a student.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct StudentPage {
    /// The student.
    pub student: GroupMember,
    /// The calibration of the ratings.
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
    /// Probability that the student has it; none while the level is not known.
    pub has_it: Option<f64>,
    /// The last rating.
    pub rating: Option<Confidence>,
    /// The last marked result.
    pub outcome: Option<Outcome>,
    /// Practice answers.
    pub practice: PracticeSums,
    /// Whether the student has it, by the last observation.
    pub seen: Option<bool>,
    /// Days since the newest report.
    #[ts(type = "number")]
    pub newest_days: i64,
}
