//! The talk plan.

use super::DeskDoor;
use crate::context::values::Nothing;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_desk::TalkView;
use ts_rs::TS;

/// The minutes of a talk.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TalkAsked {
    /// The class.
    pub class: String,
    /// The minutes, 1 to 20.
    pub minutes: u32,
}

/// A concept that was discussed, or not.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TalkNoted {
    /// The class.
    pub class: String,
    /// The day.
    pub date: chrono::NaiveDate,
    /// The concept.
    pub concept: String,
    /// Whether it was discussed.
    pub talked: bool,
}

impl DeskDoor {
    /// Today's talk plan.
    pub fn talk(&self, asked: TalkAsked) -> Result<TalkView, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
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

    /// Records that a concept was discussed, or removes that record.
    pub fn note_talk(&self, noted: TalkNoted) -> Result<Nothing, CallError> {
        self.with_class(&noted.class, |desk, class| {
            surefoot_desk::note_talk(desk, class, noted.date, &noted.concept, noted.talked)?;
            Ok(Nothing {})
        })
    }
}
