//! The class folder: a desk and students' devices with one real folder between them.

use crate::support::{
    Device, FolderFault, class_and_tablet, date, hand_in, pin_signs, rate, rating, seat_code,
};
use std::fs;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant, SystemTime};
use surefoot_app::{
    CallError, ClassFolderState, FolderTrouble, JobResult, Join, JournalAsked, NewClosures,
    NewDeskLock, NewPin, Nothing, RenameClass, ShownFolder, SlipChange, StudentId, VisitAsked,
    Visited, WhoHasNotAsked,
};
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::Confidence;
use surefoot_desk::{ImportReport, Lacking, LackingKind, Verdict};
use surefoot_store::{DeskStore, Durability, StoreError};
use surefoot_student::views::Profile;
use tempfile::TempDir;

#[cfg(unix)]
mod over_trees;

/// Calls of one settling at most: a minute or more, for a busy machine.
const MOST_CALLS: usize = 20_000;

fn wait() {
    std::thread::sleep(Duration::from_millis(3));
}

/// Looks after the desk's class folder as the screens do, until nothing happens any more, or the
/// folder is in trouble. Ends imports.
pub fn settle(desk: &Device) -> ClassFolderState {
    let mut quiet = 0;
    for _ in 0..MOST_CALLS {
        let state = desk.app.desk.class_folder(Nothing {}).unwrap();
        if let Some(job) = state.job {
            desk.finish(job);
        }
        match (state.busy, state.trouble) {
            (true, None) => quiet = 0,
            _ => quiet += 1,
        }
        if quiet > 5 {
            return state;
        }
        wait();
    }
    panic!("the desk does not come to rest");
}

/// Visits the class folders of a device until nothing happens any more, or for a while if something
/// waits.
pub fn visit(device: &Device) -> Visited {
    let mut quiet = 0;
    let mut took_pack = Vec::new();
    let begun = Instant::now();
    for call in 0.. {
        let asked = VisitAsked { done: true };
        let visited = device.app.student.visit_folders(asked).unwrap();
        took_pack.extend(visited.took_pack.clone());
        quiet = if visited.busy { 0 } else { quiet + 1 };
        if quiet > 3 || (call > 60 && begun.elapsed() > Duration::from_millis(1500)) {
            took_pack.sort();
            return Visited {
                took_pack,
                ..visited
            };
        }
        wait();
    }
    unreachable!()
}

/// A class with a class folder, a tablet that joined from it, and the folder.
pub struct Shared {
    pub desk: Device,
    pub class: String,
    pub tablet: Device,
    pub sky: String,
    pub folder: TempDir,
}

