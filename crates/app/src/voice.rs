//! What a shell offers to read aloud.

use crate::error::{CallError, VoiceMissing};
use surefoot_catalogue::Language;

/// The system's speech service.
pub trait Voice: Send + Sync {
    /// Reads a text aloud. Returns when the reading is over or stopped.
    ///
    /// # Errors
    /// Returns [`CallError::NoVoice`] with what is missing.
    fn speak(&self, text: &str, language: Language) -> Result<(), CallError>;

    /// Stops reading.
    fn stop(&self);
}

/// For shells that cannot read aloud.
pub struct NoVoice;

impl Voice for NoVoice {
    fn speak(&self, _text: &str, _language: Language) -> Result<(), CallError> {
        Err(CallError::NoVoice {
            missing: VoiceMissing::Everything,
        })
    }

    fn stop(&self) {}
}
