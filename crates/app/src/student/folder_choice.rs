//! Which class folder serves which student of a shared device.
//!
//! The first folder of a class that somebody chooses here serves everybody of the class. Another one
//! that a student chooses later serves that student alone, so that nobody can lead the hand-ins of the
//! others elsewhere.

use super::folder_state::{FolderNote, Note, OwnFolder};
use super::{StudentDoor, StudentId};
use crate::error::CallError;
use crate::lock::lock;
use crate::student::folder::ShownFolder;
use std::path::PathBuf;
use surefoot_record::ClassId;

impl StudentDoor {
    /// Lets the person show this device the folder of a student's class.
    pub fn show_folder(&self, id: StudentId) -> Result<ShownFolder, CallError> {
        self.context.own_only()?;
        let class = self.class_of(&id)?;
        if let Some(at) = self.context.dialogs.pick_class_folder()? {
            self.choose_folder(&id.student, &class, at)?;
        }
        self.shown_folder(id)
    }

    /// Stops using the folder of a student's class for that student. What is in it stays.
    pub fn stop_shown_folder(&self, id: StudentId) -> Result<ShownFolder, CallError> {
        self.context.own_only()?;
        let class = self.class_of(&id)?;
        self.change_note(|note| {
            if let Some(at) = note.folder_of(&id.student, &class).cloned() {
                let own = OwnFolder {
                    class: class.clone(),
                    at,
                    stopped: true,
                };
                note.own.insert(id.student.clone(), own);
            }
        })?;
        self.shown_folder(id)
    }

    /// Uses the folder again that a student stopped using.
    pub fn use_shown_folder(&self, id: StudentId) -> Result<ShownFolder, CallError> {
        self.context.own_only()?;
        let class = self.class_of(&id)?;
        let stopped = {
            let mut shown = lock(&self.folders);
            self.read_shown(&mut shown)?;
            let note = shown.note.as_ref();
            note.and_then(|note| Some(note.stopped_of(&id.student, &class)?.folder.clone()))
        };
        if let Some(at) = stopped {
            self.choose_folder(&id.student, &class, at)?;
        }
        self.shown_folder(id)
    }

    fn class_of(&self, id: &StudentId) -> Result<ClassId, CallError> {
        self.as_student(&id.student, |_, joined| Ok(joined.pack.class_id.clone()))
    }

    /// Notes the folder that a student of a class chose.
    pub(super) fn choose_folder(
        &self,
        student: &str,
        class: &ClassId,
        at: PathBuf,
    ) -> Result<(), CallError> {
        let others = self.others_of(student, class)?;
        // The next visit looks at the folder again, because its trouble may be over.
        lock(&self.folders)
            .states
            .remove(&(class.clone(), at.clone()));
        self.change_note(|note| {
            let earlier = note.folder_of(student, class).map(|of| of.folder.clone());
            // Nothing of the student is in another folder.
            if earlier.as_ref() != Some(&at) {
                note.left.remove(student);
            }
            let folder = FolderNote {
                folder: at,
                reached_on: None,
            };
            let is_own =
                |other: &String| note.own.get(other).is_some_and(|own| own.class == *class);
            let serves_others = others.iter().any(|other| !is_own(other));
            match note.folders.get(class) {
                Some(shared) if shared.folder == folder.folder => {
                    note.own.remove(student);
                }
                Some(_) if serves_others => {
                    let own = OwnFolder {
                        class: class.clone(),
                        at: folder,
                        stopped: false,
                    };
                    note.own.insert(student.to_owned(), own);
                }
                _ => {
                    note.own.remove(student);
                    note.folders.insert(class.clone(), folder);
                }
            }
        })
    }

    /// The other students of a class on this device.
    fn others_of(&self, student: &str, class: &ClassId) -> Result<Vec<String>, CallError> {
        let mut others = Vec::new();
        for id in self.ids()?.into_iter().filter(|id| id != student) {
            let same = self.as_locked_student(&id, |_, joined| Ok(joined.pack.class_id == *class));
            // One whose store is damaged may be of the class, and keeps its folder.
            if same.unwrap_or(true) {
                others.push(id);
            }
        }
        Ok(others)
    }

    /// Lets the hand-ins of a student go to the seat of another slip. `picked` is the folder that
    /// its pack is from. Without one, the device keeps using the folder of the earlier class. It
    /// leaves nothing there unless the folder has a pack of the new class, and Hand in says so.
    pub(super) fn change_folder(
        &self,
        student: &str,
        earlier: &ClassId,
        class: &ClassId,
        picked: Option<PathBuf>,
    ) -> Result<(), CallError> {
        let mut noted = None;
        self.change_note(|note| {
            if !note.folders.contains_key(class) {
                noted = note.folder_of(student, earlier).map(|of| of.folder.clone());
            }
        })?;
        // The new folder is noted before the old one goes: what no note names loses its right.
        match picked.or(noted) {
            Some(at) => self.choose_folder(student, class, at)?,
            None => self.change_note(|note| {
                note.own.remove(student);
            })?,
        }
        self.forget_hand_in(student)
    }

    /// Forgets what was left of a student who is removed from this device, and the folder that the
    /// student chose.
    pub(crate) fn forget_left(&self, student: &str) -> Result<(), CallError> {
        self.forget_hand_in(student)?;
        self.change_note(|note| {
            note.own.remove(student);
        })
    }

    fn forget_hand_in(&self, student: &str) -> Result<(), CallError> {
        let mut shown = lock(&self.folders);
        shown.made.remove(student);
        shown.seen.remove(student);
        drop(shown);
        self.change_note(|note| {
            note.waiting_since.remove(student);
            note.left.remove(student);
        })
    }

    /// Changes the note, and stores it if it is another one then.
    fn change_note(&self, change: impl FnOnce(&mut Note)) -> Result<(), CallError> {
        let mut shown = lock(&self.folders);
        self.read_shown(&mut shown)?;
        let Some(note) = &mut shown.note else {
            return Ok(());
        };
        let before = note.clone();
        change(note);
        if *note == before {
            return Ok(());
        }
        self.save_shown(&shown)?;
        drop(shown);
        self.context.release_folders();
        Ok(())
    }
}
