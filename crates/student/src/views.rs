//! What the student's screens show.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
pub use surefoot_catalogue::Language;
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_catalogue::rotation::Phase;
use surefoot_record::{Appearance, ConceptName, Goal};
use ts_rs::TS;

/// One student on this device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Profile {
    /// The name of the student's store on this device.
    pub id: String,
    /// The nickname that the student typed.
    pub nickname: String,
    /// The id of the student's avatar.
    pub avatar: String,
    /// The student's language.
    pub language: Language,
    /// How the screens look and sound.
    pub appearance: Appearance,
    /// The class's title from its class pack.
    pub class_title: String,
    /// Whether the student must type a PIN.
    pub has_pin: bool,
    /// Whether this device keeps a hash of the slip's PIN signs, so that a new PIN needs no
    /// seat code.
    pub has_pin_signs: bool,
}

/// The review of one date as one student sees it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Today {
    /// The date shown.
    pub date: NaiveDate,
    /// Today's date.
    pub today: NaiveDate,
    /// The pass from 1; nothing if `date` is no school day.
    pub pass: Option<usize>,
    /// The day of the rotation from 1; nothing if `date` is no school day.
    pub day: Option<usize>,
    /// Days in the rotation.
    pub rotation_days: usize,
    /// The date for which the student said the day, if that decides the day shown.
    pub said_on: Option<NaiveDate>,
    /// The concepts in the order of the review, then others that were marked on this date.
    pub concepts: Vec<TodayConcept>,
    /// The next school day, if `date` is none.
    pub next_school_day: Option<NaiveDate>,
    /// Recent school days that have a concept without a rating, newest first, at most five.
    pub catch_up: Vec<NaiveDate>,
}

/// One concept of a review.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TodayConcept {
    /// The concept.
    pub concept: ConceptName,
    /// Its phase on this date.
    pub phase: Phase,
    /// The rating, if one was given.
    pub confidence: Option<Confidence>,
    /// The outcome, if it was marked.
    pub outcome: Option<Outcome>,
    /// Whether it is in the review of this date; otherwise it was marked before the days moved.
    pub in_review: bool,
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
    /// The concepts of the rotation, strand by strand.
    pub concepts: Vec<PathConcept>,
    /// The student's focus, at most three concepts.
    pub focus: Vec<String>,
    /// The student's goals, at most three. No hand-in holds them.
    pub goals: Vec<Goal>,
    /// How many ratings count, one for each concept and date.
    pub rated: usize,
    /// How many finished exercises count.
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
    /// Exercises finished.
    pub answered: u32,
    /// Of these, right without help.
    pub alone: u32,
    /// Of these, right with a hint or at the second try.
    pub with_help: u32,
}

/// What a hand-in would hold now.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct HandInPreview {
    /// The title of the class that it is for.
    pub class_title: String,
    /// Check-ins in it that count.
    pub check_ins: usize,
    /// Finished exercises in it that count.
    pub answers: usize,
    /// The date of the last hand-in, if one was made.
    pub last_made_on: Option<NaiveDate>,
    /// Check-ins and finished exercises since the last hand-in, on dates that count.
    pub new_since: usize,
    /// Dates with check-ins that count.
    pub days: usize,
}

/// A hand-in that was made.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct HandInMade {
    /// The file's name.
    pub file_name: String,
    /// The folder or app that it was saved to, as the shell names it; nothing if it was not
    /// saved.
    pub place: Option<String>,
    /// Whether it was handed to another program instead, which may or may not have sent it.
    pub shared: bool,
    /// Check-ins in it that count.
    pub check_ins: usize,
    /// Finished exercises in it that count.
    pub answers: usize,
}

/// A student's settings, with the teacher's bounds.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StudentSettings {
    /// Language of the screens.
    pub language: Language,
    /// Minutes of an evening.
    pub minutes: u32,
    /// The fewest minutes that the teacher allows.
    pub minutes_least: u32,
    /// The most minutes that the teacher allows.
    pub minutes_most: u32,
    /// Exercises of an evening; nothing if it ends by minutes.
    pub exercises: Option<u32>,
    /// The fewest exercises that fit the teacher's bounds in minutes.
    pub exercises_least: u32,
    /// The most exercises that fit the teacher's bounds in minutes.
    pub exercises_most: u32,
    /// Evenings of a week.
    pub evenings: u32,
    /// The fewest evenings that the teacher allows.
    pub evenings_least: u32,
    /// The most evenings that the teacher allows.
    pub evenings_most: u32,
    /// The date of the test that practice aims at; nothing if none lies ahead.
    pub test_on: Option<NaiveDate>,
    /// How the screens look and sound.
    pub appearance: Appearance,
    /// The fingerprint of this device, which the teacher's desk shows too.
    pub fingerprint: String,
}
