//! What the file of a desk shows, with a lock and without.

use super::cells::SEALED;
use super::*;
use crate::Durability;
use rusqlite::params;
use std::path::{Path, PathBuf};
use surefoot_catalogue::calendar::{SchoolYear, monday_to_friday};
use surefoot_record::PracticeRules;

const CLASS: &str = "abcdefghijklmnopqrstuvwxyz";
const WORDS: &str = "seven quiet rivers";
const NAMES: [&str; 3] = ["Amara Okafor-Lindqvist", "Bao", "Carlos"];
const TOKENS: [&str; 3] = ["QX7KPM", "ZW4RTA", "HN9BCD"];
const IDENTITY: &str = "AGE-SECRET-KEY-OF-A-TEST";
const SEED: [u8; 32] = *b"thirty-two bytes of a secret key";
const FILE: &str = "from Amara.sfhandin";
const NOTE: &str = "Fraction strips with Bao's group";
const REPORT: &str = "[{\"file\":\"for Carlos.csv\"}]";

/// Everything that only the data key may show.
fn secrets() -> Vec<&'static [u8]> {
    let mut all: Vec<&[u8]> = vec![IDENTITY.as_bytes(), &SEED, FILE.as_bytes()];
    all.extend(NAMES.map(str::as_bytes));
    all.extend(TOKENS.map(str::as_bytes));
    all.push(b"for Carlos.csv");
    all.push(NOTE.as_bytes());
    all
}

fn holds(bytes: &[u8], some: &[u8]) -> bool {
    bytes.windows(some.len()).any(|window| window == some)
}

/// The secrets that the files of a folder show.
fn shown(folder: &Path) -> Vec<String> {
    let mut found = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let bytes = std::fs::read(&path).unwrap();
        found.extend(
            (secrets().into_iter())
                .filter(|secret| holds(&bytes, secret))
                .map(|secret| format!("{}: {secret:?}", path.display())),
        );
    }
    found
}

fn open(path: &Path) -> DeskStore {
    DeskStore::open(path, Durability::Full).unwrap()
}

fn filled(folder: &Path) -> (PathBuf, DeskStore) {
    let path = folder.join("desk.sqlite");
    let desk = open(&path);
    let date = |text: &str| text.parse().unwrap();
    desk.add_class(&ClassRow {
        id: CLASS.into(),
        title: "Room 7".into(),
        made_on: date("2026-09-01"),
        sealing_identity: IDENTITY.into(),
        signing_seed: SEED,
        class_signs: "ABCDEFGH".into(),
        year: SchoolYear::new(
            date("2026-08-31"),
            date("2027-05-07"),
            monday_to_friday(),
            [].into(),
        )
        .unwrap(),
        pack_version: 0,
        saves_packs: true,
        pack_stamp: String::new(),
        practice: PracticeRules::USUAL,
    })
    .unwrap();
    for (number, (name, token)) in (1..).zip(NAMES.into_iter().zip(TOKENS)) {
        let seat = SeatRow {
            number,
            token: token.into(),
            name: Some(name.into()),
        };
        desk.add_seat(CLASS, &seat).unwrap();
    }
    let nameless = SeatRow {
        number: 4,
        token: "VVVVVV".into(),
        name: None,
    };
    desk.add_seat(CLASS, &nameless).unwrap();
    let import = desk.begin_import(date("2026-09-02")).unwrap();
    let file = ImportFileRow {
        file_name: FILE.into(),
        verdict: r#"{"kind":"new"}"#.into(),
        class: Some(CLASS.into()),
        seat: Some(1),
        new_entries: 1,
        flags: "[]".into(),
    };
    desk.add_import_file(import, &file).unwrap();
    let device = desk
        .put_device(
            CLASS,
            &DeviceRow {
                id: 0,
                seat: 1,
                device: "a tablet".into(),
                signing_key: "its key".into(),
                recipient: "its recipient".into(),
                state: DeviceState::Accepted,
                first_seen_on: date("2026-09-02"),
            },
        )
        .unwrap();
    let kept = HandInKept {
        import,
        seat: 1,
        device,
        revision: 1,
        made_on: date("2026-09-02"),
        entries: 0,
        pack_version: 1,
        content_hash: "00".into(),
        content: TOKENS[0].into(),
    };
    desk.keep_hand_in(CLASS, &kept).unwrap();
    let kind = OwnKindOfImport::Exercises;
    desk.add_own_import(CLASS, kind, date("2026-09-03"), REPORT)
        .unwrap();
    let taught = TaughtAgainRow {
        id: 0,
        date: date("2026-09-03"),
        concept: "g4-equivalence".into(),
        came_from: CameFrom::Hand,
        whole_class: false,
        seats: vec![2],
        note: Some(NOTE.into()),
    };
    desk.put_taught_again(CLASS, &taught).unwrap();
    (path, desk)
}

