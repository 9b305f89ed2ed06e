//! What all doors use: clock, randomness, files, settings, jobs, copies.
//!
//! Must never know a call or what the screens show.

pub mod class_folder;
pub mod clock;
pub mod copies;
pub mod data_paths;
pub mod disk;
pub mod document_folder;
pub mod erase;
pub mod errand;
pub mod file_dialogs;
pub mod file_kind;
pub mod folder;
pub mod jobs;
pub mod open_stores;
pub mod picked;
pub mod random;
pub mod settings;
pub(crate) mod used_folders;
pub mod values;
pub mod waits;
pub mod wipe;

use crate::error::{CallError, files};
use crate::lock::lock;
use chrono::NaiveDate;
use clock::{Clock, Moment, latest_weekday};
use data_paths::{DataPaths, WorldPaths};
use file_dialogs::{FileDialogs, FileKind, Sealed};
use folder::{clear_parts, close_folder, make_folder, write_private};
use jobs::Jobs;
use settings::{DeviceSettings, World, read_settings};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::Mutex;
use surefoot_catalogue::Language;
use surefoot_record::{Field, Rule};
use surefoot_store::Durability;
use values::FileMade;

/// What the doors of an opened program share.
pub(crate) struct Context {
    pub(crate) paths: DataPaths,
    pub(crate) dialogs: Box<dyn FileDialogs>,
    pub(crate) jobs: Jobs,
    clock: Box<dyn Clock>,
    world: Mutex<World>,
    settings: Mutex<DeviceSettings>,
    /// The sealed file picked last, with its number, until it is opened.
    sealed: Mutex<Option<(u32, Sealed)>>,
    /// Why a daily copy could not be made, by the store's path.
    pub(crate) copy_trouble: Mutex<BTreeMap<PathBuf, CallError>>,
    /// Why copies that a change of the lock left behind could not be wiped.
    pub(crate) lock_trouble: Mutex<Option<CallError>>,
}

impl Context {
    pub(crate) fn open(
        data: &Path,
        dialogs: Box<dyn FileDialogs>,
        clock: Box<dyn Clock>,
    ) -> Result<Self, CallError> {
        let paths = DataPaths::new(data);
        make_folder(&paths.world(World::Own).students())?;
        close_folder(data);
        clear_parts(paths.world(World::Own).folder())?;
        let settings = read_settings(&paths.settings())?;
        Ok(Self {
            paths,
            dialogs,
            jobs: Jobs::new()?,
            clock,
            world: Mutex::new(World::Own),
            settings: Mutex::new(settings),
            sealed: Mutex::default(),
            copy_trouble: Mutex::default(),
            lock_trouble: Mutex::default(),
        })
    }

    /// Own data or the sample class.
    pub(crate) fn world(&self) -> World {
        *lock(&self.world)
    }

    pub(crate) fn enter(&self, world: World) {
        *lock(&self.world) = world;
    }

    /// Today; in the sample class the latest weekday, because a weekend would show nothing.
    pub(crate) fn today(&self) -> NaiveDate {
        let today = self.clock.today();
        match self.world() {
            World::Own => today,
            World::Sample => latest_weekday(today),
        }
    }

    /// Today by the clock of this device, also in the sample class.
    pub(crate) fn device_today(&self) -> NaiveDate {
        self.clock.today()
    }

    pub(crate) fn moment(&self) -> Moment {
        self.clock.moment()
    }

    /// The paths of the open world.
    pub(crate) fn data(&self) -> WorldPaths {
        self.paths.world(self.world())
    }

    pub(crate) fn settings(&self) -> DeviceSettings {
        lock(&self.settings).clone()
    }

    /// The language of the teacher's screens.
    pub(crate) fn language(&self) -> Language {
        lock(&self.settings).language
    }

    pub(crate) fn put_settings(&self, settings: DeviceSettings) -> Result<(), CallError> {
        let text = serde_json::to_vec_pretty(&settings).map_err(files)?;
        write_private(&self.paths.settings(), &text)?;
        *lock(&self.settings) = settings;
        Ok(())
    }

    pub(crate) fn durability(&self) -> Durability {
        match self.world() {
            World::Own => Durability::Full,
            World::Sample => Durability::Relaxed,
        }
    }

    /// Gives back the rights to class folders that no note names any more.
    pub(crate) fn release_folders(&self) {
        let notes = [self.paths.class_folder(), self.paths.shown_folders()];
        // If a note cannot be read, its folders may be in use.
        if let Ok(used) = used_folders::used_folders(&notes) {
            self.dialogs.release_class_folders(&used);
        }
    }

    /// Refuses in the sample class, which needs no backup because it can be made anew.
    pub(crate) fn own_only(&self) -> Result<(), CallError> {
        match self.world() {
            World::Own => Ok(()),
            World::Sample => Err(CallError::Invalid {
                field: Field::World,
                rule: Rule::SampleOpen,
            }),
        }
    }

    /// Refuses while a job runs, because it may write to a store.
    pub(crate) fn none_running(&self) -> Result<(), CallError> {
        if self.jobs.any_running() {
            return Err(CallError::Invalid {
                field: Field::Job,
                rule: Rule::Running,
            });
        }
        Ok(())
    }

    /// Saves a file where the person chooses.
    pub(crate) fn hand_over(
        &self,
        file_name: String,
        kind: FileKind,
        bytes: &[u8],
    ) -> Result<FileMade, CallError> {
        Ok(FileMade {
            place: self.dialogs.save(&file_name, kind, bytes)?,
            file_name,
        })
    }
}
