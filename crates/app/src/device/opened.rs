//! Files that another program opened with this one.

use super::DeviceDoor;
use crate::context::file_dialogs::FileKind;
use crate::context::picked::PickedSealed;
use crate::context::values::Nothing;
use crate::error::CallError;
use crate::student::join::PackOffer;
use serde::{Deserialize, Serialize};
use surefoot_exchange::{BACKUP_CAPS, CARRY_CAPS};
use ts_rs::TS;

/// Files that another program handed over, or that were dropped on the window.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct OpenedFiles {
    /// The last class pack among them.
    pub pack: Option<PackOffer>,
    /// Hand-ins and zips among them; they wait for an import from `opened`.
    pub hand_ins: usize,
    /// A carry file among them, waiting for its passphrase.
    pub carry: Option<PickedSealed>,
    /// A backup among them, waiting for its passphrase.
    pub backup: Option<PickedSealed>,
}

impl DeviceDoor {
    /// What another program opened with this one, or what was dropped on its
    /// window, since the last time this was asked. Of class packs, carry files
    /// and backups the last; hand-ins and zips all wait for an import.
    ///
    /// # Errors
    /// [`CallError::Refused`] for a class pack that is none; hand-ins are
    /// judged by their import.
    pub fn opened_files(&self, _: Nothing) -> Result<OpenedFiles, CallError> {
        let mut opened = OpenedFiles {
            pack: None,
            hand_ins: 0,
            carry: None,
            backup: None,
        };
        for source in self.context.dialogs.take_opened() {
            let name = source.name().to_owned();
            let extension = name
                .rsplit_once('.')
                .map(|(_, end)| end.to_ascii_lowercase())
                .unwrap_or_default();
            let is = |kind: FileKind| kind.picked_extensions().contains(&extension.as_str());
            if is(FileKind::HandIn) {
                self.desk.add_waiting(source);
            } else if is(FileKind::CarryFile) {
                let bytes = source.read(CARRY_CAPS.sealed_bytes)?;
                opened.carry = Some(self.context.keep_sealed(name, bytes));
            } else if is(FileKind::Backup) {
                let bytes = source.read(BACKUP_CAPS.sealed_bytes)?;
                opened.backup = Some(self.context.keep_sealed(name, bytes));
            } else {
                opened.pack = Some(self.student.offer(source)?);
            }
        }
        opened.hand_ins = self.desk.waiting_count();
        Ok(opened)
    }
}
