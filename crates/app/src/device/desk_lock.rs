//! The lock of the desk: a passphrase for what names students and for the keys of the classes.

use super::DeviceDoor;
use super::restore::Restored;
use crate::context::copies::StoreName;
use crate::context::erase::replace_desk;
use crate::context::values::Nothing;
use crate::desk::lock_view::DeskLock;
use crate::error::CallError;
use crate::lock::lock;
use crate::student::pin::Unlocked;
use serde::{Deserialize, Serialize};
use surefoot_exchange::check_passphrase;
use surefoot_record::{Field, Rule, Thing};
use surefoot_store::desk::{DataKey, KeptKey};
use surefoot_store::{DeskStore, Durability};
use ts_rs::TS;

/// The minutes without use after which the desk can lock itself.
pub const IDLE_MINUTES: [u32; 4] = [5, 10, 15, 30];

/// The name of the desk among the waits after wrong passphrases.
const WAITS: &str = "desk";

/// A typed passphrase of the desk.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DeskPassphrase {
    /// The passphrase.
    pub passphrase: String,
}

/// A new lock, another passphrase, or no lock.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewDeskLock {
    /// The passphrase that the desk has now; not needed without a lock.
    pub current: Option<String>,
    /// The new passphrase, at least 8 characters; `None` removes the lock.
    pub passphrase: Option<String>,
}

/// After how long the desk locks itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DeskIdle {
    /// 5, 10, 15 or 30 minutes without use; `None`: never.
    pub minutes: Option<u32>,
}

/// What came of a typed passphrase.
enum Typed {
    /// The key of the desk, and the minutes after which it locks itself.
    Right(DataKey, Option<u32>),
    /// It is wrong, or was not checked.
    Not(Unlocked),
}

impl DeviceDoor {
    /// The lock of the desk.
    pub fn desk_lock(&self, _: Nothing) -> Result<DeskLock, CallError> {
        Ok(self.desk.lock_state())
    }

    /// Unlocks the desk with its passphrase.
    pub fn unlock_desk(&self, typed: DeskPassphrase) -> Result<Unlocked, CallError> {
        self.context.own_only()?;
        Ok(match self.try_passphrase(&typed.passphrase)? {
            Typed::Right(key, idle_minutes) => {
                self.desk.keep_key(key, idle_minutes);
                Unlocked::Open
            }
            Typed::Not(answer) => answer,
        })
    }

    /// Locks the desk at once. Does nothing without a lock.
    pub fn lock_desk(&self, _: Nothing) -> Result<DeskLock, CallError> {
        self.desk.lock_now();
        self.desk_lock(Nothing {})
    }

    /// Notes that a person uses the desk, so that it does not lock itself. The screens call it
    /// while somebody types or points.
    ///
    /// # Errors
    /// [`CallError::DeskLocked`] if it is locked already.
    pub fn use_desk(&self, _: Nothing) -> Result<Nothing, CallError> {
        self.desk.refuse_locked()?;
        self.desk.note_use();
        Ok(Nothing {})
    }

    /// Sets after how long the desk locks itself.
    ///
    /// # Errors
    /// [`CallError::Invalid`] for other minutes than those of [`IDLE_MINUTES`].
    pub fn set_desk_idle(&self, new: DeskIdle) -> Result<DeskLock, CallError> {
        self.context.own_only()?;
        if let Some(minutes) = new.minutes
            && !IDLE_MINUTES.contains(&minutes)
        {
            return Err(invalid(Field::IdleMinutes, Rule::Range));
        }
        self.desk.with_desk(|desk| {
            if desk.lock()?.is_none() {
                return Err(invalid(Field::DeskLock, Rule::Missing));
            }
            Ok(desk.put_idle_minutes(new.minutes)?)
        })?;
        self.desk.guarded.set_idle_minutes(new.minutes);
        self.desk_lock(Nothing {})
    }

