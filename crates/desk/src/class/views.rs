//! What the screens of a class show and send.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rotation::Phase;
use surefoot_record::{ConceptName, PracticeRules};
use ts_rs::TS;

/// A class in a line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassSummary {
    /// The class's id.
    pub id: String,
    /// The title.
    pub title: String,
    /// Seats in it.
    pub seats: usize,
    /// Seats with a report.
    pub seats_joined: usize,
    /// Concepts in its rotation.
    pub concepts: usize,
    /// The date of the newest report.
    pub newest_report: Option<NaiveDate>,
    /// The version of the last class pack; 0 before the first.
    pub pack_version: u32,
    /// Whether the class has changed since that pack; false if another computer saves the packs.
    pub pack_outdated: bool,
    /// Whether this computer saves the class packs.
    pub saves_packs: bool,
}

/// A class to make.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewClass {
    /// The title, 1 to 60 characters.
    pub title: String,
    /// Given names or codes, one for each seat; an empty text is a seat without a name.
    pub names: Vec<String>,
    /// The school year.
    pub year: SchoolYear,
    /// The grades whose concepts the class gets.
    pub grades: Vec<u8>,
    /// Days in the rotation, 1 to 20.
    pub rotation_days: usize,
    /// Concepts of a day at most.
    pub concepts_a_day: usize,
}

/// A pacing list after reading.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PacingList {
    /// Concepts with the date of their first lesson, in the order of the list.
    pub found: Vec<PacingFound>,
    /// Lines with a title that is near to some of the class.
    pub near: Vec<PacingNear>,
    /// Lines that cannot be used.
    pub missed: Vec<PacingMissed>,
    /// How `9/8` was read, if it could be read both ways: the day first or the month.
    pub day_first: Option<bool>,
}

/// A concept of a pacing list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PacingFound {
    /// The line, cut short.
    pub line: String,
    /// The concept.
    pub concept: ConceptName,
    /// Its first lesson by the list.
    pub date: NaiveDate,
    /// Whether it was taught last year, which counts from the first school day.
    pub last_year: bool,
    /// Its first lesson now.
    pub before: Option<NaiveDate>,
}

/// A line of a pacing list with a title that is near to some of the class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PacingNear {
    /// The line, cut short.
    pub line: String,
    /// The concepts that it may mean, the likeliest first.
    pub choices: Vec<PacingFound>,
}

/// A line of a pacing list that cannot be used.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PacingMissed {
    /// The line, cut short.
    pub line: String,
    /// Why.
    pub trouble: PacingTrouble,
}

/// Why a line of a pacing list cannot be used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum PacingTrouble {
    /// No concept has this name or a near one.
    NoSuchConcept,
    /// The concept is not in the rotation.
    NotInRotation,
    /// The line has no date, and no line above it has one.
    NoDate,
    /// The date is outside the school year.
    OutsideYear,
    /// The concept is in an earlier line.
    Twice,
}

/// A class to make from an earlier one.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CopyClass {
    /// The earlier class.
    pub from: String,
    /// The title of the new class, 1 to 60 characters.
    pub title: String,
    /// Given names or codes, one for each seat; an empty text is a seat without a name.
    pub names: Vec<String>,
    /// The new school year.
    pub year: SchoolYear,
}

/// The content of picked roster files.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RosterFile {
    /// The classes in them, by title.
    pub classes: Vec<Roster>,
}

/// A roster as it was understood.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Roster {
    /// The title of the class in the file, or the file's name; empty if there is none.
    pub title: String,
    /// Its lines in order; empty ones are left out.
    pub lines: Vec<RosterLine>,
}

/// A line of a roster.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RosterLine {
    /// Its number in the list, from 1.
    pub line: usize,
    /// The given name, a code, or the words of a heading.
    pub first: String,
    /// The family name. It is shown to be checked, and kept only if the teacher chooses so.
    pub last: String,
    /// How it was understood.
    pub reading: LineReading,
}

/// How a line of a roster was understood.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum LineReading {
    /// It names a student.
    Name,
    /// It names a student, with a given name longer than a seat's name can be.
    TooLong,
    /// It is a heading or a title of the list.
    Heading,
    /// It has no name.
    NoName,
    /// It names a student beyond the seats of a class.
    Full,
}

/// A device that handed in for a seat.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeatDevice {
    /// Its number at this desk. Two devices never have the same.
    #[ts(type = "number")]
    pub id: i64,
    /// Its fingerprint, as its settings show it.
    pub fingerprint: String,
    /// Whether its hand-ins count.
    pub state: SeatDeviceState,
    /// The date of the import that brought its first hand-in.
    pub first_seen_on: NaiveDate,
    /// How many of its hand-ins the desk keeps.
    pub hand_ins: usize,
    /// Check-ins and practice results in its newest hand-in.
    pub entries: usize,
}

/// Whether the hand-ins of a device count.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum SeatDeviceState {
    /// They count.
    Accepted,
    /// The teacher has not decided yet.
    Quarantined,
    /// The teacher decided that they do not count.
    Rejected,
}

/// A seat of a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Seat {
    /// 1, 2, 3 ... in the order of the roster.
    pub number: u32,
    /// Given name or code, if the teacher entered one.
    pub name: Option<String>,
    /// The code on the join slip.
    pub code: String,
    /// The devices that handed in for this seat, in the order they came.
    pub devices: Vec<SeatDevice>,
    /// The newest report from this seat.
    pub newest_report: Option<NaiveDate>,
}

/// The set-up of a class.
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
    /// The bounds of practice at home.
    pub practice: PracticeRules,
}

/// How much the desk has of a seat.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeatHoldings {
    /// Kept hand-ins.
    pub hand_ins: u32,
    /// Ratings and results, from devices or from paper.
    pub reports: u32,
    /// Practice answers.
    pub answers: u32,
    /// Observations.
    pub observations: u32,
}

/// A concept in or beside the rotation.
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

/// Where a class is in its rotation today.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassDay {
    /// Today's date.
    pub today: NaiveDate,
    /// Day of the rotation, from 1; none on a day without school.
    pub day: Option<usize>,
    /// Days in the rotation.
    pub rotation_days: usize,
    /// The pass, from 1.
    pub pass: usize,
    /// Passes in the year.
    pub pass_count: usize,
    /// Whether today is a closure.
    pub closed: bool,
    /// The next school day after today.
    pub next: Option<DayAhead>,
    /// First day of the year.
    pub first_day: NaiveDate,
    /// Last day of the year.
    pub last_day: NaiveDate,
    /// The days of the year without school that would have lessons otherwise.
    pub closures: Vec<NaiveDate>,
    /// Whose devices know these days.
    pub known: DaysKnown,
}

/// A school day ahead.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DayAhead {
    /// Its date.
    pub date: NaiveDate,
    /// Its day of the rotation, from 1.
    pub day: usize,
}

/// Whose devices know the year and the rotation as they are at the desk, by the newest hand-in of
/// each seat. Empty before the first class pack.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DaysKnown {
    /// Seats whose device had a class pack with other days.
    pub unaware: Vec<NamedSeat>,
    /// How many seats have not handed in, so that nobody knows which pack they have.
    pub unheard: usize,
}

/// A seat with its name.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NamedSeat {
    /// Its number.
    pub seat: u32,
    /// The name, if it has one.
    pub name: Option<String>,
}
