//! What the screens show of what was taught again.

use crate::estimate::GroupMember;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_record::ConceptName;
use ts_rs::TS;

/// Where an entry came from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum TaughtFromWhere {
    /// The talk with the class.
    Talk,
    /// A small group.
    Group,
    /// An assignment.
    Assignment,
    /// Entered by hand.
    Hand,
}

/// A concept that was taught again, to be noted.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewTaughtAgain {
    /// The entry that it replaces.
    #[ts(type = "number | null")]
    pub replaces: Option<i64>,
    /// School date.
    pub date: NaiveDate,
    /// The concept.
    pub concept: String,
    /// Where the entry came from.
    pub came_from: TaughtFromWhere,
    /// The seats of those who were taught; none for everybody who was there.
    pub seats: Vec<u32>,
    /// What was done, in the teacher's words.
    pub note: Option<String>,
}

/// What was taught again in a class.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct TaughtAgainLog {
    /// Today.
    pub today: NaiveDate,
    /// The first day of the school year.
    pub first_day: NaiveDate,
    /// The latest school day up to today; none before the first one.
    pub school_day: Option<NaiveDate>,
    /// Concepts that can be noted: those of the rotation that have been taught, in their order.
    pub concepts: Vec<ConceptName>,
    /// Every seat.
    pub seats: Vec<GroupMember>,
    /// The entries, latest date first.
    pub entries: Vec<TaughtAgainEntry>,
}

/// A concept that was taught again, and what came of it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct TaughtAgainEntry {
    /// Its number at this desk.
    #[ts(type = "number")]
    pub id: i64,
    /// School date.
    pub date: NaiveDate,
    /// The concept.
    pub concept: ConceptName,
    /// Where the entry came from.
    pub came_from: TaughtFromWhere,
    /// Whether it was for everybody who was there.
    pub whole_class: bool,
    /// Those who were taught.
    pub members: Vec<TaughtMember>,
    /// What was done, in the teacher's words.
    pub note: Option<String>,
    /// Whether it helped.
    pub help: HelpView,
}

/// A student who was taught again.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TaughtMember {
    /// The seat.
    pub seat: u32,
    /// Its name.
    pub name: Option<String>,
    /// What the teacher recorded on that day: whether the student has it.
    pub recorded: Option<bool>,
}

/// Whether teaching again helped.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct HelpView {
    /// What is said.
    pub says: HelpSays,
    /// The day on which the first or the next verdict is due; none if no later verdict follows.
    pub next_on: Option<NaiveDate>,
    /// The last day whose reports were looked at.
    pub until: Option<NaiveDate>,
    /// Passes since then that were looked at, 0 to 3.
    pub passes: usize,
    /// Students of these who were taught the concept once more. What came after that is left out.
    pub once_more: usize,
    /// The numbers behind it; none if nothing was compared.
    pub numbers: Option<HelpNumbers>,
}

/// What is said of a concept that was taught again.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum HelpSays {
    /// Those taught rose more than the others.
    RoseMore,
    /// They likely did.
    LikelyRoseMore,
    /// The range holds both no effect and a clear one.
    CannotTell,
    /// No effect was found, and a clear one is ruled out.
    NoSign,
    /// The first pass since then is not over.
    TooSoon,
    /// Those taught have no result since then.
    NoAnswers,
    /// Too few other concepts have results in the same time.
    FewOthers,
    /// All were taught once more before a pass was over; the later entries have the verdict.
    TaughtOnceMore,
}

/// The results behind a verdict: what those taught marked in the review since then, and what the
/// teacher observed on later days.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct HelpNumbers {
    /// Results of those taught.
    pub answers: u32,
    /// Right ones among them.
    pub right: u32,
    /// How many would be right by what was known on the day of teaching.
    #[ts(type = "number")]
    pub foretold: i64,
    /// How many would be right if those taught had also moved as the others did.
    #[ts(type = "number")]
    pub expected: i64,
    /// How many more than expected are right apart from chance: low end of the likely range (80%).
    #[ts(type = "number")]
    pub more_low: i64,
    /// High end of it. What is right beyond the expected lies between both.
    #[ts(type = "number")]
    pub more_high: i64,
    /// Exercises on the concept that those taught practised since then. They are not counted.
    pub practised: u32,
    /// Concepts that were not taught again, compared with.
    pub concepts: usize,
}
