//! Reading aloud.

use super::DeviceDoor;
use crate::context::values::Nothing;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::Language;
use surefoot_record::{Field, Rule};
use ts_rs::TS;

/// Characters of a text at most, far more than a screen shows.
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
    /// Reads a text aloud and stops the one before. Returns when the reading is over or stopped.
    ///
    /// # Errors
    /// Returns [`CallError::NoVoice`] with what is missing, or [`CallError::Invalid`] for a text that
    /// is too long.
    pub fn speak(&self, read: ReadAloud) -> Result<Nothing, CallError> {
        if read.text.chars().count() > LONGEST_CHARACTERS {
            return Err(CallError::Invalid {
                field: Field::Text,
                rule: Rule::TooLong,
            });
        }
        self.voice.stop();
        if !read.text.trim().is_empty() {
            self.voice.speak(read.text.trim(), read.language)?;
        }
        Ok(Nothing {})
    }

    /// Stops reading.
    pub fn stop_speaking(&self, _: Nothing) -> Result<Nothing, CallError> {
        self.voice.stop();
        Ok(Nothing {})
    }
}
