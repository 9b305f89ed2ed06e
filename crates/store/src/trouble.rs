//! Stores in trouble: told by name, nothing lost.

use super::{Durability, StoreError, StudentStore};
use rusqlite::Connection;
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::Confidence;
use surefoot_record::{CheckIn, DeviceId, Said};

fn event(sequence: u32) -> CheckIn {
    CheckIn {
        device: DeviceId::from_bytes(&[1; 16]),
        date: "2026-09-01".parse().unwrap(),
        concept: ConceptId::new(format!("g4-c-{sequence}")).unwrap(),
        confidence: Some(Said {
            at: sequence,
            value: Some(Confidence::NotYet),
        }),
        outcome: None,
    }
}

#[test]
fn a_missing_folder_is_not_writable() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("gone/a.sqlite");
    assert!(matches!(
        StudentStore::open(&path, Durability::Full),
        Err(StoreError::NotWritable { .. })
    ));
}

#[test]
fn a_store_without_room_says_so_and_keeps_what_it_acknowledged() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.sqlite");
    let store = StudentStore::open(&path, Durability::Full).unwrap();
    // SQLite's own word for a full disk, without filling one.
    let pages: i64 = store
        .connection
        .pragma_query_value(None, "page_count", |row| row.get(0))
        .unwrap();
    store
        .connection
        .pragma_update_and_check(None, "max_page_count", pages + 2, |_| Ok(()))
        .unwrap();
    let mut acknowledged = 0;
    let error = loop {
        match store.add_check_in(&event(acknowledged + 1)) {
            Ok(()) => acknowledged += 1,
            Err(error) => break error,
        }
    };
    assert!(matches!(error, StoreError::Full), "{error:?}");
    assert!(acknowledged > 10);
    drop(store);
    let store = StudentStore::open(&path, Durability::Full).unwrap();
    assert_eq!(store.check_ins().unwrap().len(), acknowledged as usize);
}

#[test]
fn a_second_program_writing_for_long_is_busy_and_nothing_is_lost() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.sqlite");
    let first = StudentStore::open(&path, Durability::Full).unwrap();
    first.add_check_in(&event(1)).unwrap();
    let second = StudentStore::open(&path, Durability::Full).unwrap();
    second
        .connection
        .busy_timeout(std::time::Duration::from_millis(50))
        .unwrap();
    first
        .together(|| -> Result<(), StoreError> {
            first.add_check_in(&event(2))?;
            assert!(matches!(
                second.add_check_in(&event(3)),
                Err(StoreError::Busy)
            ));
            Ok(())
        })
        .unwrap();
    second.add_check_in(&event(3)).unwrap();
    assert_eq!(first.check_ins().unwrap().len(), 3);
}

#[test]
fn damage_is_found_before_anything_is_changed() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.sqlite");
    let store = StudentStore::open(&path, Durability::Full).unwrap();
    for sequence in 1..=200 {
        store.add_check_in(&event(sequence)).unwrap();
    }
    drop(store);
    // The log could replace the damaged pages.
    for log in ["a.sqlite-wal", "a.sqlite-shm"] {
        std::fs::remove_file(folder.path().join(log)).unwrap();
    }
    let whole = std::fs::read(&path).unwrap();
    let mut torn = whole.clone();
    torn.truncate(whole.len() - 4096 * 3);
    let mut scribbled = whole.clone();
    for byte in scribbled.iter_mut().skip(4096 * 2).take(4096 * 4) {
        *byte = 0x5A;
    }
    let text = b"This is no store at all, but some words in a file.".to_vec();
    for (what, bytes) in [("torn", torn), ("scribbled", scribbled), ("text", text)] {
        std::fs::write(&path, &bytes).unwrap();
        let opened = StudentStore::open(&path, Durability::Full);
        assert!(
            matches!(opened, Err(StoreError::Damaged { .. })),
            "{what}: {:?}",
            opened.err()
        );
        assert!(StudentStore::check_file(&path).is_err(), "{what}");
        assert_eq!(std::fs::read(&path).unwrap(), bytes, "{what}");
    }
    let other = folder.path().join("b.sqlite");
    Connection::open(&other)
        .unwrap()
        .execute_batch("CREATE TABLE t(a); PRAGMA application_id = 9; PRAGMA user_version = 1;")
        .unwrap();
    assert!(matches!(
        StudentStore::check_file(&other),
        Err(StoreError::OtherKind)
    ));
}

#[test]
fn a_copy_of_a_store_in_use_is_whole() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.sqlite");
    let store = StudentStore::open(&path, Durability::Full).unwrap();
    store.add_check_in(&event(1)).unwrap();
    let copy = folder.path().join("copy.sqlite");
    store.copy_into(&copy).unwrap();
    store.add_check_in(&event(2)).unwrap();
    StudentStore::check_file(&copy).unwrap();
    assert!(!folder.path().join("copy.sqlite-wal").exists());
    let copied = StudentStore::open_to_look(&copy).unwrap();
    assert_eq!(copied.check_ins().unwrap().len(), 1);
    assert!(copied.add_check_in(&event(3)).is_err());
}
