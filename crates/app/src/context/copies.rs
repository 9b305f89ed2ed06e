//! Copies of stores that the program makes by itself.
//!
//! The program copies a store when it first opens it on a day, before it writes to it. It keeps
//! the newest five copies, and the newest of each month for four months. Copies are numbered, and
//! the number says which is newer, because the clock may have been wrong.

use super::Context;
use super::data_paths::is_student_id;
use super::disk::{self, sync_folder};
use super::folder::{entries, make_folder, name_of};
use super::settings::World;
use super::wipe::{Part, wipe_store};
use crate::error::CallError;
use crate::lock::lock;
use chrono::{Datelike, NaiveDate};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use surefoot_record::Thing;
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
    /// The day it was made, if known. A day in the future is not.
    pub made_on: Option<NaiveDate>,
}

/// The number of newest copies that are kept.
const NEWEST_KEPT: usize = 5;

/// Months for which the newest copy of the month is kept.
const MONTHS_KEPT: usize = 4;

/// The number and date in the name of a copy.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Mark {
    /// A later copy has a higher number.
    number: u64,
    /// The date, by the clock at that time.
    day: NaiveDate,
}

impl Mark {
    /// Reads a name such as `12.2026-11-25.sqlite`.
    fn of(path: &Path) -> Option<Self> {
        let name = name_of(path);
        let (number, rest) = name.split_once('.')?;
        Some(Self {
            number: number.parse().ok()?,
            day: rest.strip_suffix(".sqlite")?.parse().ok()?,
        })
    }
}

/// The daily copies in a folder with their paths, newest first.
fn daily(folder: &Path) -> Result<Vec<(Mark, PathBuf)>, CallError> {
    let mut found: Vec<_> = entries(folder)?
        .into_iter()
        .filter_map(|path| Some((Mark::of(&path)?, path)))
        .collect();
    found.sort_unstable_by(|a, b| b.cmp(a));
    Ok(found)
}

/// The copies that are kept.
fn kept(newest_first: &[Mark]) -> BTreeSet<Mark> {
    let mut kept: BTreeSet<Mark> = newest_first.iter().take(NEWEST_KEPT).copied().collect();
    let mut months = BTreeSet::new();
    for mark in newest_first.iter().skip(NEWEST_KEPT) {
        if months.len() < MONTHS_KEPT && months.insert((mark.day.year(), mark.day.month())) {
            kept.insert(*mark);
        }
    }
    kept
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
    let before = daily(folder)?;
    let newest = before.first().map(|(mark, _)| *mark);
    let replaced = newest.filter(|mark| mark.day == today);
    if replaced.is_some() && !anew {
        return Ok(());
    }
    make_folder(folder)?;
    // It gets its name when it is whole.
    let part = Part::new(folder, ".copy-")?;
    copy_into(part.path())?;
    check_store(store, part.path())?;
    let number = newest.map_or(1, |mark| mark.number.saturating_add(1));
    part.put(&folder.join(format!("{number}.{today}.sqlite")))?;
    sync_folder(folder)?;
    let marks: Vec<Mark> = (daily(folder)?.into_iter().map(|(mark, _)| mark))
        .filter(|mark| Some(*mark) != replaced)
        .collect();
    let stay = kept(&marks);
    for (mark, path) in before {
        if !stay.contains(&mark) {
            wipe_store(&path)?;
        }
    }
    Ok(())
}

/// The number of the newest daily copy in a folder, 0 for none.
pub(crate) fn newest_number(folder: &Path) -> Result<u64, CallError> {
    Ok(daily(folder)?.first().map_or(0, |(mark, _)| mark.number))
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
                what: Thing::Student,
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
        let mut found: Vec<_> = daily(&self.copies_folder(store)?)?
            .into_iter()
            .map(|(mark, copy)| (mark.number, CopyKind::Daily, Some(mark.day), copy))
            .collect();
        let stem = name_of(&path);
        if let Some(folder) = path.parent() {
            for beside in entries(folder)? {
                if name_of(&beside).starts_with(&format!("{stem}.before-")) {
                    found.push((0, CopyKind::BeforeChange, None, beside));
                }
            }
        }
        let id = path.file_stem().unwrap_or_default().to_string_lossy();
        for replaced in entries(&self.data().quarantine())? {
            // desk.12.2026-11-25.1.sqlite: replaced when copy 12 was the newest
            let name = name_of(&replaced);
            let mut parts = name.split('.');
            if parts.next() == Some(&*id) && name.ends_with(".sqlite") {
                let number = parts.next().and_then(|number| number.parse().ok());
                let day = parts.next().and_then(|day| day.parse().ok());
                found.push((number.unwrap_or(0), CopyKind::Replaced, day, replaced));
            }
        }
        // A replaced store is newer than the newest copy at that time, and older than the next.
        let replaced = |kind| kind == CopyKind::Replaced;
        found.sort_by(|a, b| (b.0, replaced(b.1), &b.3).cmp(&(a.0, replaced(a.1), &a.3)));
        let today = self.device_today();
        Ok(found
            .into_iter()
            .map(|(_, kind, day, path)| {
                let copy = StoredCopy {
                    name: name_of(&path),
                    kind,
                    made_on: day.filter(|day| *day <= today),
                };
                (path, copy)
            })
            .collect())
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
        let emptied = disk::is_empty(&path);
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
        let mut year: Vec<Mark> = (date("2026-08-31").iter_days().take(250))
            .zip(1..)
            .map(|(day, number)| Mark { number, day })
            .collect();
        year.reverse();
        let stay = kept(&year);
        let days: Vec<String> = stay.iter().map(|mark| mark.day.to_string()).collect();
        let wanted = [
            "2027-02-28",
            "2027-03-31",
            "2027-04-30",
            "2027-05-02",
            "2027-05-03",
            "2027-05-04",
            "2027-05-05",
            "2027-05-06",
            "2027-05-07",
        ];
        assert_eq!(days, wanted);
        let again: Vec<Mark> = stay.iter().rev().copied().collect();
        assert_eq!(kept(&again), stay, "rotating again takes nothing more");
    }

    #[test]
    fn a_clock_that_was_wrong_for_an_evening_makes_no_copy_the_newest() {
        let folder = tempfile::tempdir().unwrap();
        let store = StoreName::Desk;
        let desk = DeskStore::open(
            &folder.path().join("d.sqlite"),
            surefoot_store::Durability::Relaxed,
        )
        .unwrap();
        let copies = folder.path().join("copies");
        let copy = |today: &str, anew| {
            let into = |into: &Path| desk.copy_into(into);
            make_copy(&copies, date(today), &store, anew, into).unwrap();
        };
        let names = || -> Vec<String> {
            let found = daily(&copies).unwrap();
            found.iter().map(|(_, path)| name_of(path)).collect()
        };
        copy("2026-11-24", false);
        copy("2099-11-25", false);
        copy("2099-11-25", false);
        copy("2026-11-26", false);
        copy("2026-11-26", true);
        assert_eq!(
            names(),
            [
                "4.2026-11-26.sqlite",
                "2.2099-11-25.sqlite",
                "1.2026-11-24.sqlite"
            ]
        );
        for day in 1..=20 {
            copy(&format!("2026-12-{day:02}"), false);
        }
        assert_eq!(newest_number(&copies).unwrap(), 24);
        assert_eq!(names().len(), NEWEST_KEPT + 3);
    }
}
