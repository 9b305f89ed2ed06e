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
}

impl DeviceDoor {
    /// The files opened or dropped since the last call.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for a damaged class pack. An import reports on damaged
    /// hand-ins.
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
