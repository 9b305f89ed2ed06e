//! The system's speech, as far as a test goes: notes what is read and in which
//! language, and reads until it is stopped where a test wants that.

use std::sync::{Arc, Condvar, Mutex, MutexGuard, PoisonError};
use std::time::Duration;
use surefoot_app::{CallError, Language, Voice, VoiceMissing};

/// A text is never read for longer, whatever a test forgot.
const LONGEST: Duration = Duration::from_secs(20);

/// What the voice does when it is asked to read.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub enum Manner {
    /// Is over at once.
    #[default]
    Quick,
    /// Reads until it is stopped.
    Long,
    /// There is none.
    Missing,
}

#[derive(Default)]
struct State {
    manner: Manner,
    /// Language and text, in their order.
    said: Vec<(&'static str, String)>,
    stops: u64,
}

/// A voice that a test listens to.
#[derive(Clone, Default)]
pub struct TestVoice(Arc<(Mutex<State>, Condvar)>);

impl TestVoice {
    fn state(&self) -> MutexGuard<'_, State> {
        self.0.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// How it reads from now on.
    pub fn set(&self, manner: Manner) {
        self.state().manner = manner;
    }

    /// What was read so far, and how often it was told to stop.
    pub fn heard(&self) -> (Vec<(&'static str, String)>, u64) {
        let state = self.state();
        (state.said.clone(), state.stops)
    }
}

impl Voice for TestVoice {
    fn speak(&self, text: &str, language: Language) -> Result<(), CallError> {
        let mut state = self.state();
        if state.manner == Manner::Missing {
            return Err(CallError::NoVoice {
                missing: VoiceMissing::SpeechDispatcher,
            });
        }
        state.said.push((language.as_str(), text.to_owned()));
        if state.manner == Manner::Long {
            let begun = state.stops;
            let stopped = |state: &mut State| state.stops == begun;
            drop(self.0.1.wait_timeout_while(state, LONGEST, stopped));
        }
        Ok(())
    }

    fn stop(&self) {
        self.state().stops += 1;
        self.0.1.notify_all();
    }
}
