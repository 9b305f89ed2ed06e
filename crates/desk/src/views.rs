//! What the teacher's screens are given.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_catalogue::rotation::Phase;
use surefoot_exchange::{Flag, PracticeRules, Refusal};
use surefoot_record::ConceptName;
use ts_rs::TS;

/// A class in a line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassSummary {
    /// The class's id.
    pub id: String,
    /// The teacher's name for it.
    pub title: String,
    /// Seats in it.
    pub seats: usize,
    /// Seats from which a hand-in has come.
    pub seats_joined: usize,
    /// Concepts in its rotation.
    pub concepts: usize,
    /// The newest report.
    pub newest_report: Option<NaiveDate>,
    /// The version of the last class pack made, 0 for none.
    pub pack_version: u32,
    /// Whether something changed since that pack.
    pub pack_outdated: bool,
}

/// What a new class is made from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewClass {
    /// The teacher's name for it, 1 to 60 characters.
    pub title: String,
    /// Given names or codes, one a seat; an empty text is a seat without a name.
    pub names: Vec<String>,
    /// The school year.
    pub year: SchoolYear,
    /// Grades whose concepts are taken from the built-in catalogue.
    pub grades: Vec<u8>,
    /// Days in the rotation, 1 to 20.
    pub rotation_days: usize,
    /// How many concepts a day at most; the rotation takes the first that fit.
    pub concepts_a_day: usize,
}

/// What a pacing list says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PacingList {
    /// Concepts with the date of their first lesson, in the order of the list.
    pub found: Vec<PacingFound>,
    /// Lines that cannot be taken.
    pub missed: Vec<PacingMissed>,
}

/// A concept of a pacing list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PacingFound {
    /// The concept.
    pub concept: ConceptName,
    /// Its first lesson by the list.
    pub date: NaiveDate,
    /// Its first lesson as it stands.
    pub before: Option<NaiveDate>,
}

/// A line of a pacing list that cannot be taken.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PacingMissed {
    /// The line, cut short.
    pub line: String,
    /// Why.
    pub trouble: PacingTrouble,
}

/// Why a line of a pacing list cannot be taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum PacingTrouble {
    /// No concept of the class is called so.
    NoSuchConcept,
    /// No date stands on the line or above it.
    NoDate,
    /// The date is outside the school year.
    OutsideYear,
    /// The concept stood further up already.
    Twice,
}

/// What a copy of a class is made from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CopyClass {
    /// The class whose rotation and pace are taken.
    pub from: String,
    /// The teacher's name for the new one, 1 to 60 characters.
    pub title: String,
    /// Given names or codes, one a seat; an empty text is a seat without a name.
    pub names: Vec<String>,
    /// The new school year.
    pub year: SchoolYear,
}

/// What stands in picked roster files.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RosterFile {
    /// The classes in them, by title.
    pub classes: Vec<RosterClass>,
}

/// A class of a roster file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RosterClass {
    /// Its title there, or the file's name; empty when the files name no class.
    pub title: String,
    /// Given names or codes, in the order of the file.
    pub names: Vec<String>,
    /// Lines that could not be a name.
    pub left_out: usize,
}

/// A seat of a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Seat {
    /// 1, 2, 3 ... in the order of the roster.
    pub number: u32,
    /// Given name or code, when the teacher entered one.
    pub name: Option<String>,
    /// The code on the join slip.
    pub code: String,
    /// Devices whose hand-ins count for this seat.
    pub devices: usize,
    /// A device that claims this seat with a key of its own and waits for a decision.
    pub held_devices: Vec<String>,
    /// The newest report from this seat.
    pub newest_report: Option<NaiveDate>,
}

/// Everything about a class's set-up.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassSetup {
    /// The class in a line.
    pub summary: ClassSummary,
    /// Its seats.
    pub seats: Vec<Seat>,
    /// Its school year.
    pub year: SchoolYear,
    /// School days in the year.
    pub school_days: usize,
    /// Passes in the year.
    pub pass_count: usize,
    /// The rotation, day by day.
    pub rotation: Vec<Vec<PlacedConcept>>,
    /// What is set for practice at home.
    pub practice: PracticeRules,
}

