//! The opened program: its folder, its clock, its door to files, its stores.

use crate::copies::clear_parts;
use crate::held::Held;
use crate::jobs::Jobs;
use crate::pin_calls::Pins;
use crate::places::{Places, WorldPlaces, is_student_id};
use crate::voice::NoVoice;
use crate::watch::Watching;
use crate::{
    CallError, Clock, DeviceSettings, FileDoor, FileSource, StoreName, Theme, Voice, World,
    write_atomic,
};
use chrono::{Datelike, NaiveDate, Weekday};
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::{Duration, Instant};
use surefoot_catalogue::Language;
use surefoot_exchange::CheckedPack;
use surefoot_store::{DeskStore, Durability, StudentStore};

/// Picked class packs kept until a student has joined with one.
const PACKS_KEPT: usize = 4;

/// The opened program.
pub struct App {
    pub(crate) places: Places,
    pub(crate) door: Box<dyn FileDoor>,
    pub(crate) voice: Box<dyn Voice>,
    pub(crate) jobs: Jobs,
    clock: Box<dyn Clock>,
    pub(crate) opened_at: Instant,
    pub(crate) state: Mutex<State>,
    /// What was removed last, while it can be brought back.
    pub(crate) held: Arc<Mutex<Held>>,
    stores: Mutex<Stores>,
}

/// What changes while the program runs.
pub(crate) struct State {
    pub(crate) world: World,
    pub(crate) settings: DeviceSettings,
    pub(crate) packs: BTreeMap<u32, Arc<CheckedPack>>,
    /// The sealed file picked last, until it is opened.
    pub(crate) sealed: Option<(u32, Vec<u8>)>,
    /// Why a daily copy could not be made, by the store's path.
    pub(crate) copy_trouble: BTreeMap<PathBuf, CallError>,
    /// Whose PIN has been typed.
    pub(crate) pins: Pins,
    /// The folder watched for hand-ins.
    pub(crate) watching: Option<Watching>,
    /// Hand-ins opened from elsewhere, waiting to be imported.
    pub(crate) opened: Vec<FileSource>,
}

/// The stores that are open.
#[derive(Default)]
pub(crate) struct Stores {
    desks: BTreeMap<PathBuf, Arc<Mutex<DeskStore>>>,
    students: BTreeMap<PathBuf, Arc<Mutex<StudentStore>>>,
}

/// Between two looks whether a store is free.
const LOOK_AGAIN: Duration = Duration::from_millis(5);

/// Looks before a store that is not free is reported as busy: five seconds.
const MOST_LOOKS: u32 = 1_000;

fn close<T>(mut store: Arc<Mutex<T>>) -> Result<(), CallError> {
    for _ in 0..MOST_LOOKS {
        match Arc::try_unwrap(store) {
            Ok(last) => {
                drop(last);
                return Ok(());
            }
            // A call is at work on it.
            Err(shared) => store = shared,
        }
        std::thread::sleep(LOOK_AGAIN);
    }
    Err(CallError::StoreBusy)
}

impl Stores {
    /// Closes a store; afterwards nothing of this program has its files open.
    pub(crate) fn let_go(&mut self, path: &Path) -> Result<(), CallError> {
        if let Some(desk) = self.desks.remove(path) {
            close(desk)?;
        }
        if let Some(student) = self.students.remove(path) {
            close(student)?;
        }
        Ok(())
    }

    /// Closes every store.
    pub(crate) fn let_go_of_all(&mut self) -> Result<(), CallError> {
        while let Some((_, desk)) = self.desks.pop_first() {
            close(desk)?;
        }
        while let Some((_, student)) = self.students.pop_first() {
            close(student)?;
        }
        Ok(())
    }
}

pub(crate) fn files(error: impl std::fmt::Display) -> CallError {
    CallError::Files {
        detail: error.to_string(),
    }
}

pub(crate) fn lock<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    // A panic elsewhere leaves the value as it stood before; SQLite keeps its own.
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

impl App {
    /// Opens the program on its data folder.
    ///
    /// # Errors
    /// [`CallError::Files`] when the folder cannot be made.
    pub fn open(
        data: &Path,
        door: Box<dyn FileDoor>,
        clock: Box<dyn Clock>,
    ) -> Result<Self, CallError> {
        let places = Places::new(data);
        fs::create_dir_all(places.world(World::Own).students()).map_err(files)?;
        clear_parts(places.world(World::Own).folder())?;
        let settings = read_settings(&places.settings());
        Ok(Self {
            places,
            door,
            voice: Box::new(NoVoice),
            jobs: Jobs::new()?,
            clock,
            opened_at: Instant::now(),
            state: Mutex::new(State {
                world: World::Own,
                settings,
                packs: BTreeMap::new(),
                sealed: None,
                copy_trouble: BTreeMap::new(),
                pins: Pins::default(),
                watching: None,
                opened: Vec::new(),
            }),
            held: Arc::default(),
            stores: Mutex::default(),
        })
    }

    /// Whose data is open.
    pub(crate) fn world(&self) -> World {
        lock(&self.state).world
    }

    /// Today; in the sample class the latest weekday, so that there is always something to see.
    pub(crate) fn this_day(&self) -> NaiveDate {
        let today = self.clock.today();
        match self.world() {
            World::Own => today,
            World::Sample => latest_weekday(today),
        }
    }

    /// Today by the device's clock.
    pub(crate) fn device_today(&self) -> NaiveDate {
        self.clock.today()
    }

