//! Copies of stores that the program makes by itself.
//!
//! The program copies a store when it first opens it on a day, before it writes to it. It keeps
//! the newest five copies, and the newest of each month for four months.

use super::Context;
use super::data_paths::is_student_id;
use super::folder::{entries, name_of, sync_folder};
use super::settings::World;
use crate::error::{CallError, files};
use crate::lock::lock;
use chrono::{Datelike, NaiveDate};
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use surefoot_store::{DeskStore, StoreError, StudentStore};
use ts_rs::TS;

/// A store of this device.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum StoreName {
    /// The teacher's desk.
    Desk,
    /// A student's store.
    Student {
        /// The profile's id.
        student: String,
    },
}

/// Why a copy is there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum CopyKind {
    /// Made by the program on a day of use.
    Daily,
    /// Made before a newer program changed the schema of the store.
    BeforeChange,
    /// The store itself, moved into quarantine when another took its place.
    Replaced,
}

/// A copy of a store on this device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct StoredCopy {
    /// Its name in [`RestoreCopy`].
    pub name: String,
    /// Why it is there.
    pub kind: CopyKind,
    /// The day it was made, if known.
    pub made_on: Option<NaiveDate>,
}

/// The number of newest copies that are kept.
const NEWEST_KEPT: usize = 5;

/// Months for which the newest copy of the month is kept.
const MONTHS_KEPT: usize = 4;

/// The dates whose copies are kept.
fn kept(dates: &BTreeSet<NaiveDate>) -> BTreeSet<NaiveDate> {
    let mut kept: BTreeSet<NaiveDate> = dates.iter().rev().take(NEWEST_KEPT).copied().collect();
    let mut months = BTreeSet::new();
    for date in dates.iter().rev().skip(NEWEST_KEPT) {
        if months.len() < MONTHS_KEPT && months.insert((date.year(), date.month())) {
            kept.insert(*date);
        }
    }
    kept
}

fn date_of_copy(path: &Path) -> Option<NaiveDate> {
    (path.extension()? == "sqlite")
        .then(|| path.file_stem()?.to_str()?.parse().ok())
        .flatten()
}

pub(crate) fn check_store(store: &StoreName, path: &Path) -> Result<(), StoreError> {
    match store {
        StoreName::Desk => DeskStore::check_file(path),
        StoreName::Student { .. } => StudentStore::check_file(path),
    }
}

/// Makes the copy of a day in `folder`, and removes copies that are too old. Does nothing if the
/// copy exists and `anew` is false.
pub(crate) fn make_copy(
    folder: &Path,
    today: NaiveDate,
    store: &StoreName,
    anew: bool,
    copy_into: impl FnOnce(&Path) -> Result<(), StoreError>,
) -> Result<(), CallError> {
    let copy = folder.join(format!("{today}.sqlite"));
    if copy.is_file() && !anew {
        return Ok(());
    }
    fs::create_dir_all(folder).map_err(files)?;
    // It gets its name when it is whole.
    let part = tempfile::Builder::new()
        .prefix(".copy-")
        .suffix(".part")
        .tempfile_in(folder)
        .map_err(files)?
        .into_temp_path();
    copy_into(&part)?;
    check_store(store, &part)?;
    fs::File::open(&part)
        .and_then(|file| file.sync_all())
        .map_err(files)?;
    part.persist(&copy).map_err(files)?;
    sync_folder(folder)?;
    let dates: BTreeMap<NaiveDate, PathBuf> = entries(folder)?
        .into_iter()
        .filter_map(|path| Some((date_of_copy(&path)?, path)))
        .collect();
    let stay = kept(&dates.keys().copied().collect());
    for (date, path) in dates {
        if !stay.contains(&date) {
            fs::remove_file(path).map_err(files)?;
        }
    }
    Ok(())
}

impl Context {
    /// The path of a store.
    pub(crate) fn store_path(&self, store: &StoreName) -> Result<PathBuf, CallError> {
        match store {
            StoreName::Desk => Ok(self.data().desk()),
            StoreName::Student { student } if is_student_id(student) => {
                Ok(self.data().student(student))
            }
            StoreName::Student { .. } => Err(CallError::NotFound {
                what: "student".into(),
            }),
        }
    }

