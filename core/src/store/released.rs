//! Every released schema, as a store that the program of that time had filled:
//! it opens today with everything in it, and a copy of it was made before.

use super::desk::DeskStore;
use super::student::{self as store_kind, StudentStore};
use super::{Durability, desk};
use crate::catalogue::Language;
use crate::exchange::{CARRY_CAPS, open_carry, seal_carry};
use crate::student as use_cases;
use crate::student::views::{DecimalSign, Goal, StudentLook, StudentTheme};
use crate::teacher;
use chrono::NaiveDate;
use rusqlite::Connection;
use std::path::{Path, PathBuf};

/// By schema, from 1.
const STUDENT: &[&str] = &[
    include_str!("fixtures/student_1.sql"),
    include_str!("fixtures/student_2.sql"),
    include_str!("fixtures/student_3.sql"),
];
const DESK: &[&str] = &[
    include_str!("fixtures/desk_1.sql"),
    include_str!("fixtures/desk_2.sql"),
    include_str!("fixtures/desk_3.sql"),
];

fn laid_out(folder: &Path, name: &str, text: &str) -> PathBuf {
    let path = folder.join(name);
    let store = Connection::open(&path).unwrap();
    store.execute_batch(text).unwrap();
    path
}

fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

#[test]
fn every_schema_before_todays_has_its_fixture() {
    assert!(STUDENT.len() + 1 >= store_kind::MIGRATIONS.len());
    assert!(DESK.len() + 1 >= desk::MIGRATIONS.len());
}

#[test]
fn a_students_store_of_every_schema_opens_with_everything_in_it() {
    for (place, text) in STUDENT.iter().enumerate() {
        let folder = tempfile::tempdir().unwrap();
        let path = laid_out(folder.path(), "a.sqlite", text);
        let store = StudentStore::open(&path, Durability::Full).unwrap();
        let joined = use_cases::joined(&store).unwrap();
        assert_eq!(joined.student.nickname, "Fatou");
        assert_eq!(joined.student.picture, "fox");
        assert_eq!(joined.student.minutes, 8);
        assert_eq!(joined.pack.version, 1);
        let check_ins = store.check_ins().unwrap();
        assert_eq!(
            check_ins
                .iter()
                .map(|e| &e.device)
                .collect::<std::collections::BTreeSet<_>>()
                .len(),
            1
        );
        assert_eq!(store.practice_answers().unwrap().len(), 20);
        assert_eq!(store.last_hand_in().unwrap().unwrap().revision, 1);
        if place == 0 {
            assert!(store.pin().unwrap().is_none());
        } else {
            assert!(use_cases::try_pin(&store, "4071").unwrap());
            assert_eq!(joined.student.language, Language::Es);
            assert_eq!(joined.student.evenings, 4);
            assert_eq!(store.focus().unwrap().len(), 2);
            let open = store.open_exercise().unwrap().unwrap();
            assert_eq!(open.exercise, "63-2ccb5892ae1cb");
        }
        // What came later stands as if nobody had touched it, and can be written.
        if place < 2 {
            assert_eq!(joined.student.look, StudentLook::default());
            assert!(store.goals().unwrap().is_empty());
        } else {
            let look = StudentLook {
                theme: StudentTheme::Contrast,
                text_percent: 150,
                decimal_sign: DecimalSign::Comma,
                less_motion: true,
                reads_aloud: false,
            };
            assert_eq!(joined.student.look, look);
            let goals = store.goals().unwrap();
            assert_eq!((goals.len(), goals[0].reached), (1, true));
        }
        assert_eq!(joined.student.exercises, None);
        if let Some(open) = store.open_exercise().unwrap() {
            assert_eq!(open.draft, None);
            store.put_draft(Some("{}")).unwrap();
            let again = store.open_exercise().unwrap().unwrap();
            assert_eq!(again.draft.as_deref(), Some("{}"));
        }
        let dark = store_kind::Student {
            exercises: Some(9),
            look: StudentLook {
                theme: StudentTheme::ContrastDark,
                ..joined.student.look
            },
            ..joined.student.clone()
        };
        store.put_student(&dark).unwrap();
        assert!(store.student().unwrap().unwrap() == dark);
        let goals = [Goal {
            words: "Know my sevens".into(),
            reached: false,
        }];
        use_cases::set_goals(&store, &goals).unwrap();
        assert_eq!(store.goals().unwrap(), goals);
        // All 42 taps are there; the last of each concept and day counts.
        let taps: i64 = Connection::open(&path)
            .unwrap()
            .query_row("SELECT count(*) FROM check_in", [], |row| row.get(0))
            .unwrap();
        assert_eq!(taps, 42);
        assert!(!check_ins.is_empty() && check_ins.len() <= 42);
        // What is done from now on goes behind it, and it can be handed in.
        use_cases::set_pin(&store, "4071", [1; 16]).unwrap();
        let made = use_cases::make_hand_in(&store, &joined, day("2026-09-09")).unwrap();
        assert_eq!((made.check_ins, made.answers), (check_ins.len(), 20));
        drop(store);
        StudentStore::check_file(&path).unwrap();
        let copy = folder.path().join(format!("a.sqlite.before-{}", place + 2));
        if place + 1 < store_kind::MIGRATIONS.len() {
            StudentStore::check_file(&copy).unwrap();
            let looked = StudentStore::open_to_look(&copy).unwrap();
            assert_eq!(looked.nickname().unwrap().unwrap(), "Fatou");
        }
    }
}