impl Shared {
    pub fn at(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    pub fn names(&self) -> Vec<String> {
        let mut names: Vec<String> = fs::read_dir(self.folder.path())
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        names.sort();
        names
    }

    pub fn one(&self, extension: &str) -> PathBuf {
        let found: Vec<_> = (self.names().into_iter())
            .filter(|name| name.ends_with(extension))
            .collect();
        assert_eq!(found.len(), 1, "{found:?}");
        self.at(&found[0])
    }

    pub fn shown(&self) -> ShownFolder {
        let student = self.sky.clone();
        self.tablet
            .app
            .student
            .shown_folder(StudentId { student })
            .unwrap()
    }

    pub fn last_import(&self) -> ImportReport {
        let asked = JournalAsked { before: None };
        self.desk.app.desk.imports(asked).unwrap().imports.remove(0)
    }

    pub fn imports(&self) -> usize {
        let asked = JournalAsked { before: None };
        self.desk.app.desk.imports(asked).unwrap().imports.len()
    }

    pub fn close_on(&self, day: &str) {
        self.desk
            .app
            .desk
            .set_closures(NewClosures {
                class: self.class.clone(),
                closures: vec![date("2026-09-07"), date(day)],
            })
            .unwrap();
    }
}

/// Joins from a picked class folder.
pub fn join_from(device: &Device, folder: &Path, code: &str, nickname: &str) -> Profile {
    device.hands.will_pick(folder);
    let shown = device
        .app
        .student
        .pick_shown_folder(Nothing {})
        .unwrap()
        .unwrap();
    assert_eq!(shown.packs.len(), 1);
    device
        .app
        .student
        .join(Join {
            pack: shown.packs[0].pack,
            seat_code: code.into(),
            nickname: nickname.into(),
            avatar: "fox".into(),
            language: Language::first(),
            beside: false,
        })
        .unwrap()
}

pub fn shared(today: &str) -> Shared {
    let desk = Device::on(today);
    let class = desk
        .new_class("Room 7 (invented)", &["Amara", "Bao", "Carlos"])
        .id;
    let folder = tempfile::tempdir().unwrap();
    desk.hands.will_pick(folder.path());
    desk.app.desk.name_class_folder(Nothing {}).unwrap();
    settle(&desk);
    let tablet = Device::on(today);
    let code = seat_code(&desk, &class, 0);
    let sky = join_from(&tablet, folder.path(), &code, "Sky").id;
    Shared {
        desk,
        class,
        tablet,
        sky,
        folder,
    }
}

#[test]
fn an_import_that_failed_or_was_stopped_is_tried_again() {
    let s = shared("2026-09-01");
    let start = || {
        for _ in 0..MOST_CALLS {
            if let Some(job) = s.desk.app.desk.class_folder(Nothing {}).unwrap().job {
                return Some(job);
            }
            wait();
        }
        None
    };
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    // Another program holds the desk when the import begins.
    let path = s.desk.folder.path().join("data/own/desk.sqlite");
    let other = DeskStore::open(&path, Durability::Full).unwrap();
    let failed = other.transaction(|| Ok::<_, StoreError>(s.desk.finish(start().unwrap())));
    assert!(matches!(failed.unwrap(), JobResult::Failed { .. }));
    drop(other);
    // Not at once, so that one that cannot succeed does not follow another.
    for _ in 0..20 {
        let state = s.desk.app.desk.class_folder(Nothing {}).unwrap();
        assert_eq!((state.job, state.busy), (None, true));
        wait();
    }
    s.desk.pass(1);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].verdict, Verdict::New);

    // The teacher stops one that a flood makes long. On a busy machine it may end before that.
    let stopped = (0..20).find_map(|turn| {
        settle(&s.desk);
        let value = [Confidence::NotYet, Confidence::WithHelp][turn % 2];
        rate(&s.tablet, &s.sky, value);
        visit(&s.tablet);
        for number in 0..300 {
            let name = format!("a{turn}-{number}.sfhandin");
            fs::write(s.at(&name), name.as_bytes()).unwrap();
        }
        let job = start().unwrap();
        s.desk.app.device.cancel_job(job).unwrap();
        let JobResult::Import { report } = s.desk.finish(job) else {
            panic!("the import failed");
        };
        report.cancelled.then_some(report)
    });
    let report = stopped.unwrap();
    assert_eq!(report.tally.updated, 0);
    assert_eq!(s.desk.app.desk.class_folder(Nothing {}).unwrap().job, None);
    s.desk.pass(1);
    settle(&s.desk);
    assert_eq!(s.last_import().tally.updated, 1);
}

#[test]
fn a_desk_that_an_earlier_one_replaces_imports_again_what_it_lacks() {
    let mut s = shared("2026-09-01");
    let path = s.desk.folder.path().join("data/own/desk.sqlite");
    let earlier = path.with_extension("earlier");
    let store = DeskStore::open(&path, Durability::Full).unwrap();
    store.copy_into(&earlier).unwrap();
    drop(store);
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    settle(&s.desk);
    assert_eq!(s.imports(), 1);
    // Put back by hand, so that the program does not know.
    s.desk.close();
    for end in ["sqlite-wal", "sqlite-shm"] {
        let _ = fs::remove_file(path.with_extension(end));
    }
    fs::rename(&earlier, &path).unwrap();
    s.desk.to("2026-09-01");
    assert_eq!(s.imports(), 0);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].verdict, Verdict::New);
    settle(&s.desk);
    assert_eq!(s.imports(), 1);
}

#[test]
fn packs_and_hand_ins_travel_by_themselves_and_replace_one_another() {
    let mut s = shared("2026-09-01");
    assert!(s.shown().offered);
    assert_eq!(
        s.shown().folder,
        Some(s.folder.path().display().to_string())
    );
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    let name = s.one("sfhandin");
    assert_eq!(s.shown().left_on, Some(date("2026-09-01")));
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].verdict, Verdict::New);
    assert_eq!(s.last_import().files[0].seat, Some(1));

    // A newer one takes the place of the older, and keeps its name.
    s.tablet.to("2026-09-02");
    s.desk.to("2026-09-02");
    rate(&s.tablet, &s.sky, Confidence::NotYet);
    visit(&s.tablet);
    assert_eq!(s.one("sfhandin"), name);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].verdict, Verdict::Updated);
    let imports = s.imports();

    // Nothing is read twice, also after a new start.
    settle(&s.desk);
    s.desk.to("2026-09-02");
    let state = settle(&s.desk);
    assert_eq!(state.reached_on, Some(date("2026-09-02")));
    assert_eq!(s.imports(), imports);

    // A change of the class goes to the tablet.
    s.close_on("2026-09-03");
    settle(&s.desk);
    assert_eq!(visit(&s.tablet).took_pack, [s.sky.as_str()]);
    assert!(visit(&s.tablet).took_pack.is_empty());
}

