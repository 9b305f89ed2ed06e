//! Calls about a second device: the student's carry file, the teacher's class key file.

use crate::app::{App, files, lock};
use crate::{
    CallError, CarryAsked, CarryDone, ClassKeyAsked, FileKind, FileMade, Nothing, OpenSealed,
    PickedSealed, Start, chance,
};
use std::fs;
use surefoot_exchange::{CARRY_CAPS, CLASS_KEY_CAPS};
use surefoot_store::{Durability, StudentStore};
use surefoot_student::{self, Carried, CarryTaken};

impl App {
    /// Seals everything of a student for a second device.
    ///
    /// # Errors
    /// [`CallError::Refused`] for a passphrase that is too short,
    /// [`CallError::Files`], [`CallError::Locked`], or the store's.
    pub fn make_carry(&self, asked: CarryAsked) -> Result<FileMade, CallError> {
        self.own_only()?;
        let today = self.this_day();
        let bytes = self.with_student(&asked.student, |store| {
            let joined = surefoot_student::joined(store)?;
            Ok(surefoot_student::make_carry(
                store,
                &joined,
                today,
                &asked.passphrase,
            )?)
        })?;
        let file_name = format!("my-surefoot-{today}.sfcarry");
        let place = self.door.save(&file_name, FileKind::CarryFile, &bytes)?;
        Ok(FileMade {
            file_name,
            place,
            bytes: bytes.len(),
        })
    }

    /// Lets the person pick a carry file.
    ///
    /// # Errors
    /// [`CallError::Refused`], [`CallError::Files`].
    pub fn pick_carry(&self, _: Nothing) -> Result<Option<PickedSealed>, CallError> {
        self.own_only()?;
        self.pick_sealed(FileKind::CarryFile, &CARRY_CAPS)
    }

    /// Takes the picked carry file: into the student of the same seat, or as a
    /// new student of this device.
    ///
    /// # Errors
    /// [`CallError::Refused`], [`CallError::Locked`] when that student's PIN
    /// has not been typed, or the store's.
    pub fn take_carry(&self, asked: OpenSealed) -> Result<CarryDone, CallError> {
        self.own_only()?;
        let carried = self.open_sealed(&asked, surefoot_student::read_carry)?;
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
            start: self.start(Nothing {})?,
        })
    }

    /// The student of this device on the seat of a carry file.
    fn student_of(&self, carried: &Carried) -> Result<Option<String>, CallError> {
        for id in self.student_ids()? {
            let same = self.with_student_unasked(&id, |store| {
                Ok(surefoot_student::joined(store).is_ok_and(|joined| carried.is_of(&joined)))
            });
            // A damaged store of another student is told on the first screen.
            if same.unwrap_or(false) {
                return Ok(Some(id));
            }
        }
        Ok(None)
    }

    fn carry_into(&self, id: &str, carried: &Carried) -> Result<CarryTaken, CallError> {
        let today = self.this_day();
        self.with_student(id, |store| {
            let joined = surefoot_student::joined(store)?;
            let unused = [0; 16];
            let joined = Some(&joined);
            Ok(surefoot_student::take_carry(
                store, joined, carried, &unused, today,
            )?)
        })
    }

    fn carry_as_new(&self, carried: &Carried) -> Result<(String, CarryTaken), CallError> {
        let id = chance::hex::<8>()?;
        let path = self.here().student(&id);
        fs::create_dir_all(self.here().students()).map_err(files)?;
        let taken = {
            let store = StudentStore::open(&path, Durability::Full)?;
            let device = chance::bytes()?;
            surefoot_student::take_carry(&store, None, carried, &device, self.this_day())
        };
        if taken.is_err() {
            // Nothing of this student has been done here yet.
            let _ = fs::remove_file(&path);
        }
        Ok((id, taken?))
    }

    /// Seals a class with its keys and names for the teacher's second computer.
    ///
    /// # Errors
    /// [`CallError::Refused`] for a passphrase that is too short,
    /// [`CallError::Files`], [`CallError::NotFound`], or the store's.
    pub fn export_class(&self, asked: ClassKeyAsked) -> Result<FileMade, CallError> {
        self.own_only()?;
        let bytes = self.with_desk(|desk| {
            let class = surefoot_desk::open_class(desk, &asked.class)?;
            Ok(surefoot_desk::export_class(&class, &asked.passphrase)?)
        })?;
        let file_name = format!("class-{}.sfkey", self.device_today());
        let place = self.door.save(&file_name, FileKind::ClassKey, &bytes)?;
        Ok(FileMade {
            file_name,
            place,
            bytes: bytes.len(),
        })
    }

    /// Lets the person pick a class key file.
    ///
    /// # Errors
    /// [`CallError::Refused`], [`CallError::Files`].
    pub fn pick_class_key(&self, _: Nothing) -> Result<Option<PickedSealed>, CallError> {
        self.own_only()?;
        self.pick_sealed(FileKind::ClassKey, &CLASS_KEY_CAPS)
    }

    /// Adds the class of the picked class key file to this desk.
    ///
    /// # Errors
    /// [`CallError::Refused`], [`CallError::Invalid`] when the class is here already, or the store's.
    pub fn import_class(&self, asked: OpenSealed) -> Result<Start, CallError> {
        self.own_only()?;
        let file = self.open_sealed(&asked, surefoot_desk::read_class_key)?;
        self.with_desk(|desk| Ok(surefoot_desk::import_class(desk, &file)?))?;
        self.start(Nothing {})
    }

    /// Keeps a sealed file that was opened from elsewhere until its passphrase is typed.
    pub(crate) fn keep_sealed(&self, file_name: String, bytes: Vec<u8>) -> PickedSealed {
        let mut state = lock(&self.state);
        let picked = state.sealed.as_ref().map_or(1, |(number, _)| number + 1);
        state.sealed = Some((picked, bytes));
        PickedSealed { picked, file_name }
    }
}
