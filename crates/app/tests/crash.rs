//! SIGKILL ends the program at random points while it writes check-ins, practice and imports.
//! Everything that it acknowledged is in the stores afterwards.
//!
//! The child is this same test program. It writes a line to a log for each call that has
//! returned. The parent kills it, checks the stores, and starts the next one. `CRASH_KILLS=1000`
//! sets the number of kills.

#![cfg(unix)]
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test that cannot go on fails"
)]

#[path = "it/support.rs"]
#[allow(dead_code, unused_imports, reason = "shared with the other tests")]
mod support;

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::Write as _;
use std::os::unix::fs::MetadataExt as _;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};
use support::{Device, Hands, hand_in, rate, seat_code};
use surefoot_app::{
    App, CheckInTap, ClassId, DeskPassphrase, ExerciseId, FixedClock, ImportAsked, ImportFrom,
    JournalAsked, NewDeskLock, NoVoice, Nothing, PracticeAsked, StoreName, StudentDay, StudentId,
    Unlocked,
};
use surefoot_catalogue::rating::Confidence;
use surefoot_store::{DeskStore, StudentStore};
use surefoot_student::Tap;
use surefoot_student::practice_views::PracticeStep;

const TODAY: &str = "2026-09-10";
const CHILD_IN: &str = "SUREFOOT_CRASH_CHILD";

/// A folder with a desk, a joined student, and hand-ins that wait.
struct Scene {
    _folder: tempfile::TempDir,
    data: PathBuf,
    inbox: PathBuf,
    log: PathBuf,
    student: String,
    class: String,
}

fn opened(data: &Path, inbox: &Path) -> (App, Hands) {
    let hands = Hands::saving_to(inbox);
    let clock = FixedClock(support::date(TODAY));
    let app = App::open(
        data,
        Box::new(hands.clone()),
        Box::new(clock),
        Box::new(NoVoice),
    )
    .unwrap();
    (app, hands)
}

fn scene() -> Scene {
    let desk = Device::on("2026-09-01");
    let names = ["Amara", "Bao", "Carlos", "Dara", "Emre", "Faye"];
    let class = desk.new_class("Room 7 (invented)", &names).id;
    let pack = desk.pack_of(&class);
    let folder = tempfile::tempdir().unwrap();
    let inbox = folder.path().join("inbox");
    fs::create_dir_all(&inbox).unwrap();
    for seat in 1..names.len() {
        let mut tablet = Device::on("2026-09-01");
        let code = seat_code(&desk, &class, seat);
        let id = tablet.join(&pack, &code, "Sky").unwrap().id;
        for day in ["2026-09-01", "2026-09-02", "2026-09-03"] {
            tablet.to(day);
            rate(&tablet, &id, Confidence::OnMyOwn);
            let file = hand_in(&tablet, &id);
            fs::copy(file, inbox.join(format!("{seat}-{day}.sfhandin"))).unwrap();
        }
    }
    let code = seat_code(&desk, &class, 0);
    let student = desk.join(&pack, &code, "Rain").unwrap().id;
    let data = folder.path().join("data");
    copy_folder(&desk.folder.path().join("data"), &data);
    Scene {
        data,
        inbox,
        log: folder.path().join("acknowledged"),
        student,
        class,
        _folder: folder,
    }
}

fn copy_folder(from: &Path, to: &Path) {
    fs::create_dir_all(to).unwrap();
    for entry in fs::read_dir(from).unwrap() {
        let path = entry.unwrap().path();
        let into = to.join(path.file_name().unwrap());
        if path.is_dir() {
            copy_folder(&path, &into);
        } else {
            fs::copy(&path, &into).unwrap();
        }
    }
}

fn day_of(student: &str) -> StudentDay {
    StudentDay {
        student: student.into(),
        date: None,
    }
}

