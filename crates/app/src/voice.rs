//! Reading aloud: what a shell's voice must offer, and the calls of the page.

use crate::app::App;
use crate::{CallError, Nothing, ReadAloud};
use serde::{Deserialize, Serialize};
use surefoot_catalogue::Language;
use ts_rs::TS;

/// Characters read at one time at most: far more than a screen holds.
const LONGEST_CHARACTERS: usize = 20_000;

/// What is missing where nothing can be read aloud; the page says what helps.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum VoiceMissing {
    /// The Linux package `speech-dispatcher`.
    SpeechDispatcher,
    /// A voice on a computer that brings its own.
    SystemVoice,
    /// A voice for the language, or the tablet's reading service.
    TabletVoice,
    /// This shell has no voice at all.
    Everything,
}

/// The system's speech.
pub trait Voice: Send + Sync {
    /// Reads a text aloud. Returns when it is over or was stopped.
    ///
    /// # Errors
    /// [`CallError::NoVoice`] where nothing can be heard.
    fn speak(&self, text: &str, language: Language) -> Result<(), CallError>;

    /// Ends what is being read, if anything is.
    fn stop(&self);
}

/// Where a shell has no voice.
pub(crate) struct NoVoice;

impl Voice for NoVoice {
    fn speak(&self, _text: &str, _language: Language) -> Result<(), CallError> {
        Err(CallError::NoVoice {
            missing: VoiceMissing::Everything,
        })
    }

    fn stop(&self) {}
}

impl App {
    /// Gives the program the system's speech.
    #[must_use]
    pub fn with_voice(mut self, voice: Box<dyn Voice>) -> Self {
        self.voice = voice;
        self
    }

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
    ///
    /// # Errors
    /// None.
    pub fn stop_speaking(&self, _: Nothing) -> Result<Nothing, CallError> {
        self.voice.stop();
        Ok(Nothing {})
    }
}
