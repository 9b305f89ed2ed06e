//! The person at the screen, as far as the system's own dialogs go: picks what
//! a test said beforehand, and lets files be saved into one folder.

use chrono::NaiveDate;
use std::collections::{BTreeSet, VecDeque};
use std::io;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::{Duration, SystemTime};
use surefoot_app::{
    CallError, ClassFolder, Clock, FileDialogs, FileKind, FileSource, Listed, Moment, TreeFault,
    file_at, files_in, folder_at, write_atomic,
};

/// What the person does when asked where to save.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SaveDecision {
    /// Goes back without saving.
    Decline,
    /// Names a place that cannot be written.
    Unwritable,
}

/// The stand-in for the person and the system's dialogs.
pub struct Person {
    saves: PathBuf,
    picks: Mutex<VecDeque<Vec<PathBuf>>>,
    decisions: Mutex<VecDeque<SaveDecision>>,
    opened: Mutex<Vec<PathBuf>>,
    /// What was shared; nothing while there is no share sheet.
    shared: Mutex<Option<Vec<(String, u64)>>>,
    /// What class folders refuse.
    folder_fault: Mutex<Option<TreeFault>>,
}

fn lock<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

fn files(detail: impl ToString) -> CallError {
    CallError::Files {
        detail: detail.to_string(),
    }
}

impl Person {
    /// Somebody who saves everything into `saves`.
    pub fn new(saves: PathBuf) -> Self {
        Self {
            saves,
            picks: Mutex::default(),
            decisions: Mutex::default(),
            opened: Mutex::default(),
            shared: Mutex::default(),
            folder_fault: Mutex::default(),
        }
    }

    /// What will be picked the next time; nothing to go back without picking.
    pub fn will_pick(&self, paths: Vec<PathBuf>) {
        lock(&self.picks).push_back(paths);
    }

    /// What will be decided the next time something is to be saved.
    pub fn will_decide(&self, decision: SaveDecision) {
        lock(&self.decisions).push_back(decision);
    }

    /// Whether there is a share sheet from now on.
    pub fn will_share(&self, shares: bool) {
        *lock(&self.shared) = shares.then(Vec::new);
    }

    /// What class folders refuse from now on.
    pub fn refuse_folders(&self, fault: Option<TreeFault>) {
        *lock(&self.folder_fault) = fault;
    }

    /// What has been shared: names and sizes in bytes, the oldest first.
    pub fn shared(&self) -> Vec<(String, u64)> {
        lock(&self.shared).clone().unwrap_or_default()
    }

    /// Opens files with this program from elsewhere.
    pub fn open_with(&self, paths: Vec<PathBuf>) {
        lock(&self.opened).extend(paths);
    }

    /// What has been saved: names and sizes in bytes, in the order of the names.
    pub fn saved(&self) -> std::io::Result<Vec<(String, u64)>> {
        let mut found = Vec::new();
        for entry in std::fs::read_dir(&self.saves)? {
            let entry = entry?;
            found.push((
                entry.file_name().to_string_lossy().into_owned(),
                entry.metadata()?.len(),
            ));
        }
        found.sort();
        Ok(found)
    }

    /// A dialog without an answer would wait for ever, so a test that did not
    /// say what is picked gets an error.
    fn picked(&self) -> Result<Vec<PathBuf>, CallError> {
        lock(&self.picks)
            .pop_front()
            .ok_or_else(|| files("the test did not say what is picked"))
    }
}

/// What the program is given; the server keeps the other end.
pub struct Dialogs(pub Arc<Person>);

impl FileDialogs for Dialogs {
    fn pick_file(&self, _kind: FileKind) -> Result<Option<FileSource>, CallError> {
        Ok(self.0.picked()?.first().map(|path| file_at(path)))
    }