/// The child: writes until it is killed. Does nothing without a scene.
#[test]
#[ignore = "the child of the test below"]
fn child() {
    let Ok(folder) = std::env::var(CHILD_IN) else {
        return;
    };
    let folder = PathBuf::from(folder);
    let student = std::env::var("SUREFOOT_CRASH_STUDENT").unwrap();
    let inbox = folder.join("inbox");
    let (app, hands) = opened(&folder.join("data"), &inbox);
    let mut log = File::options()
        .append(true)
        .create(true)
        .open(folder.join("acknowledged"))
        .unwrap();
    // One write for each line, so that a line is whole or missing.
    let mut acknowledge = |line: String| log.write_all(line.as_bytes()).unwrap();
    let concepts = app.student.today(day_of(&student)).unwrap().concepts;
    let first: usize = std::env::var("SUREFOOT_CRASH_FIRST")
        .unwrap()
        .parse()
        .unwrap();
    for number in first.. {
        let concept = &concepts[number % concepts.len()].concept.id;
        let value = u8::try_from(number / concepts.len() % 4).unwrap();
        acknowledge(format!("begins check-in {concept} {value}\n"));
        app.student
            .check_in(CheckInTap {
                student: student.clone(),
                tap: Tap {
                    date: support::date(TODAY),
                    concept: concept.clone(),
                    confidence: Some(Confidence::try_from(value).unwrap()),
                    outcome: None,
                },
            })
            .unwrap();
        acknowledge(format!("check-in {concept} {value}\n"));

        let asked = PracticeAsked {
            student: student.clone(),
            concept: None,
            more: true,
        };
        if let PracticeStep::Exercise(open) = app.student.practice(asked).unwrap() {
            app.student
                .show_steps(ExerciseId {
                    student: student.clone(),
                    exercise: open.exercise,
                })
                .unwrap();
            acknowledge("practice\n".into());
        }

        if number % 3 == 0 {
            hands.will_pick(&inbox);
            let job = app
                .desk
                .import_hand_ins(ImportAsked {
                    from: ImportFrom::Folder,
                })
                .unwrap()
                .unwrap();
            while app.device.job(job).unwrap().result.is_none() {
                std::thread::sleep(Duration::from_millis(1));
            }
            acknowledge("import\n".into());
        }
    }
}

/// What the children acknowledged.
#[derive(Default)]
struct Acknowledged {
    ratings: BTreeMap<String, u8>,
    /// Begun, and perhaps not acknowledged.
    begun: Option<(String, u8)>,
    check_ins: usize,
    practice: usize,
    imports: usize,
}

fn acknowledged(log: &Path) -> Acknowledged {
    let mut said = Acknowledged::default();
    for line in fs::read_to_string(log).unwrap_or_default().lines() {
        let words: Vec<&str> = line.split(' ').collect();
        match words[..] {
            ["begins", "check-in", concept, value] => {
                said.begun = Some((concept.into(), value.parse().unwrap()));
            }
            ["check-in", concept, value] => {
                said.ratings.insert(concept.into(), value.parse().unwrap());
                said.begun = None;
                said.check_ins += 1;
            }
            ["practice"] => said.practice += 1,
            ["import"] => said.imports += 1,
            _ => panic!("{line}"),
        }
    }
    said
}

/// Half-made files that the program left in a folder.
fn left_behind(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(left_behind(&path));
        } else if path.extension().is_some_and(|end| end == "part") {
            found.push(path);
        }
    }
    found
}

/// The imports in the journal.
fn imports_of(app: &App) -> usize {
    let (mut found, mut before) = (0, None);
    loop {
        let page = app.desk.imports(JournalAsked { before }).unwrap();
        found += page.imports.len();
        before = page.imports.last().map(|one| one.import);
        if !page.older {
            return found;
        }
    }
}

