//! Files that another program opened with this one.

use super::DeviceDoor;
use crate::context::file_dialogs::{FileKind, FileSource};
use crate::context::picked::PickedSealed;
use crate::context::values::Nothing;
use crate::error::CallError;
use crate::escaped::escaped;
use crate::student::join::PackOffer;
use serde::{Deserialize, Serialize};
use surefoot_exchange::{BACKUP_CAPS, CARRY_CAPS, FileHead, HEAD_BYTES};
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
        let (kind, source) = kind_of(source);
        match kind {
            FileKind::HandIn => self.desk.add_waiting(source)?,
            FileKind::CarryFile => {
                opened.carry = Some(self.context.keep_opened(source, &CARRY_CAPS));
            }
            FileKind::Backup => {
                opened.backup = Some(self.context.keep_opened(source, &BACKUP_CAPS));
            }
            _ => opened.pack = Some(self.student.offer(source)?),
        }
        Ok(())
    }
}

/// The kind of an opened file: by the extension of its name, or by its first bytes if the name has
/// none of ours. Android often gives another name, or the address of a file instead of a name.
fn kind_of(source: FileSource) -> (FileKind, FileSource) {
    const OPENED: [FileKind; 4] = [
        FileKind::ClassPack,
        FileKind::HandIn,
        FileKind::CarryFile,
        FileKind::Backup,
    ];
    let name = source.name().to_ascii_lowercase();
    let extension = name.rsplit_once('.').map_or("", |(_, end)| end);
    let by_name = |kind: &FileKind| kind.picked_extensions().contains(&extension);
    if let Some(kind) = OPENED.into_iter().find(by_name) {
        return (kind, source);
    }
    let (head, source) = source.peek(HEAD_BYTES as u64);
    let kind = match FileHead::of(&head) {
        FileHead::SealedForClass | FileHead::Zip => FileKind::HandIn,
        // Both are sealed alike; what is left of the name decides.
        FileHead::SealedByPassphrase if name.contains(".sfbackup") => FileKind::Backup,
        FileHead::SealedByPassphrase => FileKind::CarryFile,
        // Anything else is refused as no class pack.
        FileHead::ClassPack | FileHead::Other => FileKind::ClassPack,
    };
    (kind, source)
}
