//! A person for tests: picks the files of the test, and saves into a folder.

use chrono::NaiveDate;
use std::cell::Cell;
use std::collections::{BTreeSet, VecDeque};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};
use std::time::{Duration, SystemTime};
use surefoot_app::{
    App, CallError, CheckInTap, ClassFolder, ClassId, Clock, CreateClass, FileDialogs, FileKind,
    FileSource, ImportAsked, ImportFrom, JobId, JobResult, Join, Listed, Moment, NoVoice, Nothing,
    StudentDay, StudentId, TreeFault, file_at, files_in, folder_at, write_atomic,
};
use surefoot_catalogue::Language;
use surefoot_catalogue::calendar::{SchoolYear, monday_to_friday};
use surefoot_catalogue::rating::Confidence;
use surefoot_desk::{ClassSummary, ImportReport, NewClass};
use surefoot_student::Tap;
use surefoot_student::views::Profile;
use tempfile::TempDir;

pub fn date(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

/// The files that the person picks next, and the folder for saved files.
#[derive(Clone)]
pub struct Hands {
    next: Arc<Mutex<VecDeque<PathBuf>>>,
    opened: Arc<Mutex<Vec<PathBuf>>>,
    pub saved: PathBuf,
    /// What happens to whoever uses a class folder.
    #[allow(dead_code, reason = "not used by the crash test")]
    pub weather: Weather,
    folders: Folders,
    /// The class folders that the program said last that it uses.
    #[allow(dead_code, reason = "not used by the crash test")]
    pub used_folders: Arc<Mutex<Option<BTreeSet<PathBuf>>>>,
}

/// How a shell reaches a class folder.
pub type Folders = fn(&Path) -> Arc<dyn ClassFolder>;

thread_local! {
    /// How the devices that this test makes from now on reach class folders.
    pub static FOLDERS: Cell<Folders> = const { Cell::new(folder_at) };
}

/// What happens to whoever uses a class folder.
#[derive(Clone, Default)]
pub struct Weather(Arc<Mutex<Option<FolderFault>>>);

/// A fault of a class folder.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(dead_code, reason = "not used by the crash test")]
pub enum FolderFault {
    /// Every call fails.
    Fails(std::io::ErrorKind),
    /// Every call is refused so.
    Refuses(TreeFault),
    /// Every call that writes fails.
    WritesFail(std::io::ErrorKind),
    /// Calls wait until the fault is over.
    Hangs,
}

impl Weather {
    #[allow(dead_code, reason = "not used by the crash test")]
    pub fn turns(&self, fault: Option<FolderFault>) {
        *self.0.lock().unwrap() = fault;
    }

    fn meets(&self, writes: bool) -> std::io::Result<()> {
        loop {
            match *self.0.lock().unwrap() {
                Some(FolderFault::Fails(kind)) => return Err(kind.into()),
                Some(FolderFault::Refuses(fault)) => return Err(fault.into()),
                Some(FolderFault::WritesFail(kind)) if writes => return Err(kind.into()),
                Some(FolderFault::Hangs) => {}
                _ => return Ok(()),
            }
            std::thread::sleep(Duration::from_millis(5));
        }
    }
}

/// A class folder that the weather reaches.
struct Exposed(Arc<dyn ClassFolder>, Weather);

impl ClassFolder for Exposed {
    fn list(&self, first: &BTreeSet<String>) -> std::io::Result<Listed> {
        self.1.meets(false)?;
        self.0.list(first)
    }

    fn read(&self, name: &str, most_bytes: u64) -> std::io::Result<Vec<u8>> {
        self.1.meets(false)?;
        self.0.read(name, most_bytes)
    }

    fn write(&self, name: &str, bytes: &[u8], changed: SystemTime) -> std::io::Result<()> {
        self.1.meets(true)?;
        self.0.write(name, bytes, changed)
    }

    fn remove(&self, name: &str) -> std::io::Result<()> {
        self.1.meets(true)?;
        self.0.remove(name)
    }
}

impl Hands {
    /// A person who saves into a folder.
    #[allow(dead_code, reason = "used by the crash test")]
    pub fn saving_to(folder: &Path) -> Self {
        Self {
            next: Arc::default(),
            opened: Arc::default(),
            saved: folder.to_owned(),
            weather: Weather::default(),
            folders: FOLDERS.get(),
            used_folders: Arc::default(),
        }
    }

    /// Another program opens these files with this one.
    #[allow(dead_code, reason = "not used by the crash test")]
    pub fn open_with(&self, paths: &[&Path]) {
        let paths = paths.iter().map(|path| path.to_path_buf());
        self.opened.lock().unwrap().extend(paths);
    }

    pub fn will_pick(&self, path: &Path) {
        self.next.lock().unwrap().push_back(path.to_owned());
    }

    fn pick(&self) -> Option<PathBuf> {
        self.next.lock().unwrap().pop_front()
    }
}

impl FileDialogs for Hands {
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

    fn has_class_folders(&self) -> bool {
        true
    }

    fn pick_class_folder(&self) -> Result<Option<PathBuf>, CallError> {
        Ok(self.pick())
    }

    fn class_folder(&self, at: &Path) -> Arc<dyn ClassFolder> {
        Arc::new(Exposed((self.folders)(at), self.weather.clone()))
    }

    fn release_class_folders(&self, used: &BTreeSet<PathBuf>) {
        *self.used_folders.lock().unwrap() = Some(used.clone());
    }

    fn take_opened(&self) -> Vec<FileSource> {
        let opened = std::mem::take(&mut *self.opened.lock().unwrap());
        opened.iter().map(|path| file_at(path)).collect()
    }

    fn save(&self, name: &str, _: FileKind, bytes: &[u8]) -> Result<Option<String>, CallError> {
        write_atomic(&self.saved.join(name), bytes)?;
        Ok(Some(name.to_owned()))
    }
}

/// A clock at one date, on which a test lets minutes pass and turns the date.
#[derive(Clone)]
pub struct PassingClock(Arc<Mutex<NaiveDate>>, Arc<Mutex<Duration>>);

impl Clock for PassingClock {
    fn today(&self) -> NaiveDate {
        *self.0.lock().unwrap()
    }

    fn moment(&self) -> Moment {
        Moment::now().later(*self.1.lock().unwrap())
    }
}

/// A device with the program open on it.
pub struct Device {
    pub app: App,
    pub hands: Hands,
    pub folder: TempDir,
    passed: Arc<Mutex<Duration>>,
    today: Arc<Mutex<NaiveDate>>,
}

impl Device {
    pub fn on(today: &str) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let saved = folder.path().join("saved");
        std::fs::create_dir_all(&saved).unwrap();
        let hands = Hands::saving_to(&saved);
        let passed = Arc::default();
        let today_is = Arc::new(Mutex::new(date(today)));
        let mut device = Self {
            app: open(folder.path(), &hands, &today_is, &passed),
            today: today_is,
            hands,
            folder,
            passed,
        };
        device.to(today);
        device
    }

    /// Lets minutes pass at once.
    #[allow(dead_code, reason = "not used by the crash test")]
    pub fn pass(&self, minutes: u64) {
        *self.passed.lock().unwrap() += Duration::from_secs(minutes * 60);
    }

    /// Closes the program and opens it again on another date.
    pub fn to(&mut self, today: &str) {
        self.turn_to(date(today));
        self.app = open(self.folder.path(), &self.hands, &self.today, &self.passed);
    }

    /// Another date comes while the program is open.
    pub fn turn_to(&self, today: NaiveDate) {
        *self.today.lock().unwrap() = today;
    }

    /// Closes the program, and opens an empty one in another folder instead.
    pub fn close(&mut self) {
        self.app = open(
            &self.folder.path().join("closed"),
            &self.hands,
            &Arc::new(Mutex::new(date("2000-01-01"))),
            &self.passed,
        );
    }

    pub fn finish(&self, job: JobId) -> JobResult {
        for _ in 0..6000 {
            if let Some(result) = self.app.device.job(job).unwrap().result {
                return result;
            }
            std::thread::sleep(Duration::from_millis(20));
        }
        panic!("the job did not end within two minutes");
    }

    pub fn import(&self, folder: &Path) -> ImportReport {
        self.hands.will_pick(folder);
        let asked = ImportAsked {
            from: ImportFrom::Folder,
        };
        let job = self.app.desk.import_hand_ins(asked).unwrap().unwrap();
        match self.finish(job) {
            JobResult::Import { report } => report,
            other => panic!("{other:?}"),
        }
    }

    pub fn new_class(&self, title: &str, names: &[&str]) -> ClassSummary {
        self.app
            .desk
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

    /// Makes a class pack; returns its file.
    pub fn pack_of(&self, class: &str) -> PathBuf {
        let made = self
            .app
            .desk
            .save_class_pack(ClassId {
                class: class.into(),
            })
            .unwrap();
        self.hands.saved.join(made.file_name)
    }

    pub fn join(&self, pack: &Path, seat_code: &str, nickname: &str) -> Result<Profile, CallError> {
        self.hands.will_pick(pack);
        let offer = self.app.student.pick_class_pack(Nothing {})?.unwrap();
        self.app.student.join(Join {
            pack: offer.pack,
            seat_code: seat_code.into(),
            nickname: nickname.into(),
            avatar: "fox".into(),
            language: Language::first(),
            beside: false,
        })
    }
}

/// A tap on the first concept of the day.
pub fn rate(device: &Device, student: &str, confidence: Confidence) {
    let today = device
        .app
        .student
        .today(StudentDay {
            student: student.into(),
            date: None,
        })
        .unwrap();
    device
        .app
        .student
        .check_in(CheckInTap {
            student: student.into(),
            tap: Tap {
                date: today.date,
                concept: today.concepts[0].concept.id.clone(),
                confidence: Some(confidence),
                outcome: None,
            },
        })
        .unwrap();
}

/// The rating of the first concept on a day.
pub fn rating(device: &Device, student: &str, on: &str) -> Option<Confidence> {
    device
        .app
        .student
        .today(StudentDay {
            student: student.into(),
            date: Some(date(on)),
        })
        .unwrap()
        .concepts[0]
        .confidence
}

/// Makes a hand-in; returns its file.
pub fn hand_in(device: &Device, student: &str) -> PathBuf {
    let made = device
        .app
        .student
        .hand_in(StudentId {
            student: student.into(),
        })
        .unwrap();
    device.hands.saved.join(made.file_name)
}

/// A class of three on a desk, and a tablet on which the first has joined.
pub fn class_and_tablet(today: &str) -> (Device, String, Device, String) {
    let desk = Device::on(today);
    let class = desk
        .new_class("Room 7 (invented)", &["Amara", "Bao", "Carlos"])
        .id;
    let pack = desk.pack_of(&class);
    let tablet = Device::on(today);
    let student = tablet
        .join(&pack, &seat_code(&desk, &class, 0), "Sky")
        .unwrap()
        .id;
    (desk, class, tablet, student)
}

/// The code of a seat; seats count from 0.
pub fn seat_code(desk: &Device, class: &str, seat: usize) -> String {
    let id = ClassId {
        class: class.into(),
    };
    desk.app.desk.join_slips(id).unwrap()[seat].code.clone()
}

/// The PIN signs of a seat; seats count from 0.
pub fn pin_signs(desk: &Device, class: &str, seat: usize) -> String {
    let id = ClassId {
        class: class.into(),
    };
    desk.app.desk.join_slips(id).unwrap()[seat]
        .pin_signs
        .clone()
}

fn open(
    folder: &Path,
    hands: &Hands,
    today: &Arc<Mutex<NaiveDate>>,
    passed: &Arc<Mutex<Duration>>,
) -> App {
    let clock = PassingClock(Arc::clone(today), Arc::clone(passed));
    App::open(
        &folder.join("data"),
        Box::new(hands.clone()),
        Box::new(clock),
        Box::new(NoVoice),
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
