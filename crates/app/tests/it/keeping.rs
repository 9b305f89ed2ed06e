//! Copies, backups, and what happens when a store is damaged.

use crate::support::{Device, class_and_tablet, date, hand_in, rate, rating, seat_code};
use std::fs;
use std::path::PathBuf;
use surefoot_app::{
    BackUp, CallError, ClassId, CopyKind, Nothing, OpenSealed, RestoreCopy, StoreName,
};
use surefoot_catalogue::rating::Confidence;
use surefoot_desk::Verdict;
use surefoot_exchange::Refusal;

const WORDS: &str = "seven quiet rivers";

fn of(student: &str) -> StoreName {
    StoreName::Student {
        student: student.into(),
    }
}

fn store_file(device: &Device, student: &str) -> PathBuf {
    let file = format!("data/own/students/{student}.sqlite");
    device.folder.path().join(file)
}

fn back_up(device: &Device, store: StoreName) -> PathBuf {
    let asked = BackUp {
        store,
        passphrase: WORDS.into(),
    };
    let made = device.app.device.back_up(asked).unwrap();
    device.hands.saved.join(made.file_name)
}

fn restore(
    device: &Device,
    backup: &std::path::Path,
    words: &str,
) -> Result<surefoot_app::Restored, CallError> {
    device.hands.will_pick(backup);
    let picked = device.app.device.pick_backup(Nothing {}).unwrap().unwrap();
    device.app.device.restore_backup(OpenSealed {
        picked: picked.picked,
        passphrase: words.into(),
    })
}

/// Overwrites the middle of a store while the program is closed; its log, which could
/// replace those pages, is gone.
fn damage(device: &mut Device, file: &std::path::Path, today: &str) -> Vec<u8> {
    device.close();
    for end in ["-wal", "-shm"] {
        fs::remove_file(format!("{}{end}", file.display())).unwrap();
    }
    let mut bytes = fs::read(file).unwrap();
    for byte in bytes.iter_mut().skip(5_000).take(40_000) {
        *byte = 0xA5;
    }
    fs::write(file, &bytes).unwrap();
    device.to(today);
    bytes
}

#[test]
fn a_students_backup_opens_on_a_new_tablet_and_hands_in_for_the_same_seat() {
    let (desk, _, tablet, student) = class_and_tablet("2026-09-01");
    rate(&tablet, &student, Confidence::OnMyOwn);
    let inbox = tempfile::tempdir().unwrap();
    fs::copy(hand_in(&tablet, &student), inbox.path().join("1.sfhandin")).unwrap();
    let backup = back_up(&tablet, of(&student));
    let bytes = fs::read(&backup).unwrap();
    assert!(bytes.starts_with(b"age-encryption.org/v1\n-> scrypt "));
    assert!(!bytes.windows(6).any(|w| w == b"SQLite"));

    let new = Device::on("2026-09-02");
    assert_eq!(
        restore(&new, &backup, "seven quiet river").unwrap_err(),
        CallError::Refused {
            refusal: Refusal::WrongPassphrase
        }
    );
    // The passphrase can be typed again without picking the file again.
    let restored = new
        .app
        .device
        .restore_backup(OpenSealed {
            picked: 1,
            passphrase: WORDS.into(),
        })
        .unwrap();
    assert!(!restored.quarantined);
    assert_eq!(restored.start.students[0].nickname, "Sky");
    assert_eq!(
        rating(&new, &student, "2026-09-01"),
        Some(Confidence::OnMyOwn)
    );
    rate(&new, &student, Confidence::NotYet);
    fs::copy(hand_in(&new, &student), inbox.path().join("2.sfhandin")).unwrap();
    let report = desk.import(inbox.path());
    assert!(
        report.files.iter().all(|f| f.verdict == Verdict::New),
        "{report:?}"
    );
}

