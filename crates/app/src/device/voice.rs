//! Reading aloud.

use super::DeviceDoor;
use crate::context::values::Nothing;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::Language;
use ts_rs::TS;

/// Characters read at one time at most: far more than a screen holds.
const LONGEST_CHARACTERS: usize = 20_000;

/// A text to be read aloud.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ReadAloud {
    /// The text, with its mathematics in words.
    pub text: String,
    /// The language it is in.
    pub language: Language,
}

impl DeviceDoor {
    /// Reads aloud, in place of what was being read. Returns when it is over or
    /// was stopped, so that the page knows.
    ///
    /// # Errors
    /// [`CallError::NoVoice`], or [`CallError::Invalid`] for a text that is too long.
    pub fn speak(&self, read: ReadAloud) -> Result<Nothing, CallError> {
        if read.text.chars().count() > LONGEST_CHARACTERS {
            return Err(CallError::Invalid {
                field: "text".into(),
                rule: "too_long".into(),
            });
        }
        self.voice.stop();
        if !read.text.trim().is_empty() {
            self.voice.speak(read.text.trim(), read.language)?;
        }
        Ok(Nothing {})
    }

    /// Ends what is being read.
    pub fn stop_speaking(&self, _: Nothing) -> Result<Nothing, CallError> {
        self.voice.stop();
        Ok(Nothing {})
    }
}
