//! Makes the data sheet from the schemas of the stores, and checks its promise: no column that it
//! calls private is in an opened hand-in.
//!
//! `WRITE_DATA_SHEET=1 cargo test --test data_sheet` writes
//! `docs/data-sheet.md`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use chrono::NaiveDate;
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use surefoot_app::Progress;
use surefoot_app::demo::{DemoPlan, make};
use surefoot_catalogue::ConceptId;
use surefoot_catalogue::rating::{AnswerResult, Confidence};
use surefoot_exchange::{Checked, HandInExpectations, SealingIdentity, open_hand_in};
use surefoot_record::SeatToken;
use surefoot_record::{AppearanceTheme, DecimalSign, Goal};
use surefoot_store::student::{OpenRow, PracticeAnswer};
use surefoot_store::{DeskStore, Durability, StudentStore};
use surefoot_test_support::store::{Value, columns, values};

const NOTES: &str = include_str!("data_sheet.txt");
const SHEET: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../docs/data-sheet.md");
const HEAD: &str = include_str!("data_sheet_head.md");

/// (store, table.column) → (place, what it is, whether it leaves).
fn notes() -> BTreeMap<(&'static str, &'static str), (usize, &'static str, &'static str)> {
    let mut found = BTreeMap::new();
    for (place, line) in NOTES.lines().enumerate() {
        if line.starts_with('#') {
            continue;
        }
        let parts: Vec<&str> = line.split(" | ").collect();
        let [store, column, what, leaves] = parts[..] else {
            panic!("{line}");
        };
        let twice = found.insert((store, column), (place, what, leaves));
        assert!(twice.is_none(), "{line} is there twice");
    }
    found
}

/// The stores of a small sample class.
struct Filled {
    student: StudentStore,
    student_file: PathBuf,
    desk: DeskStore,
    desk_file: PathBuf,
    /// A day on which a hand-in of the student counts.
    today: NaiveDate,
}

fn filled(folder: &Path) -> Filled {
    let today = "2026-10-09".parse().unwrap();
    let plan = DemoPlan {
        students: 2,
        weeks: 2,
        ..DemoPlan::sample(today)
    };
    let made = make(folder, &plan, &Progress::default()).unwrap();
    let mut students: Vec<_> = std::fs::read_dir(&made.student_stores)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|e| e == "sqlite"))
        .collect();
    students.sort();
    Filled {
        student: StudentStore::open(&students[0], Durability::Full).unwrap(),
        student_file: students[0].clone(),
        desk: DeskStore::open(&made.desk, Durability::Full).unwrap(),
        desk_file: made.desk.clone(),
        today: made.today,
    }
}

#[test]
fn the_data_sheet_says_what_the_stores_hold() {
    let folder = tempfile::tempdir().unwrap();
    let stores = filled(folder.path());
    let notes = notes();
    let mut sheet = HEAD.to_owned();
    let mut used = 0;
    for (name, title, connection) in [
        ("student", "A student's store", &stores.student_file),
        ("desk", "The teacher's desk", &stores.desk_file),
    ] {
        let _ = write!(
            sheet,
            "\n## {title}\n\n| column | what it is | leaves the device |\n|---|---|---|\n"
        );
        let mut lines: Vec<(usize, String)> = Vec::new();
        for (table, column) in columns(connection) {
            let key = format!("{table}.{column}");
            let Some((place, what, leaves)) = notes.get(&(name, key.as_str())) else {
                panic!("{name} {key} is not described in crates/app/tests/data_sheet.txt");
            };
            lines.push((*place, format!("| `{key}` | {what} | {leaves} |")));
        }
        used += lines.len();
        // In the order of the descriptions, which a migration does not change.
        lines.sort();
        for (_, line) in lines {
            let _ = writeln!(sheet, "{line}");
        }
    }
    assert_eq!(
        used,
        notes.len(),
        "a column described is not there any more"
    );
    if std::env::var_os("WRITE_DATA_SHEET").is_some() {
        std::fs::write(SHEET, &sheet).unwrap();
    }
    assert!(
        std::fs::read_to_string(SHEET).unwrap_or_default() == sheet,
        "stale: run WRITE_DATA_SHEET=1 cargo test --test data_sheet"
    );
}