/// What the desk gives that is sealed in its file.
type Content = (
    ClassRow,
    Vec<SeatRow>,
    Vec<ImportFileRow>,
    Vec<HandInKept>,
    String,
    Vec<TaughtAgainRow>,
);

fn content(desk: &DeskStore) -> Content {
    (
        desk.class(CLASS).unwrap(),
        desk.seats(CLASS).unwrap(),
        desk.import_files(1, 0, 10).unwrap(),
        desk.hand_ins(CLASS, 1).unwrap(),
        desk.own_imports(CLASS).unwrap()[0].report.clone(),
        desk.taught_again(CLASS).unwrap(),
    )
}

#[test]
fn every_sealed_column_is_filled_by_this_test_and_no_file_shows_its_content() {
    let folder = tempfile::tempdir().unwrap();
    let (_, desk) = filled(folder.path());
    for column in &SEALED {
        let sql = format!("SELECT count({}) FROM {}", column.column, column.table);
        let cells: i64 = desk
            .connection
            .query_row(&sql, [], |row| row.get(0))
            .unwrap();
        assert!(cells > 0, "{}.{}", column.table, column.column);
    }
    assert_eq!(shown(folder.path()), Vec::<String>::new());
    let (class, seats, files, hand_ins, report, taught) = content(&desk);
    assert_eq!(taught[0].note.as_deref(), Some(NOTE));
    assert_eq!(hand_ins[0].content, TOKENS[0].as_bytes());
    assert_eq!(
        (class.sealing_identity.as_str(), class.signing_seed),
        (IDENTITY, SEED)
    );
    for (seat, (name, token)) in seats.iter().zip(NAMES.into_iter().zip(TOKENS)) {
        assert_eq!(
            (seat.name.as_deref(), seat.token.as_str()),
            (Some(name), token)
        );
    }
    assert_eq!(seats[3].name, None);
    assert_eq!(
        (files[0].file_name.as_str(), report.as_str()),
        (FILE, REPORT)
    );
}

#[test]
fn the_key_is_beside_the_cells_only_without_a_lock() {
    let folder = tempfile::tempdir().unwrap();
    let (path, desk) = filled(folder.path());
    let before = content(&desk);
    let open_key = desk.key().unwrap().secret().to_vec();
    drop(desk);
    assert!(holds(&std::fs::read(&path).unwrap(), &open_key));

    let kept = KeptKey::locked(WORDS, Some(10)).unwrap();
    let locked = tempfile::tempdir().unwrap();
    let path = locked.path().join("locked.sqlite");
    std::fs::write(&path, b"").unwrap();
    let desk = open(&folder.path().join("desk.sqlite"));
    desk.resealed(&kept, true)
        .unwrap()
        .write_anew(&path)
        .unwrap();
    let cells: Vec<Vec<u8>> = desk
        .rows("SELECT name FROM seat WHERE name IS NOT NULL", [], |row| {
            row.get(0)
        })
        .unwrap();
    let desk = open(&path);
    let secret = kept.key().secret().to_vec();
    for entry in std::fs::read_dir(locked.path()).unwrap() {
        let bytes = std::fs::read(entry.unwrap().path()).unwrap();
        assert!(!holds(&bytes, &secret) && !holds(&bytes, &open_key));
        assert!(!cells.iter().any(|cell| holds(&bytes, cell)));
    }
    assert_eq!(shown(locked.path()), Vec::<String>::new());

    let lock = LockRow {
        wrong_tries: 0,
        idle_minutes: Some(10),
    };
    assert_eq!(desk.lock().unwrap(), Some(lock));
    assert_eq!(key_facts(&path).unwrap().lock, Some(lock));
    assert!(matches!(desk.seats(CLASS), Err(StoreError::Locked)));
    assert!(matches!(desk.classes(), Err(StoreError::Locked)));
    assert!(desk.key_by("seven quiet river").unwrap().is_none());
    assert!(desk.key_by("").unwrap().is_none());
    assert!(matches!(
        desk.use_key(DataKey::draw()),
        Err(StoreError::Locked)
    ));
    desk.use_key(desk.key_by(WORDS).unwrap().unwrap()).unwrap();
    assert!(content(&desk) == before);
    desk.name_seat(CLASS, 4, Some("Dara")).unwrap();
    desk.name_seat(CLASS, 1, None).unwrap();
    assert!(desk.replaced_key().unwrap().is_some());
    desk.forget_replaced_key().unwrap();
    assert_eq!(desk.replaced_key().unwrap(), None);
    desk.put_idle_minutes(None).unwrap();
    desk.put_wrong_tries(3).unwrap();
    let lock = LockRow {
        wrong_tries: 3,
        idle_minutes: None,
    };
    assert_eq!(desk.lock().unwrap(), Some(lock));
    drop(desk);
    let desk = open(&path);
    desk.use_key(kept.key().clone()).unwrap();
    let names: Vec<_> = desk.seats(CLASS).unwrap();
    assert_eq!(names[3].name.as_deref(), Some("Dara"));
    assert_eq!(names[0].name, None);
}

