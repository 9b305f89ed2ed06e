//! Removes the data of a student, or all data.

use super::DeviceDoor;
use super::start::Start;
use crate::context::copies::StoreName;
use crate::context::disk;
use crate::context::folder::make_folder;
use crate::context::values::Nothing;
use crate::context::wipe::{wipe, wipe_folder, wipe_store};
use crate::error::CallError;
use crate::lock::lock;
use serde::{Deserialize, Serialize};
use surefoot_record::{Field, Rule, Thing};
use surefoot_store::desk::key_facts;
use ts_rs::TS;

/// A student to remove from this device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RemoveStudent {
    /// The profile's id.
    pub student: String,
}

impl DeviceDoor {
    /// Removes the store of a student and all its copies.
    ///
    /// # Errors
    /// Returns [`CallError::Locked`] until the PIN is typed.
    pub fn remove_student(&self, asked: RemoveStudent) -> Result<Start, CallError> {
        self.context.own_only()?;
        let store = StoreName::Student {
            student: asked.student.clone(),
        };
        let path = self.context.store_path(&store)?;
        if !disk::is_there(&path) && self.context.copy_paths(&store)?.is_empty() {
            return Err(CallError::NotFound {
                what: Thing::Student,
            });
        }
        self.refuse_locked(&store)?;
        self.context.none_running()?;
        self.while_closed(&store, &path, || {
            self.context.wipe_copies(&store)?;
            wipe_store(&path)
        })?;
        self.student.forget_left(&asked.student)?;
        self.start(Nothing {})
    }

    /// Removes everything on this device except its language and colours.
    ///
    /// # Errors
    /// Returns [`CallError::Locked`] until the PINs of all students are typed,
    /// [`CallError::DeskLocked`] while the desk is locked, and [`CallError::Invalid`] if a locked
    /// desk is among the copies: otherwise somebody without its passphrase could start an empty
    /// desk and remove the locked one.
    pub fn remove_everything(&self, _: Nothing) -> Result<Start, CallError> {
        self.context.own_only()?;
        self.context.none_running()?;
        self.desk.refuse_locked()?;
        if self.has_other_locked_desk()? {
            return Err(CallError::Invalid {
                field: Field::Copies,
                rule: Rule::Locked,
            });
        }
        for student in self.student.ids()? {
            self.refuse_locked(&StoreName::Student { student })?;
        }
        self.desk.forget_folder();
        self.student.forget_folders();
        self.desk.discard_all_removed();
        let remove = || {
            wipe_folder(self.context.data().folder())?;
            wipe(&self.context.paths.class_folder())?;
            wipe(&self.context.paths.shown_folders())?;
            Ok(make_folder(&self.context.data().students())?)
        };
        self.student
            .stores
            .while_all_closed(|| self.desk.stores.while_all_closed(remove))?;
        self.context.release_folders();
        // A call in between may have read a note again.
        self.desk.forget_folder();
        self.student.forget_folders();
        lock(&self.context.copy_trouble).clear();
        *lock(&self.context.lock_trouble) = None;
        self.desk.look_again();
        self.start(Nothing {})
    }

    /// Whether a copy of a desk has a lock that the desk of this device does not open.
    fn has_other_locked_desk(&self) -> Result<bool, CallError> {
        let own = key_facts(&self.context.data().desk()).ok();
        let copies = self.context.copy_paths(&StoreName::Desk)?;
        Ok(copies.iter().any(|(path, _)| {
            key_facts(path).is_ok_and(|facts| {
                facts.lock.is_some() && Some(facts.number) != own.map(|own| own.number)
            })
        }))
    }
}
