//! The student of this store, the newest class pack, the focus, and the hand-ins made.

use super::super::StoreError;
use super::super::columns::{date_at, device_at, unknown};
use super::StudentStore;
use chrono::NaiveDate;
use rusqlite::{OptionalExtension, Row, params};
use surefoot_catalogue::Language;
use surefoot_record::{Appearance, AppearanceTheme, DecimalSign, DeviceId};

/// The student of a store.
#[derive(Clone, PartialEq, Eq)]
pub struct Student {
    /// The random id of this device, drawn at joining.
    pub device: DeviceId,
    /// Seed of the Ed25519 signing key.
    pub signing_seed: [u8; 32],
    /// The age X25519 identity that opens personal assignments.
    pub sealing_identity: String,
    /// The seat's token.
    pub seat: String,
    /// The nickname, which is in no hand-in.
    pub nickname: String,
    /// The id of the avatar, which is in no hand-in.
    pub avatar: String,
    /// Language of the screens.
    pub language: Language,
    /// Minutes of an evening.
    pub minutes: u32,
    /// Exercises of an evening; `None` if it ends by minutes.
    pub exercises: Option<u32>,
    /// Evenings a week.
    pub evenings: u32,
    /// How the screens look and sound.
    pub appearance: Appearance,
}

/// A hand-in that was made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct HandInRow {
    /// Its revision, from 1.
    pub revision: u32,
    /// School date.
    pub made_on: NaiveDate,
    /// The sequence of the newest event in it.
    pub last_sequence: u32,
}

/// Reads a language. An unknown tag is an error that names it.
fn language_at(row: &Row<'_>, column: usize) -> rusqlite::Result<Language> {
    let tag = row.get_ref(column)?.as_str()?;
    Language::tagged(tag).map_err(|_| unknown(column, "language", tag))
}

fn theme_word(theme: AppearanceTheme) -> &'static str {
    match theme {
        AppearanceTheme::Device => "device",
        AppearanceTheme::Light => "light",
        AppearanceTheme::Dark => "dark",
        AppearanceTheme::Contrast => "contrast",
        AppearanceTheme::ContrastDark => "contrast_dark",
    }
}

fn sign_word(sign: DecimalSign) -> &'static str {
    match sign {
        DecimalSign::Language => "language",
        DecimalSign::Comma => "comma",
        DecimalSign::Point => "point",
    }
}

/// Reads an appearance from its five columns.
fn appearance_at(row: &Row<'_>, first: usize) -> rusqlite::Result<Appearance> {
    Ok(Appearance {
        theme: match row.get_ref(first)?.as_str()? {
            "light" => AppearanceTheme::Light,
            "dark" => AppearanceTheme::Dark,
            "contrast" => AppearanceTheme::Contrast,
            "contrast_dark" => AppearanceTheme::ContrastDark,
            "device" => AppearanceTheme::Device,
            other => return Err(unknown(first, "theme", other)),
        },
        text_percent: row.get(first + 1)?,
        decimal_sign: match row.get_ref(first + 2)?.as_str()? {
            "comma" => DecimalSign::Comma,
            "point" => DecimalSign::Point,
            "language" => DecimalSign::Language,
            other => return Err(unknown(first + 2, "decimal sign", other)),
        },
        less_motion: row.get(first + 3)?,
        reads_aloud: row.get(first + 4)?,
    })
}

impl StudentStore {
    /// Returns the student, if one has joined.
    pub fn student(&self) -> Result<Option<Student>, StoreError> {
        self.connection
            .query_row(
                "SELECT device, signing_seed, sealing_identity, seat, nickname, avatar, language, minutes, evenings,
                   theme, text_percent, decimal_sign, less_motion, reads_aloud, exercises
                 FROM student",
                [],
                |row| {
                    Ok(Student {
                        device: device_at(row, 0)?,
                        signing_seed: row.get(1)?,
                        sealing_identity: row.get(2)?,
                        seat: row.get(3)?,
                        nickname: row.get(4)?,
                        avatar: row.get(5)?,
                        language: language_at(row, 6)?,
                        minutes: row.get(7)?,
                        exercises: row.get(14)?,
                        evenings: row.get(8)?,
                        appearance: appearance_at(row, 9)?,
                    })
                },
            )
            .optional()
            .map_err(Into::into)
    }

    /// Returns the nickname alone, which can be read in a store of any schema.
    pub fn nickname(&self) -> Result<Option<String>, StoreError> {
        self.connection
            .query_row("SELECT nickname FROM student", [], |row| row.get(0))
            .optional()
            .map_err(Into::into)
    }

