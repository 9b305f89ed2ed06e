//! Files that another program opened with this one.

use super::DeviceDoor;
use crate::context::file_dialogs::{FileKind, FileSource};
use crate::context::picked::PickedSealed;
use crate::context::values::Nothing;
use crate::error::CallError;
use crate::escaped::escaped;
use crate::student::join::PackOffer;
use serde::{Deserialize, Serialize};
use surefoot_exchange::{BACKUP_CAPS, CARRY_CAPS};
use ts_rs::TS;

/// Files that another program opened with this one, or that were dropped on the window.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OpenedFiles {
    /// The last class pack among them.
    pub pack: Option<PackOffer>,
    /// How many hand-ins and zips are among them; an import from `opened` reads them.
    pub hand_ins: usize,
    /// The last carry file among them; it needs its passphrase.
    pub carry: Option<PickedSealed>,
    /// The last backup among them; it needs its passphrase.
    pub backup: Option<PickedSealed>,
    /// What could not be taken; the other files are not touched by it.
    pub not_taken: Vec<NotTaken>,
}

/// An opened file that could not be taken.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NotTaken {
    /// Its name.
    pub file_name: String,
    /// Why.
    pub why: CallError,
}

impl DeviceDoor {
    /// What another program opened with this one, or what was dropped on its
    /// window, since the last time this was asked. Of class packs, carry files
    /// and backups the last; hand-ins and zips all wait for an import, which judges them.
    pub fn opened_files(&self, _: Nothing) -> Result<OpenedFiles, CallError> {
        let mut opened = OpenedFiles {
            pack: None,
            hand_ins: 0,
            carry: None,
            backup: None,
            not_taken: Vec::new(),
        };
        for source in self.context.dialogs.take_opened() {
            let file_name = escaped(source.name(), &[]).into_owned();
            if let Err(why) = self.take_opened_file(source, &mut opened) {
                opened.not_taken.push(NotTaken { file_name, why });
            }
        }
        opened.hand_ins = self.desk.waiting_count();
        Ok(opened)
    }

    fn take_opened_file(
        &self,
        source: FileSource,
        opened: &mut OpenedFiles,
    ) -> Result<(), CallError> {
        let name = source.name().to_owned();
        let extension = name
            .rsplit_once('.')
            .map(|(_, end)| end.to_ascii_lowercase())
            .unwrap_or_default();
        let is = |kind: FileKind| kind.picked_extensions().contains(&extension.as_str());
        if is(FileKind::HandIn) {
            self.desk.add_waiting(source);
        } else if is(FileKind::CarryFile) {
            opened.carry = Some(self.context.keep_opened(source, &CARRY_CAPS));
        } else if is(FileKind::Backup) {
            opened.backup = Some(self.context.keep_opened(source, &BACKUP_CAPS));
        } else {
            opened.pack = Some(self.student.offer(source)?);
        }
        Ok(())
    }
}
