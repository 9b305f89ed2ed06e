//! Calls about backups: made, opened, put in the place of a store.

use crate::app::{App, files, lock};
use crate::copies::check_store;
use crate::{
    BackUp, CallError, FileKind, FileMade, Nothing, OpenSealed, PickedSealed, RestoreCopy,
    Restored, StoreName, World, chance,
};
use std::fs;
use std::path::Path;
use surefoot_exchange::{
    BACKUP_CAPS, BackupFile, BackupKind, Caps, Refusal, open_backup, seal_backup,
};
use surefoot_store::{DeskStore, Durability, StudentStore};

/// What the one desk of a device is called in a backup.
const DESK_ID: &str = "desk";

impl App {
    /// The sample class is made anew when wanted, so nothing of it is kept or brought back.
    pub(crate) fn own_only(&self) -> Result<(), CallError> {
        match self.world() {
            World::Own => Ok(()),
            World::Sample => Err(CallError::Invalid {
                field: "world".into(),
                rule: "sample_open".into(),
            }),
        }
    }

    /// Sees to an older state that is about to take its place: what is done
    /// from now on must not pass for what was done in the time that is gone.
    fn brought_back(&self, store: &StoreName, at: &Path) -> Result<(), CallError> {
        check_store(store, at)?;
        match store {
            StoreName::Desk => {
                let desk = DeskStore::open(at, Durability::Full)?;
                Ok(surefoot_desk::skip_pack_versions(&desk)?)
            }
            StoreName::Student { .. } => {
                let store = StudentStore::open(at, Durability::Full)?;
                Ok(surefoot_student::renew_device(&store, &chance::bytes()?)?)
            }
        }
    }

    /// Lets the person pick a sealed file, and keeps it until its passphrase is typed.
    pub(crate) fn pick_sealed(
        &self,
        kind: FileKind,
        caps: &Caps,
    ) -> Result<Option<PickedSealed>, CallError> {
        let Some(source) = self.door.pick_file(kind)? else {
            return Ok(None);
        };
        let file_name = source.name().to_owned();
        let bytes = source.read(caps.sealed_bytes)?;
        Ok(Some(self.keep_sealed(file_name, bytes)))
    }

    /// Opens the sealed file picked last.
    pub(crate) fn open_sealed<T>(
        &self,
        asked: &OpenSealed,
        open: impl FnOnce(&[u8], &str) -> Result<T, Refusal>,
    ) -> Result<T, CallError> {
        let taken = lock(&self.state).sealed.take();
        let opened = match &taken {
            Some((number, bytes)) if *number == asked.picked => open(bytes, &asked.passphrase),
            _ => {
                return Err(CallError::NotFound {
                    what: "file".into(),
                });
            }
        };
        if opened.is_err() {
            // Kept, so that the passphrase can be typed again.
            lock(&self.state).sealed = taken;
        }
        Ok(opened?)
    }

    /// Seals a store whole and puts it where the person says.
    ///
    /// # Errors
    /// [`CallError::Refused`] for a passphrase that is too short,
    /// [`CallError::Files`], [`CallError::NotFound`], or the store's.
    pub fn back_up(&self, asked: BackUp) -> Result<FileMade, CallError> {
        self.own_only()?;
        let copy = tempfile::Builder::new()
            .prefix(".backup-")
            .suffix(".part")
            .tempfile_in(self.here().folder())
            .map_err(files)?
            .into_temp_path();
        let copied = |into: &Path| -> Result<(), CallError> {
            match &asked.store {
                StoreName::Desk => self.with_desk(|desk| Ok(desk.copy_into(into)?)),
                StoreName::Student { student } => {
                    self.with_student(student, |store| Ok(store.copy_into(into)?))
                }
            }
        };
        copied(&copy)?;
        check_store(&asked.store, &copy)?;
        let (kind, id) = match &asked.store {
            StoreName::Desk => (BackupKind::Desk, DESK_ID),
            StoreName::Student { student } => (BackupKind::Student, student.as_str()),
        };
        let backup = BackupFile {
            kind,
            id: id.to_owned(),
            store: fs::read(&copy).map_err(files)?,
        };
        let bytes = seal_backup(&backup, &asked.passphrase)?;
        let today = self.device_today();
        // Without the nickname: the name of a file is no secret.
        let file_name = match kind {
            BackupKind::Desk => format!("desk-{today}.sfbackup"),
            BackupKind::Student => format!("my-surefoot-{today}.sfbackup"),
        };
        let place = self.door.save(&file_name, FileKind::Backup, &bytes)?;
        Ok(FileMade {
            file_name,
            place,
            bytes: bytes.len(),
        })
    }

    /// Lets the person pick a backup.
    ///
    /// # Errors
    /// [`CallError::Refused`] for a file that is too large or cannot be read, [`CallError::Files`].
    pub fn pick_backup(&self, _: Nothing) -> Result<Option<PickedSealed>, CallError> {
        self.own_only()?;
        self.pick_sealed(FileKind::Backup, &BACKUP_CAPS)
    }

    /// Opens the picked backup and puts its store in place; what stood there
    /// is moved aside.
    ///
    /// # Errors
    /// [`CallError::Refused`], [`CallError::DamagedStore`] when the store in it
    /// is not whole, [`CallError::NewerStore`], [`CallError::Files`].
    pub fn restore_backup(&self, asked: OpenSealed) -> Result<Restored, CallError> {
        self.own_only()?;
        let backup = self.open_sealed(&asked, |bytes, words| open_backup(bytes, words))?;
        let store = match backup.kind {
            BackupKind::Desk => StoreName::Desk,
            BackupKind::Student => StoreName::Student { student: backup.id },
        };
        self.let_go_of_desk(&store);
        let put_aside = self.swap_in(&store, |into| {
            fs::write(into, &backup.store).map_err(files)?;
            self.brought_back(&store, into)
        })?;
        Ok(Restored {
            store,
            put_aside,
            start: self.start(Nothing {})?,
        })
    }

    /// What was removed from the desk belongs to the one that is replaced.
    fn let_go_of_desk(&self, replaced: &StoreName) {
        if *replaced == StoreName::Desk {
            self.drop_held();
        }
    }

    /// Puts a copy of this device in the place of its store; what stood there
    /// is moved aside.
    ///
    /// # Errors
    /// [`CallError::NotFound`], [`CallError::DamagedStore`] when the copy is
    /// not whole, [`CallError::Files`].
    pub fn restore_copy(&self, asked: RestoreCopy) -> Result<Restored, CallError> {
        self.own_only()?;
        let (copy, _) = self
            .copy_paths(&asked.store)?
            .into_iter()
            .find(|(_, copy)| copy.name == asked.name)
            .ok_or(CallError::NotFound {
                what: "copy".into(),
            })?;
        // Through SQLite, so that a log beside a replaced store comes along.
        self.let_go_of_desk(&asked.store);
        let put_aside = self.swap_in(&asked.store, |into| {
            surefoot_store::copy_file(&copy, into)?;
            self.brought_back(&asked.store, into)
        })?;
        Ok(Restored {
            store: asked.store,
            put_aside,
            start: self.start(Nothing {})?,
        })
    }
}
