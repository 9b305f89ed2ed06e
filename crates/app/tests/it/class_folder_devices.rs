//! A class folder with several students, classes or desks, and with files of a classmate.

use crate::class_folder::{Shared, join_from, settle, shared, until, visit};
use crate::support::{Device, date, rate, seat_code};
use std::fs;
use std::path::{Path, PathBuf};
use surefoot_app::{
    CallError, ClassId, ClassKeyAsked, FolderCode, Join, JournalAsked, Nothing, OpenSealed,
    ShownFolder, StudentId, VisitAsked, WhoHasNotAsked,
};
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::Confidence;
use surefoot_desk::{LackingKind, WhoHasNot};
use surefoot_exchange::SeatCodeError;
use tempfile::TempDir;

fn shown(device: &Device, student: &str) -> ShownFolder {
    let student = student.to_owned();
    (device.app.student.shown_folder(StudentId { student })).unwrap()
}

fn hand_ins(folder: &Path) -> Vec<PathBuf> {
    let mut found: Vec<PathBuf> = (fs::read_dir(folder).unwrap())
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|end| end == "sfhandin"))
        .collect();
    found.sort();
    found
}

fn who_has_not(s: &Shared) -> WhoHasNot {
    let asked = WhoHasNotAsked {
        class: s.class.clone(),
        school_days: 5,
    };
    s.desk.app.desk.who_has_not(asked).unwrap()
}

/// A folder with a copy of the class pack, as a classmate may make one.
fn copy_of(s: &Shared) -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    let pack = s.one("sfclass");
    fs::copy(&pack, folder.path().join(pack.file_name().unwrap())).unwrap();
    folder
}

/// Overwrites a file with junk of the same size and time.
fn replace(path: &Path) {
    let about = fs::metadata(path).unwrap();
    let junk = vec![b'x'; usize::try_from(about.len()).unwrap()];
    fs::write(path, junk).unwrap();
    let file = fs::File::options().append(true).open(path).unwrap();
    file.set_modified(about.modified().unwrap()).unwrap();
}

#[test]
fn a_device_that_only_took_a_pack_tells_the_desk() {
    let s = shared("2026-09-01");
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    settle(&s.desk);
    let unaware = || {
        let class = s.class.clone();
        let day = s.desk.app.desk.class_day(ClassId { class }).unwrap();
        let seats: Vec<u32> = day.known.unaware.iter().map(|one| one.seat).collect();
        seats
    };
    assert!(unaware().is_empty());
    s.close_on("2026-09-03");
    assert_eq!(unaware(), [1]);
    settle(&s.desk);
    assert_eq!(visit(&s.tablet).took_pack, [s.sky.as_str()]);
    settle(&s.desk);
    assert!(unaware().is_empty());
    let last = s.last_import();
    assert_eq!((last.tally.updated, last.files[0].new_entries), (1, 0));
    assert_eq!(hand_ins(s.folder.path()).len(), 1);
    // Once, not at each visit.
    let imports = s.imports();
    visit(&s.tablet);
    settle(&s.desk);
    assert_eq!(s.imports(), imports);
}

#[test]
fn a_folder_that_one_student_chooses_leads_nobody_else_there() {
    let s = shared("2026-09-01");
    let code = seat_code(&s.desk, &s.class, 1);
    let elsewhere = copy_of(&s);
    // Also not by joining from it.
    let bo = join_from(&s.tablet, elsewhere.path(), &code, "Bo").id;
    let asked = || StudentId {
        student: bo.clone(),
    };
    let path = |folder: &Path| Some(folder.display().to_string());
    assert_eq!(s.shown().folder, path(s.folder.path()));
    assert_eq!(shown(&s.tablet, &bo).folder, path(elsewhere.path()));
    for student in [&s.sky, &bo] {
        rate(&s.tablet, student, Confidence::OnMyOwn);
    }
    visit(&s.tablet);
    assert_eq!(hand_ins(s.folder.path()).len(), 1);
    assert_eq!(hand_ins(elsewhere.path()).len(), 1);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].seat, Some(1));

    // Who stops using it stops it for nobody else, and can use it again.
    let stopped = s.tablet.app.student.stop_shown_folder(asked()).unwrap();
    assert_eq!(
        (stopped.folder, stopped.stopped),
        (None, path(elsewhere.path()))
    );
    assert_eq!(s.shown().folder, path(s.folder.path()));
    let again = s.tablet.app.student.use_shown_folder(asked()).unwrap();
    assert_eq!(
        (again.folder, again.stopped),
        (path(elsewhere.path()), None)
    );

    // The right folder brings the work along.
    s.tablet.hands.will_pick(s.folder.path());
    s.tablet.app.student.show_folder(asked()).unwrap();
    assert!(shown(&s.tablet, &bo).waiting);
    visit(&s.tablet);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].seat, Some(2));
}