#[test]
fn a_folder_that_is_away_full_read_only_or_silent_is_told_and_nothing_waits_or_is_lost() {
    let mut s = shared("2026-09-14");
    let faults = [
        (FolderFault::Fails(ErrorKind::NotFound), FolderTrouble::Away),
        (
            FolderFault::Fails(ErrorKind::TimedOut),
            FolderTrouble::Silent,
        ),
        (
            FolderFault::WritesFail(ErrorKind::StorageFull),
            FolderTrouble::Full,
        ),
        (
            FolderFault::WritesFail(ErrorKind::PermissionDenied),
            FolderTrouble::ReadOnly,
        ),
        (FolderFault::Hangs, FolderTrouble::Silent),
    ];
    for (at, (fault, told)) in faults.into_iter().enumerate() {
        let today = format!("2026-09-{:02}", at + 14);
        s.tablet.to(&today);
        s.desk.to(&today);
        settle(&s.desk);
        visit(&s.tablet);
        for hands in [&s.tablet.hands, &s.desk.hands] {
            hands.weather.turns(Some(fault));
        }
        rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
        s.close_on(&format!("2026-10-{:02}", at + 1));
        let mut slowest = Duration::ZERO;
        let mut told_by_both = false;
        for call in 0..MOST_CALLS {
            let begun = Instant::now();
            let asked = VisitAsked { done: true };
            s.tablet.app.student.visit_folders(asked).unwrap();
            let state = s.desk.app.desk.class_folder(Nothing {}).unwrap();
            slowest = slowest.max(begun.elapsed());
            let shown = s.shown();
            told_by_both = (shown.trouble, state.trouble) == (Some(told), Some(told));
            if told_by_both {
                assert!(shown.waiting);
                assert_eq!(state.reached_on, Some(date(&today)));
                break;
            }
            if call == 10 && fault == FolderFault::Hangs {
                // A minute later, by the clock of the test.
                s.tablet.pass(1);
                s.desk.pass(1);
            }
            std::thread::sleep(Duration::from_millis(20));
        }
        assert!(told_by_both, "{fault:?}: {:?}", s.shown());
        assert!(
            slowest < Duration::from_secs(5),
            "a call waited for the folder"
        );

        for hands in [&s.tablet.hands, &s.desk.hands] {
            hands.weather.turns(None);
        }
        let mut took_pack = visit(&s.tablet).took_pack;
        assert_eq!(
            (s.shown().trouble, s.shown().waiting),
            (None, false),
            "{fault:?}"
        );
        // The round that met the fault may come back late.
        let mut state = settle(&s.desk);
        for _ in 0..MOST_CALLS {
            if state.trouble.is_none() {
                break;
            }
            state = settle(&s.desk);
        }
        assert_eq!((state.trouble, state.packs_waiting), (None, 0), "{fault:?}");
        assert_eq!(s.last_import().files[0].new_entries, 1, "{fault:?}");
        // The desk may have put it before it was asked again.
        took_pack.extend(visit(&s.tablet).took_pack);
        assert_eq!(took_pack, [s.sky.as_str()], "{fault:?}");
    }
    assert!(s.names().iter().all(|name| !name.ends_with(".part")));
}

#[cfg(unix)]
#[test]
fn a_real_folder_that_went_or_refuses_is_told_in_the_same_words() {
    use std::os::unix::fs::PermissionsExt as _;
    let s = shared("2026-09-01");
    let elsewhere = s.folder.path().with_extension("elsewhere");
    fs::rename(s.folder.path(), &elsewhere).unwrap();
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    assert_eq!(s.shown().trouble, Some(FolderTrouble::Away));
    assert_eq!(settle(&s.desk).trouble, Some(FolderTrouble::Away));

    // The place of a drive that is away: the folder is there and empty. Nothing is left in it.
    fs::create_dir(s.folder.path()).unwrap();
    visit(&s.tablet);
    assert_eq!(s.shown().trouble, Some(FolderTrouble::NoPack));
    assert!(s.names().is_empty());
    fs::remove_dir(s.folder.path()).unwrap();
    fs::rename(&elsewhere, s.folder.path()).unwrap();
    let mode = |mode| {
        fs::set_permissions(s.folder.path(), fs::Permissions::from_mode(mode)).unwrap();
    };
    mode(0o555);
    visit(&s.tablet);
    let refused = fs::write(s.at("probe"), "").is_err();
    mode(0o755);
    if refused {
        assert_eq!(s.shown().trouble, Some(FolderTrouble::ReadOnly));
    } else {
        println!("the read-only folder was left out: root may write everywhere");
    }
    visit(&s.tablet);
    assert_eq!(s.shown().trouble, None);
    s.one("sfhandin");
}

