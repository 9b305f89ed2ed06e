//! The waits after wrong PINs and passphrases.

use super::clock::Moment;
use std::collections::BTreeMap;
use std::time::Duration;

/// Kept in memory: when the program starts anew, the waits begin again.
pub(crate) struct Waits {
    last_wrong: BTreeMap<String, Moment>,
    started: Moment,
}

impl Waits {
    pub(crate) fn new(now: Moment) -> Self {
        Self {
            last_wrong: BTreeMap::new(),
            started: now,
        }
    }

    /// Ends the wait of `id`.
    pub(crate) fn end(&mut self, id: &str) {
        self.last_wrong.remove(id);
    }

    /// Begins a wait after a wrong try.
    pub(crate) fn begin(&mut self, id: &str, now: Moment) {
        self.last_wrong.insert(id.to_owned(), now);
    }

    /// Seconds until the next try counts, after so many wrong ones in a row.
    pub(crate) fn seconds(&self, id: &str, wrong_tries: u32, now: Moment) -> u32 {
        let wait = Duration::from_secs(surefoot_student::pin_wait_seconds(wrong_tries).into());
        let since = self.last_wrong.get(id).unwrap_or(&self.started);
        let left = wait.saturating_sub(now.surely_since(*since));
        u32::try_from(left.as_millis().div_ceil(1_000)).unwrap_or(u32::MAX)
    }
}
