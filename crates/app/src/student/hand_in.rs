//! Makes hand-ins.

use super::{StudentDoor, StudentId};
use crate::context::copies::StoreName;
use crate::context::file_dialogs::FileKind;
use crate::context::folder::{make_folder, write_private};
use crate::context::random;
use crate::context::settings::World;
use crate::error::CallError;
use surefoot_student::views::{HandInMade, HandInPreview};

impl StudentDoor {
    /// The content of a hand-in, for the screen.
    pub fn hand_in_preview(&self, id: StudentId) -> Result<HandInPreview, CallError> {
        let today = self.context.today();
        self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::hand_in_preview(store, joined, today)?)
        })
    }

    /// Makes a hand-in and saves it where the person chooses; in the sample class, in its shared
    /// folder.
    pub fn hand_in(&self, id: StudentId) -> Result<HandInMade, CallError> {
        self.make_hand_in(&id, |name, bytes| {
            let place = self.context.dialogs.save(name, FileKind::HandIn, bytes)?;
            Ok((place, false))
        })
    }

    /// Makes a hand-in and gives it to another program by the system's share sheet. Without a share
    /// sheet, saves it as [`StudentDoor::hand_in`] does.
    pub fn share_hand_in(&self, id: StudentId) -> Result<HandInMade, CallError> {
        self.make_hand_in(&id, |name, bytes| {
            if self.context.dialogs.share(name, FileKind::HandIn, bytes)? {
                return Ok((Some(String::new()), true));
            }
            Ok((
                self.context.dialogs.save(name, FileKind::HandIn, bytes)?,
                false,
            ))
        })
    }

    /// Makes a hand-in. `hand_over` returns the place of the file, and whether it was shared.
    fn make_hand_in(
        &self,
        id: &StudentId,
        hand_over: impl FnOnce(&str, &[u8]) -> Result<(Option<String>, bool), CallError>,
    ) -> Result<HandInMade, CallError> {
        let today = self.context.today();
        let name = random::bytes()?;
        let made = self.as_student(&id.student, |store, joined| {
            Ok(surefoot_student::make_hand_in(store, joined, today, &name)?)
        })?;
        // The store is not locked while the person chooses a place.
        let (place, shared) = match self.context.world() {
            World::Sample => {
                let folder = self.context.data().shared_folder();
                make_folder(&folder)?;
                write_private(&folder.join(&made.file_name), &made.bytes)?;
                (Some(String::new()), false)
            }
            World::Own => hand_over(&made.file_name, &made.bytes)?,
        };
        if place.is_some() {
            self.with_student(&id.student, |store| {
                surefoot_student::note_hand_in(store, &made)?;
                let name = StoreName::Student {
                    student: id.student.clone(),
                };
                self.context
                    .keep_copy(&name, true, |into| store.copy_into(into));
                Ok(())
            })?;
        }
        Ok(HandInMade {
            file_name: made.file_name,
            place,
            shared,
            check_ins: made.check_ins,
            answers: made.answers,
        })
    }
}
