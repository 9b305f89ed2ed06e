//! What the teacher's desk costs: the board of a full year from a newly opened
//! desk as classes are added, an import of full-year hand-ins beside its floor
//! (opening the seal, inflating, and bare inserts into the same tables), and groups.
//!
//! `cargo bench -p surefoot-bench --bench desk`; with `-- --test`, each once.

#![allow(
    missing_docs,
    clippy::unwrap_used,
    reason = "a benchmark that cannot go on stops"
)]

#[path = "support/processor_time.rs"]
mod processor_time;

use age::x25519::Identity;
use chrono::{Datelike, NaiveDate};
use criterion::measurement::{Measurement, WallTime};
use criterion::{BatchSize, Criterion, criterion_group, criterion_main};
use flate2::read::ZlibDecoder;
use processor_time::ProcessorTime;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::collections::BTreeSet;
use std::io::{Cursor, Read};
use std::path::Path;
use surefoot_app::{FileSource, Progress, import_files};
use surefoot_catalogue::calendar::SchoolYear;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_catalogue::{ConceptId, Language};
use surefoot_desk::NewClass;
use surefoot_desk::{
    ClassSecrets, GroupWishes, OpenClass, board, create_class, open_class, suggest_groups,
};
use surefoot_exchange::{HAND_IN_FORMAT, HandIn, SealingIdentity, SigningKey, seal_hand_in};
use surefoot_record::{AnswerCount, CheckIn, Practice, Said};
use surefoot_record::{ClassId, DeviceId, MisconceptionCode, SeatToken};
use surefoot_store::desk::{DeviceRow, DeviceState};
use surefoot_store::{DeskStore, Durability, StoreError};
use tempfile::TempDir;

const SEATS_A_CLASS: usize = 35;
/// From one class to ten thousand students.
const CLASSES: [usize; 4] = [1, 6, 58, 286];
/// Exercises of an evening land on this many concepts.
const CONCEPTS_AN_EVENING: usize = 4;
/// Magic, key, signature and length stand before what is packed (`docs/exchange.md`).
const HEAD_BYTES: usize = 8 + 32 + 64 + 4;

