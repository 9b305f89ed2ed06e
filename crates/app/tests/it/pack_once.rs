//! A class pack is verified once for each opening of a student's store, and a change in the
//! store shows at once.

use crate::support::{Device, class_and_tablet, rate};
use surefoot_app::{
    ClassId, CopyKind, Language, NewStudentSettings, Nothing, PracticeAsked, RenameClass,
    RestoreCopy, StoreName, StudentId,
};
use surefoot_catalogue::rating::Confidence;
use surefoot_record::Appearance;
use surefoot_store::{Durability, StudentStore};
use surefoot_student::Wishes;
use surefoot_student::for_tests::packs_read;

fn minutes(tablet: &Device, student: &str) -> u32 {
    let id = StudentId {
        student: student.into(),
    };
    tablet.app.student.student_settings(id).unwrap().minutes
}

fn set_minutes(tablet: &Device, student: &str, minutes: u32) {
    let new = NewStudentSettings {
        student: student.into(),
        language: Language::first(),
        minutes,
        exercises: None,
        evenings: 5,
        appearance: Appearance::default(),
    };
    tablet.app.student.save_student_settings(new).unwrap();
}

fn title(tablet: &Device) -> String {
    let start = tablet.app.device.start(Nothing {}).unwrap();
    start.students[0].class_title.clone()
}

/// The class pack after the class got another title.
fn renamed_pack(desk: &Device, class: &str, title: &str) -> std::path::PathBuf {
    let new = RenameClass {
        class: class.into(),
        title: title.into(),
    };
    desk.app.desk.rename_class(new).unwrap();
    desk.pack_of(class)
}

/// The store of a student as another window or another program opens it.
fn other_window(tablet: &Device, student: &str) -> StudentStore {
    let data = tablet.folder.path().join("data/own/students");
    StudentStore::open(&data.join(format!("{student}.sqlite")), Durability::Full).unwrap()
}

#[test]
fn a_tap_does_not_open_the_pack() {
    let (_desk, _class, mut tablet, student) = class_and_tablet("2026-09-01");
    tablet.to("2026-09-02");
    let before = packs_read();
    rate(&tablet, &student, Confidence::NotYet);
    assert_eq!(packs_read(), before + 1, "the opening");
    for confidence in Confidence::ALL.into_iter().cycle().take(20) {
        rate(&tablet, &student, confidence);
    }
    let asked = PracticeAsked {
        student: student.clone(),
        concept: None,
        more: false,
    };
    tablet.app.student.practice(asked).unwrap();
    tablet.app.device.start(Nothing {}).unwrap();
    assert_eq!(packs_read(), before + 1, "no call after it");
}

#[test]
fn a_newer_pack_and_a_changed_setting_are_seen_at_once() {
    let (desk, class, tablet, student) = class_and_tablet("2026-09-01");
    assert_eq!(title(&tablet), "Room 7 (invented)");
    set_minutes(&tablet, &student, 5);
    assert_eq!(minutes(&tablet, &student), 5);
    set_minutes(&tablet, &student, 12);
    assert_eq!(minutes(&tablet, &student), 12);
    tablet
        .hands
        .will_pick(&renamed_pack(&desk, &class, "Room 8"));
    let id = StudentId {
        student: student.clone(),
    };
    tablet.app.student.take_class_pack(id).unwrap().unwrap();
    assert_eq!(title(&tablet), "Room 8");
    assert_eq!(minutes(&tablet, &student), 12);
}

#[test]
fn what_another_window_writes_is_seen_at_once() {
    let (desk, class, tablet, student) = class_and_tablet("2026-09-01");
    set_minutes(&tablet, &student, 5);
    let pack = std::fs::read(renamed_pack(&desk, &class, "Room 9")).unwrap();
    let other = other_window(&tablet, &student);
    let joined = surefoot_student::joined(&other).unwrap();
    let wishes = Wishes {
        language: Language::first(),
        minutes: 9,
        exercises: None,
        evenings: 5,
        appearance: Appearance::default(),
    };
    let today = "2026-09-01".parse().unwrap();
    surefoot_student::save_settings(&other, &joined, today, wishes).unwrap();
    assert_eq!(minutes(&tablet, &student), 9);
    surefoot_student::take_class_pack(&other, &joined, today, pack.as_slice()).unwrap();
    assert_eq!(title(&tablet), "Room 9");
    // Another pack with the same version: only SQLite's count of writes shows the change.
    let again = renamed_pack(&desk, &class, "Room 3");
    let version = other.class_pack_mark().unwrap().0.unwrap().0;
    other
        .put_class_pack(version, &std::fs::read(again).unwrap(), today)
        .unwrap();
    assert_eq!(title(&tablet), "Room 3");
}

#[test]
fn a_restored_copy_is_seen_at_once() {
    let (desk, class, mut tablet, student) = class_and_tablet("2026-09-01");
    set_minutes(&tablet, &student, 5);
    tablet.to("2026-09-02");
    assert_eq!(minutes(&tablet, &student), 5, "opened, so copied");
    set_minutes(&tablet, &student, 12);
    tablet
        .hands
        .will_pick(&renamed_pack(&desk, &class, "Room 8"));
    let id = StudentId {
        student: student.clone(),
    };
    tablet.app.student.take_class_pack(id).unwrap();
    assert_eq!(title(&tablet), "Room 8");
    let store = StoreName::Student {
        student: student.clone(),
    };
    let copies = tablet.app.device.copies(store.clone()).unwrap().copies;
    let daily = copies.iter().find(|copy| copy.kind == CopyKind::Daily);
    let name = daily.unwrap().name.clone();
    tablet
        .app
        .device
        .restore_copy(RestoreCopy { store, name })
        .unwrap();
    assert_eq!(minutes(&tablet, &student), 5);
    assert_eq!(title(&tablet), "Room 7 (invented)");
    assert!(desk.app.desk.class_setup(ClassId { class }).is_ok());
}