/// Opens the stores as the next start does; returns what is lost.
fn losses(scene: &Scene) -> Vec<String> {
    let mut lost = Vec::new();
    let own = scene.data.join("own");
    let store = own.join(format!("students/{}.sqlite", scene.student));
    let (app, _) = opened(&scene.data, &scene.inbox);
    let start = app.device.start(Nothing {}).unwrap();
    if !start.damaged.is_empty() {
        lost.push(format!("damaged: {:?}", start.damaged));
        return lost;
    }
    for (what, checked) in [
        ("student", StudentStore::check_file(&store)),
        ("desk", DeskStore::check_file(&own.join("desk.sqlite"))),
    ] {
        if let Err(error) = checked {
            lost.push(format!("{what}: {error}"));
        }
    }
    let said = acknowledged(&scene.log);
    for row in app.student.today(day_of(&scene.student)).unwrap().concepts {
        let found = row.confidence.map(u8::from);
        let acknowledged = said.ratings.get(&row.concept.id).copied();
        let begun = said.begun.as_ref().filter(|(c, _)| *c == row.concept.id);
        if found != acknowledged && found != begun.map(|(_, value)| *value) {
            lost.push(format!(
                "{}: acknowledged {acknowledged:?}, found {found:?}",
                row.concept.id
            ));
        }
    }
    let id = StudentId {
        student: scene.student.clone(),
    };
    let answers = app.student.hand_in_preview(id).unwrap().answers;
    if answers < said.practice {
        lost.push(format!(
            "{} exercises acknowledged, {answers} found",
            said.practice
        ));
    }
    let imports = imports_of(&app);
    if imports < said.imports {
        lost.push(format!(
            "{} imports acknowledged, {imports} found",
            said.imports
        ));
    }
    let left = left_behind(&scene.data);
    if !left.is_empty() {
        lost.push(format!("left behind: {left:?}"));
    }
    lost
}

/// Waits until the log has a new line, for ten seconds at most.
fn wait_for_growth(log: &Path) {
    let length = || fs::metadata(log).map_or(0, |about| about.len());
    let before = length();
    for _ in 0..5_000 {
        if length() > before {
            return;
        }
        std::thread::sleep(Duration::from_millis(2));
    }
}

fn run(kills: u32, seed: u64) {
    let scene = scene();
    let folder = scene.log.parent().unwrap();
    let mut chance = seed;
    let mut lost = Vec::new();
    let mut early = 0_u32;
    let started = Instant::now();
    for kill in 0..kills {
        // xorshift64; it only decides when the child is killed.
        chance ^= chance << 13;
        chance ^= chance >> 7;
        chance ^= chance << 17;
        let told_before = acknowledged(&scene.log).check_ins;
        let mut child = Command::new(std::env::current_exe().unwrap())
            .args(["--ignored", "--exact", "child", "--test-threads=1"])
            .env(CHILD_IN, folder)
            .env("SUREFOOT_CRASH_STUDENT", &scene.student)
            .env("SUREFOOT_CRASH_FIRST", told_before.to_string())
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        // One child in four may be killed while it opens the stores, the others only after they
        // begin to write.
        if kill % 4 != 0 {
            wait_for_growth(&scene.log);
        }
        std::thread::sleep(Duration::from_micros(5_000 + chance % 350_000));
        child.kill().unwrap();
        let ended = child.wait().unwrap();
        assert_eq!(
            std::os::unix::process::ExitStatusExt::signal(&ended),
            Some(9),
            "the child ended by itself: {ended:?}"
        );
        if acknowledged(&scene.log).check_ins == told_before {
            early += 1;
        }
        for loss in losses(&scene) {
            lost.push(format!("after kill {}: {loss}", kill + 1));
        }
    }
    let said = acknowledged(&scene.log);
    println!("kills                  {kills:>8}");
    println!("  before the first tap {early:>8}");
    println!("check-ins acknowledged {:>8}", said.check_ins);
    println!("exercises acknowledged {:>8}", said.practice);
    println!("imports acknowledged   {:>8}", said.imports);
    println!("losses                 {:>8}", lost.len());
    println!("seconds                {:>8}", started.elapsed().as_secs());
    assert!(lost.is_empty(), "{}", lost.join("\n"));
    assert!(
        said.check_ins > kills as usize / 4,
        "too few writes to say anything"
    );

    // Importing the rest gives the same desk as an import without a kill.
    let (app, hands) = opened(&scene.data, &scene.inbox);
    hands.will_pick(&scene.inbox);
    let asked = ImportAsked {
        from: ImportFrom::Folder,
    };
    let job = app.desk.import_hand_ins(asked).unwrap().unwrap();
    while app.device.job(job).unwrap().result.is_none() {
        std::thread::sleep(Duration::from_millis(5));
    }
    let board = app
        .desk
        .board(ClassId {
            class: scene.class.clone(),
        })
        .unwrap();
    assert_eq!(board.seats_reporting, 5);
    let journal = app.desk.imports(JournalAsked { before: None }).unwrap();
    assert_eq!(journal.imports[0].files.len(), 15);
    let setup = app
        .desk
        .class_setup(ClassId {
            class: scene.class.clone(),
        })
        .unwrap();
    assert!(setup.seats.iter().skip(1).all(|s| s.devices.len() == 1));
}