fn date(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

fn year() -> SchoolYear {
    SchoolYear::new(
        date("2026-08-31"),
        date("2027-05-07"),
        BTreeSet::from([1, 2, 3, 4, 5]),
        BTreeSet::new(),
    )
    .unwrap()
}

fn last_day() -> NaiveDate {
    year().last_day
}

fn bytes<const N: usize>(chance: &mut ChaCha8Rng) -> [u8; N] {
    let mut bytes = [0; N];
    chance.fill(&mut bytes[..]);
    bytes
}

/// An empty desk with that many classes.
fn desk_of(folder: &Path, classes: usize, chance: &mut ChaCha8Rng) -> (DeskStore, Vec<OpenClass>) {
    let desk = DeskStore::open(&folder.join("desk.sqlite"), Durability::Full).unwrap();
    let mut open = Vec::new();
    for number in 1..=classes {
        let new = NewClass {
            title: format!("Class {number} (invented)"),
            names: vec![String::new(); SEATS_A_CLASS],
            year: year(),
            grades: vec![4],
            rotation_days: 10,
            concepts_a_day: 6,
        };
        let drawn = ClassSecrets {
            sealing: bytes(chance),
            signing: bytes(chance),
            seats: bytes(chance),
        };
        create_class(&desk, &new, &drawn, year().first_day).unwrap();
    }
    for row in desk.classes().unwrap() {
        open.push(open_class(&desk, &row.id).unwrap());
    }
    (desk, open)
}

/// What one seat reports by the end of the year: every concept of every school
/// day rated and marked, and practice on most evenings.
fn full_year(class: &OpenClass, seat: usize, key: &SigningKey, chance: &mut ChaCha8Rng) -> HandIn {
    let device = DeviceId::from_bytes(&bytes(chance));
    let mut sequence = 0;
    let mut next = || {
        sequence += 1;
        sequence
    };
    let (mut check_ins, mut practice) = (Vec::new(), Vec::new());
    for (number, day) in class.facts.year.school_days().enumerate() {
        let today = &class.facts.rotation.days()[number % 10];
        for concept in today {
            check_ins.push(CheckIn {
                device: device.clone(),
                date: day,
                concept: ConceptId::new(concept.clone()).unwrap(),
                confidence: Some(Said {
                    at: next(),
                    value: Confidence::try_from(chance.random_range(0..4_u8)).ok(),
                }),
                outcome: Some(Said {
                    at: next(),
                    value: Some([Outcome::Right, Outcome::Wrong][chance.random_range(0..2)]),
                }),
            });
        }
        if day.weekday().number_from_monday() == 5 {
            continue;
        }
        let all: Vec<&String> = class.facts.rotation.days().iter().flatten().collect();
        let start = chance.random_range(0..all.len());
        for step in 0..CONCEPTS_AN_EVENING {
            practice.push(Practice {
                device: device.clone(),
                date: day,
                concept: ConceptId::new(all[(start + step) % all.len()].clone()).unwrap(),
                sequence: next(),
                answers: vec![AnswerCount {
                    confidence: Confidence::try_from(chance.random_range(0..4_u8)).ok(),
                    alone: chance.random_range(0..3),
                    with_help: chance.random_range(0..2),
                    wrong: 1,
                }],
                // A slip is recognised on every other evening.
                misconceptions: (step % 2 == 0)
                    .then(|| (MisconceptionCode::new("adds-all".to_owned()).unwrap(), 1))
                    .into_iter()
                    .collect(),
            });
        }
    }
    HandIn {
        format: HAND_IN_FORMAT,
        class_id: ClassId::new(class.row.id.clone()).unwrap(),
        seat: SeatToken::new(class.seats[seat].token.clone()).unwrap(),
        device,
        revision: 1,
        made_on: last_day(),
        pack_version: 1,
        check_ins,
        practice,
        device_key: key.public(),
        device_recipient: SealingIdentity::from_bytes(&bytes(chance))
            .unwrap()
            .recipient(),
    }
}

/// A hand-in in the clear with its sealed file.
struct Made {
    class: usize,
    seat: u32,
    content: HandIn,
    file: Vec<u8>,
}

fn hand_ins(classes: &[OpenClass], chance: &mut ChaCha8Rng) -> Vec<Made> {
    let mut made = Vec::new();
    for (number, class) in classes.iter().enumerate() {
        let identity = SealingIdentity::from_identity_file(&class.row.sealing_identity).unwrap();
        for seat in 0..class.seats.len() {
            let key = SigningKey::from_seed(&bytes(chance));
            let content = full_year(class, seat, &key, chance);
            made.push(Made {
                class: number,
                seat: class.seats[seat].number,
                file: seal_hand_in(content.clone(), &key, &identity.recipient()).unwrap(),
                content,
            });
        }
    }
    made
}

/// As the program does it: the next files are opened while one is taken in.
fn import_all(desk: &DeskStore, made: &[Made]) {
    let sources = (made.iter().enumerate())
        .map(|(number, one)| {
            let file = one.file.clone();
            FileSource::new(format!("{number}.sfhandin"), move || {
                Ok(Box::new(Cursor::new(file)))
            })
        })
        .collect();
    let report = import_files(desk, sources, last_day(), &Progress::default()).unwrap();
    assert!(report.files.iter().all(|file| file.new_entries > 0));
}

/// The least an import can do: the seal, the packing, and a row for each entry,
/// one commit a file.
fn floor(desk: &DeskStore, classes: &[OpenClass], made: &[Made]) {
    for one in made {
        let class = &classes[one.class].row;
        let identity: Identity = class
            .sealing_identity
            .lines()
            .find(|line| !line.starts_with('#'))
            .unwrap()
            .parse()
            .unwrap();
        let plain = age::decrypt(&identity, &one.file).unwrap();
        let mut json = Vec::new();
        ZlibDecoder::new(&plain[HEAD_BYTES..])
            .read_to_end(&mut json)
            .unwrap();
        assert!(json.starts_with(b"{"));
        desk.transaction(|| put(desk, &class.id, one.seat, &one.content))
            .unwrap();
    }
}

/// The rows of a hand-in, bare.
fn put(desk: &DeskStore, class: &str, seat: u32, content: &HandIn) -> Result<(), StoreError> {
    let device = desk.put_device(
        class,
        &DeviceRow {
            id: 0,
            seat,
            device: content.device.as_str().to_owned(),
            signing_key: content.device_key.as_str().to_owned(),
            recipient: content.device_recipient.as_str().to_owned(),
            state: DeviceState::Accepted,
            first_seen_on: last_day(),
        },
    )?;
    desk.report_writer(device)?.write(&content.record())?;
    Ok(())
}

/// Twice: by the clock, which is what a teacher waits and what the target is
/// about, and by the processor time of the thread that writes, which holds on a
/// busy machine as well; opening goes on beside it.
fn import<M: Measurement>(criterion: &mut Criterion<M>, by: &str) {
    let drawn = || ChaCha8Rng::seed_from_u64(1);
    let plan = TempDir::new().unwrap();
    let mut chance = drawn();
    let (_, classes) = desk_of(plan.path(), 6, &mut chance);
    let made = hand_ins(&classes, &mut chance);
    let fresh = || {
        let folder = TempDir::new().unwrap();
        let (desk, _) = desk_of(folder.path(), 6, &mut drawn());
        (folder, desk)
    };
    let mut group = criterion.benchmark_group(format!("import of 210 full-year hand-ins, {by}"));
    group.sample_size(10);
    group.bench_function("floor", |bencher| {
        bencher.iter_batched(
            fresh,
            |(folder, desk)| {
                floor(&desk, &classes, &made);
                (folder, desk)
            },
            BatchSize::PerIteration,
        );
    });
    group.bench_function("import", |bencher| {
        bencher.iter_batched(
            fresh,
            |(folder, desk)| {
                import_all(&desk, &made);
                (folder, desk)
            },
            BatchSize::PerIteration,
        );
    });
    group.finish();
}

/// Writes a class's year straight into the tables, as an import would leave them.
fn lay_year(desk: &DeskStore, class: &OpenClass, chance: &mut ChaCha8Rng) {
    desk.transaction(|| -> Result<(), StoreError> {
        for seat in 0..class.seats.len() {
            let key = SigningKey::from_seed(&bytes(chance));
            let year = full_year(class, seat, &key, chance);
            put(desk, &class.row.id, class.seats[seat].number, &year)?;
        }
        Ok(())
    })
    .unwrap();
}

/// The desk that a benchmark looks at: that many classes with a full year each.
fn lived_desk(folder: &Path, classes: usize) -> String {
    let mut chance = ChaCha8Rng::seed_from_u64(2);
    let (desk, open) = desk_of(folder, classes, &mut chance);
    for class in &open {
        lay_year(&desk, class, &mut chance);
    }
    open[classes / 2].row.id.clone()
}

/// The board of one class, the desk newly opened each time to be read; beside it
/// what looking through all pages costs, which the program does once when it
/// opens a desk to work on it.
fn board_of_a_year(criterion: &mut Criterion<ProcessorTime>) {
    let mut group = criterion.benchmark_group("board of a full year, desk newly opened");
    group.sample_size(10);
    for classes in CLASSES {
        // Ten thousand students take a minute to write: only when asked for by name.
        let name = format!("{} students", classes * SEATS_A_CLASS);
        if classes > 60 && !std::env::args().any(|asked| asked.contains(&name)) {
            continue;
        }
        let folder = TempDir::new().unwrap();
        let id = lived_desk(folder.path(), classes);
        let path = folder.path().join("desk.sqlite");
        group.bench_function(&name, |bencher| {
            bencher.iter(|| {
                let desk = DeskStore::open_again(&path, Durability::Full).unwrap();
                let class = open_class(&desk, &id).unwrap();
                board(&desk, &class, &[], Language::first(), last_day()).unwrap()
            });
        });
        group.bench_function(format!("{name}, every page looked through"), |bencher| {
            bencher.iter(|| DeskStore::open(&path, Durability::Full).unwrap());
        });
    }
    group.finish();
}

/// Groups for a whole class on its fifteen weakest concepts, as at the first press.
fn groups(criterion: &mut Criterion<ProcessorTime>) {
    let folder = TempDir::new().unwrap();
    let id = lived_desk(folder.path(), 1);
    let desk = DeskStore::open_again(&folder.path().join("desk.sqlite"), Durability::Full).unwrap();
    let class = open_class(&desk, &id).unwrap();
    let mut group = criterion.benchmark_group("groups for 35 students on 15 concepts");
    group.sample_size(10);
    for slots in 1..=3 {
        let wishes = GroupWishes {
            slots,
            ..GroupWishes::default()
        };
        group.bench_function(format!("{slots} times"), |bencher| {
            bencher.iter(|| {
                suggest_groups(&desk, &class, Language::first(), last_day(), &wishes).unwrap()
            });
        });
    }
    group.finish();
}

fn import_by_the_clock(criterion: &mut Criterion<WallTime>) {
    import(criterion, "by the clock");
}

fn import_by_the_thread_that_writes(criterion: &mut Criterion<ProcessorTime>) {
    import(criterion, "the thread that writes");
}

criterion_group!(by_the_clock, import_by_the_clock);
criterion_group! {
    name = processor_time_of;
    config = Criterion::default().with_measurement(ProcessorTime);
    targets = import_by_the_thread_that_writes, board_of_a_year, groups
}
criterion_main!(by_the_clock, processor_time_of);
