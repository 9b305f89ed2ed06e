//! The system's speech, as a shell offers it.

use crate::error::{CallError, VoiceMissing};
use surefoot_catalogue::Language;

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

/// The voice of a shell that has none.
pub struct NoVoice;

impl Voice for NoVoice {
    fn speak(&self, _text: &str, _language: Language) -> Result<(), CallError> {
        Err(CallError::NoVoice {
            missing: VoiceMissing::Everything,
        })
    }

    fn stop(&self) {}
}