/// Fills each column that the fixture leaves empty with a value that can be recognised.
fn personal(store: &StudentStore, slip: &surefoot_desk::JoinSlip) {
    let mut me = store.student().unwrap().unwrap();
    me.nickname = "Cloudberry Ünïcode".into();
    me.avatar = "hedgehog".into();
    me.minutes = 13;
    me.exercises = Some(11);
    me.appearance.theme = AppearanceTheme::ContrastDark;
    me.appearance.decimal_sign = DecimalSign::Comma;
    store.put_student(&me).unwrap();
    let joined = surefoot_student::joined(store).unwrap();
    let slip = surefoot_student::SlipTyped {
        pin_signs: &slip.pin_signs,
        seat_code: Some(&slip.code),
    };
    surefoot_student::set_pin(store, &joined, "40719", slip, [[0xC3; 16], [0xC5; 16]]).unwrap();
    store.put_focus(&["g3-focus-of-mine".into()]).unwrap();
    let goals = [Goal {
        words: "Learn my sevens by Friday".into(),
        reached: true,
    }];
    surefoot_student::set_goals(store, &goals).unwrap();
    let sequence = store.next_sequence().unwrap();
    let date = "2026-09-08".parse().unwrap();
    store
        .add_practice_answer(&PracticeAnswer {
            device: me.device.clone(),
            sequence,
            date,
            concept: ConceptId::new("g4-angle-measure").unwrap(),
            level: 2,
            generator_version: 777_001,
            seed: 900_719_925_474_099,
            confidence: Some(Confidence::OnMyOwn),
            result: AnswerResult::Wrong,
            misconception: None,
            seconds: 47_113,
            response: r#"{"kind":"number","text":"31415926"}"#.into(),
        })
        .unwrap();
    store
        .put_open_exercise(&OpenRow {
            exercise: "open-exercise-name".into(),
            opened_on: "2026-09-03".parse().unwrap(),
            concept: ConceptId::new("g4-angle-measure").unwrap(),
            level: 3,
            seed: 800_719_925_474_099,
            reason: surefoot_record::Reason::Focus,
            asked: true,
            confidence: None,
            hints: 0,
            tries: 1,
            seconds: 58_117,
            misconception: None,
            response: Some(r#"{"kind":"number","text":"27182818"}"#.into()),
            draft: Some(r#"{"kind":"boxes","texts":["16180339"],"half_day":null}"#.into()),
        })
        .unwrap();
}

/// A value as JSON could hold it; none for a value that is too common to be recognised.
fn recognisable(value: &Value) -> Vec<Vec<u8>> {
    use base64::Engine as _;
    match value {
        Value::Text(text) if text.len() >= 4 => {
            let quoted = serde_json::to_string(text).unwrap();
            vec![
                text.clone().into_bytes(),
                quoted.trim_matches('"').as_bytes().to_vec(),
            ]
        }
        Value::Integer(number) if *number > 9_999 => vec![number.to_string().into_bytes()],
        Value::Blob(bytes) if bytes.len() >= 8 => {
            let hex: String = bytes.iter().map(|b| format!("{b:02x}")).collect();
            vec![
                bytes.clone(),
                hex.into_bytes(),
                base64::prelude::BASE64_STANDARD.encode(bytes).into_bytes(),
                base64::prelude::BASE64_URL_SAFE_NO_PAD
                    .encode(bytes)
                    .into_bytes(),
            ]
        }
        _ => Vec::new(),
    }
}

fn holds(json: &[u8], piece: &[u8]) -> bool {
    json.windows(piece.len()).any(|window| window == piece)
}

#[test]
fn nothing_that_stays_is_in_an_opened_hand_in() {
    let folder = tempfile::tempdir().unwrap();
    let Filled {
        student: store,
        student_file,
        desk,
        today,
        ..
    } = filled(folder.path());
    let class = surefoot_desk::open_class(&desk, &desk.classes().unwrap()[0].id).unwrap();
    personal(&store, &surefoot_desk::join_slips(&class).unwrap()[0]);
    let joined = surefoot_student::joined(&store).unwrap();
    let made = surefoot_student::make_hand_in(&store, &joined, today, &[0xC7; 4]).unwrap();
    let class = &desk.classes().unwrap()[0];
    let identity = SealingIdentity::from_identity_file(&class.sealing_identity).unwrap();
    let opened = open_hand_in(made.bytes.as_slice(), [&identity]).unwrap();
    let class_id = surefoot_record::ClassId::new(class.id.clone()).unwrap();
    let seats = desk
        .seats(&class.id)
        .unwrap()
        .into_iter()
        .map(|seat| {
            let keys = [opened.device_key().clone()].into();
            (SeatToken::new(seat.token).unwrap(), keys)
        })
        .collect();
    let facts = HandInExpectations {
        class_id: &class_id,
        first_day: class.year.first_day,
        last_day: class.year.last_day,
        seats: &seats,
        concepts: &Default::default(),
    };
    let Ok(Checked::Accepted(taken)) = opened.check(&facts, today) else {
        panic!("the hand-in is not taken");
    };
    let json = taken.json().to_vec();
    let text = String::from_utf8(json.clone()).unwrap();
    assert!(json.len() > 2_000, "a real hand-in");

    let notes = notes();
    let mut looked_at: BTreeMap<String, usize> = BTreeMap::new();
    let mut travels: Vec<Vec<u8>> = Vec::new();
    let mut stays: Vec<(String, Vec<u8>)> = Vec::new();
    for (table, column) in columns(&student_file) {
        let key = format!("{table}.{column}");
        let (_, _, leaves) = notes[&("student", key.as_str())];
        let values = values(&student_file, &table, &column);
        for piece in values.iter().flat_map(recognisable) {
            match leaves {
                "hand-in" | "counts" => travels.push(piece),
                "stays" | "public half" => {
                    *looked_at.entry(key.clone()).or_default() += 1;
                    stays.push((key.clone(), piece));
                }
                other => panic!("{key}: {other}"),
            }
        }
    }
    for (key, piece) in &stays {
        // A concept or a date that another column hands in is no secret of this one.
        if travels.iter().any(|t| t == piece) {
            continue;
        }
        assert!(
            !holds(&json, piece),
            "{key}: {}",
            String::from_utf8_lossy(piece)
        );
    }
    for needed in [
        "student.nickname",
        "student.avatar",
        "student.signing_seed",
        "student.sealing_identity",
        "class_pack.file",
        "practice_answer.response",
        "practice_answer.seconds",
        "practice_answer.seed",
        "open_exercise.response",
        "open_exercise.seconds",
        "focus.concept",
        "pin.salt",
        "pin.hash",
        "student.theme",
        "student.decimal_sign",
        "goal.words",
    ] {
        assert!(looked_at.contains_key(needed), "{needed} was not looked at");
    }
    for words in [
        "40719",
        "31415926",
        "27182818",
        "Cloudberry",
        "hedgehog",
        "sevens",
    ] {
        assert!(!text.contains(words), "{words}");
    }
    // The sealed file and its name hold none of it either.
    for words in [
        "Cloudberry",
        "hedgehog",
        "31415926",
        "sevens",
        joined.student.device.as_str(),
    ] {
        assert!(!holds(&made.bytes, words.as_bytes()) && !made.file_name.contains(words));
    }
    no_time_and_no_machine(&text);
}

fn no_time_and_no_machine(text: &str) {
    // hh:mm anywhere, and T between a date and a time.
    let bytes = text.as_bytes();
    let time = bytes
        .windows(5)
        .any(|w| w[2] == b':' && [0, 1, 3, 4].iter().all(|at| w[*at].is_ascii_digit()));
    assert!(!time, "a time of day");
    let host = std::fs::read_to_string("/etc/hostname").unwrap_or_default();
    let facts = [
        std::env::consts::OS,
        std::env::consts::ARCH,
        host.trim(),
        "UTC",
        "GMT",
        "zone",
    ];
    for fact in facts.iter().filter(|fact| fact.len() >= 3) {
        assert!(!text.contains(fact), "{fact}");
    }
}

/// Every text in a schema, with its path.
fn texts<'a>(
    at: &str,
    schema: &'a serde_json::Value,
    found: &mut Vec<(String, &'a serde_json::Value)>,
) {
    if let Some(object) = schema.as_object() {
        let is_text = match object.get("type") {
            Some(serde_json::Value::Array(kinds)) => kinds.iter().any(|k| k == "string"),
            Some(kind) => kind == "string",
            None => false,
        };
        if is_text {
            found.push((at.to_owned(), schema));
        }
        for (name, inner) in object {
            texts(&format!("{at}/{name}"), inner, found);
        }
    } else if let Some(list) = schema.as_array() {
        for (place, inner) in list.iter().enumerate() {
            texts(&format!("{at}/{place}"), inner, found);
        }
    }
}

#[test]
fn the_hand_ins_schema_has_no_free_text() {
    let schema: serde_json::Value =
        serde_json::from_str(include_str!("../../../shared/schema/hand-in.schema.json")).unwrap();
    let mut found = Vec::new();
    texts("", &schema, &mut found);
    assert!(found.len() >= 5, "{found:?}");
    for (at, text) in found {
        let bound = text.get("enum").is_some()
            || text.get("const").is_some()
            || text
                .get("pattern")
                .and_then(|p| p.as_str())
                .is_some_and(|p| p.starts_with('^') && p.ends_with('$') && !p.contains(".*"));
        assert!(bound, "{at} takes any text");
    }
    // No object allows a key that it does not name.
    fn closed(at: &str, schema: &serde_json::Value) {
        if schema.get("type").is_some_and(|t| t == "object") {
            let named = schema
                .get("additionalProperties")
                .is_some_and(|a| a == false)
                || schema.get("propertyNames").is_some();
            assert!(named, "{at} takes more than it names");
        }
        if let Some(object) = schema.as_object() {
            for (name, inner) in object {
                closed(&format!("{at}/{name}"), inner);
            }
        }
    }
    closed("", &schema);
}

#[test]
fn what_the_data_sheet_calls_sealed_is_no_text_in_the_store() {
    let folder = tempfile::tempdir().unwrap();
    let stores = filled(folder.path());
    let mut looked_at = 0;
    for ((store, column), (_, what, _)) in notes() {
        if store != "desk" {
            continue;
        }
        let (table, column) = column.split_once('.').unwrap();
        for value in values(&stores.desk_file, table, column) {
            let is_cell = matches!(&value, Value::Blob(bytes) if bytes.len() >= 72);
            if what.ends_with("(sealed)") {
                assert!(is_cell || value == Value::Null, "{table}.{column}");
                looked_at += usize::from(is_cell);
            }
        }
    }
    assert!(looked_at >= 6, "{looked_at}");
}
