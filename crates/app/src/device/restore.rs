//! Replaces a store by a copy or a backup. The replaced store is moved into quarantine and never
//! deleted.

use super::DeviceDoor;
use super::start::Start;
use crate::context::copies::{StoreName, check_store, newest_number};
use crate::context::disk::{self, sync_folder, with_end};
use crate::context::folder::{entries, make_folder, name_of};
use crate::context::random;
use crate::context::values::Nothing;
use crate::context::wipe::{BESIDE, Part, wipe, wipe_beside};
use crate::error::{CallError, files};
use serde::{Deserialize, Serialize};
use std::path::{Path, PathBuf};
use surefoot_record::Thing;
#[cfg(feature = "desk")]
use surefoot_store::{DeskStore, desk::key_facts};
use surefoot_store::{Durability, StudentStore};
use ts_rs::TS;

/// A store that was restored.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Restored {
    /// The store.
    pub store: StoreName,
    /// Whether it replaced another store, which is now in quarantine.
    pub quarantined: bool,
    /// What the screens show now.
    pub start: Start,
}

/// A copy to restore.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct RestoreCopy {
    /// The store.
    pub store: StoreName,
    /// The name of the copy.
    pub name: String,
}

impl DeviceDoor {
    /// Replaces a store by a copy of it.
    ///
    /// # Errors
    /// Returns [`CallError::DamagedStore`] for a damaged copy, [`CallError::Locked`] until the
    /// student's PIN is typed, and [`CallError::DeskLocked`] while the desk is locked.
    pub fn restore_copy(&self, asked: RestoreCopy) -> Result<Restored, CallError> {
        self.context.own_only()?;
        self.refuse_locked(&asked.store)?;
        let (copy, _) = self
            .context
            .copy_paths(&asked.store)?
            .into_iter()
            .find(|(_, copy)| copy.name == asked.name)
            .ok_or(CallError::NotFound { what: Thing::Copy })?;
        // SQLite copies it, because a replaced store may have a log.
        self.discard_removed_of(&asked.store);
        let quarantined = self.swap_in(&asked.store, |into| {
            surefoot_store::copy_file(&copy, into)?;
            self.adapt_restored(&asked.store, into)
        })?;
        Ok(Restored {
            store: asked.store,
            quarantined,
            start: self.start(Nothing {})?,
        })
    }

    /// Discards the removals of a desk that is replaced.
    pub(super) fn discard_removed_of(&self, replaced: &StoreName) {
        if *replaced == StoreName::Desk {
            self.desk.discard_all_removed();
        }
    }

    /// Adapts an older store before it is used, so that new entries are not mistaken for those made
    /// between its date and today.
    pub(super) fn adapt_restored(&self, store: &StoreName, at: &Path) -> Result<(), CallError> {
        check_store(store, at)?;
        match store {
            #[cfg(not(feature = "desk"))]
            StoreName::Desk => Err(CallError::NotFound { what: Thing::Desk }),
            #[cfg(feature = "desk")]
            StoreName::Desk => {
                let desk = DeskStore::open(at, Durability::Full)?;
                desk.put_wrong_tries(self.most_wrong_tries(at)?)?;
                surefoot_desk::skip_pack_versions(&desk)?;
                Ok(desk.empty_log()?)
            }
            StoreName::Student { .. } => {
                let store = StudentStore::open(at, Durability::Full)?;
                surefoot_student::renew_device(&store, &random::bytes()?)?;
                Ok(store.empty_log()?)
            }
        }
    }

    /// The most wrong passphrases in a row that the desk at `at`, its copies and the desk that it
    /// replaces have counted, so that going back to a copy saves nobody the wait.
    #[cfg(feature = "desk")]
    fn most_wrong_tries(&self, at: &Path) -> Result<u32, CallError> {
        let number = key_facts(at)?.number;
        let copies = self.context.copy_paths(&StoreName::Desk)?;
        let paths = copies.into_iter().map(|(path, _)| path);
        let most = (paths.chain([at.to_owned(), self.context.data().desk()]))
            .filter_map(|path| key_facts(&path).ok())
            .filter(|facts| facts.number == number)
            .filter_map(|facts| Some(facts.lock?.wrong_tries))
            .max();
        Ok(most.unwrap_or(0))
    }

    /// Checks the store that `write` writes, and replaces `store` by it. Returns whether there was
    /// a store to replace.
    pub(super) fn swap_in(
        &self,
        store: &StoreName,
        write: impl FnOnce(&Path) -> Result<(), CallError>,
    ) -> Result<bool, CallError> {
        self.context.none_running()?;
        let path = self.context.store_path(store)?;
        let folder = path.parent().unwrap_or(Path::new(".")).to_owned();
        make_folder(&folder)?;
        let part = Part::new(&folder, ".restore-")?;
        let written = write(part.path()).and_then(|()| Ok(check_store(store, part.path())?));
        // Files of SQLite, and the copy that a migration made.
        let own = name_of(part.path());
        for beside in entries(&folder)? {
            let name = name_of(&beside);
            if name.starts_with(&own) && name != own {
                wipe(&beside)?;
            }
        }
        written?;
        self.while_closed(store, &path, || {
            surefoot_store::nobody_has_open(&path)?;
            let moved = self.quarantine(store, &path)?;
            if let Err(error) = part.put(&path) {
                // The disk failed between the two steps, so the earlier store returns.
                if let Some(place) = &moved {
                    let _ = disk::rename(place, &path);
                    for end in BESIDE {
                        let _ = disk::rename(&with_end(place, end), &with_end(&path, end));
                    }
                }
                return Err(files(error));
            }
            sync_folder(&folder)?;
            if *store == StoreName::Desk {
                self.desk.look_again();
            }
            Ok(moved.is_some())
        })
    }

    /// Moves a store and its log into quarantine. Returns its new path, or `None` without a store.
    fn quarantine(&self, store: &StoreName, path: &Path) -> Result<Option<PathBuf>, CallError> {
        if !disk::is_there(path) {
            // A log without its store must not be taken for the new one's.
            wipe_beside(path)?;
            return Ok(None);
        }
        let folder = self.context.data().quarantine();
        make_folder(&folder)?;
        let id = path.file_stem().unwrap_or_default().to_string_lossy();
        let today = self.context.device_today();
        let newest = newest_number(&self.context.copies_folder(store)?)?;
        let place = (1..)
            .map(|nth: u32| folder.join(format!("{id}.{newest}.{today}.{nth}.sqlite")))
            .find(|place| !disk::is_there(place))
            .unwrap_or_else(|| folder.join(format!("{id}.sqlite")));
        // The log comes first: without it, the store would lack its newest entries.
        for end in BESIDE {
            let beside = with_end(path, end);
            if disk::is_there(&beside) {
                disk::rename(&beside, &with_end(&place, end)).map_err(files)?;
            }
        }
        disk::rename(path, &place).map_err(files)?;
        sync_folder(&folder)?;
        Ok(Some(place))
    }

    /// Does `work` while the store is closed and no call can open it.
    pub(super) fn while_closed<T>(
        &self,
        store: &StoreName,
        path: &Path,
        work: impl FnOnce() -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        match store {
            StoreName::Desk => self.desk.stores.while_closed(path, work),
            StoreName::Student { .. } => self.student.stores.while_closed(path, work),
        }
    }
}
