//! What the screens are given that is about the device, not about a class.

use crate::{CallError, DamagedStore, YearOver};
use serde::{Deserialize, Serialize};
use surefoot_desk::{ClassSummary, ImportReport};
use surefoot_student::views::{Language, Profile};
use ts_rs::TS;

/// Nothing to say.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, TS)]
pub struct Nothing {}

/// Messages in Fluent's form.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MessageFile {
    /// What it is about, such as `items-fractions`.
    pub area: String,
    /// Its text.
    pub text: String,
}

/// Whose data the screens work on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum World {
    /// The person's own.
    Own,
    /// The invented sample class, in a folder of its own.
    Sample,
}

/// Colours of the screens.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum Theme {
    /// As the system says.
    System,
    /// Ink on paper.
    Light,
    /// Dark.
    Dark,
    /// High contrast, black on white.
    Contrast,
    /// High contrast, white on black.
    ContrastDark,
}

/// Settings of this device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DeviceSettings {
    /// Language of the start and of the teacher's screens.
    pub language: Language,
    /// Colours.
    pub theme: Theme,
    /// Whether names are covered on the teacher's screens.
    pub names_covered: bool,
    /// Screens whose guide was read; `all`: none is shown by itself.
    #[serde(default)]
    pub guides_read: Vec<String>,
}

/// Where the program stands when it opens.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Start {
    /// Today, as this device's calendar has it (in the sample class: the latest weekday).
    pub today: chrono::NaiveDate,
    /// Version of the program.
    pub version: String,
    /// Whose data is open.
    pub world: World,
    /// Whether the sample class has been made.
    pub sample_ready: bool,
    /// Students on this device.
    pub students: Vec<Profile>,
    /// Classes on this device.
    pub classes: Vec<ClassSummary>,
    /// Stores that cannot be opened, for the person to decide about.
    pub damaged: Vec<DamagedStore>,
    /// School years that are over while their data is still here.
    pub years_over: Vec<YearOver>,
    /// What was removed from the desk, while it can be brought back; the newest first.
    pub removed: Vec<crate::Removed>,
    /// Whether a file can be handed to another program by the system's share sheet.
    pub shares: bool,
    /// Settings of this device.
    pub settings: DeviceSettings,
}

/// A student by profile.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StudentId {
    /// The profile's id.
    pub student: String,
}

/// A class by id.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassId {
    /// The class's id.
    pub class: String,
}

/// A long job by number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct JobId {
    /// Its number.
    pub job: u32,
}

/// How far a long job is. Ask again every 200 ms or so until `result` stands.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct JobState {
    /// Steps done.
    pub done: u32,
    /// Steps in all; 0 while unknown.
    pub total: u32,
    /// What came of it, once over.
    pub result: Option<JobResult>,
}

/// What came of a long job.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum JobResult {
    /// The sample class stands.
    SampleReady,
    /// An import is over, perhaps stopped on the way.
    Import {
        /// Its account.
        account: ImportReport,
    },
    /// It failed, or was stopped.
    Failed {
        /// Why.
        error: CallError,
    },
}

/// A class pack that a person picked, before joining with it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PackOffer {
    /// Names the picked pack in [`Join`].
    pub pack: u32,
    /// The class's title.
    pub class_title: String,
    /// Concepts in its rotation.
    pub concepts: usize,
    /// First day of its school year.
    pub first_day: chrono::NaiveDate,
    /// Last day of its school year.
    pub last_day: chrono::NaiveDate,
}

/// Joining a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Join {
    /// The picked pack.
    pub pack: u32,
    /// The code from the slip, as typed.
    pub seat_code: String,
    /// 1 to 24 characters; stays on this device.
    pub nickname: String,
    /// A picture's id; stays on this device.
    pub picture: String,
    /// The student's language.
    pub language: Language,
}

/// The check of a seat code while it is typed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeatCodeTyped {
    /// The picked pack.
    pub pack: u32,
    /// The code as typed.
    pub seat_code: String,
}

/// What a student's device made of a picked class pack.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PackTaken {
    /// The version now held.
    pub version: u32,
    /// Assignments in it that are still open.
    pub open_assignments: usize,
}