fn kills(usual: u32) -> u32 {
    std::env::var("CRASH_KILLS")
        .ok()
        .and_then(|text| text.parse().ok())
        .unwrap_or(usual)
}

#[test]
fn nothing_acknowledged_is_lost_in_twenty_kills() {
    run(20, 0x5EED_0001);
}

#[test]
#[ignore = "takes some minutes"]
fn nothing_acknowledged_is_lost_in_a_thousand_kills() {
    run(kills(1_000), 0x5EED_0002);
}

/// The passphrase of the desk after so many changes of its lock; every third is none.
fn passphrase(changes: usize) -> Option<String> {
    (!changes.is_multiple_of(3)).then(|| format!("quiet river number {changes}"))
}

/// Changes of the lock that were begun and that were acknowledged.
fn lock_changes(log: &Path) -> (usize, usize) {
    let log = fs::read_to_string(log).unwrap_or_default();
    let of = |word: &str| log.lines().filter(|line| *line == word).count();
    (of("begins"), of("done"))
}

fn unlocks(app: &App, passphrase: &str) -> bool {
    let typed = DeskPassphrase {
        passphrase: passphrase.into(),
    };
    app.device.unlock_desk(typed).unwrap() == Unlocked::Open
}

/// The child: changes the lock of the desk until it is killed. Does nothing without a scene.
#[test]
#[ignore = "the child of the test below"]
fn lock_child() {
    let Ok(folder) = std::env::var(CHILD_IN) else {
        return;
    };
    let folder = PathBuf::from(folder);
    let mut done: usize = std::env::var("SUREFOOT_CRASH_FIRST")
        .unwrap()
        .parse()
        .unwrap();
    let (app, _) = opened(&folder.join("data"), &folder);
    let mut log = File::options()
        .append(true)
        .create(true)
        .open(folder.join("acknowledged"))
        .unwrap();
    if let Some(words) = passphrase(done) {
        assert!(unlocks(&app, &words));
    }
    loop {
        log.write_all(b"begins\n").unwrap();
        let asked = NewDeskLock {
            current: passphrase(done),
            passphrase: passphrase(done + 1),
        };
        assert_eq!(app.device.set_desk_lock(asked).unwrap(), Unlocked::Open);
        done += 1;
        log.write_all(b"done\n").unwrap();
    }
}

