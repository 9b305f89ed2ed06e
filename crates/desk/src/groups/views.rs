//! What the Groups screen shows and sends.

use crate::estimate::GroupMember;
use crate::estimate::MisconceptionCount;
use crate::sample::SampleExercise;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::rating::Confidence;
use surefoot_catalogue::rating::Outcome;
use surefoot_record::ConceptName;
use ts_rs::TS;

/// What the teacher has room for, and who sits with whom.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupWishes {
    /// Times at which groups meet, one after the other, 1 to 6.
    pub slots: usize,
    /// Groups at the same time, 1 to 12.
    pub groups_at_once: usize,
    /// Fewest students of a group.
    pub size_least: usize,
    /// Most students of a group, at most 12. Groups of two to five gain most
    /// (EEF toolkit, small group tuition); above six the gain falls off.
    pub size_most: usize,
    /// Seats that must not sit together.
    pub keep_apart: Vec<(u32, u32)>,
    /// Seats that should sit together.
    pub keep_together: Vec<(u32, u32)>,
    /// Seats that are not there today.
    pub absent: Vec<u32>,
}

impl Default for GroupWishes {
    fn default() -> Self {
        Self {
            slots: 2,
            groups_at_once: 3,
            size_least: 2,
            size_most: 5,
            keep_apart: Vec::new(),
            keep_together: Vec::new(),
            absent: Vec::new(),
        }
    }
}

/// Small groups, suggested or edited by hand.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupsView {
    /// The groups by slot.
    pub groups: Vec<GroupView>,
    /// Students who need something and found no place.
    pub unplaced: Vec<GroupMember>,
    /// Students who need something that is planned for and are there.
    pub in_need: usize,
    /// Worth of the plan: needs met, and students reached.
    #[ts(type = "number")]
    pub value: u64,
    /// No plan under these wishes is worth more.
    #[ts(type = "number")]
    pub best_at_most: u64,
    /// How far from the best plan this one can be at most, 0 to 1; 0 is proved best.
    pub proven_gap: f64,
    /// Rules that the plan breaks; a suggestion breaks none.
    pub faults: Vec<GroupFault>,
}

/// A small group.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupView {
    /// When, from 0.
    pub slot: usize,
    /// On what.
    pub concept: ConceptName,
    /// Who.
    pub members: Vec<GroupMember>,
}

/// A rule that a plan breaks.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupFault {
    /// Which rule.
    pub kind: GroupFaultKind,
    /// The students concerned.
    pub students: Vec<GroupMember>,
    /// When, from 0.
    pub slot: Option<usize>,
    /// The concept concerned.
    pub concept: Option<ConceptName>,
}

/// The rules of a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum GroupFaultKind {
    /// Too few or too many in a group.
    Size,
    /// A student who does not need the concept.
    NotNeeded,
    /// A student who is not there.
    Absent,
    /// A student in two groups at once.
    TwiceInSlot,
    /// A student twice on the same concept.
    TwiceOnConcept,
    /// Two who are to be kept apart.
    Apart,
    /// Two who are to be kept together.
    Split,
    /// More groups at once than there is room for.
    TooManyGroups,
    /// More than two groups on one concept at once.
    TooManyCopies,
    /// A slot that the wishes do not have.
    NoSuchSlot,
}

/// A group as the teacher arranged it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupChosen {
    /// When, from 0.
    pub slot: usize,
    /// On what.
    pub concept: String,
    /// Who.
    pub seats: Vec<u32>,
}

/// What the Groups screen opens with.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupsDesk {
    /// What "today" is.
    pub today: NaiveDate,
    /// Every seat.
    pub seats: Vec<GroupMember>,
    /// The wishes as last given; who is absent today.
    pub wishes: GroupWishes,
    /// Concepts of the rotation that have been taught, weakest first.
    pub concepts: Vec<ConceptName>,
    /// Groups that were kept, newest day first, at most ten days.
    pub kept: Vec<GroupsOfDay>,
}

/// The groups of a day, with the records made afterwards.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupsOfDay {
    /// The day.
    pub date: NaiveDate,
    /// The groups by slot.
    pub groups: Vec<GroupView>,
    /// What the teacher recorded afterwards.
    pub records: Vec<GroupRecord>,
}

/// The record of one student after a group.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupRecord {
    /// The seat.
    pub seat: u32,
    /// The concept.
    pub concept: String,
    /// Whether the student has it; otherwise needs more.
    pub has_it: bool,
}

/// One page for one group.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupPage {
    /// On what.
    pub concept: ConceptName,
    /// Grade 3 to 6.
    pub grade: u8,
    /// The members, with their last rating and result.
    pub members: Vec<PageMember>,
    /// Misconceptions of these students on the concept, most first.
    pub misconceptions: Vec<MisconceptionCount>,
    /// Concepts it builds on that not all of them have.
    pub first: Vec<PageFirst>,
    /// Exercises to do in the group, from entry to stretch level.
    pub exercises: Vec<SampleExercise>,
}

/// A student on a group's page.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct PageMember {
    /// The seat.
    pub seat: u32,
    /// Its name.
    pub name: Option<String>,
    /// Probability that the student has the concept; none while ratings are alone.
    pub has_it: Option<f64>,
    /// The last rating.
    pub rating: Option<Confidence>,
    /// The last result marked.
    pub outcome: Option<Outcome>,
    /// Practice answers: alone, with help, wrong.
    pub practice: [u32; 3],
}

/// A concept to look at first, and who lacks it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct PageFirst {
    /// The concept.
    pub concept: ConceptName,
    /// Members who seem not to have it.
    pub lacking: Vec<GroupMember>,
}
