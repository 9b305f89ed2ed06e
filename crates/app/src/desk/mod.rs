//! The teacher's calls: classes, imports, the board, groups, talk, own exercises, prints.
//!
//! Uses the store of the desk. Must never know a student's store or a call of another door.

pub mod assignments;
pub mod board;
pub mod class;
pub mod class_day;
pub mod class_key;
pub mod entry;
pub mod folder;
mod folder_round;
mod folder_state;
pub mod groups;
pub mod guard;
pub mod imports;
pub mod lock_view;
pub mod moves;
pub mod own;
pub mod print;
pub mod removal;
pub mod removed;
pub mod roster;
pub mod talk;
pub mod taught_again;
pub mod warm_up;

use crate::context::Context;
use crate::context::copies::StoreName;
use crate::context::file_dialogs::FileSource;
use crate::context::folder::make_file;
use crate::context::open_stores::OpenStores;
use crate::context::settings::World;
use crate::error::CallError;
use crate::lock::lock;
use guard::Guarded;
use lock_view::DeskLock;
use removed::Removals;
use serde::{Deserialize, Serialize};
use std::path::PathBuf;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};
pub(crate) use surefoot_desk::ClassSummary;
use surefoot_desk::OpenClass;
use surefoot_store::desk::DataKey;
use surefoot_store::{DeskStore, Durability};
use ts_rs::TS;

/// A class by id.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ClassId {
    /// The class's id.
    pub class: String,
}

/// A seat of a class.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct SeatId {
    /// The class.
    pub class: String,
    /// The seat's number.
    pub seat: u32,
}

/// The teacher's door.
pub struct DeskDoor {
    context: Arc<Context>,
    pub(crate) stores: OpenStores<DeskStore>,
    /// The removals that can be undone.
    removed: Arc<Mutex<Removals>>,
    /// The class folder.
    folder: Arc<Mutex<folder_state::DeskFolder>>,
    /// Whether another desk may have taken the place of this one.
    other_desk: AtomicBool,
    /// Whether it is locked.
    pub(crate) guarded: Guarded,
    /// Hand-ins that another program opened with this one, until they are imported.
    waiting: Mutex<Vec<FileSource>>,
}

impl DeskDoor {
    pub(crate) fn new(context: Arc<Context>) -> Self {
        Self {
            guarded: Guarded::new(context.moment()),
            context,
            stores: OpenStores::default(),
            removed: Arc::default(),
            folder: Arc::default(),
            other_desk: AtomicBool::new(false),
            waiting: Mutex::default(),
        }
    }

    /// Uses the store of the desk.
    pub(crate) fn with_desk<T>(
        &self,
        work: impl FnOnce(&DeskStore) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        self.note_use();
        self.with_desk_unused(work)
    }

    /// Uses the store of the desk as [`DeskDoor::with_desk`] does, for what the teacher did not ask
    /// for: it does not keep the desk unlocked.
    fn with_desk_unused<T>(
        &self,
        work: impl FnOnce(&DeskStore) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        self.refuse_locked()?;
        let path = self.context.data().desk();
        let open = || {
            self.context.refuse_emptied(&StoreName::Desk)?;
            let was_there = path.is_file();
            make_file(&path)?;
            let desk = DeskStore::open(&path, self.context.durability())?;
            self.give_key(&desk)?;
            self.finish_lock(&desk);
            if was_there {
                self.context
                    .keep_copy(&StoreName::Desk, false, |into| desk.copy_into(into));
            }
            Ok(desk)
        };
        self.stores.with(&path, open, |desk| work(desk))
    }

    /// Wipes the copies that a change of the lock left behind. If that fails, work goes on, and
    /// the call `copies` reports why.
    fn finish_lock(&self, desk: &DeskStore) {
        *lock(&self.context.lock_trouble) = self.context.finish_lock(desk).err();
    }

    /// Finishes a change of the lock that was interrupted, also while the desk is locked.
    pub(crate) fn finish_lock_at_start(&self) {
        if self.lock_state().has_lock
            && let Ok(desk) = DeskStore::open_again(&self.lockable_desk(), Durability::Full)
        {
            self.finish_lock(&desk);
        }
    }

    /// The path of the desk that can have a lock: the person's own.
    fn lockable_desk(&self) -> PathBuf {
        self.context.paths.world(World::Own).desk()
    }

    /// The lock of the person's own desk. Locks it first if it was not used for the time that
    /// the teacher chose.
    pub(crate) fn lock_state(&self) -> DeskLock {
        if self.guarded.is_idle(self.context.moment()) {
            self.lock_now();
        }
        self.guarded.state(&self.lockable_desk())
    }

    /// Refuses while the desk is locked. The sample class has no lock.
    pub(crate) fn refuse_locked(&self) -> Result<(), CallError> {
        if self.context.world() == World::Own && self.lock_state().locked {
            return Err(CallError::DeskLocked);
        }
        Ok(())
    }

    /// Notes that the desk is used now.
    pub(crate) fn note_use(&self) {
        self.guarded.note_use(self.context.moment());
    }

    /// Locks the desk if it has a lock: clears its key and closes it. An import that runs has a
    /// key of its own and finishes.
    pub(crate) fn lock_now(&self) {
        if self.guarded.clear_key() {
            // A call that still runs closes the desk when it ends.
            let _ = self.stores.while_closed(&self.lockable_desk(), || Ok(()));
        }
    }

    /// Keeps the key of the desk in memory until it is locked.
    pub(crate) fn keep_key(&self, key: DataKey, idle_minutes: Option<u32>) {
        (self.guarded).keep_key(key, idle_minutes, self.context.moment());
    }

    /// Looks at the file of the desk again after it was replaced.
    pub(crate) fn look_again(&self) {
        self.guarded.look_again(&self.lockable_desk());
        self.other_desk.store(true, Ordering::Relaxed);
    }

    /// The key of the open desk, if it has a lock.
    fn key_in_memory(&self) -> Option<DataKey> {
        match self.context.world() {
            World::Own => self.guarded.key(),
            World::Sample => None,
        }
    }

    /// Gives an opened desk its key.
    pub(crate) fn give_key(&self, desk: &DeskStore) -> Result<(), CallError> {
        if desk.lock()?.is_none() {
            return Ok(());
        }
        let key = self.key_in_memory().ok_or(CallError::DeskLocked)?;
        Ok(desk.use_key(key)?)
    }

    fn with_class<T>(
        &self,
        class: &str,
        work: impl FnOnce(&DeskStore, &OpenClass) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        self.with_desk(|desk| work(desk, &surefoot_desk::open_class(desk, class)?))
    }

    /// The classes; none on a device without a desk.
    pub(crate) fn classes(&self) -> Result<Vec<ClassSummary>, CallError> {
        let data = self.context.data();
        if !data.desk().is_file() && !data.desk_copies().is_dir() {
            return Ok(Vec::new());
        }
        let today = self.context.today();
        self.with_desk(|desk| Ok(surefoot_desk::classes(desk, today)?))
    }

    /// Keeps a hand-in for the next import of opened files.
    pub(crate) fn add_waiting(&self, source: FileSource) -> Result<(), CallError> {
        lock(&self.waiting).push(source);
        Ok(())
    }

    pub(crate) fn waiting_count(&self) -> usize {
        lock(&self.waiting).len()
    }
}
