//! Small groups.

use super::{ClassId, DeskDoor};
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_desk::GroupEffort;
use surefoot_desk::{GroupChosen, GroupPage, GroupWishes, GroupsDesk, GroupsFirst, GroupsView};
use ts_rs::TS;

/// The wishes for small groups.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupsAsked {
    /// The class.
    pub class: String,
    /// Room, pairs and absences; the desk keeps them.
    pub wishes: GroupWishes,
    /// The groups that come first, if any.
    pub first: Option<GroupsFirst>,
    /// Whether to compute a proven bound, which takes about a second.
    pub prove: bool,
}

/// Small groups edited by hand, to be scored.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupsEdited {
    /// The class.
    pub class: String,
    /// Room, pairs and absences.
    pub wishes: GroupWishes,
    /// The groups as edited.
    pub groups: Vec<GroupChosen>,
    /// The upper bound that came with the suggestion.
    #[ts(type = "number")]
    pub best_at_most: u64,
}

/// Small groups of a day, which replace those kept before.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupsKept {
    /// The class.
    pub class: String,
    /// The day.
    pub date: chrono::NaiveDate,
    /// The groups; an empty list removes the day.
    pub groups: Vec<GroupChosen>,
}

/// A group whose page is asked for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GroupPageAsked {
    /// The class.
    pub class: String,
    /// The concept.
    pub concept: String,
    /// Its seats.
    pub seats: Vec<u32>,
}

/// What the teacher records about one student after a group.
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
    /// Whether the student has the concept; `None` removes the record.
    pub has_it: Option<bool>,
}

impl DeskDoor {
    /// What the Groups screen shows when it opens.
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
            let first = asked.first.as_ref();
            let wishes = &asked.wishes;
            let found =
                surefoot_desk::plan_groups(desk, class, language, today, wishes, first, effort)?;
            surefoot_desk::keep_group_wishes(desk, class, today, &asked.wishes)?;
            Ok(found)
        })
    }

    /// Scores groups that were edited by hand.
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

    /// The page of a group.
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

    /// Records after a group whether a student has the concept.
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
