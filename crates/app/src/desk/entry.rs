//! Paper entries and observations.

use super::DeskDoor;
use crate::context::values::Nothing;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_desk::{EntryDay, EntryMade};
use ts_rs::TS;

/// A day to fill in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct EntryAsked {
    /// The class.
    pub class: String,
    /// The day; `None` for the latest school day.
    pub date: Option<chrono::NaiveDate>,
}

/// Filled-in cells, in their order.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Entries {
    /// The class.
    pub class: String,
    /// The day.
    pub date: chrono::NaiveDate,
    /// The cells.
    pub made: Vec<EntryMade>,
}

impl DeskDoor {
    /// A day to fill in.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] for a date outside the year or in the future.
    pub fn entry_day(&self, asked: EntryAsked) -> Result<EntryDay, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
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

    /// Fills in cells. If one fails, the cells before it stay filled in.
    pub fn make_entries(&self, entries: Entries) -> Result<Nothing, CallError> {
        let today = self.context.today();
        self.with_class(&entries.class, |desk, class| {
            for made in &entries.made {
                surefoot_desk::make_entry(desk, class, entries.date, made, today)?;
            }
            Ok(Nothing {})
        })
    }
}
