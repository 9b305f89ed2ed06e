//! Where the program is when it opens, and the settings of the device.

use super::DeviceDoor;
use crate::context::copies::{StoreName, StoredCopy, check_store};
use crate::context::settings::{DeviceSettings, World};
use crate::context::values::Nothing;
use crate::desk::removed::Removed;
use crate::error::CallError;
use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_catalogue::Language;
use surefoot_desk::ClassSummary;
use surefoot_exercises::messages;
use surefoot_store::StudentStore;
use surefoot_student::views::Profile;
use ts_rs::TS;

/// Students of the sample class that can be played.
const SAMPLE_STUDENTS_SHOWN: usize = 3;

/// What the screens show when the program opens.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Start {
    /// Today, as this device's calendar has it (in the sample class: the latest weekday).
    pub today: chrono::NaiveDate,
    /// Version of the program.
    pub version: String,
    /// Own data or the sample class.
    pub world: World,
    /// Whether the sample class has been made.
    pub sample_ready: bool,
    /// Students on this device.
    pub students: Vec<Profile>,
    /// Classes on this device.
    pub classes: Vec<ClassSummary>,
    /// Stores that cannot be opened, for the person to decide about.
    pub damaged: Vec<DamagedStore>,
    /// School years that are over while their data is still here.
    pub years_over: Vec<YearOver>,
    /// What was removed from the desk, while it can be restored; the newest first.
    pub removed: Vec<Removed>,
    /// Whether a file can be handed to another program by the system's share sheet.
    pub shares: bool,
    /// Settings of this device.
    pub settings: DeviceSettings,
}

/// A store that cannot be opened.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct DamagedStore {
    /// Which.
    pub store: StoreName,
    /// The student's nickname as the newest good copy has it.
    pub nickname: Option<String>,
    /// Why it cannot be opened.
    pub why: CallError,
    /// The newest copy that is whole.
    pub last_good: Option<StoredCopy>,
}

/// A school year that is over while its data is still here.
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
        /// The class's last school day.
        last_day: NaiveDate,
    },
}

/// Messages in Fluent's form.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct MessageFile {
    /// What it is about, such as `items-fractions`.
    pub area: String,
    /// Its text.
    pub text: String,
}

/// The words of a language.
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
                // A store without a student was left by a join that did not finish.
                Err(CallError::NotFound { .. }) => {}
                // A store that cannot be opened keeps no other from working.
                Err(error) => damaged.push(self.damaged(StoreName::Student { student: id }, error)),
            }
        }
        let today = self.context.today();
        let classes = match self.desk.classes() {
            Ok(classes) => classes,
            Err(error) => {
                damaged.push(self.damaged(StoreName::Desk, error));
                Vec::new()
            }
        };
        Ok(Start {
            today,
            version: env!("CARGO_PKG_VERSION").to_owned(),
            world,
            sample_ready: self.context.paths.world(World::Sample).desk().is_file(),
            students,
            classes,
            damaged,
            years_over: match world {
                World::Own => self.years_over(),
                World::Sample => Vec::new(),
            },
            removed: self.desk.removed(),
            shares: self.context.dialogs.shares(),
            settings: self.context.settings(),
        })
    }

    /// What is left of a store that cannot be opened.
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

    /// School years that are over while their data is still here.
    fn years_over(&self) -> Vec<YearOver> {
        let today = self.context.today();
        let mut over = Vec::new();
        if self.context.data().desk().is_file()
            && let Ok(classes) = self
                .desk
                .with_desk(|desk| Ok(surefoot_desk::classes_over(desk, today)?))
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

    /// Writes the settings of this device.
    pub fn save_device_settings(&self, settings: DeviceSettings) -> Result<Start, CallError> {
        self.context.put_settings(settings)?;
        self.start(Nothing {})
    }

    /// The words of exercises and their pictures, which the screens need once one is shown.
    pub fn exercise_words(&self, of: WordsOf) -> Result<Vec<MessageFile>, CallError> {
        Ok(messages::sources(of.language)
            .map(|(area, text)| MessageFile {
                area: area.to_owned(),
                text: text.to_owned(),
            })
            .collect())
    }
}
