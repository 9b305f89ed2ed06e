//! A removal leaves nothing in the store, its log, its copies and its journal.

use crate::class_folder::settle;
use crate::support::{Device, class_and_tablet, hand_in, rate, seat_code};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Stdio;
use surefoot_app::{
    CallError, ClassId, JournalAsked, Nothing, RemoveStudent, RemovedId, RemovedWhat, RestoreCopy,
    SeatId, StoreName, YearOver,
};
use surefoot_catalogue::rating::Confidence;
use surefoot_desk::ImportReport;
use surefoot_record::{Field, Thing};
use surefoot_store::{DeskStore, Durability};
use surefoot_test_support::store::cell;

/// The files under a folder that hold these bytes.
fn holding(folder: &Path, words: impl AsRef<[u8]>) -> Vec<String> {
    let words = words.as_ref();
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(holding(&path, words));
        } else {
            let bytes = fs::read(&path).unwrap();
            if bytes.windows(words.len()).any(|w| w == words) {
                found.push(path.display().to_string());
            }
        }
    }
    found
}

/// The sealed name of a seat, as the desk's file has it.
fn sealed_name(data: &Path, seat: u32) -> Vec<u8> {
    let sql = format!("SELECT name FROM seat WHERE number = {seat} ORDER BY rowid LIMIT 1");
    cell(&data.join("own/desk.sqlite"), &sql)
}

fn imports(desk: &Device) -> Vec<ImportReport> {
    let asked = JournalAsked { before: None };
    desk.app.desk.imports(asked).unwrap().imports
}

#[test]
fn a_student_leaves_the_tablet_without_a_trace_and_the_other_stays() {
    let (desk, class, mut tablet, sky) = class_and_tablet("2026-09-01");
    let pack = desk.pack_of(&class);
    let code = seat_code(&desk, &class, 1);
    let named = tablet.join(&pack, &code, "Cloudberry").unwrap().id;
    rate(&tablet, &named, Confidence::OnMyOwn);
    tablet.to("2026-09-02");
    tablet.app.device.start(Nothing {}).unwrap();
    let data = tablet.folder.path().join("data");
    assert!(holding(&data, "Cloudberry").len() >= 2, "store and copy");
    let asked = RemoveStudent {
        student: named.clone(),
    };
    let start = tablet.app.device.remove_student(asked.clone()).unwrap();
    assert_eq!(start.students.len(), 1);
    assert_eq!(start.students[0].id, sky);
    assert!(holding(&data, "Cloudberry").is_empty());
    assert!(!data.join("own/copies/students").join(&named).exists());
    assert!(matches!(
        tablet.app.device.remove_student(asked),
        Err(CallError::NotFound { .. })
    ));
}

