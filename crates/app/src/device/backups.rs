//! Backups: a whole store, sealed by a passphrase.

use super::DeviceDoor;
use super::restore::Restored;
use crate::context::copies::{StoreName, check_store};
use crate::context::file_dialogs::FileKind;
use crate::context::picked::{OpenSealed, PickedSealed};
use crate::context::values::{FileMade, Nothing};
use crate::context::wipe::Part;
use crate::error::{CallError, files};
use serde::{Deserialize, Serialize};
use std::fs;
use std::path::Path;
use surefoot_exchange::{BACKUP_CAPS, BackupFile, BackupKind, open_backup, seal_backup};
use ts_rs::TS;

/// The id of the desk in a backup.
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
        let copy = Part::new(self.context.data().folder(), ".backup-")?;
        let copied = |into: &Path| -> Result<(), CallError> {
            match &asked.store {
                StoreName::Desk => self.desk.with_desk(|desk| Ok(desk.copy_into(into)?)),
                StoreName::Student { student } => self
                    .student
                    .with_student(student, |store| Ok(store.copy_into(into)?)),
            }
        };
        copied(copy.path())?;
        check_store(&asked.store, copy.path())?;
        let (kind, id) = match &asked.store {
            StoreName::Desk => (BackupKind::Desk, DESK_ID),
            StoreName::Student { student } => (BackupKind::Student, student.as_str()),
        };
        let backup = BackupFile {
            kind,
            id: id.to_owned(),
            store: fs::read(copy.path()).map_err(files)?,
        };
        drop(copy);
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
    /// quarantine.
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
        self.refuse_locked(&store)?;
        self.discard_removed_of(&store);
        let quarantined = self.swap_in(&store, |into| {
            fs::write(into, &backup.store).map_err(files)?;
            self.adapt_restored(&store, into)
        })?;
        Ok(Restored {
            store,
            quarantined,
            start: self.start(Nothing {})?,
        })
    }
}
