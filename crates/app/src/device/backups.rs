//! Backups: a whole store, sealed by a passphrase.

use super::DeviceDoor;
use super::restore::Restored;
use crate::context::copies::{StoreName, check_store};
use crate::context::disk;
use crate::context::file_dialogs::FileKind;
use crate::context::picked::{OpenSealed, PickedSealed};
use crate::context::values::{FileMade, Nothing};
use crate::context::wipe::Part;
use crate::error::{CallError, files};
use serde::{Deserialize, Serialize};
use std::path::Path;
use surefoot_exchange::{BACKUP_CAPS, BackupFile, BackupKind, open_backup, seal_backup};
#[cfg(not(feature = "desk"))]
use surefoot_record::Thing;
#[cfg(feature = "desk")]
use surefoot_store::{DeskStore, desk::KeptKey};
use ts_rs::TS;

/// The id of the desk in a backup.
#[cfg(feature = "desk")]
const DESK_ID: &str = "desk";

/// A backup to make.
#[derive(Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct BackUp {
    /// The store.
    pub store: StoreName,
    /// The passphrase, at least 8 characters.
    pub passphrase: String,
}

impl DeviceDoor {
    /// Seals a whole store and saves it where the person chooses.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for a passphrase that is too short.
    pub fn back_up(&self, asked: BackUp) -> Result<FileMade, CallError> {
        self.context.own_only()?;
        let (kind, id, store) = match &asked.store {
            // In memory, because the backup of a locked desk has a key of its own without a lock.
            #[cfg(not(feature = "desk"))]
            StoreName::Desk => return Err(CallError::NotFound { what: Thing::Desk }),
            #[cfg(feature = "desk")]
            StoreName::Desk => {
                let store = self.desk.with_desk(|desk| {
                    Ok(desk.resealed(&KeptKey::open(), false)?.into_bytes()?)
                })?;
                (BackupKind::Desk, DESK_ID, store)
            }
            StoreName::Student { student } => {
                let copy = Part::new(self.context.data().folder(), ".backup-")?;
                self.student
                    .with_student(student, |store| Ok(store.copy_into(copy.path())?))?;
                check_store(&asked.store, copy.path())?;
                let store = disk::read(copy.path()).map_err(files)?;
                (BackupKind::Student, student.as_str(), store)
            }
        };
        let backup = BackupFile {
            kind,
            id: id.to_owned(),
            store,
        };
        let bytes = seal_backup(&backup, &asked.passphrase)?;
        let today = self.context.device_today();
        // Without the nickname, because everybody can read the name of a file.
        let file_name = match kind {
            BackupKind::Desk => format!("desk-{today}.sfbackup"),
            BackupKind::Student => format!("my-surefoot-{today}.sfbackup"),
        };
        self.context.hand_over(file_name, FileKind::Backup, &bytes)
    }

    /// Lets the person pick a backup.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for a file that is too large or cannot be read.
    pub fn pick_backup(&self, _: Nothing) -> Result<Option<PickedSealed>, CallError> {
        self.context.own_only()?;
        self.context.pick_sealed(FileKind::Backup, &BACKUP_CAPS)
    }

    /// Opens the picked backup and replaces the store by it. The replaced store is moved into
    /// quarantine. A desk gets the lock of the one that it replaces if that is unlocked, and no
    /// lock otherwise.
    ///
    /// # Errors
    /// Returns [`CallError::Refused`] for the wrong passphrase or a damaged file,
    /// [`CallError::DamagedStore`] or [`CallError::NewerStore`] for the store in it, and
    /// [`CallError::Locked`] until the PIN of its student is typed.
    pub fn restore_backup(&self, asked: OpenSealed) -> Result<Restored, CallError> {
        self.context.own_only()?;
        let backup = self
            .context
            .open_sealed(&asked, |bytes, words| open_backup(bytes, words))?;
        let store = match backup.kind {
            BackupKind::Desk => StoreName::Desk,
            BackupKind::Student => StoreName::Student { student: backup.id },
        };
        // A backup is the way back for somebody who forgot the passphrase of the desk.
        if store != StoreName::Desk {
            self.refuse_locked(&store)?;
        }
        self.discard_removed_of(&store);
        let quarantined = self.swap_in(&store, |into| {
            match &store {
                StoreName::Desk => self.write_desk(backup.store, into)?,
                StoreName::Student { .. } => disk::write(into, &backup.store).map_err(files)?,
            }
            self.adapt_restored(&store, into)
        })?;
        Ok(Restored {
            store,
            quarantined,
            start: self.start(Nothing {})?,
        })
    }

    #[cfg(not(feature = "desk"))]
    fn write_desk(&self, _: Vec<u8>, _: &Path) -> Result<(), CallError> {
        Err(CallError::NotFound { what: Thing::Desk })
    }

    /// Writes the desk of a backup into a file, under the lock of the open desk if it has one.
    #[cfg(feature = "desk")]
    fn write_desk(&self, store: Vec<u8>, into: &Path) -> Result<(), CallError> {
        let desk = DeskStore::from_bytes(store)?;
        let state = self.desk.lock_state();
        if !state.has_lock || state.locked {
            return Ok(desk.write_anew(into)?);
        }
        let kept = self.desk.with_desk(|open| Ok(open.kept_key()?))?;
        Ok(desk.resealed(&kept, false)?.write_anew(into)?)
    }
}