#[test]
fn the_bytes_of_a_desk_hold_neither_the_key_before_nor_its_cells_and_open_again() {
    let folder = tempfile::tempdir().unwrap();
    let (_, desk) = filled(folder.path());
    // Pages that were rearranged and freed.
    for round in 0..300 {
        let name = format!("{round} {}", "x".repeat(round));
        desk.name_seat(CLASS, 2, Some(&name)).unwrap();
    }
    desk.name_seat(CLASS, 2, Some(NAMES[1])).unwrap();
    let (before, secret) = (content(&desk), desk.key().unwrap().secret().to_vec());
    let cells: Vec<Vec<u8>> = desk
        .rows("SELECT token FROM seat", [], |row| row.get(0))
        .unwrap();
    let kept = KeptKey::open();
    let bytes = desk.resealed(&kept, false).unwrap().into_bytes().unwrap();
    assert!(holds(&bytes, kept.key().secret()));
    assert!(!holds(&bytes, &secret));
    assert!(!cells.iter().any(|cell| holds(&bytes, cell)));
    let again = DeskStore::from_bytes(bytes.clone()).unwrap();
    assert!(content(&again) == before);
    assert_eq!(again.lock().unwrap(), None);
    let path = folder.path().join("again.sqlite");
    std::fs::write(&path, &bytes).unwrap();
    DeskStore::check_file(&path).unwrap();
    assert!(content(&open(&path)) == before);

    let mut torn = bytes.clone();
    torn.truncate(bytes.len() / 2);
    assert!(DeskStore::from_bytes(torn).is_err());
    for other in [b"".to_vec(), b"no store at all".to_vec(), vec![0; 5000]] {
        assert!(DeskStore::from_bytes(other).is_err());
    }
}

#[test]
fn a_cell_that_was_moved_or_changed_is_refused() {
    let folder = tempfile::tempdir().unwrap();
    let (_, desk) = filled(folder.path());
    let run = |sql: &str| {
        desk.connection.execute(sql, params![]).unwrap();
    };
    let refused = |desk: &DeskStore| match desk.seats(CLASS) {
        Err(error) => error.to_string(),
        Ok(seats) => panic!("{seats:?}"),
    };
    run("UPDATE seat SET name = (SELECT name FROM seat WHERE number = 1) WHERE number = 2");
    assert!(refused(&desk).contains("seat.name"), "{}", refused(&desk));
    run("UPDATE seat SET name = NULL WHERE number = 2");
    assert_eq!(desk.seats(CLASS).unwrap()[1].name, None);
    run("UPDATE seat SET token = name WHERE number = 1");
    assert!(refused(&desk).contains("seat.token"), "{}", refused(&desk));
    run("UPDATE class SET sealing_identity = signing_seed");
    let error = desk.classes().map(drop).unwrap_err().to_string();
    assert!(error.contains("class.sealing_identity"), "{error}");
    // A damaged cell is not lost on the way to another lock.
    assert!(matches!(
        desk.resealed(&KeptKey::open(), true),
        Err(StoreError::Unreadable { .. })
    ));
}

#[test]
fn a_changed_lock_opens_nothing_and_cannot_ask_for_more_memory() {
    let folder = tempfile::tempdir().unwrap();
    let (_, desk) = filled(folder.path());
    let path = folder.path().join("locked.sqlite");
    std::fs::write(&path, b"").unwrap();
    let kept = KeptKey::locked(WORDS, None).unwrap();
    desk.resealed(&kept, true)
        .unwrap()
        .write_anew(&path)
        .unwrap();
    let desk = open(&path);
    let run = |sql: &str| {
        desk.connection.execute(sql, params![]).unwrap();
    };
    assert!(desk.key_by(WORDS).unwrap().is_some());
    run("UPDATE data_key SET memory_kib = 64");
    assert!(desk.key_by(WORDS).unwrap().is_none());
    run("UPDATE data_key SET memory_kib = 4000000");
    assert!(matches!(
        desk.key_by(WORDS),
        Err(StoreError::Unreadable { .. })
    ));
    run("UPDATE data_key SET memory_kib = 131072, number = randomblob(16)");
    assert!(desk.key_by(WORDS).unwrap().is_none());
    // Without its salt a lock is no lock, and its key is no key.
    run("UPDATE data_key SET salt = NULL");
    assert!(matches!(
        desk.seats(CLASS),
        Err(StoreError::Unreadable { .. })
    ));
}