#[test]
fn a_desk_of_every_schema_opens_with_everything_in_it() {
    for text in DESK {
        let folder = tempfile::tempdir().unwrap();
        let path = laid_out(folder.path(), "desk.sqlite", text);
        let desk = DeskStore::open(&path, Durability::Full).unwrap();
        let today = day("2026-09-09");
        let classes = teacher::classes(&desk, today).unwrap();
        assert_eq!(classes.len(), 1);
        assert_eq!(classes[0].seats, 2);
        assert_eq!(classes[0].seats_joined, 2);
        let class = teacher::open_class(&desk, &classes[0].id).unwrap();
        let board = teacher::board(&desk, &class, crate::catalogue::Language::En, today).unwrap();
        assert_eq!(board.seats_reporting, 2);
        assert_eq!(teacher::imports(&desk).unwrap()[0].files.len(), 2);
        assert_eq!(desk.check_ins(&class.row.id).unwrap().len(), 60);
        // The reports can still be derived from the hand-ins kept.
        teacher::undo_import(&desk).unwrap();
        assert!(desk.check_ins(&class.row.id).unwrap().is_empty());
        drop(desk);
        DeskStore::check_file(&path).unwrap();
    }
}

/// A carry file as the program of each body's version wrote it opens with what it holds.
#[test]
fn a_carry_file_of_every_body_is_taken() {
    let folder = tempfile::tempdir().unwrap();
    let path = laid_out(folder.path(), "a.sqlite", STUDENT[2]);
    let store = StudentStore::open(&path, Durability::Full).unwrap();
    let mut me = store.student().unwrap().unwrap();
    me.exercises = Some(9);
    store.put_student(&me).unwrap();
    let joined = use_cases::joined(&store).unwrap();
    let today = day("2026-09-09");
    let words = "seven quiet rivers";
    let made = use_cases::make_carry(&store, &joined, today, words).unwrap();
    let newest = open_carry(made.as_slice(), words, &CARRY_CAPS).unwrap();
    // What each version did not have yet.
    let since: [&[&str]; 3] = [&["look", "goals", "exercises"], &["exercises"], &[]];
    for (place, missing) in since.into_iter().enumerate() {
        let mut carry = newest.clone();
        carry.store.version = u32::try_from(place).unwrap() + 1;
        let body = carry.store.body.as_object_mut().unwrap();
        for name in missing {
            assert!(body.remove(*name).is_some(), "{name}");
        }
        let bytes = seal_carry(&carry, words).unwrap();
        let carried = use_cases::read_carry(&bytes, words).unwrap();
        let other = folder.path().join(format!("{place}.sqlite"));
        let second = StudentStore::open(&other, Durability::Full).unwrap();
        use_cases::take_carry(&second, None, &carried, &[7; 16], today).unwrap();
        let taken = use_cases::joined(&second).unwrap().student;
        assert_eq!((taken.nickname.as_str(), taken.minutes), ("Fatou", 8));
        assert_eq!(taken.exercises, (place == 2).then_some(9));
        assert_eq!(taken.look == joined.student.look, place > 0);
        assert_eq!(second.goals().unwrap().len(), usize::from(place > 0));
        assert_eq!(second.practice_answers().unwrap().len(), 20);
    }
}
