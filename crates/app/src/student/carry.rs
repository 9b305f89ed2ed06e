//! The carry file.

use super::StudentDoor;
use crate::context::file_dialogs::FileKind;
use crate::context::folder::{make_file, make_folder};
use crate::context::picked::{OpenSealed, PickedSealed};
use crate::context::random;
use crate::context::values::{FileMade, Nothing};
use crate::context::wipe::wipe_store;
use crate::error::CallError;
use serde::{Deserialize, Serialize};
use surefoot_exchange::{CARRY_CAPS, file_signs};
use surefoot_store::{Durability, StudentStore};
use surefoot_student::{Carried, CarryTaken};
use ts_rs::TS;

/// A carry file to make.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CarryAsked {
    /// The profile's id.
    pub student: String,
    /// The passphrase, at least 8 characters.
    pub passphrase: String,
}

/// What a carry file added.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CarryDone {
    /// The student it was added to.
    pub student: String,
    /// Whether the student is new on this device.
    pub new_here: bool,
    /// Check-ins that were new here.
    pub check_ins: usize,
    /// Finished exercises that were new here.
    pub answers: usize,
}

impl StudentDoor {
    /// Seals all data of a student for a second device.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for a passphrase that is too short.
    pub fn make_carry(&self, asked: CarryAsked) -> Result<FileMade, CallError> {
        self.context.own_only()?;
        let today = self.context.today();
        let bytes = self.as_student(&asked.student, |store, joined| {
            Ok(surefoot_student::make_carry(
                store,
                joined,
                today,
                &asked.passphrase,
            )?)
        })?;
        // New signs each time: the name says nothing about the student.
        let file_name = format!("carry-{today}-{}.sfcarry", file_signs(&random::bytes()?));
        self.context
            .hand_over(file_name, FileKind::CarryFile, &bytes)
    }

    /// Lets the person pick a carry file.
    pub fn pick_carry(&self, _: Nothing) -> Result<Option<PickedSealed>, CallError> {
        self.context.own_only()?;
        self.context.pick_sealed(FileKind::CarryFile, &CARRY_CAPS)
    }

    /// Adds the picked carry file to the student of the same seat, or makes a new student.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for the wrong passphrase or a damaged file,
    /// [`CallError::Locked`] until the PIN of that student is typed.
    pub fn take_carry(&self, asked: OpenSealed) -> Result<CarryDone, CallError> {
        self.context.own_only()?;
        let carried = self
            .context
            .open_sealed(&asked, surefoot_student::read_carry)?;
        let (student, new_here, taken) = match self.student_of(&carried)? {
            Some(id) => {
                let taken = self.carry_into(&id, &carried)?;
                (id, false, taken)
            }
            None => {
                let (id, taken) = self.carry_as_new(&carried)?;
                (id, true, taken)
            }
        };
        Ok(CarryDone {
            student,
            new_here,
            check_ins: taken.check_ins,
            answers: taken.answers,
        })
    }

    /// The student of this device on the seat of a carry file.
    fn student_of(&self, carried: &Carried) -> Result<Option<String>, CallError> {
        for id in self.ids()? {
            let same = self.as_locked_student(&id, |_, joined| Ok(carried.is_of(joined)));
            // Another student's damaged store does not matter here; the first screen reports it.
            if same.unwrap_or(false) {
                return Ok(Some(id));
            }
        }
        Ok(None)
    }

    fn carry_into(&self, id: &str, carried: &Carried) -> Result<CarryTaken, CallError> {
        let today = self.context.today();
        self.as_student(id, |store, joined| {
            let unused = [0; 16];
            let joined = Some(joined);
            Ok(surefoot_student::take_carry(
                store, joined, carried, &unused, today,
            )?)
        })
    }

    fn carry_as_new(&self, carried: &Carried) -> Result<(String, CarryTaken), CallError> {
        let id = random::hex::<8>()?;
        let path = self.context.data().student(&id);
        make_folder(&self.context.data().students())?;
        make_file(&path)?;
        let taken = {
            let store = StudentStore::open(&path, Durability::Full)?;
            let device = random::bytes()?;
            surefoot_student::take_carry(&store, None, carried, &device, self.context.today())
        };
        if taken.is_err() {
            // The new store holds nothing yet.
            let _ = wipe_store(&path);
        }
        Ok((id, taken?))
    }
}