#[test]
fn a_student_alone_on_a_device_moves_the_folder_for_who_joins_later() {
    let s = shared("2026-09-01");
    let moved = copy_of(&s);
    s.tablet.hands.will_pick(moved.path());
    let student = s.sky.clone();
    (s.tablet.app.student.show_folder(StudentId { student })).unwrap();
    let code = seat_code(&s.desk, &s.class, 1);
    let bo = s.tablet.join(&s.one("sfclass"), &code, "Bo").unwrap().id;
    assert_eq!(
        shown(&s.tablet, &bo).folder.as_deref(),
        moved.path().to_str()
    );
}

#[test]
fn junk_of_the_size_and_time_of_a_file_is_replaced_by_who_made_it() {
    let s = shared("2026-09-01");
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    settle(&s.desk);
    for path in [s.one("sfclass"), s.one("sfhandin")] {
        let whole = fs::read(&path).unwrap();
        replace(&path);
        until(&s, "it is whole again", || {
            fs::read(&path).unwrap().first() == whole.first()
        });
        settle(&s.desk);
    }
    // It is read at the desk, too.
    visit(&s.tablet);
    settle(&s.desk);
    let lacking = who_has_not(&s).lacking;
    assert!(lacking.is_empty(), "{lacking:?}");
}

#[test]
fn among_packs_of_other_classes_the_seat_code_finds_the_right_one() {
    let s = shared("2026-09-01");
    for number in 0..200 {
        fs::write(s.at(&format!("class-pack-{number}.sfclass")), b"junk").unwrap();
    }
    // A classmate's own classes with the same title, and names that come first.
    let other = Device::on("2026-09-01");
    let mut code_of_other = String::new();
    for number in 0..3 {
        let class = other.new_class("Room 7 (invented)", &["Dana"]).id;
        let pack = fs::read(other.pack_of(&class)).unwrap();
        fs::write(s.at(&format!("class-pack-0{number}.sfclass")), pack).unwrap();
        code_of_other = seat_code(&other, &class, 0);
    }
    let tablet = Device::on("2026-09-01");
    let find = |seat_code: &str| {
        let seat_code = seat_code.to_owned();
        tablet.app.student.pack_for_code(FolderCode { seat_code })
    };
    let code = seat_code(&s.desk, &s.class, 1);
    assert!(matches!(find(&code), Err(CallError::NotFound { .. })));
    tablet.hands.will_pick(s.folder.path());
    let offers = tablet.app.student.pick_shown_folder(Nothing {}).unwrap();
    assert_eq!(offers.unwrap().packs.len(), 2);
    let found = find(&code).unwrap();
    let join = Join {
        pack: found.offer.pack,
        seat_code: code.clone(),
        nickname: "Bo".into(),
        avatar: "fox".into(),
        language: Language::first(),
        beside: false,
    };
    let bo = tablet.app.student.join(join).unwrap();
    assert_eq!(find(&code).unwrap().joined, [bo]);
    assert!(find(&code_of_other).is_ok());
    let nowhere = Device::on("2026-09-01");
    let class = nowhere.new_class("Room 9 (invented)", &["Eli"]).id;
    let of_nobody = find(&seat_code(&nowhere, &class, 0)).unwrap_err();
    let error = SeatCodeError::OtherClass;
    assert_eq!(of_nobody, CallError::SeatCode { error });
}

#[test]
fn junk_that_comes_file_by_file_is_one_import_one_line_and_nothing_to_undo() {
    let s = shared("2026-09-01");
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    settle(&s.desk);
    for number in 0..12 {
        fs::write(s.at(&format!("a{number:02}.sfhandin")), number.to_string()).unwrap();
        settle(&s.desk);
    }
    assert_eq!((s.imports(), s.last_import().tally.refused), (2, 12));
    let lacking = who_has_not(&s).lacking;
    assert!(
        matches!(
            &lacking[..],
            [one] if matches!(one.what, LackingKind::DamagedOfNobody { files: 12, .. })
        ),
        "{lacking:?}"
    );
    let asked = JournalAsked { before: None };
    let journal = s.desk.app.desk.imports(asked).unwrap();
    assert_eq!(journal.undoable.unwrap().files, 1);
    s.desk.app.desk.undo_import(Nothing {}).unwrap();
    let asked = JournalAsked { before: None };
    let journal = s.desk.app.desk.imports(asked).unwrap();
    assert!(journal.undoable.is_none());
    let undone: Vec<bool> = journal.imports.iter().map(|import| import.undone).collect();
    assert_eq!(undone, [false, true]);
}

