//! What the student's screens are given.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
pub use surefoot_catalogue::Language;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_catalogue::rotation::Phase;
use surefoot_record::{Appearance, ConceptName, Goal};
use ts_rs::TS;

/// One student on this device. The nickname and the picture never leave it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Profile {
    /// Names the student's database file on this device.
    pub id: String,
    /// As the student typed it.
    pub nickname: String,
    /// One of the pictures that come with the program, by its id.
    pub picture: String,
    /// The student's language.
    pub language: Language,
    /// How the screens look and sound for the student.
    pub appearance: Appearance,
    /// The class's title from its class pack.
    pub class_title: String,
    /// Whether a PIN must be typed first.
    pub has_pin: bool,
}

/// A day of the review as one student sees it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Today {
    /// The date shown.
    pub date: NaiveDate,
    /// What "today" is.
    pub today: NaiveDate,
    /// Pass and day from 1, when `date` is a school day.
    pub pass: Option<usize>,
    /// Day of the rotation from 1.
    pub day: Option<usize>,
    /// Days in the rotation.
    pub rotation_days: usize,
    /// The day's concepts in the order of the review; empty without school.
    pub concepts: Vec<TodayConcept>,
    /// The next school day, when today is none.
    pub next_school_day: Option<NaiveDate>,
    /// Recent school days with something left to rate, newest first, at most five.
    pub catch_up: Vec<NaiveDate>,
}

/// One concept of the day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TodayConcept {
    /// The concept.
    pub concept: ConceptName,
    /// Preview, practice or review on this date.
    pub phase: Phase,
    /// The rating given, if any.
    pub confidence: Option<Confidence>,
    /// How it went, if marked.
    pub outcome: Option<Outcome>,
}

/// A student's year.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MyPath {
    /// The school year.
    pub year: SchoolYear,
    /// The pass of today, from 0.
    pub pass: usize,
    /// Passes in the year.
    pub pass_count: usize,
    /// Strand by strand.
    pub concepts: Vec<PathConcept>,
    /// Concepts the student chose to work on, at most three.
    pub focus: Vec<String>,
    /// Goals in the student's own words, at most three. They stay on the device.
    pub goals: Vec<Goal>,
    /// Check-ins this year, counted by concept and date.
    pub rated: usize,
    /// Exercises finished this year.
    pub practised: usize,
}

/// One concept on the path.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PathConcept {
    /// The concept.
    pub concept: ConceptName,
    /// Its phase today.
    pub phase: Phase,
    /// The last rating of each pass so far.
    pub ratings: Vec<Option<Confidence>>,
    /// Exercises answered.
    pub answered: u32,
    /// Of these, right without help.
    pub alone: u32,
    /// Of these, right with a hint or at the second try.
    pub with_help: u32,
}

/// What a hand-in would hold.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct HandInPreview {
    /// The class it goes to.
    pub class_title: String,
    /// Check-ins it would hold.
    pub check_ins: usize,
    /// Exercises counted in it.
    pub answers: usize,
    /// When the last one was made.
    pub last_made_on: Option<NaiveDate>,
    /// Check-ins and exercises since the last one.
    pub new_since: usize,
    /// Days with check-ins.
    pub days: usize,
}

/// A hand-in that stands as a file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct HandInMade {
    /// The file's name.
    pub file_name: String,
    /// Where it was put, as the shell names it; nothing when the person changed their mind.
    pub place: Option<String>,
    /// Handed to another program instead; whether that one sent it, it does not say.
    pub shared: bool,
    /// Size of the sealed file.
    pub bytes: usize,
    /// Check-ins in it.
    pub check_ins: usize,
    /// Exercises counted in it.
    pub answers: usize,
}

/// How much a student wants to practise.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StudentSettings {
    /// Language of the screens.
    pub language: Language,
    /// Minutes of an evening.
    pub minutes: u32,
    /// The fewest the teacher set.
    pub minutes_least: u32,
    /// The most the teacher set.
    pub minutes_most: u32,
    /// Exercises of an evening; nothing when it ends by minutes.
    pub exercises: Option<u32>,
    /// The fewest that the teacher's minutes leave.
    pub exercises_least: u32,
    /// The most that the teacher's minutes leave.
    pub exercises_most: u32,
    /// Evenings a week.
    pub evenings: u32,
    /// The fewest the teacher allows.
    pub evenings_least: u32,
    /// The most the teacher allows.
    pub evenings_most: u32,
    /// A test that practice aims at, while it lies ahead.
    pub test_on: Option<NaiveDate>,
    /// How the screens look and sound.
    pub appearance: Appearance,
}
