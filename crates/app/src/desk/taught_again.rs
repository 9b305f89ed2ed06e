//! What was taught again.

use super::{ClassId, DeskDoor};
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_desk::{NewTaughtAgain, TaughtAgainLog};
use ts_rs::TS;

/// A concept that was taught again.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TaughtAgainNoted {
    /// The class.
    pub class: String,
    /// What is noted.
    pub entry: NewTaughtAgain,
}

/// An entry by its number.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct TaughtAgainId {
    /// The class.
    pub class: String,
    /// Its number at this desk.
    #[ts(type = "number")]
    pub entry: i64,
}

impl DeskDoor {
    /// What was taught again, with verdicts.
    pub fn taught_again(&self, id: ClassId) -> Result<TaughtAgainLog, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&id.class, |desk, class| {
            Ok(surefoot_desk::taught_again(desk, class, language, today)?)
        })
    }

    /// Notes that a concept was taught again.
    pub fn note_taught_again(&self, noted: TaughtAgainNoted) -> Result<TaughtAgainLog, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&noted.class, |desk, class| {
            surefoot_desk::note_taught_again(desk, class, &noted.entry, today)?;
            Ok(surefoot_desk::taught_again(desk, class, language, today)?)
        })
    }

    /// Removes an entry of what was taught again.
    pub fn drop_taught_again(&self, id: TaughtAgainId) -> Result<TaughtAgainLog, CallError> {
        let (language, today) = (self.context.language(), self.context.today());
        self.with_class(&id.class, |desk, class| {
            surefoot_desk::drop_taught_again(desk, class, id.entry)?;
            Ok(surefoot_desk::taught_again(desk, class, language, today)?)
        })
    }
}
