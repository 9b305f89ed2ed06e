//! Which students have typed their PIN, and the waits after wrong tries.

use crate::context::clock::Moment;
use crate::context::waits::Waits;
use std::collections::BTreeSet;

/// Kept in memory: a program that starts anew is locked.
pub(super) struct Pins {
    unlocked: BTreeSet<String>,
    waits: Waits,
}

impl Pins {
    pub(super) fn new() -> Self {
        Self {
            unlocked: BTreeSet::new(),
            waits: Waits::new(Moment::now()),
        }
    }

    pub(super) fn is_unlocked(&self, id: &str) -> bool {
        self.unlocked.contains(id)
    }

    pub(super) fn unlock(&mut self, id: &str) {
        self.waits.end(id);
        self.unlocked.insert(id.to_owned());
    }

    pub(super) fn lock_all(&mut self) {
        self.unlocked.clear();
    }

    /// Records a wrong PIN.
    pub(super) fn note_wrong(&mut self, id: &str) {
        self.waits.begin(id, Moment::now());
    }

    /// Seconds until the next try counts.
    pub(super) fn wait_seconds(&self, id: &str, wrong_tries: u32) -> u32 {
        self.waits.seconds(id, wrong_tries, Moment::now())
    }
}