#[test]
fn a_kill_while_the_lock_changes_leaves_the_desk_before_or_after() {
    let desk = Device::on("2026-09-01");
    let class = desk.new_class("Room 7 (invented)", &["Amara", "Bao"]).id;
    let folder = tempfile::tempdir().unwrap();
    let (data, log) = (
        folder.path().join("data"),
        folder.path().join("acknowledged"),
    );
    copy_folder(&desk.folder.path().join("data"), &data);
    let own = data.join("own");
    let (mut done, mut before, mut after) = (0, 0, 0);
    for kill in 0..kills(15) {
        let _ = fs::remove_file(&log);
        let mut child = Command::new(std::env::current_exe().unwrap())
            .args(["--ignored", "--exact", "lock_child", "--test-threads=1"])
            .env(CHILD_IN, folder.path())
            .env("SUREFOOT_CRASH_FIRST", done.to_string())
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        wait_for_growth(&log);
        let first = place_of(&own);
        let begun = Instant::now();
        while !place_of(&own).has_come(first, kill % 5) {
            assert!(begun.elapsed().as_secs() < 60, "kill {kill} waits in vain");
        }
        child.kill().unwrap();
        let ended = child.wait().unwrap();
        let signal = std::os::unix::process::ExitStatusExt::signal(&ended);
        assert_eq!(signal, Some(9), "the child ended by itself: {ended:?}");
        let (begun, acknowledged) = lock_changes(&log);
        done += acknowledged;

        let (app, _) = opened(&data, folder.path());
        let start = app.device.start(Nothing {}).unwrap();
        assert!(start.damaged.is_empty(), "{:?}", start.damaged);
        // A change that was not acknowledged may be done, whole, or not.
        let opens = |changes: usize| match passphrase(changes) {
            None => !start.desk_lock.has_lock,
            Some(words) => start.desk_lock.has_lock && unlocks(&app, &words),
        };
        if opens(done) {
            before += 1;
        } else {
            assert!(begun > acknowledged, "change {done} was acknowledged");
            assert!(opens(done + 1), "opens neither before nor after {done}");
            done += 1;
            after += 1;
        }
        let id = ClassId {
            class: class.clone(),
        };
        let seats = app.desk.class_setup(id).unwrap().seats;
        assert_eq!(seats[0].name.as_deref(), Some("Amara"));
        DeskStore::check_file(&data.join("own/desk.sqlite")).unwrap();
        let copies = app.device.copies(StoreName::Desk).unwrap();
        assert_eq!((copies.readable, copies.trouble), (0, None));
        assert_eq!(left_behind(&data), Vec::<PathBuf>::new());
    }
    println!("{done} changes of the lock; after a kill {before} before, {after} after the change");
    assert!(
        before > 0 && after > 0,
        "kills only on one side of the change"
    );
}

/// How far a change of the lock has come, as its files show.
#[derive(Clone, Copy)]
struct Place {
    /// The bytes of the new desk while it has no name.
    part_bytes: Option<u64>,
    /// The file that has the desk's name.
    desk: u64,
    copies: usize,
}

fn place_of(own: &Path) -> Place {
    let entries = |folder: &Path| -> Vec<PathBuf> {
        let found = fs::read_dir(folder).into_iter().flatten();
        found.filter_map(|entry| Some(entry.ok()?.path())).collect()
    };
    let part = entries(own).into_iter().find(|path| {
        let name = path.file_name().unwrap().to_string_lossy();
        name.starts_with(".rewritten-") && name.ends_with(".part")
    });
    Place {
        part_bytes: part.and_then(|path| Some(fs::metadata(path).ok()?.len())),
        desk: fs::metadata(own.join("desk.sqlite")).map_or(0, |about| about.ino()),
        copies: entries(&own.join("copies/desk")).len(),
    }
}

impl Place {
    /// Whether a change that began at `first` has come to a step.
    fn has_come(self, first: Self, step: u32) -> bool {
        match step {
            0 => self.part_bytes.is_some(),
            1 => self.part_bytes.is_some_and(|bytes| bytes > 0),
            2 => self.desk != first.desk,
            3 => self.desk != first.desk && self.copies == 0,
            _ => self.desk != first.desk && self.copies > 0,
        }
    }
}
