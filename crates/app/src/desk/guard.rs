//! Whether the desk is locked. The key of its sealed cells is here while it is not, and nowhere
//! else but in open connections.

use super::lock_view::DeskLock;
use crate::context::clock::Moment;
use crate::context::waits::Waits;
use crate::lock::lock;
use std::path::Path;
use std::sync::Mutex;
use std::time::Duration;
use surefoot_store::desk::{DataKey, key_facts};

/// What is known of the lock.
enum State {
    /// The file has not been looked at since it was made or replaced.
    Unknown,
    /// The desk has no lock.
    NoLock,
    /// The desk has a lock, and its key is not in memory.
    Locked { idle_minutes: Option<u32> },
    /// The desk has a lock, and its key is in memory.
    Unlocked {
        key: DataKey,
        idle_minutes: Option<u32>,
    },
}

/// The state of the lock, and when the desk was last used.
struct Guard {
    state: State,
    used: Moment,
}

/// The guard of the desk, and the waits after wrong passphrases.
pub(crate) struct Guarded {
    guard: Mutex<Guard>,
    pub(crate) waits: Mutex<Waits>,
}

impl Guarded {
    pub(super) fn new(now: Moment) -> Self {
        Self {
            guard: Mutex::new(Guard {
                state: State::Unknown,
                used: now,
            }),
            waits: Mutex::new(Waits::new(now)),
        }
    }

    /// The lock of the desk at `path`.
    pub(super) fn state(&self, path: &Path) -> DeskLock {
        let mut guard = lock(&self.guard);
        if let State::Unknown = guard.state {
            // Without a file or with a damaged one there is nothing to lock. A desk with a
            // lock stays closed all the same, because its key is missing.
            if let Ok(facts) = key_facts(path) {
                guard.state = match facts.lock {
                    None => State::NoLock,
                    Some(found) => State::Locked {
                        idle_minutes: found.idle_minutes,
                    },
                };
            }
        }
        let (has_lock, locked, idle_minutes) = match &guard.state {
            State::Unknown | State::NoLock => (false, false, None),
            State::Locked { idle_minutes } => (true, true, *idle_minutes),
            State::Unlocked { idle_minutes, .. } => (true, false, *idle_minutes),
        };
        DeskLock {
            has_lock,
            locked,
            idle_minutes,
        }
    }

    /// Whether the desk is unlocked and was not used for the time that the teacher chose.
    pub(super) fn is_idle(&self, now: Moment) -> bool {
        let guard = lock(&self.guard);
        match &guard.state {
            State::Unlocked {
                idle_minutes: Some(minutes),
                ..
            } => now.since(guard.used) >= Duration::from_secs(u64::from(*minutes) * 60),
            _ => false,
        }
    }

    /// Notes that the desk is used now.
    pub(super) fn note_use(&self, now: Moment) {
        lock(&self.guard).used = now;
    }

    /// Clears the key. Returns whether there was one.
    pub(super) fn clear_key(&self) -> bool {
        let mut guard = lock(&self.guard);
        let State::Unlocked { idle_minutes, .. } = guard.state else {
            return false;
        };
        guard.state = State::Locked { idle_minutes };
        true
    }

    /// Keeps the key in memory until it is cleared.
    pub(super) fn keep_key(&self, key: DataKey, idle_minutes: Option<u32>, now: Moment) {
        let mut guard = lock(&self.guard);
        guard.state = State::Unlocked { key, idle_minutes };
        guard.used = now;
    }

    /// Changes after how long the desk locks itself.
    pub(crate) fn set_idle_minutes(&self, minutes: Option<u32>) {
        match &mut lock(&self.guard).state {
            State::Unknown | State::NoLock => {}
            State::Locked { idle_minutes } | State::Unlocked { idle_minutes, .. } => {
                *idle_minutes = minutes;
            }
        }
    }

    /// The key, if it is in memory.
    pub(super) fn key(&self) -> Option<DataKey> {
        match &lock(&self.guard).state {
            State::Unlocked { key, .. } => Some(key.clone()),
            _ => None,
        }
    }

    /// Forgets what is known, after the desk at `path` was replaced. The key stays in memory if
    /// it is the key of the new desk too.
    pub(super) fn look_again(&self, path: &Path) {
        let found = key_facts(path).ok().map(|facts| facts.number);
        let mut guard = lock(&self.guard);
        match &guard.state {
            State::Unlocked { key, .. } if Some(key.number()) == found => {}
            _ => guard.state = State::Unknown,
        }
    }
}
