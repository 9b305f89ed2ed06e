//! Whether the desk is locked. The key of its sealed cells is here while it is not, and nowhere
//! else but in open connections.

use super::DeskDoor;
use crate::context::clock::Moment;
use crate::context::settings::World;
use crate::context::waits::Waits;
use crate::error::CallError;
use crate::lock::lock;
use std::sync::Mutex;
use std::time::Duration;
use surefoot_store::desk::{DataKey, key_facts};
use surefoot_store::{DeskStore, StoreError};

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
pub(super) struct Guard {
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
}

/// The lock of the desk, as the screens show it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct LockState {
    pub(crate) has_lock: bool,
    pub(crate) locked: bool,
    pub(crate) idle_minutes: Option<u32>,
}

impl DeskDoor {
    /// The lock of the person's own desk. Locks it first if it was not used for the time that
    /// the teacher chose.
    pub(crate) fn lock_state(&self) -> LockState {
        let now = self.context.moment();
        let mut guard = lock(&self.guarded.guard);
        if let State::Unknown = guard.state {
            // Without a file or with a damaged one there is nothing to lock. A desk with a
            // lock stays closed all the same, because its key is missing.
            if let Ok(facts) = key_facts(&self.context.paths.world(World::Own).desk()) {
                guard.state = match facts.lock {
                    None => State::NoLock,
                    Some(found) => State::Locked {
                        idle_minutes: found.idle_minutes,
                    },
                };
            }
        }
        let idle = now.since(guard.used);
        let over = match &guard.state {
            State::Unlocked {
                idle_minutes: Some(minutes),
                ..
            } => idle >= Duration::from_secs(u64::from(*minutes) * 60),
            _ => false,
        };
        if over {
            drop(guard);
            self.lock_now();
            guard = lock(&self.guarded.guard);
        }
        match &guard.state {
            State::Unknown | State::NoLock => LockState {
                has_lock: false,
                locked: false,
                idle_minutes: None,
            },
            State::Locked { idle_minutes } => LockState {
                has_lock: true,
                locked: true,
                idle_minutes: *idle_minutes,
            },
            State::Unlocked { idle_minutes, .. } => LockState {
                has_lock: true,
                locked: false,
                idle_minutes: *idle_minutes,
            },
        }
    }

    /// Refuses while the desk is locked. The sample class has no lock.
    pub(crate) fn refuse_locked(&self) -> Result<(), CallError> {
        if self.context.world() == World::Own && self.lock_state().locked {
            return Err(CallError::DeskLocked);
        }
        Ok(())
    }

    /// Notes that the desk is used now.
    pub(crate) fn note_use(&self) {
        lock(&self.guarded.guard).used = self.context.moment();
    }

    /// Locks the desk if it has a lock: clears its key and closes it. An import that runs has a
    /// key of its own and finishes.
    pub(crate) fn lock_now(&self) {
        {
            let mut guard = lock(&self.guarded.guard);
            let State::Unlocked { idle_minutes, .. } = guard.state else {
                return;
            };
            guard.state = State::Locked { idle_minutes };
        }
        // The guard is free meanwhile, because opening a desk asks it for the key. A call that
        // still runs closes the desk when it ends.
        let path = self.context.paths.world(World::Own).desk();
        let _ = self.stores.while_closed(&path, || Ok(()));
    }

    /// Keeps the key of the desk in memory until it is locked.
    pub(crate) fn keep_key(&self, key: DataKey, idle_minutes: Option<u32>) {
        let mut guard = lock(&self.guarded.guard);
        guard.state = State::Unlocked { key, idle_minutes };
        guard.used = self.context.moment();
    }

    /// Looks at the file of the desk again after it was replaced. Its key stays in memory if it
    /// is the key of the new file too.
    pub(crate) fn look_again(&self) {
        let path = self.context.paths.world(World::Own).desk();
        let found = key_facts(&path).ok().map(|facts| facts.number);
        let mut guard = lock(&self.guarded.guard);
        match &guard.state {
            State::Unlocked { key, .. } if Some(key.number()) == found => {}
            _ => guard.state = State::Unknown,
        }
    }

    /// The key of the desk, if it has a lock and is unlocked.
    pub(super) fn key_in_memory(&self) -> Option<DataKey> {
        match &lock(&self.guarded.guard).state {
            State::Unlocked { key, .. } if self.context.world() == World::Own => Some(key.clone()),
            _ => None,
        }
    }

    /// Gives an opened desk its key.
    ///
    /// # Errors
    /// [`CallError::DeskLocked`] while it is locked.
    pub(crate) fn give_key(&self, desk: &DeskStore) -> Result<(), CallError> {
        if desk.lock()?.is_none() {
            return Ok(());
        }
        let key = self.key_in_memory().ok_or(StoreError::Locked)?;
        Ok(desk.use_key(key)?)
    }
}