#[test]
fn a_student_is_told_after_three_school_days_and_the_hand_in_by_hand_ends_it() {
    let mut s = shared("2026-09-03");
    visit(&s.tablet);
    s.tablet
        .hands
        .weather
        .turns(Some(FolderFault::Fails(ErrorKind::NotFound)));
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    assert!(visit(&s.tablet).late.is_empty());
    // Friday, then a closure on Monday: two school days.
    for (today, late) in [("2026-09-04", 0), ("2026-09-08", 0), ("2026-09-09", 1)] {
        s.tablet.to(today);
        assert_eq!(visit(&s.tablet).late.len(), late, "{today}");
    }
    hand_in(&s.tablet, &s.sky);
    assert!(visit(&s.tablet).late.is_empty());
    s.tablet.hands.weather.turns(None);
    visit(&s.tablet);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].new_entries, 1);
}

#[test]
fn unfinished_files_are_left_alone_and_half_a_file_loses_nothing() {
    let s = shared("2026-09-01");
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    let whole = fs::read(hand_in(&s.tablet, &s.sky)).unwrap();
    for name in [
        ".hand-in.sfhandin.x7",
        ".a.sfhandin",
        "~a.sfhandin",
        "a.sfhandin.part",
        "b.tmp",
    ] {
        fs::write(s.at(name), &whole).unwrap();
    }
    fs::write(s.at("empty.sfhandin"), b"").unwrap();
    settle(&s.desk);
    assert_eq!(s.imports(), 0);
    // Half of it comes, and rests. Then the rest comes, with the time of the first half.
    let at = s.at("late.sfhandin");
    fs::write(&at, &whole[..whole.len() / 2]).unwrap();
    settle(&s.desk);
    assert!(matches!(
        s.last_import().files[0].verdict,
        Verdict::Refused { .. }
    ));
    let time = fs::metadata(&at).unwrap().modified().unwrap();
    fs::write(&at, &whole).unwrap();
    let file = fs::File::options().append(true).open(&at).unwrap();
    file.set_modified(time).unwrap();
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].verdict, Verdict::New);

    // Half a pack changes nothing on the tablet; the whole one is taken.
    s.close_on("2026-09-03");
    settle(&s.desk);
    let pack = s.one("sfclass");
    let whole = fs::read(&pack).unwrap();
    fs::write(&pack, &whole[..300]).unwrap();
    assert!(visit(&s.tablet).took_pack.is_empty());
    fs::write(&pack, &whole).unwrap();
    assert_eq!(visit(&s.tablet).took_pack, [s.sky.as_str()]);
}

#[test]
fn copies_with_changed_names_are_read_and_only_what_is_contained_goes() {
    let s = shared("2026-09-01");
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    let usual = s.one("sfhandin");
    let stem = usual.file_stem().unwrap().to_str().unwrap().to_owned();
    let older = fs::read(&usual).unwrap();
    let copies = [
        format!("{stem} (1).sfhandin"),
        format!("{stem} (conflicted copy 2026-09-01).sfhandin"),
        format!("{stem}-DESKTOP-7.sfhandin"),
    ];
    for copy in &copies {
        fs::write(s.at(copy), &older).unwrap();
    }
    let pack = s.one("sfclass");
    let old_pack = fs::read(&pack).unwrap();
    fs::write(s.at("class-pack (2).sfclass"), &old_pack).unwrap();
    let foreign = [
        "of somebody else.sfclass",
        &format!("{stem} (9).sfhandin"),
        "notes.txt",
    ];
    for name in foreign {
        fs::write(s.at(name), b"not ours").unwrap();
    }
    settle(&s.desk);
    settle(&s.desk);
    let left = s.names();
    assert!(copies.iter().all(|copy| !left.contains(copy)), "{left:?}");
    assert!(
        !left.iter().any(|name| name == "class-pack (2).sfclass"),
        "{left:?}"
    );
    for name in foreign {
        assert!(left.iter().any(|there| there == name), "{name} is gone");
    }

    // A copy that has more than the file with the usual name stays, and is read.
    rate(&s.tablet, &s.sky, Confidence::NotYet);
    let newer = fs::read(hand_in(&s.tablet, &s.sky)).unwrap();
    fs::write(s.at(&copies[0]), &newer).unwrap();
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].verdict, Verdict::Updated);
    assert!(s.names().contains(&copies[0]));
    // Once the tablet left its own, it goes.
    visit(&s.tablet);
    settle(&s.desk);
    settle(&s.desk);
    assert!(!s.names().contains(&copies[0]), "{:?}", s.names());
    assert!(usual.is_file() && s.at(foreign[1]).is_file());
}