/// What the desk holds of a seat, and what goes when the seat is removed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeatHoldings {
    /// Hand-ins kept.
    pub hand_ins: u32,
    /// Ratings and results, from devices or from paper.
    pub reports: u32,
    /// Practice answers.
    pub answers: u32,
    /// What the teacher saw.
    pub observations: u32,
}

/// A concept in its place.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PlacedConcept {
    /// The concept.
    pub concept: ConceptName,
    /// Grade 3 to 6.
    pub grade: u8,
    /// The date of its first lesson.
    pub taught_from: Option<NaiveDate>,
    /// Its phase today.
    pub phase: Phase,
}

/// What became of one file of an import.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct FileAccount {
    /// The file's name.
    pub file_name: String,
    /// The verdict.
    pub verdict: Verdict,
    /// The seat it belongs to.
    pub seat: Option<u32>,
    /// The seat's name.
    pub name: Option<String>,
    /// The class it belongs to.
    pub class_title: Option<String>,
    /// Check-ins and practice counts that were new.
    pub new_entries: usize,
    /// Things to look at that did not stop the import.
    pub flags: Vec<Flag>,
}

/// The verdict on a file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Verdict {
    /// The first from this seat.
    New,
    /// Newer than what was here.
    Updated,
    /// Exactly what was here already.
    Known,
    /// Older than what was here; nothing changed.
    Older,
    /// From a second device with a key of its own; kept, and counted once the teacher accepts it.
    Held,
    /// Not taken; the file stays untouched where it is.
    Refused {
        /// Why.
        refusal: Refusal,
    },
}

/// The account of an import.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct ImportAccount {
    /// Names the import in the journal.
    #[ts(type = "number")]
    pub import: i64,
    /// The date it was made.
    pub made_on: NaiveDate,
    /// File by file, in the order of their names.
    pub files: Vec<FileAccount>,
    /// Whether it was stopped before the end; what was read counts.
    pub cancelled: bool,
    /// Whether it was undone since.
    pub undone: bool,
}

/// The class picture.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct Board {
    /// The class.
    pub class_title: String,
    /// What "today" is.
    pub today: NaiveDate,
    /// The seats it is restricted to; empty for the whole class.
    pub group: Vec<u32>,
    /// The pass of today, from 0.
    pub pass: usize,
    /// Day of the rotation today, from 1, on a school day.
    pub day: Option<usize>,
    /// Passes in the year.
    pub pass_count: usize,
    /// Seats in the class.
    pub seats: usize,
    /// Seats from which something has come.
    pub seats_reporting: usize,
    /// Days since the newest report.
    #[ts(type = "number | null")]
    pub newest_report_days: Option<i64>,
    /// The median over the reporting seats of the days since their newest report.
    #[ts(type = "number | null")]
    pub typical_report_days: Option<i64>,
    /// One row a concept: weakest first, then those not taught yet, then those without a report.
    pub rows: Vec<BoardRow>,
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
    /// Rank among the weak spots, 1 is weakest; nothing before its first lesson and where nobody reported.
    pub rank: Option<usize>,
    /// Estimated share of the class that has it, 0 to 1.
    pub has_it: Option<f64>,
    /// The likely range of that share, low end.
    pub low: Option<f64>,
    /// The likely range of that share, high end.
    pub high: Option<f64>,
    /// Students with at least one report on it.
    pub reporters: usize,
    /// Whether so few reported that one should ask first.
    pub ask_first: bool,
    /// Of the last rating of each reporter: how many chose each, `NotYet` first.
    pub latest: [u32; 4],
    /// Of the last marked result of each reporter: right and wrong.
    pub results: [u32; 2],
    /// Practice answers by everyone: alone, with help, wrong.
    pub practice: [u32; 3],
    /// Days since the newest report on it.
    #[ts(type = "number | null")]
    pub newest_days: Option<i64>,
    /// Which way it is moving, where that can be said.
    pub trend: Trend,
    /// Pass by pass: how many rated, and how many of these chose Not yet or With help.
    pub passes: Vec<PassCell>,
    /// The commonest mistakes: code and count, most first, at most five.
    pub mistakes: Vec<MistakeCount>,
}

