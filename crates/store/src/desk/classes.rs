//! Classes: keys, year, rotation, first lessons.

use super::super::StoreError;
use super::super::columns::{date_at, unknown};
use super::cells::{CLASS_IDENTITY, CLASS_SEED, at_column};
use super::{DataKey, DeskStore};
use chrono::NaiveDate;
use rusqlite::params;
use rusqlite::types::ValueRef;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_record::{PracticeRules, Thing};

/// A class as stored.
#[derive(Clone, PartialEq, Eq)]
pub struct ClassRow {
    /// Its id, from both of its keys.
    pub id: String,
    /// The teacher's name for it.
    pub title: String,
    /// When it was made.
    pub made_on: NaiveDate,
    /// The age X25519 identity that opens its hand-ins.
    pub sealing_identity: String,
    /// Seed of the Ed25519 key that signs its class packs.
    pub signing_seed: [u8; 32],
    /// Its signs in seat codes.
    pub class_signs: String,
    /// Its school year, with closures.
    pub year: SchoolYear,
    /// Version of the last class pack made; 0 if none was made.
    pub pack_version: u32,
    /// The stamp of that pack's content.
    pub pack_stamp: String,
    /// Whether this computer saves the class packs; otherwise another one does.
    pub saves_packs: bool,
    /// Bounds of practice at home.
    pub practice: PracticeRules,
}

/// What is noted of the class packs of a class.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PacksMade {
    /// The stamp of year and rotation in the last pack.
    pub days_stamp: String,
    /// The version of the first pack that had them.
    pub days_version: u32,
    /// The version of the first pack with the content of the last one.
    pub content_version: u32,
    /// The date of the first pack that was made here; that of the class before.
    pub first_on: NaiveDate,
}

impl DeskStore {
    /// Returns all classes by title.
    pub fn classes(&self) -> Result<Vec<ClassRow>, StoreError> {
        self.read_classes(Some(self.key()?))
    }

    /// Returns all classes by title without their keys, also while the desk is locked: identity and
    /// seed are empty. Nothing can be sealed, signed or opened with them.
    pub fn classes_without_keys(&self) -> Result<Vec<ClassRow>, StoreError> {
        self.read_classes(None)
    }

    fn read_classes(&self, key: Option<&DataKey>) -> Result<Vec<ClassRow>, StoreError> {
        let mut found = self.rows(
            "SELECT id, title, made_on, sealing_identity, signing_seed, first_day, last_day, weekdays, pack_version,
               pack_stamp, minutes_least, minutes_most, evenings_least, evenings_most, test_on, class_signs, saves_packs FROM class ORDER BY title, id",
            [],
            |row| {
                let id: String = row.get(0)?;
                let (sealing_identity, signing_seed) = match key {
                    None => (String::new(), [0; 32]),
                    Some(key) => {
                        let seed = key
                            .open(&CLASS_SEED, &[&id], row.get_ref(4)?.as_blob()?)
                            .map_err(|error| at_column(4, error))?;
                        (
                            key.text_at(row, 3, &CLASS_IDENTITY, &[&id])?,
                            (seed.as_slice().try_into())
                                .map_err(|_| unknown(4, "signing seed", "its length"))?,
                        )
                    }
                };
                Ok(ClassRow {
                    title: row.get(1)?,
                    made_on: date_at(row, 2)?,
                    sealing_identity,
                    signing_seed,
                    id,
                    class_signs: row.get(15)?,
                    year: SchoolYear {
                        first_day: date_at(row, 5)?,
                        last_day: date_at(row, 6)?,
                        weekdays: row
                            .get_ref(7)?
                            .as_str()?
                            .bytes()
                            .filter(u8::is_ascii_digit)
                            .map(|digit| digit - b'0')
                            .collect(),
                        closures: std::collections::BTreeSet::new(),
                    },
                    pack_version: row.get(8)?,
                    pack_stamp: row.get(9)?,
                    saves_packs: row.get(16)?,
                    practice: PracticeRules {
                        minutes_least: row.get(10)?,
                        minutes_most: row.get(11)?,
                        evenings_least: row.get(12)?,
                        evenings_most: row.get(13)?,
                        test_on: if row.get_ref(14)? == ValueRef::Null {
                            None
                        } else {
                            Some(date_at(row, 14)?)
                        },
                    },
                })
            },
        )?;
        for class in &mut found {
            class.year.closures = self
                .rows(
                    "SELECT school_date FROM closure WHERE class = ?1",
                    [&class.id],
                    |row| date_at(row, 0),
                )?
                .into_iter()
                .collect();
        }
        Ok(found)
    }

