//! Calls about the PIN of a shared tablet.

use crate::app::{App, lock};
use crate::{CallError, Nothing, PinReset, PinTyped, StudentId, Unlocked, chance};
use std::collections::{BTreeMap, BTreeSet};
use std::time::{Duration, Instant};

/// Who has typed the PIN, and when the last wrong one was typed. Kept in
/// memory: a program that starts anew is locked, and waits from its start.
#[derive(Default)]
pub(crate) struct Pins {
    open: BTreeSet<String>,
    last_wrong: BTreeMap<String, Instant>,
}

impl App {
    pub(crate) fn is_open(&self, id: &str) -> bool {
        lock(&self.state).pins.open.contains(id)
    }

    /// Seconds until a PIN is looked at again.
    fn wait_left(&self, id: &str, wrong_tries: u32) -> u32 {
        let wait = Duration::from_secs(surefoot_student::pin_wait_seconds(wrong_tries).into());
        let since = lock(&self.state)
            .pins
            .last_wrong
            .get(id)
            .copied()
            .unwrap_or(self.opened_at);
        let left = wait.saturating_sub(since.elapsed());
        u32::try_from(left.as_millis().div_ceil(1_000)).unwrap_or(u32::MAX)
    }

    /// Opens a student's screens by the PIN.
    ///
    /// # Errors
    /// [`CallError::NotFound`], or the store's.
    pub fn unlock(&self, typed: PinTyped) -> Result<Unlocked, CallError> {
        let id = typed.student;
        self.with_student_unasked(&id, |store| {
            // Tries come one after the other: the store is held meanwhile.
            if let Some(tries) = surefoot_student::wrong_pin_tries(store)? {
                let wait_seconds = self.wait_left(&id, tries);
                if wait_seconds > 0 {
                    return Ok(Unlocked::Wait { wait_seconds });
                }
            }
            if surefoot_student::try_pin(store, &typed.pin)? {
                let mut state = lock(&self.state);
                state.pins.last_wrong.remove(&id);
                state.pins.open.insert(id.clone());
                return Ok(Unlocked::Open);
            }
            let tries = surefoot_student::wrong_pin_tries(store)?.unwrap_or(0);
            let now = Instant::now();
            lock(&self.state).pins.last_wrong.insert(id.clone(), now);
            Ok(Unlocked::Wrong {
                wait_seconds: surefoot_student::pin_wait_seconds(tries),
            })
        })
    }

    /// Locks every student's screens again that have a PIN.
    ///
    /// # Errors
    /// None.
    pub fn lock_students(&self, _: Nothing) -> Result<Nothing, CallError> {
        lock(&self.state).pins.open.clear();
        Ok(Nothing {})
    }

    /// Sets a student's PIN, or another one.
    ///
    /// # Errors
    /// [`CallError::Invalid`], [`CallError::Locked`], or the store's.
    pub fn set_pin(&self, typed: PinTyped) -> Result<Nothing, CallError> {
        let salt = chance::bytes()?;
        self.with_student(&typed.student, |store| {
            Ok(surefoot_student::set_pin(store, &typed.pin, salt)?)
        })?;
        lock(&self.state).pins.open.insert(typed.student);
        Ok(Nothing {})
    }

    /// Takes a student's PIN away.
    ///
    /// # Errors
    /// [`CallError::Locked`], or the store's.
    pub fn remove_pin(&self, id: StudentId) -> Result<Nothing, CallError> {
        self.with_student(&id.student, |store| {
            store.remove_pin()?;
            Ok(Nothing {})
        })
    }

    /// Takes a forgotten PIN away by the code on the seat's slip. Wrong codes
    /// cost the same waits as wrong PINs.
    ///
    /// # Errors
    /// [`CallError::SeatCode`], [`CallError::Invalid`], [`CallError::PinWait`], or the store's.
    pub fn reset_pin(&self, asked: PinReset) -> Result<Nothing, CallError> {
        let id = asked.student;
        self.with_student_unasked(&id, |store| {
            let joined = surefoot_student::joined(store)?;
            let Some(mut pin) = store.pin()? else {
                return Ok(Nothing {});
            };
            let wait_seconds = self.wait_left(&id, pin.wrong_tries);
            if wait_seconds > 0 {
                return Err(CallError::PinWait { wait_seconds });
            }
            let reset = surefoot_student::reset_pin(store, &joined, &asked.seat_code);
            if matches!(&reset, Err(surefoot_student::StudentError::Invalid { .. })) {
                // A whole code of another seat is a guess, not a typing slip.
                pin.wrong_tries = pin.wrong_tries.saturating_add(1);
                store.put_pin(&pin)?;
                let now = Instant::now();
                lock(&self.state).pins.last_wrong.insert(id.clone(), now);
            }
            reset?;
            Ok(Nothing {})
        })
    }
}
