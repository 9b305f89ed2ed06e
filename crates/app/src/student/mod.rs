//! The student's calls: joining, Today, practice, My path, handing in, PIN, second device.
//!
//! Uses the stores of students. Must never know the desk's store or a call of another door.

pub mod carry;
pub mod check_in;
pub mod folder;
mod folder_choice;
pub mod folder_offers;
mod folder_round;
mod folder_state;
pub mod hand_in;
pub mod join;
pub mod path;
pub mod pin;
mod pins;
pub mod practice;
#[cfg(feature = "desk")]
pub mod print;
pub mod settings;

use crate::context::Context;
use crate::context::copies::StoreName;
use crate::context::data_paths::is_student_id;
use crate::context::disk;
use crate::context::folder::{entries, name_of};
use crate::context::open_stores::OpenStores;
use crate::error::CallError;
use crate::lock::lock;
use pins::Pins;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;
use std::sync::{Arc, Mutex};
use surefoot_record::Thing;
use surefoot_store::StudentStore;
use surefoot_student::views::Profile;
use surefoot_student::{FirstPack, Joined, JoinedCache};
use ts_rs::TS;

/// A student by profile.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StudentId {
    /// The profile's id.
    pub student: String,
}

/// The student's door.
pub struct StudentDoor {
    context: Arc<Context>,
    pub(crate) stores: OpenStores<OpenStudent>,
    pins: Mutex<Pins>,
    /// Picked class packs by number, until a student joins with one.
    packs: Mutex<BTreeMap<u32, Picked>>,
    /// The folder that was picked last to join from.
    picked_folder: Mutex<Option<PathBuf>>,
    /// The class folders that this device was shown.
    folders: Mutex<folder_state::ShownFolders>,
}

/// A picked class pack, and the class folder that it was picked from.
#[derive(Clone)]
struct Picked {
    pack: Arc<FirstPack>,
    folder: Option<PathBuf>,
}

/// An open store, with the class read from its class pack.
pub(crate) struct OpenStudent {
    store: StudentStore,
    joined: JoinedCache,
}

impl StudentDoor {
    pub(crate) fn new(context: Arc<Context>) -> Self {
        Self {
            context,
            stores: OpenStores::default(),
            pins: Mutex::new(Pins::new()),
            packs: Mutex::default(),
            picked_folder: Mutex::default(),
            folders: Mutex::default(),
        }
    }

    /// Uses the store of a student, also while it is locked by a PIN.
    fn with_open<T>(
        &self,
        id: &str,
        work: impl FnOnce(&mut OpenStudent) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        let missing = || CallError::NotFound {
            what: Thing::Student,
        };
        if !is_student_id(id) {
            return Err(missing());
        }
        let path = self.context.data().student(id);
        let open = || {
            let name = StoreName::Student {
                student: id.to_owned(),
            };
            self.context.refuse_emptied(&name)?;
            if !disk::is_file(&path) {
                return Err(missing());
            }
            let store = StudentStore::open(&path, self.context.durability())?;
            self.context
                .keep_copy(&name, false, |into| store.copy_into(into));
            Ok(OpenStudent {
                store,
                joined: JoinedCache::default(),
            })
        };
        self.stores.with(&path, open, work)
    }

    /// Uses the store of a student and the class, also while it is locked by a PIN: for the list of
    /// students, and for the PIN itself.
    pub(crate) fn as_locked_student<T>(
        &self,
        id: &str,
        work: impl FnOnce(&StudentStore, &Joined) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        self.with_open(id, |open| {
            let joined = open.joined.get(&open.store)?;
            work(&open.store, joined)
        })
    }

    /// Uses a student's store with the class.
    fn as_student<T>(
        &self,
        id: &str,
        work: impl FnOnce(&StudentStore, &Joined) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        self.with_open(id, |open| {
            self.refuse_locked(id, &open.store)?;
            let joined = open.joined.get(&open.store)?;
            work(&open.store, joined)
        })
    }

    /// Uses a student's store.
    pub(crate) fn with_student<T>(
        &self,
        id: &str,
        work: impl FnOnce(&StudentStore) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        self.with_open(id, |open| {
            self.refuse_locked(id, &open.store)?;
            work(&open.store)
        })
    }

    fn refuse_locked(&self, id: &str, store: &StudentStore) -> Result<(), CallError> {
        if !lock(&self.pins).is_unlocked(id) && store.pin()?.is_some() {
            return Err(CallError::Locked);
        }
        Ok(())
    }

    /// A student in the list of students.
    pub(crate) fn profile(&self, id: &str) -> Result<Profile, CallError> {
        self.as_locked_student(id, |store, joined| {
            let student = &joined.student;
            Ok(Profile {
                has_pin: store.pin()?.is_some(),
                has_pin_signs: store.pin_signs()?.contains_key(&student.seat),
                id: id.to_owned(),
                nickname: student.nickname.clone(),
                avatar: student.avatar.clone(),
                language: student.language,
                appearance: student.appearance,
                class_title: joined.facts.title.clone(),
            })
        })
    }

    /// The ids of the students on this device, by file name.
    pub(crate) fn ids(&self) -> Result<Vec<String>, CallError> {
        let mut ids: Vec<String> = entries(&self.context.data().students())?
            .iter()
            .filter_map(|path| name_of(path).strip_suffix(".sqlite").map(str::to_owned))
            .filter(|id| is_student_id(id))
            .collect();
        ids.sort();
        Ok(ids)
    }

    /// The ids of the students who have a store or copies of one.
    pub(crate) fn ids_with_copies(&self) -> Result<BTreeSet<String>, CallError> {
        let mut ids: BTreeSet<String> = self.ids()?.into_iter().collect();
        for path in entries(&self.context.data().student_copies())? {
            let id = name_of(&path);
            if is_student_id(&id) && !entries(&path)?.is_empty() {
                ids.insert(id);
            }
        }
        Ok(ids)
    }
}
