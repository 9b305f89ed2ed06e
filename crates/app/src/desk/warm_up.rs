//! The warm-up of a day.

use super::DeskDoor;
use crate::error::CallError;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_desk::{WarmUp, WarmUpChoice};
use ts_rs::TS;

/// The day of a warm-up.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct WarmUpAsked {
    /// The class.
    pub class: String,
    /// The school date; none for today or the next school day.
    pub date: Option<NaiveDate>,
}

/// What the teacher chose for a concept of a warm-up.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct WarmUpChange {
    /// The class.
    pub class: String,
    /// The school date.
    pub date: NaiveDate,
    /// The concept.
    pub concept: String,
    /// The choice, which replaces the one before.
    pub choice: WarmUpChoice,
}

impl DeskDoor {
    /// The warm-up of a day.
    ///
    /// # Errors
    /// Returns [`CallError::Invalid`] for a date without school.
    pub fn warm_up(&self, asked: WarmUpAsked) -> Result<WarmUp, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&asked.class, |desk, class| {
            Ok(surefoot_desk::warm_up(
                desk, class, language, today, asked.date,
            )?)
        })
    }

    /// Changes the exercise of a concept, or leaves it out, in the pass of a date.
    ///
    /// # Errors
    /// Returns [`CallError::NotFound`] for a concept or an own exercise that does not fit the day.
    pub fn change_warm_up(&self, change: WarmUpChange) -> Result<WarmUp, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&change.class, |desk, class| {
            let (date, choice) = (change.date, &change.choice);
            surefoot_desk::choose_warm_up(desk, class, date, &change.concept, choice)?;
            Ok(surefoot_desk::warm_up(
                desk,
                class,
                language,
                today,
                Some(date),
            )?)
        })
    }
}