#[test]
fn a_class_folder_that_the_desk_stopped_using_can_be_used_again() {
    let s = shared("2026-09-01");
    let desk = &s.desk.app.desk;
    let stopped = desk.stop_class_folder(Nothing {}).unwrap();
    let path = Some(s.folder.path().display().to_string());
    assert_eq!((stopped.folder, stopped.stopped), (None, path.clone()));
    assert!(s.one("sfclass").is_file(), "what is in it stays");
    let again = desk.use_class_folder(Nothing {}).unwrap();
    assert_eq!((again.folder, again.stopped), (path, None));
    rate(&s.tablet, &s.sky, Confidence::OnMyOwn);
    visit(&s.tablet);
    settle(&s.desk);
    assert_eq!(s.last_import().files[0].seat, Some(1));
}

#[test]
fn two_desks_with_one_classs_keys_read_one_folder_and_one_of_them_saves_packs() {
    let mut s = shared("2026-09-01");
    let mut second = Device::on("2026-09-01");
    let passphrase = "seven quiet rivers".to_owned();
    let take_key = |from: &Device, to: &Device, hand_over: bool| {
        let key = ClassKeyAsked {
            class: s.class.clone(),
            passphrase: passphrase.clone(),
            hand_over,
        };
        let key = from.app.desk.export_class(key).unwrap().file_name;
        to.hands.will_pick(&from.hands.saved.join(key));
        let picked = to
            .app
            .desk
            .pick_class_key(Nothing {})
            .unwrap()
            .unwrap()
            .picked;
        let passphrase = passphrase.clone();
        (to.app.desk.import_class(OpenSealed { picked, passphrase })).unwrap();
    };
    take_key(&s.desk, &second, false);
    second.hands.will_pick(s.folder.path());
    second.app.desk.name_class_folder(Nothing {}).unwrap();
    let pack = fs::read(s.one("sfclass")).unwrap();
    for (day, confidence) in [
        ("2026-09-01", Confidence::OnMyOwn),
        ("2026-09-02", Confidence::NotYet),
        ("2026-09-03", Confidence::WithHelp),
    ] {
        for device in [&mut s.desk, &mut s.tablet, &mut second] {
            device.to(day);
        }
        rate(&s.tablet, &s.sky, confidence);
        visit(&s.tablet);
        settle(&s.desk);
        settle(&second);
        let board = |desk: &Device| {
            let class = s.class.clone();
            serde_json::to_value(desk.app.desk.board(ClassId { class }).unwrap()).unwrap()
        };
        assert_eq!(board(&s.desk), board(&second), "{day}");
        assert_eq!(fs::read(s.one("sfclass")).unwrap(), pack, "{day}");
        assert_eq!(hand_ins(s.folder.path()).len(), 1);
    }
    // A day without school, said by the one that saves the packs, reaches the tablet.
    s.close_on("2026-09-04");
    settle(&s.desk);
    settle(&second);
    assert_eq!(visit(&s.tablet).took_pack, [s.sky.as_str()]);
    let said_by_first = fs::read(s.one("sfclass")).unwrap();

    // The second takes over; the first one's changes stay with it.
    take_key(&s.desk, &second, true);
    for _ in 0..3 {
        settle(&s.desk);
        settle(&second);
    }
    let closures = vec![date("2026-09-07"), date("2026-09-04"), date("2026-09-08")];
    let new = surefoot_app::NewClosures {
        class: s.class.clone(),
        closures,
    };
    second.app.desk.set_closures(new).unwrap();
    for _ in 0..3 {
        settle(&second);
        settle(&s.desk);
    }
    assert_ne!(fs::read(s.one("sfclass")).unwrap(), said_by_first);
    assert_eq!(visit(&s.tablet).took_pack, [s.sky.as_str()]);
    let asked = VisitAsked { done: true };
    let visited = s.tablet.app.student.visit_folders(asked).unwrap();
    assert!(visited.late.is_empty());
    // The first reads on.
    rate(&s.tablet, &s.sky, Confidence::CouldTeach);
    visit(&s.tablet);
    settle(&s.desk);
    assert_eq!(s.last_import().tally.updated, 1);
}
