//! The PIN of a shared tablet.

use super::{StudentDoor, StudentId};
use crate::context::random;
use crate::context::values::Nothing;
use crate::error::CallError;
use crate::lock::lock;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A PIN typed, to set it or to open with it.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PinTyped {
    /// The profile's id.
    pub student: String,
    /// 4 to 8 digits.
    pub pin: String,
}

/// What came of a PIN typed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Unlocked {
    /// It fits, or there is none.
    Open,
    /// It does not fit; the next try counts after this many seconds.
    Wrong {
        /// Seconds.
        wait_seconds: u32,
    },
    /// Not looked at: the wait after earlier tries is not over.
    Wait {
        /// Seconds left.
        wait_seconds: u32,
    },
}

/// A forgotten PIN taken away by the code on the seat's slip.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PinReset {
    /// The profile's id.
    pub student: String,
    /// The code on the slip, as typed.
    pub seat_code: String,
}

impl StudentDoor {
    /// Opens a student's screens by the PIN.
    pub fn unlock(&self, typed: PinTyped) -> Result<Unlocked, CallError> {
        let id = typed.student;
        self.with_open(&id, |open| {
            let store = &open.store;
            // Tries come one after the other: the store is held meanwhile.
            if let Some(tries) = surefoot_student::wrong_pin_tries(store)? {
                let wait_seconds = lock(&self.pins).wait_seconds(&id, tries);
                if wait_seconds > 0 {
                    return Ok(Unlocked::Wait { wait_seconds });
                }
            }
            if surefoot_student::try_pin(store, &typed.pin)? {
                lock(&self.pins).unlock(&id);
                return Ok(Unlocked::Open);
            }
            let tries = surefoot_student::wrong_pin_tries(store)?.unwrap_or(0);
            lock(&self.pins).note_wrong(&id);
            Ok(Unlocked::Wrong {
                wait_seconds: surefoot_student::pin_wait_seconds(tries),
            })
        })
    }

    /// Locks every student's screens again that have a PIN.
    pub fn lock_students(&self, _: Nothing) -> Result<Nothing, CallError> {
        lock(&self.pins).lock_all();
        Ok(Nothing {})
    }

    /// Sets a student's PIN, or another one.
    pub fn set_pin(&self, typed: PinTyped) -> Result<Nothing, CallError> {
        let salt = random::bytes()?;
        self.with_student(&typed.student, |store| {
            Ok(surefoot_student::set_pin(store, &typed.pin, salt)?)
        })?;
        lock(&self.pins).unlock(&typed.student);
        Ok(Nothing {})
    }

    /// Takes a student's PIN away.
    pub fn remove_pin(&self, id: StudentId) -> Result<Nothing, CallError> {
        self.with_student(&id.student, |store| {
            store.remove_pin()?;
            Ok(Nothing {})
        })
    }

    /// Takes a forgotten PIN away by the code on the seat's slip. Wrong codes
    /// cost the same waits as wrong PINs.
    pub fn reset_pin(&self, asked: PinReset) -> Result<Nothing, CallError> {
        let id = asked.student;
        self.as_locked_student(&id, |store, joined| {
            let Some(mut pin) = store.pin()? else {
                return Ok(Nothing {});
            };
            let wait_seconds = lock(&self.pins).wait_seconds(&id, pin.wrong_tries);
            if wait_seconds > 0 {
                return Err(CallError::PinWait { wait_seconds });
            }
            let reset = surefoot_student::reset_pin(store, joined, &asked.seat_code);
            if matches!(&reset, Err(surefoot_student::StudentError::Invalid { .. })) {
                // A whole code of another seat is a guess, not a typing slip.
                pin.wrong_tries = pin.wrong_tries.saturating_add(1);
                store.put_pin(&pin)?;
                lock(&self.pins).note_wrong(&id);
            }
            reset?;
            Ok(Nothing {})
        })
    }
}