    /// Writes the student of this store.
    pub fn put_student(&self, student: &Student) -> Result<(), StoreError> {
        self.connection.execute(
            "INSERT INTO student (id, device, signing_seed, sealing_identity, seat, nickname, avatar, language, minutes,
               evenings, theme, text_percent, decimal_sign, less_motion, reads_aloud, exercises)
             VALUES (1, ?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15)
             ON CONFLICT (id) DO UPDATE SET device = ?1, signing_seed = ?2, sealing_identity = ?3, seat = ?4,
               nickname = ?5, avatar = ?6, language = ?7, minutes = ?8, evenings = ?9, theme = ?10,
               text_percent = ?11, decimal_sign = ?12, less_motion = ?13, reads_aloud = ?14, exercises = ?15",
            params![
                student.device.as_str(),
                student.signing_seed,
                student.sealing_identity,
                student.seat,
                student.nickname,
                student.avatar,
                student.language.as_str(),
                student.minutes,
                student.evenings,
                theme_word(student.appearance.theme),
                student.appearance.text_percent,
                sign_word(student.appearance.decimal_sign),
                student.appearance.less_motion,
                student.appearance.reads_aloud,
                student.exercises
            ],
        )?;
        Ok(())
    }

    /// Returns the file of the newest class pack, unchanged.
    pub fn class_pack(&self) -> Result<Option<Vec<u8>>, StoreError> {
        self.connection
            .query_row(
                "SELECT file FROM class_pack ORDER BY version DESC LIMIT 1",
                [],
                |row| row.get(0),
            )
            .optional()
            .map_err(Into::into)
    }

    /// Returns a mark that changes whenever the newest class pack may have changed: its
    /// version, its size in bytes, and SQLite's count of the writes of other connections.
    /// The pack itself is not read.
    pub fn class_pack_mark(&self) -> Result<(Option<(u32, usize)>, u32), StoreError> {
        let pack = self
            .connection
            .query_row(
                "SELECT version, length(file) FROM class_pack ORDER BY version DESC LIMIT 1",
                [],
                |row| Ok((row.get(0)?, row.get(1)?)),
            )
            .optional()?;
        let written = self
            .connection
            .query_row("PRAGMA data_version", [], |row| row.get(0))?;
        Ok((pack, written))
    }

    /// Keeps the file of a class pack, unchanged, and removes older ones.
    pub fn put_class_pack(
        &self,
        version: u32,
        file: &[u8],
        taken_on: NaiveDate,
    ) -> Result<(), StoreError> {
        self.connection.execute(
            "INSERT INTO class_pack (version, file, taken_on) VALUES (?1, ?2, ?3)
             ON CONFLICT (version) DO UPDATE SET file = ?2, taken_on = ?3",
            params![version, file, taken_on.to_string()],
        )?;
        self.connection.execute(
            "DELETE FROM class_pack WHERE version < ?1",
            params![version],
        )?;
        Ok(())
    }

    /// Removes all class packs, before the first of another class is kept.
    pub fn remove_class_packs(&self) -> Result<(), StoreError> {
        self.connection.execute("DELETE FROM class_pack", [])?;
        Ok(())
    }

    /// Returns the focus concepts in their order.
    pub fn focus(&self) -> Result<Vec<String>, StoreError> {
        let mut query = self
            .connection
            .prepare_cached("SELECT concept FROM focus ORDER BY place")?;
        let rows = query.query_map([], |row| row.get(0))?;
        Ok(rows.collect::<Result<_, _>>()?)
    }

    /// Replaces the focus concepts.
    pub fn put_focus(&self, concepts: &[String]) -> Result<(), StoreError> {
        self.transaction(|| {
            self.connection.execute("DELETE FROM focus", [])?;
            for (place, concept) in concepts.iter().enumerate() {
                self.connection.execute(
                    "INSERT INTO focus (concept, place) VALUES (?1, ?2)",
                    params![concept, place],
                )?;
            }
            Ok(())
        })
    }

    /// Returns the newest hand-in made.
    pub fn last_hand_in(&self) -> Result<Option<HandInRow>, StoreError> {
        self.connection
            .query_row(
                "SELECT revision, made_on, last_sequence FROM hand_in ORDER BY revision DESC LIMIT 1",
                [],
                |row| {
                    Ok(HandInRow {
                        revision: row.get(0)?,
                        made_on: date_at(row, 1)?,
                        last_sequence: row.get(2)?,
                    })
                },
            )
            .optional()
            .map_err(Into::into)
    }

    /// Notes a hand-in that was made.
    pub fn put_hand_in(&self, row: HandInRow) -> Result<(), StoreError> {
        self.connection.execute(
            "INSERT INTO hand_in (revision, made_on, last_sequence) VALUES (?1, ?2, ?3)",
            params![row.revision, row.made_on.to_string(), row.last_sequence],
        )?;
        Ok(())
    }

    /// Forgets what is in the hand-ins that were made. Their numbers stay.
    pub fn forget_handed_in(&self) -> Result<(), StoreError> {
        (self.connection).execute("UPDATE hand_in SET last_sequence = 0", [])?;
        Ok(())
    }
}
