//! School weeks of a class whose folder is copied between devices by a program that delays, reorders,
//! duplicates and renames.

use crate::class_folder::{settle, visit};
use crate::support::{Device, date, hand_in, rate, school_year, seat_code};
use chrono::{Days, NaiveDate};

use rand::{Rng as _, SeedableRng as _};
use rand_chacha::ChaCha8Rng;
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::{Instant, SystemTime};
use surefoot_app::{
    ClassId, ClassKeyAsked, Join, NewClosures, NewPractice, Nothing, OpenSealed, RenameClass,
};
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::Confidence;
use tempfile::TempDir;

/// A file under way.
struct Parcel {
    due: u32,
    to: PathBuf,
    bytes: Vec<u8>,
    time: SystemTime,
}

/// A program that copies folders, and makes every mistake that such programs make.
struct Synchroniser {
    chance: ChaCha8Rng,
    step: u32,
    under_way: Vec<Parcel>,
    seen: BTreeMap<PathBuf, (SystemTime, u64)>,
    renamed: u32,
}

impl Synchroniser {
    fn new(seed: u64) -> Self {
        Self {
            chance: ChaCha8Rng::seed_from_u64(seed),
            step: 0,
            under_way: Vec::new(),
            seen: BTreeMap::new(),
            renamed: 0,
        }
    }

    /// Picks up what changed in `from` and has an extension, for `to`.
    fn pick_up(&mut self, from: &Path, to: &Path, extension: &str) {
        let mut found: Vec<PathBuf> = (fs::read_dir(from).unwrap())
            .map(|entry| entry.unwrap().path())
            .filter(|path| path.extension().is_some_and(|e| e == extension))
            .collect();
        found.sort();
        for path in found {
            let about = fs::metadata(&path).unwrap();
            let mark = (about.modified().unwrap(), about.len());
            if self.seen.insert(path.clone(), mark) == Some(mark) {
                continue;
            }
            let bytes = fs::read(&path).unwrap();
            let name = path.file_name().unwrap().to_str().unwrap().to_owned();
            let stem = path.file_stem().unwrap().to_str().unwrap();
            self.renamed += 1;
            let other = match self.chance.random_range(0..3) {
                0 => format!("{stem} ({}).{extension}", self.renamed),
                1 => format!("{stem} (conflicted copy {}).{extension}", self.renamed),
                _ => format!("{stem}-DESKTOP-{}.{extension}", self.renamed),
            };
            let names = match self.chance.random_range(0..10) {
                0..6 => vec![name],
                6..9 => vec![name, other],
                // Only under another name.
                _ => vec![other],
            };
            for name in names {
                // Up to a week late, and so in any order.
                let late = [0, 0, 0, 1, 2, 5][self.chance.random_range(0..6)];
                self.under_way.push(Parcel {
                    due: self.step + late,
                    to: to.join(name),
                    bytes: bytes.clone(),
                    time: mark.0,
                });
            }
        }
    }

    /// Delivers what is due; with `all`, everything.
    fn deliver(&mut self, all: bool) {
        self.step += 1;
        let (due, later) = (std::mem::take(&mut self.under_way).into_iter())
            .partition::<Vec<_>, _>(|parcel| all || parcel.due < self.step);
        self.under_way = later;
        for parcel in due {
            // A part of a file is there for a moment.
            fs::write(&parcel.to, &parcel.bytes[..parcel.bytes.len() / 3]).unwrap();
            fs::write(&parcel.to, &parcel.bytes).unwrap();
            let file = fs::File::options().append(true).open(&parcel.to).unwrap();
            file.set_modified(parcel.time).unwrap();
            // What was delivered here is not sent back.
            let mark = (parcel.time, parcel.bytes.len() as u64);
            self.seen.insert(parcel.to, mark);
        }
    }
}

/// A tablet with its students and its copy of the folder.
struct Table {
    tablet: Device,
    students: Vec<String>,
    folder: TempDir,
}