#[test]
fn an_older_an_equal_and_a_foreign_pack_change_nothing_and_are_told_on_request_only() {
    let s = shared("2026-09-01");
    let pack = s.one("sfclass");
    let first = fs::read(&pack).unwrap();
    s.close_on("2026-09-03");
    settle(&s.desk);
    assert_eq!(visit(&s.tablet).took_pack.len(), 1);
    let second = fs::read(&pack).unwrap();
    let other = Device::on("2026-09-01");
    let other_class = other.new_class("Room 7 (invented)", &["Dana"]).id;
    let foreign = fs::read(other.pack_of(&other_class)).unwrap();
    for bytes in [&first, &second, &foreign] {
        fs::write(&pack, bytes).unwrap();
        fs::write(s.at("again.sfclass"), bytes).unwrap();
        let visited = visit(&s.tablet);
        assert!(visited.took_pack.is_empty() && visited.late.is_empty());
    }
    assert_eq!(s.shown().other_packs, 2);
    assert_eq!(s.shown().trouble, Some(FolderTrouble::NoPack));
    // The desk puts its own back.
    settle(&s.desk);
    assert_ne!(fs::read(&pack).unwrap(), foreign);
    visit(&s.tablet);
    assert_eq!((s.shown().other_packs, s.shown().trouble), (1, None));
    assert!(
        s.at("again.sfclass").is_file(),
        "the desk removed what is not its own"
    );
}

#[test]
fn every_child_of_a_device_hands_in_for_itself_also_behind_a_pin() {
    let mut s = shared("2026-09-01");
    // Joined by hand: the folder of the class is known already.
    let pack = s.one("sfclass");
    let code = seat_code(&s.desk, &s.class, 1);
    let bo = s.tablet.join(&pack, &code, "Bo").unwrap().id;
    let new = NewPin {
        student: bo.clone(),
        pin: "4711".into(),
        pin_signs: pin_signs(&s.desk, &s.class, 1),
        seat_code: Some(code),
    };
    s.tablet.app.student.set_pin(new).unwrap();
    for student in [&s.sky, &bo] {
        rate(&s.tablet, student, Confidence::OnMyOwn);
    }
    // Bo's screens are locked after a new start.
    s.tablet.to("2026-09-01");
    let locked = s.tablet.app.student.hand_in_preview(StudentId {
        student: bo.clone(),
    });
    assert_eq!(locked.unwrap_err(), CallError::Locked);
    s.close_on("2026-09-03");
    settle(&s.desk);
    let mut both = vec![s.sky.clone(), bo.clone()];
    both.sort();
    assert_eq!(visit(&s.tablet).took_pack, both);
    settle(&s.desk);
    let mut seats: Vec<_> = s.last_import().files.iter().map(|file| file.seat).collect();
    seats.sort_unstable();
    assert_eq!(seats, [Some(1), Some(2)]);
    // A student who is removed leaves no note.
    let asked = surefoot_app::RemoveStudent {
        student: s.sky.clone(),
    };
    s.tablet.app.device.remove_student(asked).unwrap();
    let note = s.tablet.folder.path().join("data/shown-folders.json");
    assert!(!fs::read_to_string(note).unwrap().contains(&s.sky));
}

