//! What the screens show when the program opens, and the settings of the device.

use super::DeviceDoor;
use crate::context::copies::{StoreName, StoredCopy, check_store};
use crate::context::disk;
use crate::context::settings::{DeviceSettings, World};
use crate::context::values::Nothing;
use crate::desk::ClassSummary;
use crate::desk::lock_view::DeskLock;
use crate::desk::removed::Removed;
use crate::error::CallError;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::Language;
use surefoot_exercises::messages;
use surefoot_store::StudentStore;
use surefoot_student::views::Profile;
use ts_rs::TS;

/// Students of the sample class whose screens can be opened.
const SAMPLE_STUDENTS_SHOWN: usize = 3;

/// What the screens show when the program opens.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Start {
    /// Today; in the sample class the latest weekday.
    pub today: chrono::NaiveDate,
    /// The version of the program.
    pub version: String,
    /// Own data or the sample class.
    pub world: World,
    /// Whether the sample class exists.
    pub sample_ready: bool,
    /// Students on this device.
    pub students: Vec<Profile>,
    /// Classes on this device.
    pub classes: Vec<ClassSummary>,
    /// Stores that cannot be opened.
    pub damaged: Vec<DamagedStore>,
    /// School years that are over and still have data here.
    pub years_over: Vec<YearOver>,
    /// Removals of the desk that can be undone, newest first.
    pub removed: Vec<Removed>,
    /// The lock of the person's own desk. While it is locked, its classes are left out.
    pub desk_lock: DeskLock,
    /// Whether this device has a share sheet.
    pub shares: bool,
    /// Whether this device can use a class folder.
    pub class_folders: bool,
    /// Whether the program has the teacher's side and the sample class.
    pub has_desk: bool,
    /// Whether a student can print.
    pub prints: bool,
    /// Whether a browser keeps the data. It may clear them.
    pub in_browser: bool,
    /// Settings of this device.
    pub settings: DeviceSettings,
}

/// A store that cannot be opened.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DamagedStore {
    /// The store.
    pub store: StoreName,
    /// The student's nickname, from the newest whole copy.
    pub nickname: Option<String>,
    /// Why it cannot be opened.
    pub why: CallError,
    /// The newest whole copy.
    pub last_good: Option<StoredCopy>,
}

/// A school year that is over and still has data here.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum YearOver {
    /// A class of the desk.
    Class {
        /// The class.
        class: String,
        /// Its title.
        title: String,
        /// Its last school day.
        last_day: NaiveDate,
    },
    /// A student of this device.
    Student {
        /// The profile's id.
        student: String,
        /// The nickname.
        nickname: String,
        /// The last school day of the class.
        last_day: NaiveDate,
    },
}

/// A file of messages in the format of Fluent.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MessageFile {
    /// Its area, such as `items-fractions`.
    pub area: String,
    /// Its text.
    pub text: String,
}

/// A language whose words are asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct WordsOf {
    /// The language.
    pub language: Language,
}

impl DeviceDoor {
    /// What the screens show when the program opens.
    pub fn start(&self, _: Nothing) -> Result<Start, CallError> {
        let world = self.context.world();
        let mut students = Vec::new();
        let mut damaged = Vec::new();
        for id in self.student.ids_with_copies()? {
            if world == World::Sample && students.len() == SAMPLE_STUDENTS_SHOWN {
                break;
            }
            match self.student.profile(&id) {
                Ok(profile) => students.push(profile),
                // A join that did not finish left a store without a student.
                Err(CallError::NotFound { .. }) => {}
                // The other stores still work.
                Err(error) => damaged.push(self.damaged(StoreName::Student { student: id }, error)),
            }
        }
        let today = self.context.today();
        let classes = match self.desk.classes() {
            Ok(classes) => classes,
            Err(CallError::DeskLocked) => Vec::new(),
            Err(error) => {
                damaged.push(self.damaged(StoreName::Desk, error));
                Vec::new()
            }
        };
        Ok(Start {
            today,
            version: env!("CARGO_PKG_VERSION").to_owned(),
            world,
            sample_ready: disk::is_file(&self.context.paths.world(World::Sample).desk()),
            students,
            classes,
            damaged,
            years_over: match world {
                World::Own => self.years_over(),
                World::Sample => Vec::new(),
            },
            // A removal can name a student.
            removed: match self.desk.refuse_locked() {
                Ok(()) => self.desk.removed(),
                Err(_) => Vec::new(),
            },
            desk_lock: self.desk.lock_state(),
            shares: self.context.dialogs.shares(),
            class_folders: world == World::Own && self.context.dialogs.has_class_folders(),
            has_desk: cfg!(all(feature = "desk", not(target_family = "wasm"))),
            prints: self.context.dialogs.prints(),
            in_browser: cfg!(target_family = "wasm"),
            settings: self.context.settings(),
        })
    }

    /// Describes a store that cannot be opened.
    fn damaged(&self, store: StoreName, why: CallError) -> DamagedStore {
        let last_good = self.context.copy_paths(&store).ok().and_then(|copies| {
            copies
                .into_iter()
                .find(|(path, _)| check_store(&store, path).is_ok())
        });
        let nickname = match (&store, &last_good) {
            (StoreName::Student { .. }, Some((path, _))) => StudentStore::open_read_only(path)
                .and_then(|store| store.nickname())
                .ok()
                .flatten(),
            _ => None,
        };
        DamagedStore {
            store,
            nickname,
            why,
            last_good: last_good.map(|(_, copy)| copy),
        }
    }

    /// School years that are over and still have data here.
    fn years_over(&self) -> Vec<YearOver> {
        let today = self.context.today();
        let mut over = self.classes_over(today);
        for id in self.student.ids().unwrap_or_default() {
            let year = self.student.as_locked_student(&id, |_, joined| {
                Ok((joined.student.nickname.clone(), joined.facts.year.last_day))
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

    /// The classes of the desk whose school year is over.
    #[cfg(feature = "desk")]
    fn classes_over(&self, today: NaiveDate) -> Vec<YearOver> {
        if !disk::is_file(&self.context.data().desk()) {
            return Vec::new();
        }
        let over = (self.desk).with_desk(|desk| Ok(surefoot_desk::classes_over(desk, today)?));
        (over.unwrap_or_default().into_iter())
            .map(|(class, title, last_day)| YearOver::Class {
                class,
                title,
                last_day,
            })
            .collect()
    }

    #[cfg(not(feature = "desk"))]
    fn classes_over(&self, _: NaiveDate) -> Vec<YearOver> {
        Vec::new()
    }

    /// Saves the settings of this device.
    pub fn save_device_settings(&self, settings: DeviceSettings) -> Result<Start, CallError> {
        self.context.put_settings(settings)?;
        self.start(Nothing {})
    }

    /// The words of exercises and figures, which the screens load with the first exercise.
    pub fn exercise_words(&self, of: WordsOf) -> Result<Vec<MessageFile>, CallError> {
        Ok(messages::sources(of.language)
            .map(|(area, text)| MessageFile {
                area: area.to_owned(),
                text: text.to_owned(),
            })
            .collect())
    }
}