    fn pick_files(&self, _kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError> {
        let paths = self.0.picked()?;
        Ok((!paths.is_empty()).then(|| paths.iter().map(|path| file_at(path)).collect()))
    }

    fn pick_folder(&self, kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError> {
        match self.0.picked()?.first() {
            None => Ok(None),
            Some(folder) => files_in(folder, kind).map(Some).map_err(files),
        }
    }

    fn has_class_folders(&self) -> bool {
        true
    }

    fn pick_class_folder(&self) -> Result<Option<PathBuf>, CallError> {
        Ok(self.0.picked()?.into_iter().next())
    }

    fn class_folder(&self, at: &Path) -> Arc<dyn ClassFolder> {
        Arc::new(Refusing(folder_at(at), Arc::clone(&self.0)))
    }

    fn save(
        &self,
        suggested_name: &str,
        _kind: FileKind,
        bytes: &[u8],
    ) -> Result<Option<String>, CallError> {
        let folder = match lock(&self.0.decisions).pop_front() {
            Some(SaveDecision::Decline) => return Ok(None),
            Some(SaveDecision::Unwritable) => self.0.saves.join("no such folder"),
            None => self.0.saves.clone(),
        };
        let path = folder.join(suggested_name);
        write_atomic(&path, bytes).map_err(files)?;
        Ok(Some(path.display().to_string()))
    }

    fn shares(&self) -> bool {
        lock(&self.0.shared).is_some()
    }

    fn share(&self, name: &str, _kind: FileKind, bytes: &[u8]) -> Result<bool, CallError> {
        let mut shared = lock(&self.0.shared);
        if let Some(shared) = shared.as_mut() {
            shared.push((name.to_owned(), bytes.len() as u64));
        }
        Ok(shared.is_some())
    }

    fn take_opened(&self) -> Vec<FileSource> {
        lock(&self.0.opened)
            .drain(..)
            .flat_map(|path| match path.is_dir() {
                true => files_in(&path, FileKind::HandIn).unwrap_or_default(),
                false => vec![file_at(&path)],
            })
            .collect()
    }
}

/// A class folder that refuses what the test says.
struct Refusing(Arc<dyn ClassFolder>, Arc<Person>);

impl Refusing {
    fn meets(&self, writes: bool) -> io::Result<()> {
        match *lock(&self.1.folder_fault) {
            Some(TreeFault::ChangesNames) if !writes => Ok(()),
            Some(fault) => Err(fault.into()),
            None => Ok(()),
        }
    }
}

impl ClassFolder for Refusing {
    fn list(&self, first: &BTreeSet<String>) -> io::Result<Listed> {
        self.meets(false)?;
        self.0.list(first)
    }

    fn read(&self, name: &str, most_bytes: u64) -> io::Result<Vec<u8>> {
        self.meets(false)?;
        self.0.read(name, most_bytes)
    }

    fn write(&self, name: &str, bytes: &[u8], changed: SystemTime) -> io::Result<()> {
        self.meets(true)?;
        self.0.write(name, bytes, changed)
    }

    fn remove(&self, name: &str) -> io::Result<()> {
        self.meets(true)?;
        self.0.remove(name)
    }
}

/// A clock that a test sets.
#[derive(Clone)]
pub struct TestClock(Arc<Mutex<(NaiveDate, Duration)>>);

impl TestClock {
    /// A clock that stays at a date.
    pub fn new(today: NaiveDate) -> Self {
        Self(Arc::new(Mutex::new((today, Duration::ZERO))))
    }

    /// Goes to another date.
    pub fn set(&self, today: NaiveDate) {
        lock(&self.0).0 = today;
    }

    /// Lets so many minutes pass.
    pub fn pass(&self, minutes: u32) {
        lock(&self.0).1 += Duration::from_secs(60 * u64::from(minutes));
    }
}

impl Clock for TestClock {
    fn today(&self) -> NaiveDate {
        lock(&self.0).0
    }

    fn moment(&self) -> Moment {
        Moment::now().later(lock(&self.0).1)
    }
}