#[test]
fn nothing_is_taken_while_the_desk_is_locked_and_everything_afterwards() {
    let s = shared("2026-09-01");
    let words = "seven quiet rivers";
    let lock = NewDeskLock {
        current: None,
        passphrase: Some(words.into()),
    };
    s.desk.app.device.set_desk_lock(lock).unwrap();
    settle(&s.desk);
    s.desk.app.device.lock_desk(Nothing {}).unwrap();
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    for _ in 0..20 {
        let refused = s.desk.app.desk.class_folder(Nothing {}).unwrap_err();
        assert_eq!(refused, CallError::DeskLocked);
        wait();
    }
    let passphrase = surefoot_app::DeskPassphrase {
        passphrase: words.into(),
    };
    s.desk.app.device.unlock_desk(passphrase).unwrap();
    assert_eq!(s.imports(), 0);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].verdict, Verdict::New);
}

#[test]
fn a_clock_of_another_year_loses_nothing_and_no_file_shows_a_time_of_day() {
    let mut s = shared("2026-09-01");
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    let seconds = |path: &Path| {
        let time = fs::metadata(path).unwrap().modified().unwrap();
        time.duration_since(SystemTime::UNIX_EPOCH)
            .unwrap()
            .as_secs()
    };
    let day = 24 * 60 * 60;
    let noon = |on: &str| {
        let days = (date(on) - date("1970-01-01")).num_days();
        u64::try_from(days).unwrap() * day + day / 2
    };
    for path in [s.one("sfhandin"), s.one("sfclass")] {
        let hour = noon("2026-09-01")..noon("2026-09-01") + 60 * 60;
        assert!(hour.contains(&seconds(&path)));
    }
    settle(&s.desk);
    s.tablet.to("2099-01-01");
    visit(&s.tablet);
    s.tablet.to("2026-09-02");
    rate(&s.tablet, &s.sky, Confidence::NotYet);
    visit(&s.tablet);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].new_entries, 1);
    // The desk is a day behind.
    s.desk.to("2026-09-01");
    s.tablet.to("2026-09-03");
    rate(&s.tablet, &s.sky, Confidence::WithHelp);
    visit(&s.tablet);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].new_entries, 1);
}

#[test]
fn a_hand_in_that_somebody_removed_or_overwrote_is_left_again() {
    let mut s = shared("2026-09-01");
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    let at = s.one("sfhandin");
    fs::remove_file(&at).unwrap();
    visit(&s.tablet);
    assert!(at.is_file());
    s.tablet.to("2026-09-02");
    visit(&s.tablet);
    fs::write(&at, b"of a classmate").unwrap();
    visit(&s.tablet);
    assert!(fs::metadata(&at).unwrap().len() > 1000);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].verdict, Verdict::New);
    // A second time on one day it stays as it is, so that two programs do not write for ever.
    fs::write(&at, b"of a classmate").unwrap();
    visit(&s.tablet);
    assert_eq!(fs::read(&at).unwrap(), b"of a classmate");
    s.tablet.to("2026-09-03");
    visit(&s.tablet);
    assert!(fs::metadata(&at).unwrap().len() > 1000);
}

#[test]
fn the_desk_knows_with_which_pack_a_device_handed_in_last() {
    let mut s = shared("2026-09-01");
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    settle(&s.desk);
    s.close_on("2026-09-03");
    s.desk.to("2026-09-02");
    settle(&s.desk);
    let path = s.desk.folder.path().join("data/own/desk.sqlite");
    let read = || {
        let store =
            surefoot_store::DeskStore::open(&path, surefoot_store::Durability::Full).unwrap();
        let class = surefoot_desk::open_class(&store, &s.class).unwrap();
        let newest = store.newest_hand_ins(&s.class).unwrap();
        let mut newest = newest.into_values();
        let last = newest.next().unwrap();
        assert!(newest.next().is_none(), "one device has handed in");
        (last, class.row.pack_version)
    };
    let (before, version) = read();
    assert_eq!(before.made_on, date("2026-09-01"));
    assert!(before.pack_version < version);
    s.tablet.to("2026-09-02");
    visit(&s.tablet);
    rate(&s.tablet, &s.sky, Confidence::NotYet);
    visit(&s.tablet);
    settle(&s.desk);
    let (after, version) = read();
    assert_eq!(
        (after.pack_version, after.made_on),
        (version, date("2026-09-02"))
    );
}

