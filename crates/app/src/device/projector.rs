//! The projector without names, also while the desk is locked.

use super::DeviceDoor;
use crate::context::values::Nothing;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_desk::{ClassTitle, TalkView};
use surefoot_store::DeskStore;
use ts_rs::TS;

/// The talk to show on a projector.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ProjectorAsked {
    /// The class.
    pub class: String,
    /// Minutes for the talk.
    pub minutes: u32,
}

impl DeviceDoor {
    /// The classes that a projector can show. Answers also while the desk is locked, because it
    /// needs no key.
    pub fn projector_classes(&self, _: Nothing) -> Result<Vec<ClassTitle>, CallError> {
        self.without_key(|desk| Ok(surefoot_desk::class_titles(desk)?))
    }

    /// The concepts and exercises of today's talk, without a name and without what the class
    /// knows. Answers also while the desk is locked, because it needs no key.
    pub fn projector(&self, asked: ProjectorAsked) -> Result<TalkView, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.without_key(|desk| {
            let (class, minutes) = (&asked.class, asked.minutes);
            Ok(surefoot_desk::talk_without_names(
                desk, class, language, today, minutes,
            )?)
        })
    }

    /// Reads the store of the desk without its key.
    fn without_key<T>(
        &self,
        work: impl FnOnce(&DeskStore) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        let path = self.context.data().desk();
        if !path.is_file() {
            return Err(CallError::NotFound {
                what: "class".into(),
            });
        }
        let durability = self.context.durability();
        work(&DeskStore::open_again(&path, durability)?)
    }
}