#[test]
fn a_seat_and_a_class_leave_the_desk_without_a_trace() {
    let (mut desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    let other = desk.new_class("Room 9 (invented)", &["Dandelion"]).id;
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let inbox = tempfile::tempdir().unwrap();
    fs::copy(hand_in(&tablet, &sky), inbox.path().join("a.sfhandin")).unwrap();
    desk.import(inbox.path());
    desk.to("2026-09-02");
    desk.app.device.start(Nothing {}).unwrap();
    let data = desk.folder.path().join("data");
    let [amara, bao, carlos] = [1, 2, 3].map(|seat| sealed_name(&data, seat));
    assert!(holding(&data, &amara).len() >= 2, "desk and copies");
    let seat = || SeatId {
        class: class.clone(),
        seat: 1,
    };
    desk.app.desk.remove_seat(seat()).unwrap();
    assert!(
        holding(&data, &amara).is_empty(),
        "{:?}",
        holding(&data, &amara)
    );
    assert!(imports(&desk).is_empty());
    let id = || ClassId {
        class: class.clone(),
    };
    let setup = desk.app.desk.class_setup(id()).unwrap();
    assert_eq!(setup.seats.len(), 2);
    assert_eq!(setup.seats[0].name.as_deref(), Some("Bao"));
    // Hand-ins of the removed seat are refused.
    let report = desk.import(inbox.path());
    assert!(format!("{:?}", report.files[0].verdict).contains("SeatUnknown"));

    desk.app.desk.delete_class(id()).unwrap();
    let start = desk.app.device.start(Nothing {}).unwrap();
    assert_eq!(start.classes.len(), 1);
    assert_eq!(start.classes[0].id, other);
    for gone in [bao.as_slice(), &carlos, b"Room 7"] {
        assert!(holding(&data, gone).is_empty(), "{gone:?}");
    }
    assert!(!holding(&data, sealed_name(&data, 1)).is_empty());
    assert!(matches!(
        desk.app.desk.delete_class(id()),
        Err(CallError::NotFound { .. })
    ));
}

#[test]
fn everything_goes_at_once() {
    let (desk, class, _, _) = class_and_tablet("2026-09-01");
    let pack = desk.pack_of(&class);
    let code = seat_code(&desk, &class, 1);
    desk.join(&pack, &code, "Cloudberry").unwrap();
    let data = desk.folder.path().join("data");
    let amara = sealed_name(&data, 1);
    let start = desk.app.device.remove_everything(Nothing {}).unwrap();
    assert!(start.students.is_empty() && start.classes.is_empty() && start.damaged.is_empty());
    for gone in [b"Cloudberry".as_slice(), &amara, b"Room 7"] {
        assert!(holding(&data, gone).is_empty(), "{gone:?}");
    }
    // A new desk can be made.
    desk.new_class("Room 1 (invented)", &["Eve"]);
}

#[test]
fn the_end_of_the_year_asks_what_is_still_needed() {
    let (mut desk, class, mut tablet, sky) = class_and_tablet("2026-09-01");
    let over = |device: &Device| device.app.device.start(Nothing {}).unwrap().years_over;
    desk.to("2027-05-07");
    tablet.to("2027-05-07");
    assert!(over(&desk).is_empty() && over(&tablet).is_empty());
    desk.to("2027-05-08");
    tablet.to("2027-05-08");
    assert!(matches!(&over(&desk)[..], [YearOver::Class { class: c, .. }] if *c == class));
    assert!(matches!(&over(&tablet)[..], [YearOver::Student { student, .. }] if *student == sky));
}

#[test]
fn a_removal_can_be_undone_from_memory_until_it_is_discarded() {
    let (mut desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let inbox = tempfile::tempdir().unwrap();
    fs::copy(hand_in(&tablet, &sky), inbox.path().join("a.sfhandin")).unwrap();
    desk.import(inbox.path());
    desk.to("2026-09-02");
    let data = desk.folder.path().join("data");
    let id = || ClassId {
        class: class.clone(),
    };
    let board = |desk: &Device| desk.app.desk.board(id()).unwrap();
    let (seats, before) = (desk.app.desk.class_setup(id()).unwrap().seats, board(&desk));
    assert_eq!(before.seats_reporting, 1);
    let gone = |desk: &Device| {
        matches!(
            desk.app.desk.restore_removed(RemovedId { number: 1 }),
            Err(CallError::NotFound {
                what: Thing::Removed
            })
        )
    };
    assert!(gone(&desk), "nothing has been removed yet");

    let seat = SeatId {
        class: class.clone(),
        seat: 1,
    };
    let [amara, bao] = [1, 2].map(|seat| sealed_name(&data, seat));
    assert!(!holding(&data, &amara).is_empty());
    desk.app.desk.remove_seat(seat.clone()).unwrap();
    assert!(
        holding(&data, &amara).is_empty(),
        "gone from the disk at once"
    );
    let removed = desk.app.device.start(Nothing {}).unwrap().removed;
    assert_eq!(
        removed[0].what,
        RemovedWhat::Seat {
            seat: 1,
            name: Some("Amara".into())
        }
    );
    let back = |desk: &Device| {
        let number = desk.app.device.start(Nothing {}).unwrap().removed[0].number;
        desk.app.desk.restore_removed(RemovedId { number }).unwrap();
        desk.app.device.start(Nothing {}).unwrap()
    };
    assert!(back(&desk).removed.is_empty());
    assert_eq!(desk.app.desk.class_setup(id()).unwrap().seats, seats);
    assert_eq!(board(&desk), before);
    assert_eq!(imports(&desk).len(), 1);
    assert!(holding(&data, &amara).len() >= 2, "in today's copy too");
    assert!(gone(&desk), "restored once");

    desk.app.desk.delete_class(id()).unwrap();
    let start = desk.app.device.start(Nothing {}).unwrap();
    assert!(start.classes.is_empty() && start.removed.len() == 1);
    assert!(holding(&data, "Room 7").is_empty());
    let start = back(&desk);
    assert_eq!(start.classes[0].id, class);
    assert_eq!(board(&desk), before);

    // Several removals are kept; a seat can be restored only after its class.
    desk.app.desk.remove_seat(seat.clone()).unwrap();
    desk.app.desk.delete_class(id()).unwrap();
    let removed = desk.app.device.start(Nothing {}).unwrap().removed;
    let numbers: Vec<u32> = removed.iter().map(|one| one.number).collect();
    assert!(numbers[0] > numbers[1]);
    assert!(matches!(
        desk.app.desk.restore_removed(RemovedId { number: numbers[1] }),
        Err(CallError::Invalid { field, .. }) if field == Field::Removed
    ));
    assert_eq!(back(&desk).classes.len(), 1);
    back(&desk);
    assert_eq!(board(&desk), before);

    // A removal that is discarded, by hand or by closing the program, cannot be undone.
    desk.app.desk.remove_seat(seat.clone()).unwrap();
    let number = desk.app.device.start(Nothing {}).unwrap().removed[0].number;
    desk.app.desk.discard_removed(RemovedId { number }).unwrap();
    assert!(
        desk.app
            .device
            .start(Nothing {})
            .unwrap()
            .removed
            .is_empty()
    );
    assert!(gone(&desk));
    desk.app.desk.delete_class(id()).unwrap();
    desk.to("2026-09-03");
    assert!(
        desk.app
            .device
            .start(Nothing {})
            .unwrap()
            .removed
            .is_empty()
    );
    assert!(gone(&desk));
    assert!(holding(&data, &bao).is_empty());
}

/// A file system of its own on a file; nothing where mounting is not allowed.
#[cfg(target_os = "linux")]
struct Disk {
    image: PathBuf,
    at: PathBuf,
}

#[cfg(target_os = "linux")]
impl Disk {
    fn mounted(image: PathBuf, at: &Path) -> Option<Self> {
        fs::File::create(&image).unwrap().set_len(32 << 20).unwrap();
        let (file, folder) = (image.to_string_lossy(), at.to_string_lossy());
        let made = run("mkfs.ext4", &["-q", "-F", &file]);
        let mounted = made && run("mount", &["-o", "loop", &file, &folder]);
        let at = at.to_owned();
        mounted.then_some(Self { image, at })
    }

    /// How often these bytes are on the disk, in files or in blocks that no file has.
    fn holding(&self, bytes: &[u8]) -> usize {
        run("sync", &["-f", &self.at.to_string_lossy()]);
        let image = fs::read(&self.image).unwrap();
        image
            .windows(bytes.len())
            .filter(|some| *some == bytes)
            .count()
    }
}

#[cfg(target_os = "linux")]
impl Drop for Disk {
    fn drop(&mut self) {
        run("umount", &["-l", &self.at.to_string_lossy()]);
    }
}

#[cfg(target_os = "linux")]
fn run(program: &str, args: &[&str]) -> bool {
    let mut command = std::process::Command::new(program);
    let command = command
        .args(args)
        .stdout(Stdio::null())
        .stderr(Stdio::null());
    command.status().is_ok_and(|status| status.success())
}

/// What a removed seat must not leave: its sealed name and token, the sealed name of its file, its
/// device's id and signing key.
fn marks_of_first_seat(desk: &Device) -> Vec<Vec<u8>> {
    let path = desk.folder.path().join("data/own/desk.sqlite");
    let store = DeskStore::open(&path, Durability::Full).unwrap();
    let class = &store.classes().unwrap()[0].id;
    let seat = &store.seats(class).unwrap()[0];
    let device = &store.devices_of(class, seat.number).unwrap()[0];
    vec![
        cell(&path, "SELECT name FROM seat WHERE number = 1"),
        cell(&path, "SELECT token FROM seat WHERE number = 1"),
        cell(
            &path,
            "SELECT file_name FROM import_file WHERE seat = 1 LIMIT 1",
        ),
        device.device.clone().into_bytes(),
        device.signing_key.clone().into_bytes(),
    ]
}

#[test]
fn no_byte_of_a_removed_seat_stays_in_any_file_or_block() {
    let (mut desk, class, mut tablet, sky) = class_and_tablet("2026-09-01");
    let data = desk.folder.path().join("data");
    #[cfg(target_os = "linux")]
    let disk = {
        desk.close();
        let (kept, image) = (
            desk.folder.path().join("kept"),
            desk.folder.path().join("image"),
        );
        fs::rename(&data, &kept).unwrap();
        fs::create_dir(&data).unwrap();
        let disk = Disk::mounted(image, &data);
        let from = format!("{}/.", kept.display());
        assert!(run("cp", &["-a", &from, &data.to_string_lossy()]));
        if disk.is_none() {
            println!("the free blocks were left out: mounting a file system takes root");
        }
        desk.to("2026-09-01");
        disk
    };
    // Days of work: imports, refused files, a class folder, copies that rotate, a store that
    // was replaced.
    let inbox = tempfile::tempdir().unwrap();
    for day in 1..=9 {
        let today = format!("2026-09-{day:02}");
        tablet.to(&today);
        desk.to(&today);
        if day != 7 && day != 5 && day != 6 {
            rate(&tablet, &sky, Confidence::OnMyOwn);
        }
        let good = fs::read(hand_in(&tablet, &sky)).unwrap();
        fs::write(inbox.path().join(format!("{day}.sfhandin")), &good).unwrap();
        fs::write(
            inbox.path().join(format!("Amara {day}.sfhandin")),
            &good[..99],
        )
        .unwrap();
        desk.import(inbox.path());
    }
    let store = StoreName::Desk;
    let name = desk.app.device.copies(store.clone()).unwrap().copies[0]
        .name
        .clone();
    let asked = RestoreCopy { store, name };
    desk.app.device.restore_copy(asked).unwrap();
    desk.hands.will_pick(inbox.path());
    desk.app.desk.name_class_folder(Nothing {}).unwrap();
    settle(&desk);
    let marks = marks_of_first_seat(&desk);
    for mark in &marks {
        assert!(
            !holding(&data, mark).is_empty(),
            "{mark:?} is to be found before"
        );
    }
    #[cfg(target_os = "linux")]
    if let Some(disk) = &disk {
        for mark in &marks {
            assert!(disk.holding(mark) > 0, "{mark:?} is on the disk before");
        }
    }

    let seat = SeatId { class, seat: 1 };
    desk.app.desk.remove_seat(seat).unwrap();
    for mark in &marks {
        let found = holding(&data, mark);
        assert!(found.is_empty(), "{mark:?}: {found:?}");
    }
    #[cfg(target_os = "linux")]
    if let Some(disk) = &disk {
        for mark in &marks {
            assert_eq!(disk.holding(mark), 0, "{mark:?}");
        }
    }
    // Closed before the disk is unmounted.
    drop(desk);
}