/// Which way a concept is moving.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Trend {
    /// Ratings go up, beyond what chance does.
    Rising,
    /// Ratings go down, beyond what chance does.
    Falling,
    /// Perhaps up: clear on its own, not among so many concepts.
    MaybeRising,
    /// Perhaps down.
    MaybeFalling,
    /// Nothing beyond chance.
    NoClearChange,
    /// Fewer than six passes with three raters: too soon to say.
    TooSoon,
}

/// A concept in one pass.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PassCell {
    /// Students who rated it.
    pub rated: u32,
    /// Of these, Not yet or With help.
    pub needs: u32,
    /// The newest rating of the pass.
    pub last_on: Option<NaiveDate>,
}

/// A mistake and how often it was made.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MistakeCount {
    /// The mistake's code.
    pub code: String,
    /// How often.
    pub count: u32,
}

/// The students behind a concept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct ConceptReports {
    /// The board's row for the concept.
    pub row: BoardRow,
    /// The test behind its trend.
    pub trend_test: TrendTest,
    /// One line a seat, who needs it most first.
    pub students: Vec<StudentReport>,
}

/// What a trend is said by: ratings compared inside each student over the passes
/// (Mann 1945), widened for what moves a whole pass, with false discoveries
/// among all concepts held to one in ten (Benjamini and Hochberg 1995).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, TS)]
pub struct TrendTest {
    /// Passes with at least three raters; below six nothing is said.
    pub passes: usize,
    /// Median change of the rating (0 to 3) a pass; nothing below two passes.
    pub slope: Option<f64>,
    /// Low end of its 95% interval (Sen 1968).
    pub low: Option<f64>,
    /// High end of its 95% interval.
    pub high: Option<f64>,
    /// Two-sided probability of so clear a movement by chance.
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
    /// Chance of having it, 0 to 1, by everything that is known; nothing without a report.
    pub has_it: Option<f64>,
    /// Rating and result of each date, oldest first.
    pub history: Vec<DatedReport>,
    /// What the teacher saw, oldest first.
    pub seen: Vec<DatedSight>,
    /// Practice answers: alone, with help, wrong.
    pub practice: [u32; 3],
    /// Days since the newest report on it.
    #[ts(type = "number | null")]
    pub newest_days: Option<i64>,
    /// Practice still assigned on this concept.
    pub assigned: Option<AssignedAmount>,
}

/// How much of an assignment is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AssignedAmount {
    /// Exercises done.
    pub done: u32,
    /// Exercises asked for.
    pub of: u32,
}

/// What the teacher saw on a date.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DatedSight {
    /// School date.
    pub date: NaiveDate,
    /// On the students' own scale, if rated.
    pub rating: Option<Confidence>,
    /// Whether the student has it.
    pub has_it: bool,
}

/// A check-in as the teacher sees it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DatedReport {
    /// School date.
    pub date: NaiveDate,
    /// The pass of the date, from 0.
    pub pass: usize,
    /// The rating.
    pub confidence: Option<Confidence>,
    /// How it went.
    pub outcome: Option<Outcome>,
}

/// What an assignment is made from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewAssignment {
    /// Concepts, 1 to 6.
    pub concepts: Vec<String>,
    /// Exercises of each concept, 1 to 20.
    pub items_each: u32,
    /// First evening.
    pub from: NaiveDate,
    /// Last evening.
    pub due: NaiveDate,
    /// Seats it is for; empty for the whole class.
    pub seats: Vec<u32>,
}

/// An assignment and who did it.
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
    /// Taken back; it can be let stand again.
    pub withdrawn: bool,
    /// Seats without a device yet: it cannot be sealed for them until their first hand-in.
    pub waiting: Vec<u32>,
    /// Who has done how much.
    pub progress: Vec<SeatProgress>,
}

/// How far a seat is with an assignment.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeatProgress {
    /// The seat.
    pub seat: u32,
    /// Its name.
    pub name: Option<String>,
    /// Done of asked.
    pub amount: AssignedAmount,
}

/// A join slip.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct JoinSlip {
    /// The class.
    pub class_title: String,
    /// The seat.
    pub seat: u32,
    /// Its name.
    pub name: Option<String>,
    /// The code to type.
    pub code: String,
}
