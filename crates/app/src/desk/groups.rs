//! Small groups.

use super::{ClassId, DeskDoor};
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_desk::GroupEffort;
use surefoot_desk::{GroupChosen, GroupPage, GroupWishes, GroupsDesk, GroupsView};
use ts_rs::TS;

/// Small groups asked for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupsAsked {
    /// The class.
    pub class: String,
    /// Room, pairs and absences; kept for the next time.
    pub wishes: GroupWishes,
    /// Whether to prove how good the groups are, which takes a second or so.
    pub prove: bool,
}

/// Small groups edited by hand, to be weighed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupsEdited {
    /// The class.
    pub class: String,
    /// Room, pairs and absences.
    pub wishes: GroupWishes,
    /// The groups as edited.
    pub groups: Vec<GroupChosen>,
    /// The suggestion's bound on every plan.
    #[ts(type = "number")]
    pub best_at_most: u64,
}

/// Small groups of a day to keep, in place of any kept before.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupsKept {
    /// The class.
    pub class: String,
    /// The day.
    pub date: chrono::NaiveDate,
    /// The groups; none to take the day away.
    pub groups: Vec<GroupChosen>,
}

/// One page for a group.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupPageAsked {
    /// The class.
    pub class: String,
    /// On what.
    pub concept: String,
    /// Who.
    pub seats: Vec<u32>,
}

/// What came of a group for one student.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupResult {
    /// The class.
    pub class: String,
    /// The day of the group.
    pub date: chrono::NaiveDate,
    /// The seat.
    pub seat: u32,
    /// The concept.
    pub concept: String,
    /// Has it, or needs more; nothing to take the record back.
    pub has_it: Option<bool>,
}

impl DeskDoor {
    /// What the Groups screen opens with.
    pub fn groups_desk(&self, id: ClassId) -> Result<GroupsDesk, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::groups_desk(desk, class, language, today)?)
        })
    }

    /// Suggests groups and keeps the wishes.
    pub fn suggest_groups(&self, asked: GroupsAsked) -> Result<GroupsView, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&asked.class, |desk, class| {
            let effort = if asked.prove {
                GroupEffort::Proven
            } else {
                GroupEffort::Quick
            };
            let found =
                surefoot_desk::plan_groups(desk, class, language, today, &asked.wishes, effort)?;
            surefoot_desk::keep_group_wishes(desk, class, today, &asked.wishes)?;
            Ok(found)
        })
    }

    /// Weighs groups edited by hand.
    pub fn score_groups(&self, edited: GroupsEdited) -> Result<GroupsView, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&edited.class, |desk, class| {
            Ok(surefoot_desk::score_groups(
                desk,
                class,
                language,
                today,
                &edited.wishes,
                &edited.groups,
                edited.best_at_most,
            )?)
        })
    }

    /// Keeps the groups of a day.
    pub fn keep_groups(&self, kept: GroupsKept) -> Result<GroupsDesk, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&kept.class, |desk, class| {
            surefoot_desk::keep_groups(desk, class, kept.date, &kept.groups)?;
            Ok(surefoot_desk::groups_desk(desk, class, language, today)?)
        })
    }

    /// One page for a group.
    pub fn group_page(&self, asked: GroupPageAsked) -> Result<GroupPage, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&asked.class, |desk, class| {
            Ok(surefoot_desk::group_page(
                desk,
                class,
                language,
                today,
                &asked.concept,
                &asked.seats,
            )?)
        })
    }

    /// Records who has it after a group and who needs more.
    pub fn record_group(&self, result: GroupResult) -> Result<GroupsDesk, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&result.class, |desk, class| {
            surefoot_desk::record_group(
                desk,
                class,
                result.date,
                result.seat,
                &result.concept,
                result.has_it,
            )?;
            Ok(surefoot_desk::groups_desk(desk, class, language, today)?)
        })
    }
}