    pub(crate) fn copies_folder(&self, store: &StoreName) -> Result<PathBuf, CallError> {
        match store {
            StoreName::Desk => Ok(self.data().desk_copies()),
            StoreName::Student { student } => {
                self.store_path(store)?;
                Ok(self.data().student_copies().join(student))
            }
        }
    }

    /// The copies of a store with their paths, newest first.
    pub(crate) fn copy_paths(
        &self,
        store: &StoreName,
    ) -> Result<Vec<(PathBuf, StoredCopy)>, CallError> {
        let path = self.store_path(store)?;
        let mut found = Vec::new();
        for copy in entries(&self.copies_folder(store)?)? {
            if let Some(date) = date_of_copy(&copy) {
                found.push((copy, CopyKind::Daily, Some(date)));
            }
        }
        let stem = name_of(&path);
        if let Some(folder) = path.parent() {
            for beside in entries(folder)? {
                if name_of(&beside).starts_with(&format!("{stem}.before-")) {
                    found.push((beside, CopyKind::BeforeChange, None));
                }
            }
        }
        let id = path.file_stem().unwrap_or_default().to_string_lossy();
        for replaced in entries(&self.data().quarantine())? {
            // desk.2026-11-25.1.sqlite
            let name = name_of(&replaced);
            let mut parts = name.split('.');
            if parts.next() == Some(&*id) && name.ends_with(".sqlite") {
                let date = parts.next().and_then(|date| date.parse().ok());
                found.push((replaced, CopyKind::Replaced, date));
            }
        }
        let mut copies: Vec<_> = found
            .into_iter()
            .map(|(path, kind, made_on)| {
                let copy = StoredCopy {
                    name: name_of(&path),
                    kind,
                    made_on,
                };
                (path, copy)
            })
            .collect();
        copies.sort_by(|(_, a), (_, b)| {
            (b.made_on, a.kind, &b.name).cmp(&(a.made_on, b.kind, &a.name))
        });
        Ok(copies)
    }

    /// Makes today's copy of an opened store, unless it exists. If that fails, work goes on, and
    /// the call `copies` reports why.
    pub(crate) fn keep_copy(
        &self,
        store: &StoreName,
        anew: bool,
        copy_into: impl FnOnce(&Path) -> Result<(), StoreError>,
    ) {
        if self.world() != World::Own {
            return;
        }
        let made = self
            .copies_folder(store)
            .and_then(|folder| make_copy(&folder, self.device_today(), store, anew, copy_into));
        if let Ok(path) = self.store_path(store) {
            let mut trouble = lock(&self.copy_trouble);
            match made {
                Ok(()) => drop(trouble.remove(&path)),
                Err(error) => drop(trouble.insert(path, error)),
            }
        }
    }

    /// Refuses a store whose file is empty or missing although copies of it exist.
    pub(crate) fn refuse_emptied(&self, store: &StoreName) -> Result<(), CallError> {
        let path = self.store_path(store)?;
        let emptied = fs::metadata(&path).map_or(true, |found| found.len() == 0);
        let has_copies = || {
            self.copy_paths(store)
                .is_ok_and(|copies| copies.iter().any(|(_, c)| c.kind == CopyKind::Daily))
        };
        if emptied && has_copies() {
            return Err(CallError::DamagedStore {
                detail: "no content".into(),
            });
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn date(text: &str) -> NaiveDate {
        text.parse().unwrap()
    }

    #[test]
    fn the_newest_copies_stay_and_one_a_month_behind_them() {
        let year: BTreeSet<NaiveDate> = date("2026-08-31").iter_days().take(250).collect();
        let stay = kept(&year);
        let last = date("2027-05-07");
        assert_eq!(stay.last(), Some(&last));
        let wanted: BTreeSet<NaiveDate> = [
            "2027-05-07",
            "2027-05-06",
            "2027-05-05",
            "2027-05-04",
            "2027-05-03",
            "2027-05-02",
            "2027-04-30",
            "2027-03-31",
            "2027-02-28",
        ]
        .map(date)
        .into();
        assert_eq!(stay, wanted);
        assert_eq!(kept(&stay), stay, "rotating again takes nothing more");
    }
}