#[test]
fn one_damaged_student_is_named_and_the_others_go_on() {
    let (desk, class, mut tablet, sky) = class_and_tablet("2026-09-01");
    let pack = desk.pack_of(&class);
    let rain = tablet
        .join(&pack, &seat_code(&desk, &class, 1), "Rain")
        .unwrap()
        .id;
    rate(&tablet, &sky, Confidence::OnMyOwn);
    rate(&tablet, &rain, Confidence::WithHelp);
    // The first use on the next day makes a copy; a tap follows.
    tablet.to("2026-09-02");
    tablet.app.device.start(Nothing {}).unwrap();
    rate(&tablet, &sky, Confidence::NotYet);
    let file = store_file(&tablet, &sky);
    let bytes = damage(&mut tablet, &file, "2026-09-02");

    let start = tablet.app.device.start(Nothing {}).unwrap();
    assert_eq!(start.students.len(), 1);
    assert_eq!(start.students[0].nickname, "Rain");
    let [damaged] = &start.damaged[..] else {
        panic!("{:?}", start.damaged);
    };
    assert_eq!(damaged.store, of(&sky));
    assert_eq!(damaged.nickname.as_deref(), Some("Sky"));
    assert!(
        matches!(damaged.why, CallError::DamagedStore { .. }),
        "{damaged:?}"
    );
    assert_eq!(
        rating(&tablet, &rain, "2026-09-01"),
        Some(Confidence::WithHelp)
    );
    assert_eq!(fs::read(&file).unwrap(), bytes, "looked at, not touched");

    let good = damaged.last_good.clone().unwrap();
    assert_eq!(good.made_on, Some(date("2026-09-02")));
    let restored = tablet
        .app
        .device
        .restore_copy(RestoreCopy {
            store: of(&sky),
            name: good.name,
        })
        .unwrap();
    assert!(restored.quarantined);
    assert!(restored.start.damaged.is_empty());
    assert_eq!(restored.start.students.len(), 2);
    assert_eq!(
        rating(&tablet, &sky, "2026-09-01"),
        Some(Confidence::OnMyOwn)
    );
    // The damaged file is in quarantine as it was.
    let copies = tablet.app.device.copies(of(&sky)).unwrap().copies;
    let replaced = copies
        .iter()
        .find(|c| c.kind == CopyKind::Replaced)
        .unwrap();
    let replaced = tablet
        .folder
        .path()
        .join("data/own/quarantine")
        .join(&replaced.name);
    assert_eq!(fs::read(replaced).unwrap(), bytes);
}

