//! What the Groups screen shows and sends.

use crate::estimate::{GroupMember, MisconceptionCount, PracticeSums};
use crate::sample::SampleExercise;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::rating::Confidence;
use surefoot_catalogue::rating::Outcome;
use surefoot_record::ConceptName;
use ts_rs::TS;

/// The wishes for small groups.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupWishes {
    /// Times at which groups can meet, 1 to 6.
    pub slots: usize,
    /// Groups at the same time, 1 to 12.
    pub groups_at_once: usize,
    /// Students of a group at least.
    pub size_least: usize,
    /// Students of a group at most, up to 12. Groups of two to five gain most (EEF toolkit, small
    /// group tuition); above six the gain is smaller.
    pub size_most: usize,
    /// Seats that must not sit together.
    pub keep_apart: Vec<(u32, u32)>,
    /// Seats that should sit together.
    pub keep_together: Vec<(u32, u32)>,
    /// Seats that are absent today.
    pub absent: Vec<u32>,
    /// Whether each group gets a partner: a student who has the concept, says so, and is in no
    /// group at that time.
    pub with_partner: bool,
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
            with_partner: false,
        }
    }
}

/// Students who sit in groups on a concept before anything else is planned, as a sentence of the first
/// screen names them.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupsFirst {
    /// The concept.
    pub concept: String,
    /// Their seats.
    pub seats: Vec<u32>,
}

/// Small groups, suggested or edited by hand.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupsView {
    /// The groups by slot.
    pub groups: Vec<GroupView>,
    /// Whether there are results and practice enough to say who needs a concept. Otherwise the
    /// groups go by order alone: "in need" is then the weaker half of all pairs of a student and
    /// a planned concept.
    pub level_known: bool,
    /// Students who need a planned concept and are in no group.
    pub unplaced: Vec<GroupMember>,
    /// What each student works on alone while others sit in a group: the concept with exercises
    /// that the student needs most and has no lesson on. Students who need none are left out.
    pub alone: Vec<AloneWork>,
    /// How many present students need a planned concept.
    pub in_need: usize,
    /// The value of the plan, for needs met and students reached.
    #[ts(type = "number")]
    pub value: u64,
    /// An upper bound for the value of every plan under these wishes.
    #[ts(type = "number")]
    pub best_at_most: u64,
    /// The share of the best value that this plan misses at most; 0 means that it is the best.
    pub proven_gap: f64,
    /// Rules that the plan breaks; a suggestion breaks none.
    pub faults: Vec<GroupFault>,
}

/// A small group.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupView {
    /// The slot, from 0.
    pub slot: usize,
    /// The concept.
    pub concept: ConceptName,
    /// Those who are taught.
    pub members: Vec<GroupMember>,
    /// Those who have the concept and explain it.
    pub partners: Vec<GroupMember>,
}

/// What a student works on alone.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AloneWork {
    /// The seat.
    pub seat: u32,
    /// The concept.
    pub concept: ConceptName,
}

/// A small group that the teacher kept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct KeptGroup {
    /// The slot, from 0.
    pub slot: usize,
    /// The concept.
    pub concept: ConceptName,
    /// Those who are taught.
    pub members: Vec<GroupMember>,
    /// Those who have the concept and explain it.
    pub partners: Vec<GroupMember>,
    /// Students who were absent that day and need the concept.
    pub missed: Vec<GroupMember>,
}

/// A rule that a plan breaks.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupFault {
    /// Which rule.
    pub kind: GroupFaultKind,
    /// The students concerned.
    pub students: Vec<GroupMember>,
    /// The slot, from 0.
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
    /// A student who is absent.
    Absent,
    /// A student in two groups at once.
    TwiceInSlot,
    /// A student twice on the same concept.
    TwiceOnConcept,
    /// Two students who must not sit together.
    Apart,
    /// Two students who should sit together.
    Split,
    /// More groups in a slot than there is room for.
    TooManyGroups,
    /// More than two groups on one concept in a slot.
    TooManyCopies,
    /// A slot that the wishes do not have.
    NoSuchSlot,
}

/// A group that the teacher arranged.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupChosen {
    /// The slot, from 0.
    pub slot: usize,
    /// The concept.
    pub concept: String,
    /// The seats of those who are taught.
    pub seats: Vec<u32>,
    /// The seats of those who have the concept and explain it.
    pub partners: Vec<u32>,
}

/// What the Groups screen shows when it opens.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupsDesk {
    /// Today.
    pub today: NaiveDate,
    /// Every seat.
    pub seats: Vec<GroupMember>,
    /// The kept wishes, with the absences of today.
    pub wishes: GroupWishes,
    /// Concepts of the rotation that have been taught, weakest first.
    pub concepts: Vec<ConceptName>,
    /// The next school day, if the year has one.
    pub next_day: Option<NaiveDate>,
    /// Kept groups, newest day first, at most 30 days.
    pub kept: Vec<GroupsOfDay>,
}

/// The kept groups of a day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupsOfDay {
    /// The day.
    pub date: NaiveDate,
    /// The groups by slot.
    pub groups: Vec<KeptGroup>,
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
    /// Whether the student has it.
    pub has_it: bool,
}

/// The page of a group.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct GroupPage {
    /// The concept.
    pub concept: ConceptName,
    /// Grade 3 to 6.
    pub grade: u8,
    /// The members, with their last rating and result.
    pub members: Vec<PageMember>,
    /// Misconceptions of these students on the concept, most first.
    pub misconceptions: Vec<MisconceptionCount>,
    /// Prerequisites that some members lack; empty while the level is not known.
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
    /// Probability that the student has the concept; none while the level is not known.
    pub has_it: Option<f64>,
    /// The last rating.
    pub rating: Option<Confidence>,
    /// The last marked result.
    pub outcome: Option<Outcome>,
    /// Practice answers.
    pub practice: PracticeSums,
}

/// A prerequisite that members lack.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, TS)]
pub struct PageFirst {
    /// The concept.
    pub concept: ConceptName,
    /// The members who likely lack it.
    pub lacking: Vec<GroupMember>,
}