    /// Sets, changes or removes the lock. All cells are sealed anew with another key, and the desk
    /// is written anew. Copies on this device that have the key before are wiped; under a new lock
    /// also those that open without a passphrase. [`DeviceDoor::copies`] says if that failed.
    ///
    /// Removals can no longer be undone afterwards.
    ///
    /// # Errors
    /// [`CallError::Refused`] for a passphrase that is too short, [`CallError::DeskLocked`].
    pub fn set_desk_lock(&self, new: NewDeskLock) -> Result<Unlocked, CallError> {
        self.context.own_only()?;
        self.context.none_running()?;
        self.desk.refuse_locked()?;
        if let Some(passphrase) = &new.passphrase {
            check_passphrase(passphrase)?;
        }
        let state = self.desk.lock_state();
        if state.has_lock
            && let Typed::Not(answer) =
                self.try_passphrase(new.current.as_deref().unwrap_or_default())?
        {
            return Ok(answer);
        }
        let idle_minutes = match state.has_lock {
            true => state.idle_minutes,
            false => Some(USUAL_IDLE_MINUTES),
        };
        let kept = match &new.passphrase {
            Some(passphrase) => KeptKey::locked(passphrase, idle_minutes)?,
            None => KeptKey::open(),
        };
        // Opens the desk first, to make one where there is none.
        self.desk.with_desk(|_| Ok(()))?;
        // Their rows are sealed by the key before.
        self.desk.discard_all_removed();
        let path = self.context.data().desk();
        self.desk.stores.while_closed(&path, || {
            self.context.none_running()?;
            let replaced = replace_desk(&path, |desk, into| {
                self.desk.give_key(desk)?;
                Ok(desk.resealed(&kept, true)?.write_anew(into)?)
            });
            // Also after an error: the new file may have its name by then.
            self.desk.look_again();
            replaced?;
            if new.passphrase.is_some() {
                self.desk.keep_key(kept.key().clone(), idle_minutes);
            }
            Ok(())
        })?;
        // Opening it wipes what the change left behind and makes today's copy.
        self.desk.with_desk(|_| Ok(()))?;
        Ok(Unlocked::Open)
    }

    /// Starts an empty desk in the place of a locked one, which is moved into quarantine: for
    /// somebody who forgot the passphrase and has no backup.
    ///
    /// # Errors
    /// [`CallError::Invalid`] if the desk is not locked.
    pub fn begin_new_desk(&self, _: Nothing) -> Result<Restored, CallError> {
        self.context.own_only()?;
        if self.desk.refuse_locked().is_ok() {
            return Err(invalid(Field::DeskLock, Rule::Open));
        }
        let store = StoreName::Desk;
        self.discard_removed_of(&store);
        let quarantined = self.swap_in(&store, |into| {
            Ok(DeskStore::open(into, Durability::Full)?.empty_log()?)
        })?;
        Ok(Restored {
            store,
            quarantined,
            start: self.start(Nothing {})?,
        })
    }

    /// Tries a passphrase. The try is on disk before it is checked, so that ending the program
    /// does not save one.
    fn try_passphrase(&self, typed: &str) -> Result<Typed, CallError> {
        // The waits stay locked meanwhile, so that tries come one after the other.
        let mut waits = lock(&self.desk.guarded.waits);
        self.context.refuse_emptied(&StoreName::Desk)?;
        let path = self.context.data().desk();
        if !path.is_file() {
            return Err(CallError::NotFound { what: Thing::Desk });
        }
        let desk = DeskStore::open_again(&path, Durability::Full)?;
        let Some(found) = desk.lock()? else {
            return Err(invalid(Field::DeskLock, Rule::Missing));
        };
        let wait_seconds = waits.seconds(WAITS, found.wrong_tries, self.context.moment());
        if wait_seconds > 0 {
            return Ok(Typed::Not(Unlocked::Wait { wait_seconds }));
        }
        let tries = found.wrong_tries.saturating_add(1);
        desk.put_wrong_tries(tries)?;
        if let Some(key) = desk.key_by(typed)? {
            desk.put_wrong_tries(0)?;
            waits.end(WAITS);
            return Ok(Typed::Right(key, found.idle_minutes));
        }
        waits.begin(WAITS, self.context.moment());
        let wait_seconds = surefoot_student::pin_wait_seconds(tries);
        Ok(Typed::Not(Unlocked::Wrong { wait_seconds }))
    }
}

/// The minutes of a new lock.
const USUAL_IDLE_MINUTES: u32 = 10;

const fn invalid(field: Field, rule: Rule) -> CallError {
    CallError::Invalid { field, rule }
}