#[test]
fn an_emptied_or_missing_store_is_damage_and_no_new_beginning() {
    let (_, _, mut tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    for emptied in [true, false] {
        tablet.to("2026-09-02");
        tablet.app.device.start(Nothing {}).unwrap();
        tablet.close();
        let file = store_file(&tablet, &sky);
        if emptied {
            fs::write(&file, b"").unwrap();
        } else {
            fs::remove_file(&file).unwrap();
        }
        tablet.to("2026-09-02");
        let start = tablet.app.device.start(Nothing {}).unwrap();
        assert!(start.students.is_empty());
        assert_eq!(start.damaged[0].store, of(&sky));
        let name = start.damaged[0].last_good.clone().unwrap().name;
        let store = of(&sky);
        tablet
            .app
            .device
            .restore_copy(RestoreCopy { store, name })
            .unwrap();
        assert_eq!(
            rating(&tablet, &sky, "2026-09-01"),
            Some(Confidence::OnMyOwn)
        );
    }
}

#[test]
fn a_damaged_desk_leaves_the_students_alone_and_comes_back_from_its_copy() {
    let (mut desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let inbox = tempfile::tempdir().unwrap();
    fs::copy(hand_in(&tablet, &sky), inbox.path().join("1.sfhandin")).unwrap();
    desk.import(inbox.path());
    let pack = desk.pack_of(&class);
    desk.join(&pack, &seat_code(&desk, &class, 1), "Rain")
        .unwrap();
    let file = desk.folder.path().join("data/own/desk.sqlite");
    damage(&mut desk, &file, "2026-09-01");
    let start = desk.app.device.start(Nothing {}).unwrap();
    assert_eq!(start.students.len(), 1);
    assert!(start.classes.is_empty());
    let damaged = &start.damaged[0];
    assert_eq!(damaged.store, StoreName::Desk);
    // The copy was made after the import, so it holds all of it.
    let name = damaged.last_good.clone().unwrap().name;
    let restored = desk
        .app
        .device
        .restore_copy(RestoreCopy {
            store: StoreName::Desk,
            name,
        })
        .unwrap();
    assert_eq!(restored.start.classes.len(), 1);
    let board = desk
        .app
        .desk
        .board(ClassId {
            class: class.clone(),
        })
        .unwrap();
    assert_eq!(board.seats_reporting, 1);
    // A student's device has pack 1 and takes only a higher one.
    let before = restored.start.classes[0].pack_version;
    assert!(before > 100, "{before}");
}

#[test]
fn copies_rotate_and_a_restore_refuses_what_is_no_whole_store() {
    let (_, _, mut tablet, sky) = class_and_tablet("2026-09-01");
    for day in 2..=12 {
        tablet.to(&format!("2026-09-{day:02}"));
        tablet.app.device.start(Nothing {}).unwrap();
    }
    let copies = tablet.app.device.copies(of(&sky)).unwrap();
    assert_eq!(copies.trouble, None);
    let days: Vec<_> = copies.copies.iter().filter_map(|c| c.made_on).collect();
    let wanted = [12, 11, 10, 9, 8, 7].map(|day| date(&format!("2026-09-{day:02}")));
    assert_eq!(days, wanted);

    // A copy that is itself damaged does not take the store's place.
    let folder = tablet
        .folder
        .path()
        .join("data/own/copies/students")
        .join(&sky);
    let name = copies.copies[0].name.clone();
    let newest = folder.join(&name);
    let mut bytes = fs::read(&newest).unwrap();
    bytes.truncate(bytes.len() / 2);
    fs::write(&newest, bytes).unwrap();
    let before = rating(&tablet, &sky, "2026-09-01");
    let refused = tablet.app.device.restore_copy(RestoreCopy {
        store: of(&sky),
        name,
    });
    assert!(
        matches!(refused, Err(CallError::DamagedStore { .. })),
        "{refused:?}"
    );
    assert_eq!(rating(&tablet, &sky, "2026-09-01"), before);
    let led_out = tablet.app.device.restore_copy(RestoreCopy {
        store: of(&sky),
        name: "../../desk.sqlite".into(),
    });
    assert!(matches!(led_out, Err(CallError::NotFound { .. })));
    let leftovers = fs::read_dir(folder.parent().unwrap().join("../../students"))
        .unwrap()
        .filter(|e| {
            e.as_ref()
                .unwrap()
                .file_name()
                .to_string_lossy()
                .contains("part")
        })
        .count();
    assert_eq!(leftovers, 0);
}

#[test]
fn a_desks_backup_is_refused_where_it_is_not_whole_and_kept_where_it_is() {
    let (desk, class, _, _) = class_and_tablet("2026-09-01");
    let backup = back_up(&desk, StoreName::Desk);
    let other = Device::on("2026-09-01");
    let own = other.new_class("Room 9 (invented)", &["Dara"]).id;
    let restored = restore(&other, &backup, WORDS).unwrap();
    assert!(restored.quarantined);
    assert_eq!(restored.start.classes[0].id, class);
    // What was there before is in quarantine and can be restored.
    let replaced = other.app.device.copies(StoreName::Desk).unwrap().copies;
    let replaced = replaced
        .iter()
        .find(|c| c.kind == CopyKind::Replaced)
        .unwrap();
    let back = other
        .app
        .device
        .restore_copy(RestoreCopy {
            store: StoreName::Desk,
            name: replaced.name.clone(),
        })
        .unwrap();
    assert_eq!(back.start.classes[0].id, own);
    let mut bytes = fs::read(&backup).unwrap();
    let at = bytes.len() - 20;
    bytes[at] ^= 1;
    let bad = other.folder.path().join("bad.sfbackup");
    fs::write(&bad, bytes).unwrap();
    assert_eq!(
        restore(&other, &bad, WORDS).unwrap_err(),
        CallError::Refused {
            refusal: Refusal::Damaged
        }
    );
    let start = other.app.device.start(Nothing {}).unwrap();
    assert_eq!(start.classes[0].id, own);
}

#[test]
fn an_evening_with_a_wrong_clock_does_not_become_the_last_good_copy() {
    let (_, _, mut tablet, sky) = class_and_tablet("2026-09-01");
    tablet.to("2099-09-02");
    tablet.app.device.start(Nothing {}).unwrap();
    tablet.to("2026-09-03");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    tablet.to("2026-09-04");
    tablet.app.device.start(Nothing {}).unwrap();
    let file = store_file(&tablet, &sky);
    damage(&mut tablet, &file, "2026-09-04");
    let start = tablet.app.device.start(Nothing {}).unwrap();
    let good = start.damaged[0].last_good.clone().unwrap();
    assert_eq!(good.made_on, Some(date("2026-09-04")));
    let copies = tablet.app.device.copies(of(&sky)).unwrap().copies;
    let days: Vec<_> = copies.iter().map(|copy| copy.made_on).collect();
    let day = |text| Some(date(text));
    let wanted = [day("2026-09-04"), day("2026-09-03"), None];
    assert_eq!(days[..3], wanted, "a day that has not come is not believed");
    let (store, name) = (of(&sky), good.name);
    let asked = RestoreCopy { store, name };
    tablet.app.device.restore_copy(asked).unwrap();
    let found = rating(&tablet, &sky, "2026-09-03");
    assert_eq!(found, Some(Confidence::OnMyOwn));
    // What was replaced is newer than the copies that were there.
    let copies = tablet.app.device.copies(of(&sky)).unwrap().copies;
    assert_eq!(copies[0].kind, CopyKind::Replaced);
}
