//! The day of the class, and who has not.

use super::{ClassId, DeskDoor};
use crate::error::CallError;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_desk::{ClassDay, WhoHasNot};
use ts_rs::TS;

/// A day without school, or a school day again.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DayClosed {
    /// The class.
    pub class: String,
    /// The date.
    pub date: NaiveDate,
    /// Whether it is without school.
    pub closed: bool,
}

/// The list of what is missing in a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct WhoHasNotAsked {
    /// The class.
    pub class: String,
    /// School days without a hand-in until a seat is listed, 1 to 40.
    pub school_days: usize,
}

impl DeskDoor {
    /// The day of the class.
    pub fn class_day(&self, id: ClassId) -> Result<ClassDay, CallError> {
        let today = self.context.today();
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::class_day(desk, class, today)?)
        })
    }

    /// Makes a date a day without school, or a school day again.
    pub fn close_day(&self, asked: DayClosed) -> Result<ClassDay, CallError> {
        self.with_desk(|desk| {
            Ok(surefoot_desk::close_day(
                desk,
                &asked.class,
                asked.date,
                asked.closed,
            )?)
        })?;
        self.class_day(ClassId { class: asked.class })
    }

    /// Lists what is missing in a class, and of whom.
    pub fn who_has_not(&self, asked: WhoHasNotAsked) -> Result<WhoHasNot, CallError> {
        let today = self.context.today();
        self.with_class(&asked.class, |desk, class| {
            Ok(surefoot_desk::who_has_not(
                desk,
                class,
                asked.school_days,
                today,
            )?)
        })
    }
}
