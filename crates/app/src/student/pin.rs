//! The PIN of a shared tablet.

use super::{StudentDoor, StudentId};
use crate::context::random;
use crate::context::values::Nothing;
use crate::error::CallError;
use crate::lock::lock;
use serde::{Deserialize, Serialize};
use surefoot_student::SlipTyped;
use ts_rs::TS;

/// A typed PIN, to unlock with it.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PinTyped {
    /// The profile's id.
    pub student: String,
    /// The PIN, 4 to 8 digits.
    pub pin: String,
}

/// The result of typing a PIN.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Unlocked {
    /// It is right, or the student has none.
    Open,
    /// It is wrong; the next try counts after a wait.
    Wrong {
        /// The wait in seconds.
        wait_seconds: u32,
    },
    /// It was not checked, because the wait after earlier tries is not over.
    Wait {
        /// Seconds left.
        wait_seconds: u32,
    },
}

/// A new PIN.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NewPin {
    /// The profile's id.
    pub student: String,
    /// The PIN, 4 to 8 digits.
    pub pin: String,
    /// The PIN signs of the slip, as typed.
    pub pin_signs: String,
    /// The seat code of the slip, as typed; needed until the device keeps a hash of the PIN
    /// signs.
    #[serde(default)]
    pub seat_code: Option<String>,
}

/// Removal of a forgotten PIN by the slip.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct PinReset {
    /// The profile's id.
    pub student: String,
    /// The PIN signs of the slip, as typed.
    pub pin_signs: String,
}

impl StudentDoor {
    /// Unlocks a student's screens with the PIN.
    pub fn unlock(&self, typed: PinTyped) -> Result<Unlocked, CallError> {
        let id = typed.student;
        self.with_open(&id, |open| {
            let store = &open.store;
            // The store stays locked meanwhile, so that tries come one after the other.
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

    /// Locks the screens of every student with a PIN.
    pub fn lock_students(&self, _: Nothing) -> Result<Nothing, CallError> {
        lock(&self.pins).lock_all();
        Ok(Nothing {})
    }

    /// Sets or changes a student's PIN.
    pub fn set_pin(&self, new: NewPin) -> Result<Nothing, CallError> {
        let salts = [random::bytes()?, random::bytes()?];
        let slip = SlipTyped {
            pin_signs: &new.pin_signs,
            seat_code: new.seat_code.as_deref(),
        };
        self.as_student(&new.student, |store, joined| {
            Ok(surefoot_student::set_pin(
                store, joined, &new.pin, slip, salts,
            )?)
        })?;
        lock(&self.pins).unlock(&new.student);
        Ok(Nothing {})
    }

    /// Removes a student's PIN.
    pub fn remove_pin(&self, id: StudentId) -> Result<Nothing, CallError> {
        self.with_student(&id.student, |store| {
            store.remove_pin()?;
            Ok(Nothing {})
        })
    }

    /// Removes a forgotten PIN by the PIN signs of the slip. Wrong signs and wrong PINs cause no
    /// wait here, so that nobody can keep the owner of the slip waiting.
    pub fn reset_pin(&self, asked: PinReset) -> Result<Nothing, CallError> {
        self.as_locked_student(&asked.student, |store, joined| {
            surefoot_student::reset_pin(store, joined, &asked.pin_signs)?;
            Ok(Nothing {})
        })
    }
}
