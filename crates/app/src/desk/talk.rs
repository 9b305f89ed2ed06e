//! The talk plan.

use super::DeskDoor;
use super::board::ClassConcept;
use crate::context::values::Nothing;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_desk::{ProjectorConcept, TalkDay, TalkView};
use ts_rs::TS;

/// The minutes of a talk.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TalkAsked {
    /// The class.
    pub class: String,
    /// The minutes, 1 to 20.
    pub minutes: u32,
    /// Which of the next two school days.
    pub day: TalkDay,
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
    /// The talk plan of one of the next two school days.
    pub fn talk(&self, asked: TalkAsked) -> Result<TalkView, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&asked.class, |desk, class| {
            Ok(surefoot_desk::talk_on(
                desk,
                class,
                language,
                today,
                asked.minutes,
                asked.day,
            )?)
        })
    }

    /// A concept with an exercise to discuss today, for the projector.
    pub fn concept_to_show(&self, asked: ClassConcept) -> Result<ProjectorConcept, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&asked.class, |desk, class| {
            Ok(surefoot_desk::concept_to_show(
                desk,
                class,
                &asked.concept,
                language,
                today,
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
