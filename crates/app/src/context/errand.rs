//! Work that may wait for a network for ever: one piece at a time, in a thread of its own. A job
//! would not do, because what waits for jobs would wait for ever too.

use super::clock::Moment;
use std::thread::{self, JoinHandle};
use std::time::Duration;

/// How long an errand may take before its folder counts as silent.
const PATIENCE: Duration = Duration::from_secs(20);

/// The errand of one folder.
pub(crate) struct Errand<R>(Option<(Moment, JoinHandle<R>)>);

impl<R> Default for Errand<R> {
    fn default() -> Self {
        Self(None)
    }
}

impl<R: Send + 'static> Errand<R> {
    /// Whether it is under way, or back and not taken.
    pub(crate) fn is_out(&self) -> bool {
        self.0.is_some()
    }

    /// Whether it has been under way for too long.
    pub(crate) fn is_silent(&self, now: Moment) -> bool {
        (self.0.as_ref())
            .is_some_and(|(begun, thread)| !thread.is_finished() && now.since(*begun) > PATIENCE)
    }

    /// Does a piece of work that a person waits for. Returns nothing if it takes too long; it may go
    /// on then.
    pub(crate) fn wait_for(
        now: impl Fn() -> Moment,
        work: impl FnOnce() -> R + Send + 'static,
    ) -> Option<R> {
        const LOOK: Duration = Duration::from_millis(10);
        let mut errand = Self::default();
        errand.start(now(), work);
        while errand.is_out() && !errand.is_silent(now()) {
            if let Some(done) = errand.take() {
                return Some(done);
            }
            thread::sleep(LOOK);
        }
        None
    }

    /// Starts one. Does nothing while one is out.
    pub(crate) fn start(&mut self, now: Moment, work: impl FnOnce() -> R + Send + 'static) {
        if self.is_out() {
            return;
        }
        let thread = thread::Builder::new().name("surefoot-folder".into());
        // Without a thread the next call tries again.
        self.0 = thread.spawn(work).ok().map(|thread| (now, thread));
    }

    /// Takes the result, once it is back. One that ended in a panic has none.
    pub(crate) fn take(&mut self) -> Option<R> {
        let (begun, thread) = self.0.take()?;
        if thread.is_finished() {
            return thread.join().ok();
        }
        self.0 = Some((begun, thread));
        None
    }
}
