//! Calls of the screens a teacher works with in class: talk, groups, entering
//! a day, ratings beside results.

use crate::app::App;
use crate::{
    CallError, ClassId, Entries, EntryAsked, GroupPageAsked, GroupResult, GroupsAsked,
    GroupsEdited, GroupsKept, Nothing, SeatId, TalkAsked, TalkNoted,
};
use surefoot_desk::{self, GroupEffort};
use surefoot_desk::{Comparison, EntryDay, StudentPage, TalkView};
use surefoot_desk::{GroupPage, GroupsDesk, GroupsView};

impl App {
    /// Ratings beside results.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn comparison(&self, id: ClassId) -> Result<Comparison, CallError> {
        let (language, today) = (self.language(), self.this_day());
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::comparison(desk, class, language, today)?)
        })
    }

    /// A student over all concepts.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn student_page(&self, id: SeatId) -> Result<StudentPage, CallError> {
        let (language, today) = (self.language(), self.this_day());
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::student_page(
                desk, class, id.seat, language, today,
            )?)
        })
    }

    /// Today's talk plan.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
    pub fn talk(&self, asked: TalkAsked) -> Result<TalkView, CallError> {
        let (language, today) = (self.language(), self.this_day());
        self.with_class(&asked.class, |desk, class| {
            Ok(surefoot_desk::talk(
                desk,
                class,
                language,
                today,
                asked.minutes,
            )?)
        })
    }

    /// Notes what was talked about.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn note_talk(&self, noted: TalkNoted) -> Result<Nothing, CallError> {
        self.with_class(&noted.class, |desk, class| {
            surefoot_desk::note_talk(desk, class, noted.date, &noted.concept, noted.talked)?;
            Ok(Nothing {})
        })
    }

    /// What the Groups screen opens with.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn groups_desk(&self, id: ClassId) -> Result<GroupsDesk, CallError> {
        let (language, today) = (self.language(), self.this_day());
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::groups_desk(desk, class, language, today)?)
        })
    }

    /// Suggests groups and keeps the wishes.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
    pub fn suggest_groups(&self, asked: GroupsAsked) -> Result<GroupsView, CallError> {
        let (language, today) = (self.language(), self.this_day());
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
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's.
    pub fn score_groups(&self, edited: GroupsEdited) -> Result<GroupsView, CallError> {
        let (language, today) = (self.language(), self.this_day());
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
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn keep_groups(&self, kept: GroupsKept) -> Result<GroupsDesk, CallError> {
        let (language, today) = (self.language(), self.this_day());
        self.with_class(&kept.class, |desk, class| {
            surefoot_desk::keep_groups(desk, class, kept.date, &kept.groups)?;
            Ok(surefoot_desk::groups_desk(desk, class, language, today)?)
        })
    }

    /// One page for a group.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn group_page(&self, asked: GroupPageAsked) -> Result<GroupPage, CallError> {
        let (language, today) = (self.language(), self.this_day());
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
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn record_group(&self, result: GroupResult) -> Result<GroupsDesk, CallError> {
        let (language, today) = (self.language(), self.this_day());
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

    /// A day to fill in: the one asked for, or the latest school day.
    ///
    /// # Errors
    /// [`CallError::Invalid`] for a date outside the year or to come,
    /// [`CallError::NotFound`], or the store's.
    pub fn entry_day(&self, asked: EntryAsked) -> Result<EntryDay, CallError> {
        let (language, today) = (self.language(), self.this_day());
        self.with_class(&asked.class, |desk, class| {
            let date = asked
                .date
                .or_else(|| class.facts.year.latest_school_day(today))
                .unwrap_or(today);
            Ok(surefoot_desk::entry_day(
                desk, class, language, date, today,
            )?)
        })
    }

    /// Fills cells in.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::NotFound`], or the store's. What
    /// came before the one that failed stands.
    pub fn make_entries(&self, entries: Entries) -> Result<Nothing, CallError> {
        let today = self.this_day();
        self.with_class(&entries.class, |desk, class| {
            for made in &entries.made {
                surefoot_desk::make_entry(desk, class, entries.date, made, today)?;
            }
            Ok(Nothing {})
        })
    }
}