#[test]
fn the_folder_is_off_until_it_is_named_and_off_again_in_the_next_pack() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    assert_eq!(desk.app.desk.class_folder(Nothing {}).unwrap().folder, None);
    let student = StudentId {
        student: sky.clone(),
    };
    assert!(
        !tablet
            .app
            .student
            .shown_folder(student.clone())
            .unwrap()
            .offered
    );
    let folder = tempfile::tempdir().unwrap();
    desk.hands.will_pick(folder.path());
    desk.app.desk.name_class_folder(Nothing {}).unwrap();
    settle(&desk);
    // The pack in the folder says so. The tablet learns it by hand, and is shown the folder once.
    let pack = fs::read_dir(folder.path())
        .unwrap()
        .next()
        .unwrap()
        .unwrap()
        .path();
    tablet.hands.will_pick(&pack);
    tablet.app.student.take_class_pack(student.clone()).unwrap();
    assert!(
        tablet
            .app
            .student
            .shown_folder(student.clone())
            .unwrap()
            .offered
    );
    tablet.hands.will_pick(folder.path());
    let shown = tablet.app.student.show_folder(student.clone()).unwrap();
    assert!(shown.folder.is_some());
    rate(&tablet, &sky, Confidence::OnMyOwn);
    visit(&tablet);
    settle(&desk);
    assert_eq!(
        desk.app.desk.stop_class_folder(Nothing {}).unwrap().folder,
        None
    );
    let id = RenameClass {
        class: class.clone(),
        title: "Room 8 (invented)".into(),
    };
    desk.app.desk.rename_class(id).unwrap();
    tablet.hands.will_pick(&desk.pack_of(&class));
    tablet.app.student.take_class_pack(student.clone()).unwrap();
    assert!(
        !tablet
            .app
            .student
            .shown_folder(student.clone())
            .unwrap()
            .offered
    );
    rate(&tablet, &sky, Confidence::NotYet);
    let before = fs::read_dir(folder.path()).unwrap().count();
    assert!(!visit(&tablet).busy);
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), before);
    assert_eq!(
        rating(&tablet, &sky, "2026-09-01"),
        Some(Confidence::NotYet)
    );
    let shown = tablet.app.student.stop_shown_folder(student).unwrap();
    assert_eq!(shown.folder, None);
}

/// Waits until something holds, while the desk and the tablet look at the folder.
pub fn until(s: &Shared, what: &str, holds: impl Fn() -> bool) {
    for _ in 0..MOST_CALLS {
        let state = s.desk.app.desk.class_folder(Nothing {}).unwrap();
        if let Some(job) = state.job {
            s.desk.finish(job);
        }
        let asked = VisitAsked { done: true };
        s.tablet.app.student.visit_folders(asked).unwrap();
        if holds() {
            return;
        }
        std::thread::sleep(Duration::from_millis(50));
    }
    panic!("{what}");
}

#[test]
fn too_many_files_are_told_and_hide_no_pack_and_no_hand_in_of_a_device() {
    const MANY: usize = 20_001;
    let s = shared("2026-09-01");
    let pack = fs::read(s.one("sfclass")).unwrap();
    let trouble = || s.desk.app.desk.class_folder(Nothing {}).unwrap().trouble;
    for number in 0..MANY {
        fs::write(s.at(&format!("a{number}.zip")), "").unwrap();
    }
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    until(&s, "it is told", || {
        trouble() == Some(FolderTrouble::TooMany)
    });
    until(&s, "the hand-in comes", || s.imports() == 1);
    assert_eq!((s.shown().trouble, s.shown().waiting), (None, false));
    assert_eq!(fs::read(s.one("sfclass")).unwrap(), pack);
    // Files with other names do not count.
    for number in 0..MANY {
        let name = |end| s.at(&format!("a{number}.{end}"));
        fs::rename(name("zip"), name("txt")).unwrap();
    }
    until(&s, "it is over", || trouble().is_none());
    assert_eq!(fs::read(s.one("sfclass")).unwrap(), pack);
}

#[test]
fn a_pack_that_somebody_removes_is_put_again_as_it_was() {
    let s = shared("2026-09-01");
    let at = s.one("sfclass");
    let pack = fs::read(&at).unwrap();
    for _ in 0..3 {
        fs::remove_file(&at).unwrap();
        until(&s, "the pack comes again", || at.is_file());
        assert_eq!(fs::read(&at).unwrap(), pack);
    }
    // A change still makes a newer one.
    s.close_on("2026-09-03");
    settle(&s.desk);
    assert_eq!(visit(&s.tablet).took_pack, [s.sky.as_str()]);
}

