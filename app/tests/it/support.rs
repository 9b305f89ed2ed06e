//! A person with a folder of files: picks what the test lays out, saves where it can be found.

use chrono::NaiveDate;
use std::collections::VecDeque;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};
use std::time::Duration;
use surefoot_app::{
    App, CallError, ClassId, CreateClass, FileDoor, FileKind, FileSource, ImportAsked, ImportFrom,
    JobId, JobResult, Join, Nothing, StandingClock, file_at, files_in, write_atomic,
};
use surefoot_core::calendar::{SchoolYear, monday_to_friday};
use surefoot_core::catalogue::Language;
use surefoot_core::student::views::Profile;
use surefoot_core::teacher::views::{ClassSummary, ImportAccount, NewClass};
use tempfile::TempDir;

pub fn date(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

/// What the person picks next, and where saved files go.
#[derive(Clone)]
pub struct Hands {
    next: Arc<Mutex<VecDeque<PathBuf>>>,
    pub saved: PathBuf,
}

impl Hands {
    pub fn will_pick(&self, path: &Path) {
        self.next.lock().unwrap().push_back(path.to_owned());
    }

    fn pick(&self) -> Option<PathBuf> {
        self.next.lock().unwrap().pop_front()
    }
}

impl FileDoor for Hands {
    fn pick_file(&self, _: FileKind) -> Result<Option<FileSource>, CallError> {
        Ok(self.pick().map(|path| file_at(&path)))
    }

    fn pick_files(&self, kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError> {
        Ok(self.pick_file(kind)?.map(|source| vec![source]))
    }

    fn pick_folder(&self, kind: FileKind) -> Result<Option<Vec<FileSource>>, CallError> {
        self.pick()
            .map(|path| Ok(files_in(&path, kind)?))
            .transpose()
    }

    fn save(&self, name: &str, _: FileKind, bytes: &[u8]) -> Result<Option<String>, CallError> {
        write_atomic(&self.saved.join(name), bytes)?;
        Ok(Some(name.to_owned()))
    }
}

/// A device with the program open on it.
pub struct Device {
    pub app: App,
    pub hands: Hands,
    pub folder: TempDir,
}

impl Device {
    pub fn on(today: &str) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let saved = folder.path().join("saved");
        std::fs::create_dir_all(&saved).unwrap();
        let hands = Hands {
            next: Arc::default(),
            saved,
        };
        let mut device = Self {
            app: open(folder.path(), &hands, today),
            hands,
            folder,
        };
        device.to(today);
        device
    }

    /// The program is closed, a day passes, it is opened again.
    pub fn to(&mut self, today: &str) {
        self.app = open(self.folder.path(), &self.hands, today);
    }

    pub fn finish(&self, job: JobId) -> JobResult {
        for _ in 0..6000 {
            if let Some(result) = self.app.job(job).unwrap().result {
                return result;
            }
            std::thread::sleep(Duration::from_millis(20));
        }
        panic!("the job did not end within two minutes");
    }

    pub fn import(&self, folder: &Path) -> ImportAccount {
        self.hands.will_pick(folder);
        let asked = ImportAsked {
            from: ImportFrom::Folder,
        };
        let job = self.app.import_hand_ins(asked).unwrap().unwrap();
        match self.finish(job) {
            JobResult::Import { account } => account,
            other => panic!("{other:?}"),
        }
    }

    pub fn new_class(&self, title: &str, names: &[&str]) -> ClassSummary {
        self.app
            .create_class(CreateClass {
                class: NewClass {
                    title: title.into(),
                    names: names.iter().map(ToString::to_string).collect(),
                    year: school_year(),
                    grades: vec![3, 4],
                    rotation_days: 10,
                    concepts_a_day: 6,
                },
            })
            .unwrap()
    }

    /// The class pack as a file, newly made.
    pub fn pack_of(&self, class: &str) -> PathBuf {
        let made = self
            .app
            .save_class_pack(ClassId {
                class: class.into(),
            })
            .unwrap();
        self.hands.saved.join(made.file_name)
    }

    pub fn join(&self, pack: &Path, seat_code: &str, nickname: &str) -> Result<Profile, CallError> {
        self.hands.will_pick(pack);
        let offer = self.app.pick_class_pack(Nothing {})?.unwrap();
        self.app.join(Join {
            pack: offer.pack,
            seat_code: seat_code.into(),
            nickname: nickname.into(),
            picture: "fox".into(),
            language: Language::En,
        })
    }
}

fn open(folder: &Path, hands: &Hands, today: &str) -> App {
    let clock = StandingClock(date(today));
    App::open(
        &folder.join("data"),
        Box::new(hands.clone()),
        Box::new(clock),
    )
    .unwrap()
}

/// 36 weeks from 31 August 2026, with a closure on 7 September.
pub fn school_year() -> SchoolYear {
    SchoolYear::new(
        date("2026-08-31"),
        date("2027-05-07"),
        monday_to_friday(),
        [date("2026-09-07")].into(),
    )
    .unwrap()
}