    pub(crate) fn here(&self) -> WorldPlaces {
        self.places.world(self.world())
    }

    /// The language of the teacher's screens.
    pub(crate) fn language(&self) -> Language {
        lock(&self.state).settings.language
    }

    fn durability(&self) -> Durability {
        match self.world() {
            World::Own => Durability::Full,
            World::Sample => Durability::Relaxed,
        }
    }

    pub(crate) fn with_desk<T>(
        &self,
        work: impl FnOnce(&DeskStore) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        let path = self.here().desk();
        let desk = {
            let mut stores = lock(&self.stores);
            match stores.desks.get(&path) {
                Some(desk) => Arc::clone(desk),
                None => {
                    self.refuse_emptied(&StoreName::Desk)?;
                    let was_there = path.is_file();
                    let desk = DeskStore::open(&path, self.durability())?;
                    if was_there {
                        self.keep_copy(&StoreName::Desk, false, |into| desk.copy_into(into));
                    }
                    let desk = Arc::new(Mutex::new(desk));
                    stores.desks.insert(path, Arc::clone(&desk));
                    desk
                }
            }
        };
        let desk = lock(&desk);
        work(&desk)
    }

    /// A student's store, once the PIN has been typed where one is set.
    pub(crate) fn with_student<T>(
        &self,
        id: &str,
        work: impl FnOnce(&StudentStore) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        self.with_student_unasked(id, |store| {
            if !self.is_open(id) && store.pin()?.is_some() {
                return Err(CallError::Locked);
            }
            work(store)
        })
    }

    /// A student's store without asking for the PIN: for the list of students,
    /// and for the PIN itself.
    pub(crate) fn with_student_unasked<T>(
        &self,
        id: &str,
        work: impl FnOnce(&StudentStore) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        let missing = || CallError::NotFound {
            what: "student".into(),
        };
        if !is_student_id(id) {
            return Err(missing());
        }
        let path = self.here().student(id);
        let store = {
            let mut stores = lock(&self.stores);
            match stores.students.get(&path) {
                Some(store) => Arc::clone(store),
                None => {
                    let name = StoreName::Student {
                        student: id.to_owned(),
                    };
                    self.refuse_emptied(&name)?;
                    if !path.is_file() {
                        return Err(missing());
                    }
                    let store = StudentStore::open(&path, self.durability())?;
                    self.keep_copy(&name, false, |into| store.copy_into(into));
                    let store = Arc::new(Mutex::new(store));
                    stores.students.insert(path, Arc::clone(&store));
                    store
                }
            }
        };
        let store = lock(&store);
        work(&store)
    }

    /// Does something while no call can open a store.
    pub(crate) fn with_stores_held<T>(
        &self,
        work: impl FnOnce(&mut Stores) -> Result<T, CallError>,
    ) -> Result<T, CallError> {
        work(&mut lock(&self.stores))
    }

    /// Lets go of every opened store, for instance before a folder is replaced.
    pub(crate) fn close_stores(&self) {
        *lock(&self.stores) = Stores::default();
    }

    /// The ids of the students on this device, by file name.
    pub(crate) fn student_ids(&self) -> Result<Vec<String>, CallError> {
        let folder = self.here().students();
        if !folder.is_dir() {
            return Ok(Vec::new());
        }
        let mut ids: Vec<String> = fs::read_dir(folder)
            .map_err(files)?
            .filter_map(Result::ok)
            .filter_map(|entry| {
                let name = entry.file_name().to_string_lossy().into_owned();
                name.strip_suffix(".sqlite").map(str::to_owned)
            })
            .filter(|id| is_student_id(id))
            .collect();
        ids.sort();
        Ok(ids)
    }

    /// Keeps a picked class pack under a number.
    pub(crate) fn keep_pack(&self, pack: CheckedPack) -> u32 {
        let mut state = lock(&self.state);
        let number = state.packs.keys().last().map_or(1, |last| last + 1);
        state.packs.insert(number, Arc::new(pack));
        while state.packs.len() > PACKS_KEPT {
            state.packs.pop_first();
        }
        number
    }

    /// A picked class pack.
    pub(crate) fn kept_pack(&self, number: u32) -> Result<Arc<CheckedPack>, CallError> {
        lock(&self.state)
            .packs
            .get(&number)
            .cloned()
            .ok_or(CallError::NotFound {
                what: "pack".into(),
            })
    }

    pub(crate) fn put_settings(&self, settings: DeviceSettings) -> Result<(), CallError> {
        let text = serde_json::to_vec_pretty(&settings).map_err(files)?;
        write_atomic(&self.places.settings(), &text)?;
        lock(&self.state).settings = settings;
        Ok(())
    }
}

/// The last Monday-to-Friday date on or before `date`.
#[must_use]
pub fn latest_weekday(date: NaiveDate) -> NaiveDate {
    let back = match date.weekday() {
        Weekday::Sat => 1,
        Weekday::Sun => 2,
        _ => 0,
    };
    date - chrono::Days::new(back)
}

/// Settings that cannot be read are the usual ones: nothing else hangs on them.
fn read_settings(path: &Path) -> DeviceSettings {
    fs::read(path)
        .ok()
        .and_then(|text| serde_json::from_slice(&text).ok())
        .unwrap_or(DeviceSettings {
            language: Language::first(),
            theme: Theme::System,
            names_covered: false,
            guides_read: Vec::new(),
        })
}