    /// Returns one class.
    ///
    /// # Errors
    /// [`StoreError::Missing`] if there is no such class.
    pub fn class(&self, id: &str) -> Result<ClassRow, StoreError> {
        self.classes()?
            .into_iter()
            .find(|class| class.id == id)
            .ok_or(StoreError::Missing(Thing::Class))
    }

    /// Adds a class.
    pub fn add_class(&self, class: &ClassRow) -> Result<(), StoreError> {
        let weekdays: String = class.year.weekdays.iter().map(u8::to_string).collect();
        let key = self.key()?;
        let sealed = |column, content: &[u8]| key.seal(column, &[&class.id], content);
        self.connection.execute(
            "INSERT INTO class (id, title, made_on, sealing_identity, signing_seed, first_day, last_day, weekdays,
               pack_version, pack_stamp, class_signs, saves_packs, content_version)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?9)",
            params![
                class.id,
                class.title,
                class.made_on.to_string(),
                sealed(&CLASS_IDENTITY, class.sealing_identity.as_bytes())?,
                sealed(&CLASS_SEED, &class.signing_seed)?,
                class.year.first_day.to_string(),
                class.year.last_day.to_string(),
                weekdays,
                class.pack_version,
                class.pack_stamp,
                class.class_signs,
                class.saves_packs
            ],
        )?;
        self.put_practice(&class.id, &class.practice)?;
        self.put_closures(&class.id, class.year.closures.iter().copied())
    }

    /// Writes the bounds of practice at home.
    pub fn put_practice(&self, class: &str, practice: &PracticeRules) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE class SET minutes_least = ?2, minutes_most = ?3, evenings_least = ?4, evenings_most = ?5,
               test_on = ?6 WHERE id = ?1",
            params![
                class,
                practice.minutes_least,
                practice.minutes_most,
                practice.evenings_least,
                practice.evenings_most,
                practice.test_on.map(|date| date.to_string())
            ],
        )?;
        Ok(())
    }

    /// Replaces the closures of a class.
    pub fn put_closures(
        &self,
        class: &str,
        closures: impl Iterator<Item = NaiveDate>,
    ) -> Result<(), StoreError> {
        self.connection
            .execute("DELETE FROM closure WHERE class = ?1", [class])?;
        let mut add = self
            .connection
            .prepare_cached("INSERT OR IGNORE INTO closure (class, school_date) VALUES (?1, ?2)")?;
        for date in closures {
            add.execute(params![class, date.to_string()])?;
        }
        Ok(())
    }

    /// Notes version and stamps of a class pack that was made.
    /// `made_on` is the date on which this computer made it; `None` if another one did.
    pub fn put_pack(
        &self,
        class: &str,
        version: u32,
        stamp: &str,
        days_stamp: &str,
        made_on: Option<NaiveDate>,
    ) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE class SET pack_version = ?2, pack_stamp = ?3, days_stamp = ?4,
               content_version = CASE WHEN ?3 <> '' AND pack_stamp = ?3 THEN content_version ELSE ?2 END,
               days_version = CASE WHEN days_stamp = ?4 THEN days_version ELSE ?2 END,
               first_pack_on = coalesce(first_pack_on, ?5)
             WHERE id = ?1",
            params![
                class,
                version,
                stamp,
                days_stamp,
                made_on.map(|date| date.to_string())
            ],
        )?;
        Ok(())
    }

    /// Returns what is noted of the class packs of a class.
    pub fn packs_made(&self, class: &str) -> Result<PacksMade, StoreError> {
        Ok(self.connection.query_row(
            "SELECT days_stamp, days_version, content_version, coalesce(first_pack_on, made_on)
             FROM class WHERE id = ?1",
            [class],
            |row| {
                Ok(PacksMade {
                    days_stamp: row.get(0)?,
                    days_version: row.get(1)?,
                    content_version: row.get(2)?,
                    first_on: date_at(row, 3)?,
                })
            },
        )?)
    }

    /// Notes whether this computer saves the packs of a class, and raises the version of the last one.
    pub fn put_saves_packs(&self, class: &str, saves: bool, skip: u32) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE class SET saves_packs = ?2, pack_version = pack_version + ?3 WHERE id = ?1",
            params![class, saves, skip],
        )?;
        Ok(())
    }

    /// Whether the class has a class folder.
    pub fn class_folder(&self, class: &str) -> Result<bool, StoreError> {
        Ok(self.connection.query_row(
            "SELECT class_folder FROM class WHERE id = ?1",
            [class],
            |row| row.get(0),
        )?)
    }

    /// Notes whether the classes have a class folder.
    pub fn set_class_folder(&self, on: bool) -> Result<(), StoreError> {
        self.connection.execute(
            "UPDATE class SET class_folder = ?1 WHERE class_folder <> ?1",
            [on],
        )?;
        Ok(())
    }

    /// The digests of the files of the class folder that were imported.
    pub fn folder_files(&self) -> Result<BTreeSet<String>, StoreError> {
        let digests = self.rows("SELECT digest FROM folder_file", [], |row| row.get(0))?;
        Ok(digests.into_iter().collect())
    }

    /// Notes files of the class folder as imported.
    pub fn add_folder_files(&self, digests: &BTreeSet<String>) -> Result<(), StoreError> {
        self.for_each_digest("INSERT OR IGNORE INTO folder_file VALUES (?1)", digests)
    }

    /// Forgets files of the class folder.
    pub fn remove_folder_files(&self, digests: &BTreeSet<String>) -> Result<(), StoreError> {
        self.for_each_digest("DELETE FROM folder_file WHERE digest = ?1", digests)
    }

    fn for_each_digest(&self, sql: &str, digests: &BTreeSet<String>) -> Result<(), StoreError> {
        if digests.is_empty() {
            return Ok(());
        }
        self.transaction(|| {
            for digest in digests {
                self.connection.prepare_cached(sql)?.execute([digest])?;
            }
            Ok(())
        })
    }

    /// Removes all dates of first lessons of a class.
    pub fn clear_taught_from(&self, class: &str) -> Result<(), StoreError> {
        self.connection
            .execute("DELETE FROM taught_from WHERE class = ?1", [class])?;
        Ok(())
    }

    /// Returns the rotation: concept ids day by day.
    pub fn rotation(&self, class: &str) -> Result<Vec<Vec<String>>, StoreError> {
        let mut days: Vec<Vec<String>> = Vec::new();
        for (day, concept) in self.rows(
            "SELECT day, concept FROM rotation_place WHERE class = ?1 ORDER BY day, place",
            [class],
            |row| Ok((row.get::<_, usize>(0)?, row.get::<_, String>(1)?)),
        )? {
            while days.len() <= day {
                days.push(Vec::new());
            }
            if let Some(of_day) = days.get_mut(day) {
                // A day without concepts is stored as one row that names none.
                if !concept.starts_with(EMPTY_DAY) {
                    of_day.push(concept);
                }
            }
        }
        Ok(days)
    }

    /// Replaces the rotation.
    pub fn put_rotation(&self, class: &str, days: &[Vec<String>]) -> Result<(), StoreError> {
        self.connection
            .execute("DELETE FROM rotation_place WHERE class = ?1", [class])?;
        let mut add = self.connection.prepare_cached(
            "INSERT INTO rotation_place (class, day, place, concept) VALUES (?1, ?2, ?3, ?4)",
        )?;
        for (day, concepts) in days.iter().enumerate() {
            if concepts.is_empty() {
                add.execute(params![class, day, 0, format!("{EMPTY_DAY}{day}")])?;
            }
            for (place, concept) in concepts.iter().enumerate() {
                add.execute(params![class, day, place, concept])?;
            }
        }
        Ok(())
    }

    /// Returns the dates of first lessons by concept.
    pub fn taught_from(&self, class: &str) -> Result<BTreeMap<String, NaiveDate>, StoreError> {
        Ok(self
            .rows(
                "SELECT concept, school_date FROM taught_from WHERE class = ?1",
                [class],
                |row| Ok((row.get(0)?, date_at(row, 1)?)),
            )?
            .into_iter()
            .collect())
    }

    /// Sets or removes the date of a concept's first lesson.
    pub fn put_taught_from(
        &self,
        class: &str,
        concept: &str,
        date: Option<NaiveDate>,
    ) -> Result<(), StoreError> {
        match date {
            Some(date) => self
                .connection
                .prepare_cached(
                    "INSERT INTO taught_from (class, concept, school_date) VALUES (?1, ?2, ?3)
                     ON CONFLICT (class, concept) DO UPDATE SET school_date = ?3",
                )?
                .execute(params![class, concept, date.to_string()])?,
            None => self.connection.execute(
                "DELETE FROM taught_from WHERE class = ?1 AND concept = ?2",
                params![class, concept],
            )?,
        };
        Ok(())
    }
}

/// Begins the concept of a day without concepts. No concept id holds a space or a bracket.
const EMPTY_DAY: &str = "(none) ";
