//! Calls that remove data for good: a student, a seat, a class, everything.

use crate::app::{App, files, lock};
use crate::copies::with_end;
use crate::{CallError, Nothing, RemoveStudent, RemovedWhat, Start, StoreName, YearOver};
use std::fs::{self, File};
use std::io::{self, Write as _};
use std::path::Path;
use surefoot_desk::{self, OpenClass};
use surefoot_store::DeskStore;
use surefoot_store::desk::RemovedRows;

/// Bytes written at a time.
static BLOCK: [u8; 64 * 1024] = [0; 64 * 1024];

/// Overwrites a file and removes it. On a flash disk the old cells may stay
/// until the disk reuses them; no program can reach them by name any more.
fn wipe(path: &Path) -> Result<(), CallError> {
    let overwrite = || -> io::Result<()> {
        if fs::symlink_metadata(path)?.is_file() {
            let mut file = File::options().write(true).open(path)?;
            let mut left = file.metadata()?.len();
            while left > 0 {
                let now = left.min(BLOCK.len() as u64);
                file.write_all(BLOCK.get(..now as usize).unwrap_or(&BLOCK))?;
                left -= now;
            }
            file.sync_all()?;
        }
        fs::remove_file(path)
    };
    match overwrite() {
        Err(error) if error.kind() != io::ErrorKind::NotFound => Err(files(error)),
        _ => Ok(()),
    }
}

/// Wipes every file in a folder, and the folder.
fn wipe_folder(folder: &Path) -> Result<(), CallError> {
    let entries = match fs::read_dir(folder) {
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(()),
        found => found.map_err(files)?,
    };
    for entry in entries {
        let path = entry.map_err(files)?.path();
        if fs::symlink_metadata(&path).is_ok_and(|m| m.is_dir()) {
            wipe_folder(&path)?;
        } else {
            wipe(&path)?;
        }
    }
    fs::remove_dir(folder).map_err(files)
}

impl App {
    fn none_running(&self) -> Result<(), CallError> {
        if self.jobs.any_running() {
            return Err(CallError::Invalid {
                field: "job".into(),
                rule: "running".into(),
            });
        }
        Ok(())
    }

    /// Wipes the copies of a store that this device keeps.
    fn wipe_copies(&self, store: &StoreName) -> Result<(), CallError> {
        for (path, _) in self.copy_paths(store)? {
            for end in ["-wal", "-shm", ""] {
                wipe(&with_end(&path, end))?;
            }
        }
        wipe_folder(&self.copies_folder(store)?)
    }

    /// Removes a student from this device: the store and all its copies.
    ///
    /// # Errors
    /// [`CallError::Locked`] until the PIN is typed, [`CallError::NotFound`], [`CallError::Files`].
    pub fn remove_student(&self, asked: RemoveStudent) -> Result<Start, CallError> {
        self.own_only()?;
        let store = StoreName::Student {
            student: asked.student.clone(),
        };
        let path = self.store_path(&store)?;
        if !path.exists() && self.copy_paths(&store)?.is_empty() {
            return Err(CallError::NotFound {
                what: "student".into(),
            });
        }
        // A store that cannot be opened has no PIN to ask for.
        if let Err(error @ CallError::Locked) = self.with_student(&asked.student, |_| Ok(())) {
            return Err(error);
        }
        self.none_running()?;
        self.with_stores_held(|stores| {
            stores.let_go(&path)?;
            self.wipe_copies(&store)?;
            for end in ["-wal", "-shm", ""] {
                wipe(&with_end(&path, end))?;
            }
            Ok(())
        })?;
        self.start(Nothing {})
    }

    /// Takes rows out of the desk: afterwards neither the desk nor a copy of it
    /// here holds them. Until their time is up they can be brought back from memory.
    pub(crate) fn remove_from_desk(
        &self,
        class: &str,
        what: impl FnOnce(&OpenClass) -> RemovedWhat,
        work: impl FnOnce(&DeskStore) -> Result<RemovedRows, CallError>,
    ) -> Result<(), CallError> {
        self.none_running()?;
        self.with_desk(|desk| {
            let class = surefoot_desk::open_class(desk, class)?;
            let what = what(&class);
            self.hold(&class, what, work(desk)?);
            desk.remove_empty_imports()?;
            desk.leave_no_trace()?;
            self.wipe_copies(&StoreName::Desk)?;
            self.keep_copy(&StoreName::Desk, true, |into| desk.copy_into(into));
            Ok(())
        })
    }

    /// Removes everything of this device but its language and colours.
    ///
    /// # Errors
    /// [`CallError::Locked`] while a student's PIN has not been typed, [`CallError::Files`].
    pub fn remove_everything(&self, _: Nothing) -> Result<Start, CallError> {
        self.own_only()?;
        self.none_running()?;
        for id in self.student_ids()? {
            if let Err(error @ CallError::Locked) = self.with_student(&id, |_| Ok(())) {
                return Err(error);
            }
        }
        self.stop_watching();
        self.drop_held();
        self.with_stores_held(|stores| {
            stores.let_go_of_all()?;
            wipe_folder(self.here().folder())?;
            wipe(&self.places.watch())?;
            fs::create_dir_all(self.here().students()).map_err(files)
        })?;
        lock(&self.state).copy_trouble.clear();
        self.start(Nothing {})
    }

    /// School years that are over while their data is still here.
    pub(crate) fn years_over(&self) -> Vec<YearOver> {
        let today = self.this_day();
        let mut over = Vec::new();
        if self.here().desk().is_file()
            && let Ok(classes) =
                self.with_desk(|desk| Ok(surefoot_desk::classes_over(desk, today)?))
        {
            over.extend(
                classes
                    .into_iter()
                    .map(|(class, title, last_day)| YearOver::Class {
                        class,
                        title,
                        last_day,
                    }),
            );
        }
        for id in self.student_ids().unwrap_or_default() {
            let year = self.with_student_unasked(&id, |store| {
                let joined = surefoot_student::joined(store)?;
                Ok((joined.student.nickname, joined.facts.year.last_day))
            });
            if let Ok((nickname, last_day)) = year
                && last_day < today
            {
                over.push(YearOver::Student {
                    student: id,
                    nickname,
                    last_day,
                });
            }
        }
        over
    }
}