fn joined(desk: &Device, class: &str, shared: &Path, seats: &[usize]) -> Table {
    let tablet = Device::on("2026-08-31");
    let folder = tempfile::tempdir().unwrap();
    for entry in fs::read_dir(shared).unwrap() {
        let path = entry.unwrap().path();
        fs::copy(&path, folder.path().join(path.file_name().unwrap())).unwrap();
    }
    tablet.hands.will_pick(folder.path());
    let offer = tablet
        .app
        .student
        .pick_shown_folder(Nothing {})
        .unwrap()
        .unwrap();
    let students = (seats.iter())
        .map(|seat| {
            let join = Join {
                pack: offer.packs[0].pack,
                seat_code: seat_code(desk, class, *seat),
                nickname: format!("Seat {seat}"),
                avatar: "fox".into(),
                language: Language::first(),
                beside: false,
            };
            tablet.app.student.join(join).unwrap().id
        })
        .collect();
    Table {
        tablet,
        students,
        folder,
    }
}

/// What the class is at the end, and what it took.
struct Weeks {
    tables: usize,
    seats_a_table: usize,
    weeks: u64,
    seed: u64,
}

impl Weeks {
    fn pass(&self) {
        let begun = Instant::now();
        let mut chance = ChaCha8Rng::seed_from_u64(self.seed);
        let desk = Device::on("2026-08-31");
        let seats = self.tables * self.seats_a_table;
        let names: Vec<String> = (0..seats).map(|n| format!("Student {n}")).collect();
        let names: Vec<&str> = names.iter().map(String::as_str).collect();
        let class = desk.new_class("Room 7 (invented)", &names).id;
        let shared = tempfile::tempdir().unwrap();
        desk.hands.will_pick(shared.path());
        desk.app.desk.name_class_folder(Nothing {}).unwrap();
        settle(&desk);
        let numbers: Vec<usize> = (0..seats).collect();
        let tables: Vec<Table> = (numbers.chunks(self.seats_a_table))
            .map(|seats| joined(&desk, &class, shared.path(), seats))
            .collect();
        let mut synchroniser = Synchroniser::new(self.seed);
        let first = date("2026-08-31");
        let mut closures = school_year().closures;
        let snow: Vec<NaiveDate> = ["2026-09-16", "2026-10-06", "2026-10-07"].map(date).into();
        let days = (0..self.weeks * 7)
            .map(|day| first + Days::new(day))
            .filter(|day| school_year().is_school_day(*day));
        let mut taps = 0;
        let mut hand_ins = 0;
        for day in days {
            desk.turn_to(day);
            if snow.contains(&day) {
                closures.insert(day);
                desk.app
                    .desk
                    .set_closures(NewClosures {
                        class: class.clone(),
                        closures: closures.iter().copied().collect(),
                    })
                    .unwrap();
            } else {
                for table in &tables {
                    // A tablet is used on one day of four.
                    if chance.random_range(0..4) > 0 {
                        continue;
                    }
                    table.tablet.turn_to(day);
                    for student in &table.students {
                        if chance.random_range(0..2) > 0 {
                            rate(&table.tablet, student, confidence(&mut chance));
                            taps += 1;
                        }
                    }
                    visit(&table.tablet);
                    synchroniser.pick_up(table.folder.path(), shared.path(), "sfhandin");
                }
            }
            if day == date("2026-09-24") {
                let title = "Room 7 b (invented)".to_owned();
                let class = class.clone();
                desk.app
                    .desk
                    .rename_class(RenameClass { class, title })
                    .unwrap();
            }
            if day == date("2026-10-20") {
                let id = ClassId {
                    class: class.clone(),
                };
                let mut practice = desk.app.desk.class_setup(id).unwrap().practice;
                practice.evenings_most = 5;
                let class = class.clone();
                desk.app
                    .desk
                    .set_practice(NewPractice { class, practice })
                    .unwrap();
            }
            synchroniser.deliver(false);
            settle(&desk);
            for table in &tables {
                synchroniser.pick_up(shared.path(), table.folder.path(), "sfclass");
                synchroniser
                    .seen
                    .retain(|path, _| !path.starts_with(shared.path()));
            }
            remember(&mut synchroniser, shared.path());
        }
        // In the end everything arrives.
        synchroniser.deliver(true);
        for table in &tables {
            visit(&table.tablet);
            synchroniser.pick_up(table.folder.path(), shared.path(), "sfhandin");
        }
        synchroniser.deliver(true);
        settle(&desk);
        settle(&desk);

        // Everything at once, on a second computer with the keys of the class.
        let at_once = tempfile::tempdir().unwrap();
        for (at, table) in tables.iter().enumerate() {
            for (seat, student) in table.students.iter().enumerate() {
                let file = hand_in(&table.tablet, student);
                fs::copy(file, at_once.path().join(format!("{at}-{seat}.sfhandin"))).unwrap();
                hand_ins += 1;
            }
        }
        let second = Device::on("2026-08-31");
        let passphrase = "seven quiet rivers".to_owned();
        let key = ClassKeyAsked {
            class: class.clone(),
            passphrase: passphrase.clone(),
            hand_over: false,
        };
        let key = desk.app.desk.export_class(key).unwrap().file_name;
        second.hands.will_pick(&desk.hands.saved.join(key));
        let picked = second
            .app
            .desk
            .pick_class_key(Nothing {})
            .unwrap()
            .unwrap()
            .picked;
        second
            .app
            .desk
            .import_class(OpenSealed { picked, passphrase })
            .unwrap();
        second.turn_to(first + Days::new(self.weeks * 7));
        desk.turn_to(first + Days::new(self.weeks * 7));
        assert_eq!(second.import(at_once.path()).tally.new as usize, hand_ins);
        let board = |desk: &Device| {
            let class = class.clone();
            serde_json::to_value(desk.app.desk.board(ClassId { class }).unwrap()).unwrap()
        };
        assert_eq!(board(&desk), board(&second));

        // Every tablet has the newest calendar, and the folder is tidy.
        let version = desk.app.desk.class_setup(ClassId { class }).unwrap();
        for table in &tables {
            let folder = fs::read_dir(table.folder.path()).unwrap().count();
            assert!(folder > 1, "{folder}");
            for student in &table.students {
                let today = surefoot_app::StudentDay {
                    student: student.clone(),
                    date: Some(snow[2]),
                };
                let day = table.tablet.app.student.today(today);
                assert!(
                    day.is_err() || day.unwrap().concepts.is_empty(),
                    "a snow day is a school day on a tablet: {version:?}"
                );
            }
        }
        let left: Vec<String> = (fs::read_dir(shared.path()).unwrap())
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        println!(
            "{seats} students, {} weeks, {taps} check-ins, {} files under other names, {} files at \
             the end: {:.1} s",
            self.weeks,
            synchroniser.renamed,
            left.len(),
            begun.elapsed().as_secs_f64()
        );
        assert!(left.len() <= 2 * seats, "{left:?}");
    }
}

/// Notes what is in the shared folder, so that only changes are picked up.
fn remember(synchroniser: &mut Synchroniser, folder: &Path) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let about = fs::metadata(&path).unwrap();
        let mark = (about.modified().unwrap(), about.len());
        synchroniser.seen.insert(path, mark);
    }
}

fn confidence(chance: &mut ChaCha8Rng) -> Confidence {
    [
        Confidence::NotYet,
        Confidence::WithHelp,
        Confidence::OnMyOwn,
        Confidence::CouldTeach,
    ][chance.random_range(0..4)]
}

#[test]
fn ten_weeks_through_an_unruly_synchroniser_give_the_board_of_a_class_where_all_came_at_once() {
    Weeks {
        tables: 4,
        seats_a_table: 7,
        weeks: 10,
        seed: 17,
    }
    .pass();
}

/// With more tablets, weeks and seeds; `./test soak` runs it.
#[test]
#[ignore = "takes minutes"]
fn many_weeks_through_an_unruly_synchroniser() {
    for seed in 1..=2 {
        Weeks {
            tables: 28,
            seats_a_table: 1,
            weeks: 36,
            seed,
        }
        .pass();
    }
}