#[test]
fn folders_with_the_names_of_files_stop_nothing_that_can_go_elsewhere_and_are_told() {
    let s = shared("2026-09-01");
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    settle(&s.desk);
    let (hand_in, pack) = (s.one("sfhandin"), s.one("sfclass"));
    let part = |of: &Path| s.at(&format!(".{}.part", of.file_name().unwrap().display()));
    for way in [part(&hand_in), part(&pack)] {
        fs::create_dir_all(way.join("full")).unwrap();
    }
    s.close_on("2026-09-03");
    settle(&s.desk);
    assert_eq!(visit(&s.tablet).took_pack, [s.sky.as_str()]);
    fs::remove_file(&hand_in).unwrap();
    fs::create_dir_all(hand_in.join("full")).unwrap();
    rate(&s.tablet, &s.sky, Confidence::NotYet);
    visit(&s.tablet);
    assert_eq!((s.shown().trouble, s.shown().waiting), (None, false));
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].verdict, Verdict::Updated);

    fs::remove_file(&pack).unwrap();
    fs::create_dir_all(pack.join("full")).unwrap();
    let trouble = || s.desk.app.desk.class_folder(Nothing {}).unwrap().trouble;
    until(&s, "it is told", || {
        trouble() == Some(FolderTrouble::InTheWay)
    });
    fs::remove_dir_all(&pack).unwrap();
    until(&s, "the pack comes", || pack.is_file());
    until(&s, "it is over", || trouble().is_none());
}

fn change_slip(s: &Shared, pack: u32, seat_code: String, earlier: String) {
    let change = SlipChange {
        student: s.sky.clone(),
        pack,
        seat_code,
        earlier,
    };
    s.tablet.app.student.change_slip(change).unwrap();
}

#[test]
fn after_another_slip_the_hand_in_is_left_for_the_new_seat_and_the_new_class() {
    let mut s = shared("2026-09-01");
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].seat, Some(1));
    // The first slip was somebody else's.
    s.tablet.hands.will_pick(s.folder.path());
    let offers = s.tablet.app.student.pick_shown_folder(Nothing {}).unwrap();
    let pack = offers.unwrap().packs[0].pack;
    let [first, second] = [0, 1].map(|seat| seat_code(&s.desk, &s.class, seat));
    change_slip(&s, pack, second.clone(), first);
    assert!(s.shown().waiting && s.shown().left_on.is_none());
    visit(&s.tablet);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].seat, Some(2));

    // Another class, of another teacher with the same folder.
    let other = Device::on("2026-09-01");
    let class = other.new_class("Room 8 (invented)", &["Dana"]).id;
    other.hands.will_pick(s.folder.path());
    other.app.desk.name_class_folder(Nothing {}).unwrap();
    settle(&other);
    s.tablet.hands.will_pick(&other.pack_of(&class));
    let offer = s.tablet.app.student.pick_class_pack(Nothing {}).unwrap();
    let away = FolderFault::Fails(ErrorKind::NotFound);
    s.tablet.hands.weather.turns(Some(away));
    let new = seat_code(&other, &class, 0);
    change_slip(&s, offer.unwrap().pack, new, second);
    assert_eq!(s.shown().folder.as_deref(), s.folder.path().to_str());
    assert!(s.shown().waiting && visit(&s.tablet).late.is_empty());
    s.tablet.to("2026-09-09");
    assert_eq!(visit(&s.tablet).late, [s.sky.as_str()]);
    s.tablet.hands.weather.turns(None);
    assert!(visit(&s.tablet).late.is_empty() && !s.shown().waiting);
    settle(&other);
    let asked = JournalAsked { before: None };
    let last = other.app.desk.imports(asked).unwrap().imports.remove(0);
    let new = (last.files.iter()).find(|file| file.verdict == Verdict::New);
    assert_eq!(new.unwrap().seat, Some(1));

    // The earlier desk misses nothing, also if the new file comes under the name of the old one.
    let names: Vec<_> = (s.names().into_iter())
        .filter(|name| name.ends_with("sfhandin"))
        .collect();
    assert_eq!(names.len(), 2, "nothing links the two: {names:?}");
    let whole = names.iter().map(|name| fs::read(s.at(name)).unwrap());
    for (name, whole) in names.iter().zip(whole.collect::<Vec<_>>().iter().rev()) {
        fs::write(s.at(name), whole).unwrap();
    }
    settle(&s.desk);
    assert!(matches!(
        s.last_import().files[0].verdict,
        Verdict::Refused { .. }
    ));
    let asked = WhoHasNotAsked {
        class: s.class.clone(),
        school_days: 5,
    };
    let lacking = s.desk.app.desk.who_has_not(asked).unwrap().lacking;
    let damaged = |lacking: &Lacking| matches!(lacking.what, LackingKind::Damaged { .. });
    assert!(!lacking.iter().any(damaged), "{lacking:?}");
}
