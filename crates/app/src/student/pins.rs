//! Which students have typed their PIN, and the waits after wrong tries.

use std::collections::{BTreeMap, BTreeSet};
use std::time::{Duration, Instant};

/// Kept in memory: a program that starts anew is locked, and the waits begin again.
pub(super) struct Pins {
    unlocked: BTreeSet<String>,
    last_wrong: BTreeMap<String, Instant>,
    started: Instant,
}

impl Pins {
    pub(super) fn new() -> Self {
        Self {
            unlocked: BTreeSet::new(),
            last_wrong: BTreeMap::new(),
            started: Instant::now(),
        }
    }

    pub(super) fn is_unlocked(&self, id: &str) -> bool {
        self.unlocked.contains(id)
    }

    pub(super) fn unlock(&mut self, id: &str) {
        self.last_wrong.remove(id);
        self.unlocked.insert(id.to_owned());
    }

    pub(super) fn lock_all(&mut self) {
        self.unlocked.clear();
    }

    /// Records a wrong PIN.
    pub(super) fn note_wrong(&mut self, id: &str) {
        self.last_wrong.insert(id.to_owned(), Instant::now());
    }

    /// Seconds until the next try counts.
    pub(super) fn wait_seconds(&self, id: &str, wrong_tries: u32) -> u32 {
        let wait = Duration::from_secs(surefoot_student::pin_wait_seconds(wrong_tries).into());
        let since = self.last_wrong.get(id).unwrap_or(&self.started);
        let left = wait.saturating_sub(since.elapsed());
        u32::try_from(left.as_millis().div_ceil(1_000)).unwrap_or(u32::MAX)
    }
}
