//! Opening, migrating and copying: what cannot be used is refused by name and unchanged.

use super::check::{StoreKind, nobody_has_open};
use super::store::StoreConnection;
use super::{Durability, Store, StoreError, StudentStore};
use rusqlite::Connection;
use std::collections::BTreeSet;
use std::ffi::{OsStr, OsString};
use std::path::Path;
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
fn a_store_on_a_full_disk_says_so_and_keeps_what_it_acknowledged() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.sqlite");
    let store = StudentStore::open(&path, Durability::Full).unwrap();
    // SQLite then answers as if the disk were full.
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
fn a_write_fails_as_busy_while_another_program_writes_and_nothing_is_lost() {
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
        .transaction(|| -> Result<(), StoreError> {
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
fn a_store_that_another_has_open_is_not_had_alone() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.sqlite");
    let other = StudentStore::open(&path, Durability::Full).unwrap();
    assert!(matches!(nobody_has_open(&path), Err(StoreError::Busy)));
    drop(other);
    nobody_has_open(&path).unwrap();
    let alone = StudentStore::open_alone(&path, Durability::Full).unwrap();
    let second = StudentStore::open(&path, Durability::Full);
    assert!(matches!(second, Err(StoreError::Busy)));
    drop(alone);
    StudentStore::open(&path, Durability::Full).unwrap();
    // An empty or damaged file stays as it is.
    for content in ["", "no store"] {
        std::fs::write(&path, content).unwrap();
        nobody_has_open(&path).unwrap();
        assert_eq!(std::fs::read_to_string(&path).unwrap(), content);
    }
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
    let copied = StudentStore::open_read_only(&copy).unwrap();
    assert_eq!(copied.check_ins().unwrap().len(), 1);
    assert!(copied.add_check_in(&event(3)).is_err());
}

const ONE: &str = "CREATE TABLE line(id INTEGER PRIMARY KEY, words TEXT NOT NULL) STRICT;";
const TWO: &str = "ALTER TABLE line ADD COLUMN lang TEXT NOT NULL DEFAULT 'en';";

/// A kind whose newest schema is version 1.
enum First {}

impl StoreKind for First {
    type State = ();
    const ID: i32 = 7;
    const MIGRATIONS: &'static [&'static str] = &[ONE];
}

/// The same kind in a newer program.
enum Second {}

impl StoreKind for Second {
    type State = ();
    const ID: i32 = 7;
    const MIGRATIONS: &'static [&'static str] = &[ONE, TWO];
}

/// The same kind in a program whose second migration fails halfway.
enum Failing {}

impl StoreKind for Failing {
    type State = ();
    const ID: i32 = 7;
    const MIGRATIONS: &'static [&'static str] = &[
        ONE,
        "CREATE TABLE half(id INTEGER PRIMARY KEY) STRICT; CREATE TABLE line(id INTEGER);",
    ];
}

fn opened<K: StoreKind>(path: &Path) -> Result<StoreConnection, StoreError> {
    Ok(Store::<K>::open(path, Durability::Full)?.connection)
}

fn version(connection: &Connection) -> u32 {
    connection
        .pragma_query_value(None, "user_version", |row| row.get(0))
        .unwrap()
}

#[test]
fn rows_survive_a_migration_and_a_copy_is_made_before() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.sqlite");
    opened::<First>(&path)
        .unwrap()
        .execute("INSERT INTO line(words) VALUES('kept')", [])
        .unwrap();
    let migrated = opened::<Second>(&path).unwrap();
    let row: (String, String) = migrated
        .query_row("SELECT words, lang FROM line", [], |row| {
            Ok((row.get(0)?, row.get(1)?))
        })
        .unwrap();
    assert_eq!(row, ("kept".into(), "en".into()));
    let copy = Connection::open(folder.path().join("a.sqlite.before-2")).unwrap();
    assert_eq!(version(&copy), 1);
}

#[test]
fn a_failing_migration_changes_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.sqlite");
    opened::<First>(&path).unwrap();
    assert!(matches!(
        opened::<Failing>(&path),
        Err(StoreError::Sqlite(_))
    ));
    let again = opened::<First>(&path).unwrap();
    assert_eq!(version(&again), 1);
    assert!(again.prepare("SELECT 1 FROM half").is_err());
}

/// The names of the files of a folder.
fn names_in(folder: &Path) -> BTreeSet<OsString> {
    let entries = std::fs::read_dir(folder).unwrap();
    entries.map(|entry| entry.unwrap().file_name()).collect()
}

/// Opens the file as a store of the first kind, and returns why that was refused. Fails if
/// a byte of the file changed, or another file was made beside it. SQLite reads a log only
/// with an index in `-shm`.
fn refused(path: &Path) -> StoreError {
    let before = std::fs::read(path).unwrap();
    let folder = path.parent().unwrap();
    let mut beside = names_in(folder);
    let name = path.file_name().unwrap().to_string_lossy();
    if beside.contains(OsStr::new(&format!("{name}-wal"))) {
        beside.insert(format!("{name}-shm").into());
    }
    let check = Store::<First>::check_file(path).unwrap_err();
    let error = opened::<First>(path).unwrap_err();
    assert_eq!(check.to_string(), error.to_string());
    assert!(Store::<First>::open_again(path, Durability::Full).is_err());
    assert!(std::fs::read(path).unwrap() == before, "{error}");
    assert_eq!(names_in(folder), beside, "{error}");
    error
}

#[test]
fn a_newer_store_is_refused_and_unchanged() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.sqlite");
    opened::<Second>(&path).unwrap();
    assert!(matches!(
        refused(&path),
        StoreError::Newer { found: 2, known: 1 }
    ));
}

#[test]
fn a_file_of_another_program_is_refused_and_unchanged() {
    let folder = tempfile::tempdir().unwrap();
    for (number, sql) in [
        "CREATE TABLE t(a);",
        "CREATE TABLE t(a); PRAGMA application_id = 9; PRAGMA user_version = 1;",
        "PRAGMA application_id = 9;",
        "CREATE TABLE t(a); PRAGMA user_version = -1;",
        "PRAGMA journal_mode = WAL; CREATE TABLE t(a);",
    ]
    .into_iter()
    .enumerate()
    {
        let path = folder.path().join(format!("{number}.sqlite"));
        Connection::open(&path).unwrap().execute_batch(sql).unwrap();
        assert!(matches!(refused(&path), StoreError::OtherKind), "{sql}");
    }
}

#[test]
fn the_log_of_another_program_is_not_written_into_its_file() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.sqlite");
    let other = Connection::open(&path).unwrap();
    other
        .execute_batch("PRAGMA journal_mode = WAL; CREATE TABLE t(a);")
        .unwrap();
    let crashed = folder.path().join("crashed.sqlite");
    let log = folder.path().join("crashed.sqlite-wal");
    std::fs::copy(&path, &crashed).unwrap();
    std::fs::copy(folder.path().join("a.sqlite-wal"), &log).unwrap();
    let written = std::fs::read(&log).unwrap();
    assert!(matches!(refused(&crashed), StoreError::OtherKind));
    assert_eq!(std::fs::read(&log).unwrap(), written);
}

#[test]
fn an_empty_file_becomes_a_store() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.sqlite");
    std::fs::write(&path, b"").unwrap();
    assert!(matches!(
        Store::<First>::check_file(&path),
        Err(StoreError::OtherKind)
    ));
    opened::<First>(&path).unwrap();
    Store::<First>::check_file(&path).unwrap();
}
