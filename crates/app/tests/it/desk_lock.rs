//! The lock of the desk.

use crate::support::{Device, class_and_tablet, hand_in, rate};
use std::fs;
use std::path::{Path, PathBuf};
use surefoot_app::{
    BackUp, CALLS, Call, CallError, ClassId, CopyKind, DeskIdle, DeskLock, DeskPassphrase, Door,
    IDLE_MINUTES, ImportAsked, ImportFrom, JobResult, NameSeat, NewDeskLock, Nothing, OpenSealed,
    RestoreCopy, Restored, SeatId, StoreName, Unlocked, dispatch,
};
use surefoot_catalogue::rating::Confidence;
use surefoot_exchange::Refusal;
use surefoot_record::{Field, Rule};
use surefoot_store::desk::key_facts;
use surefoot_store::{DeskStore, Durability};
use surefoot_test_support::store::{cell, execute};

const WORDS: &str = "seven quiet rivers";
const OTHER: &str = "nine loud mountains";
const TODAY: &str = "2026-09-01";

fn change(device: &Device, current: Option<&str>, new: Option<&str>) -> Unlocked {
    let asked = NewDeskLock {
        current: current.map(Into::into),
        passphrase: new.map(Into::into),
    };
    device.app.device.set_desk_lock(asked).unwrap()
}

fn unlock(device: &Device, words: &str) -> Unlocked {
    let typed = DeskPassphrase {
        passphrase: words.into(),
    };
    device.app.device.unlock_desk(typed).unwrap()
}

fn state(device: &Device) -> (bool, bool, Option<u32>) {
    let DeskLock {
        has_lock,
        locked,
        idle_minutes,
    } = device.app.device.desk_lock(Nothing {}).unwrap();
    (has_lock, locked, idle_minutes)
}

fn desk_file(device: &Device) -> PathBuf {
    device.folder.path().join("data/own/desk.sqlite")
}

fn names(device: &Device, class: &str) -> Vec<Option<String>> {
    let id = ClassId {
        class: class.into(),
    };
    let setup = device.app.desk.class_setup(id).unwrap();
    setup.seats.into_iter().map(|seat| seat.name).collect()
}

fn refused<T: std::fmt::Debug>(answer: Result<T, CallError>) {
    assert_eq!(answer.unwrap_err(), CallError::DeskLocked);
}

fn back_up(device: &Device, words: &str) -> PathBuf {
    let asked = BackUp {
        store: StoreName::Desk,
        passphrase: words.into(),
    };
    let made = device.app.device.back_up(asked).unwrap();
    device.hands.saved.join(made.file_name)
}

fn restore(device: &Device, backup: &Path, words: &str) -> Result<Restored, CallError> {
    device.hands.will_pick(backup);
    let picked = device.app.device.pick_backup(Nothing {}).unwrap().unwrap();
    device.app.device.restore_backup(OpenSealed {
        picked: picked.picked,
        passphrase: words.into(),
    })
}

/// The files under a folder that hold one of these.
fn holding(folder: &Path, words: &[Vec<u8>]) -> Vec<String> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(holding(&path, words));
            continue;
        }
        let bytes = fs::read(&path).unwrap();
        for word in words {
            if bytes.windows(word.len()).any(|some| some == word) {
                found.push(format!("{}: {word:?}", path.display()));
            }
        }
    }
    found
}

/// A desk with a class, days of work and copies, and what must be in no file of a locked desk.
fn worked() -> (Device, String, Vec<Vec<u8>>) {
    let (mut desk, class, tablet, sky) = class_and_tablet(TODAY);
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let inbox = tempfile::tempdir().unwrap();
    let file = inbox.path().join("from Amara.sfhandin");
    fs::copy(hand_in(&tablet, &sky), &file).unwrap();
    desk.import(inbox.path());
    for today in ["2026-09-02", "2026-09-03"] {
        desk.to(today);
        desk.app.device.start(Nothing {}).unwrap();
    }
    let path = desk_file(&desk);
    let store = DeskStore::open(&path, Durability::Full).unwrap();
    let row = &store.classes().unwrap()[0];
    let mut secrets = vec![
        row.sealing_identity.clone().into_bytes(),
        row.signing_seed.to_vec(),
        b"from Amara".to_vec(),
        b"Amara".to_vec(),
        b"Carlos".to_vec(),
        // The key before, and what it seals.
        cell(&path, "SELECT secret FROM data_key"),
        cell(&path, "SELECT name FROM seat WHERE number = 1"),
        cell(&path, "SELECT signing_seed FROM class"),
    ];
    secrets.extend(
        (store.seats(&class).unwrap().into_iter()).map(|seat| seat.token.clone().into_bytes()),
    );
    (desk, class, secrets)
}

#[test]
fn a_locked_desk_has_no_name_and_no_key_in_any_file() {
    let (mut desk, class, secrets) = worked();
    let data = desk.folder.path().join("data");
    assert!(
        holding(&data, &secrets[5..6]).len() >= 3,
        "the key lies in the desk and its copies"
    );
    assert_eq!(state(&desk), (false, false, None));
    assert_eq!(change(&desk, None, Some(WORDS)), Unlocked::Open);
    assert_eq!(state(&desk), (true, false, Some(10)));
    assert_eq!(holding(&data, &secrets), Vec::<String>::new());
    let copies = desk.app.device.copies(StoreName::Desk).unwrap();
    assert_eq!((copies.copies.len(), copies.readable), (1, 0));
    // Work while it is unlocked.
    let seat = NameSeat {
        class: class.clone(),
        seat: 2,
        name: Some("Zebedee Quill".into()),
    };
    desk.app.desk.name_seat(seat).unwrap();
    let mut secrets = secrets;
    secrets.push(b"Zebedee".to_vec());
    desk.to("2026-09-04");
    assert_eq!(unlock(&desk, WORDS), Unlocked::Open);
    let wanted = ["Amara", "Zebedee Quill", "Carlos"].map(|name| Some(name.to_owned()));
    assert_eq!(names(&desk, &class), wanted);
    assert_eq!(holding(&data, &secrets), Vec::<String>::new());

    // Another passphrase: the one before opens neither the desk nor a copy.
    let kept = cell(&desk_file(&desk), "SELECT secret FROM data_key");
    assert_eq!(change(&desk, Some(WORDS), Some(OTHER)), Unlocked::Open);
    assert_eq!(holding(&data, &[kept]), Vec::<String>::new());
    assert_eq!(names(&desk, &class), wanted);
    desk.to("2026-09-05");
    assert_eq!(
        unlock(&desk, WORDS),
        Unlocked::Wrong { wait_seconds: 0 },
        "the passphrase before"
    );
    assert_eq!(unlock(&desk, OTHER), Unlocked::Open);
    assert_eq!(holding(&data, &secrets), Vec::<String>::new());

    assert_eq!(change(&desk, Some(OTHER), None), Unlocked::Open);
    assert_eq!(state(&desk), (false, false, None));
    desk.to("2026-09-06");
    assert_eq!(names(&desk, &class), wanted);
    let copies = desk.app.device.copies(StoreName::Desk).unwrap();
    assert!(!copies.copies.is_empty());
}

#[test]
fn no_call_about_a_locked_desk_answers() {
    let (mut desk, class, _) = worked();
    change(&desk, None, Some(WORDS));
    desk.app
        .desk
        .remove_seat(SeatId {
            class: class.clone(),
            seat: 3,
        })
        .unwrap();
    let locked = desk.app.device.lock_desk(Nothing {}).unwrap();
    assert!(locked.has_lock && locked.locked);
    let args = serde_json::json!({ "class": class, "store": { "kind": "desk" }, "kind": "desk",
        "name": "1.2026-09-01.sqlite", "passphrase": WORDS, "text": "x", "minutes": 5, "days": 5,
        "seat": 1, "from": "files", "before": null, "number": 1, "concept": "x", "current": null });
    for Call { name, door } in CALLS {
        if *door == Door::Desk {
            // Refused before its arguments are looked at.
            refused(dispatch(&desk.app, name, serde_json::Value::Null));
            continue;
        }
        let is_lock = matches!(
            *name,
            "desk_lock" | "unlock_desk" | "lock_desk" | "begin_new_desk"
        );
        let is_world = matches!(*name, "make_sample" | "enter_sample");
        if is_lock || is_world {
            continue;
        }
        let answer = dispatch(&desk.app, name, args.clone());
        let must = matches!(
            *name,
            "copies"
                | "restore_copy"
                | "back_up"
                | "remove_everything"
                | "use_desk"
                | "set_desk_lock"
                | "set_desk_idle"
        );
        match answer {
            Err(CallError::DeskLocked) => {}
            // The arguments of many calls do not fit.
            Err(CallError::BadArguments { .. }) => assert!(!must, "{name}"),
            Ok(value) => {
                let text = value.to_string();
                assert!(!must, "{name}: {text}");
                assert!(!text.contains("Carlos"), "{name}");
                // The projector without names has the title of the class.
                let without_names = matches!(*name, "projector_classes" | "projector");
                assert!(!text.contains("Room 7") || without_names, "{name}");
            }
            Err(error) => assert!(!must, "{name}: {error:?}"),
        }
    }
    let start = desk.app.device.start(Nothing {}).unwrap();
    assert!(start.desk_lock.locked && start.classes.is_empty() && start.removed.is_empty());
    assert!(start.damaged.is_empty() && start.years_over.is_empty());
    // The calls themselves refuse too, without the table.
    refused(
        desk.app
            .desk
            .imports(surefoot_app::JournalAsked { before: None }),
    );
    desk.to("2027-06-01");
    assert!(
        desk.app
            .device
            .start(Nothing {})
            .unwrap()
            .years_over
            .is_empty()
    );

    // The sample class has no lock.
    desk.to(TODAY);
    assert_eq!(unlock(&desk, WORDS), Unlocked::Open);
    assert_eq!(desk.app.device.start(Nothing {}).unwrap().classes.len(), 1);
}

#[test]
fn a_desk_that_nobody_uses_locks_itself() {
    let (mut desk, class, _) = worked();
    change(&desk, None, Some(WORDS));
    let idle = |desk: &Device, minutes| desk.app.device.set_desk_idle(DeskIdle { minutes });
    let board = |desk: &Device| {
        let class = class.clone();
        desk.app.desk.board(ClassId { class })
    };
    for minutes in IDLE_MINUTES {
        idle(&desk, Some(minutes)).unwrap();
        let minutes = u64::from(minutes);
        desk.pass(minutes - 1);
        board(&desk).unwrap();
        desk.pass(minutes - 1);
        // The class folder and asking for the state are no use.
        desk.app.desk.class_folder(Nothing {}).unwrap();
        assert!(!state(&desk).1);
        desk.pass(1);
        assert!(state(&desk).1, "{minutes}");
        refused(board(&desk));
        assert!(matches!(unlock(&desk, WORDS), Unlocked::Open));
        // Somebody who only reads.
        for _ in 0..3 {
            desk.pass(minutes - 1);
            desk.app.device.use_desk(Nothing {}).unwrap();
        }
        board(&desk).unwrap();
        desk.pass(minutes);
        refused(desk.app.device.use_desk(Nothing {}));
        assert!(matches!(unlock(&desk, WORDS), Unlocked::Open));
    }
    idle(&desk, None).unwrap();
    desk.pass(100_000);
    board(&desk).unwrap();
    assert!(matches!(
        idle(&desk, Some(7)),
        Err(CallError::Invalid { rule, .. }) if rule == Rule::Range
    ));
    idle(&desk, Some(30)).unwrap();
    desk.to("2026-09-04");
    assert_eq!(state(&desk), (true, true, Some(30)), "asked on opening");
    refused(board(&desk));
}

#[test]
fn wrong_passphrases_wait_also_after_a_restart() {
    let (mut desk, _, _) = worked();
    change(&desk, None, Some(WORDS));
    desk.to("2026-09-04");
    for wait_seconds in [0, 0, 5] {
        assert_eq!(unlock(&desk, "no"), Unlocked::Wrong { wait_seconds });
    }
    let waits = |answer: Unlocked| match answer {
        Unlocked::Wait { wait_seconds } => wait_seconds,
        other => panic!("{other:?}"),
    };
    assert!(
        (1..=5).contains(&waits(unlock(&desk, WORDS))),
        "not checked"
    );
    desk.to("2026-09-04");
    assert!((1..=5).contains(&waits(unlock(&desk, WORDS))), "a restart");
    desk.pass(1);
    assert_eq!(unlock(&desk, "no"), Unlocked::Wrong { wait_seconds: 10 });
    desk.pass(1);
    assert_eq!(unlock(&desk, WORDS), Unlocked::Open);
    // The passphrase now is asked before another, and its wrong tries count too.
    for wait_seconds in [0, 0, 5] {
        let answer = change(&desk, Some("no"), Some(OTHER));
        assert_eq!(answer, Unlocked::Wrong { wait_seconds });
    }
    assert!(matches!(change(&desk, None, None), Unlocked::Wait { .. }));
    desk.pass(1);
    assert_eq!(unlock(&desk, WORDS), Unlocked::Open);
    let short = NewDeskLock {
        current: Some(WORDS.into()),
        passphrase: Some("seven q".into()),
    };
    assert!(matches!(
        desk.app.device.set_desk_lock(short),
        Err(CallError::Refused { refusal: Refusal::BadContent { at } }) if at == "passphrase"
    ));
}

#[test]
fn a_backup_is_the_way_back_and_the_locked_desk_stays() {
    let (mut desk, class, secrets) = worked();
    change(&desk, None, Some(WORDS));
    let backup = back_up(&desk, OTHER);
    let data = desk.folder.path().join("data");
    assert_eq!(holding(&data, &secrets), Vec::<String>::new());
    let kept = key_facts(&desk_file(&desk)).unwrap();

    // Restored while the desk is open, it keeps the lock and its key.
    assert!(restore(&desk, &backup, OTHER).unwrap().quarantined);
    assert_eq!(state(&desk), (true, false, Some(10)));
    assert_eq!(key_facts(&desk_file(&desk)).unwrap().number, kept.number);
    assert_eq!(names(&desk, &class)[0].as_deref(), Some("Amara"));
    assert_eq!(holding(&data, &secrets), Vec::<String>::new());

    // Forgotten: neither copies nor the backup without its own passphrase open the desk.
    desk.to("2026-09-04");
    let name = || "1.2026-09-01.sqlite".to_owned();
    let store = StoreName::Desk;
    refused(desk.app.device.copies(store.clone()));
    let asked = RestoreCopy {
        store: store.clone(),
        name: name(),
    };
    refused(desk.app.device.restore_copy(asked));
    assert!(matches!(
        restore(&desk, &backup, WORDS),
        Err(CallError::Refused { .. })
    ));
    assert!(state(&desk).1);
    let done = restore(&desk, &backup, OTHER).unwrap();
    assert!(done.quarantined && !done.start.desk_lock.has_lock);
    assert_eq!(done.start.classes.len(), 1);
    assert_eq!(names(&desk, &class)[2].as_deref(), Some("Carlos"));
    assert_ne!(key_facts(&desk_file(&desk)).unwrap().number, kept.number);

    // The locked desk is still there, and asks for its passphrase again.
    let copies = desk.app.device.copies(store.clone()).unwrap().copies;
    let replaced = copies.iter().filter(|copy| copy.kind == CopyKind::Replaced);
    assert_eq!(replaced.count(), 2);
    let newest = copies
        .into_iter()
        .find(|copy| copy.kind == CopyKind::Replaced);
    let asked = RestoreCopy {
        store,
        name: newest.unwrap().name,
    };
    let done = desk.app.device.restore_copy(asked).unwrap();
    assert!(done.start.desk_lock.locked && done.start.classes.is_empty());
    assert_eq!(unlock(&desk, WORDS), Unlocked::Open);
    assert_eq!(names(&desk, &class)[0].as_deref(), Some("Amara"));
    // The desk that it replaced, and its copy of the day, open without a passphrase. The
    // screen counts them, and a change of the lock wipes them.
    let readable = |desk: &Device| desk.app.device.copies(StoreName::Desk).unwrap().readable;
    assert_eq!(readable(&desk), 2);
    assert_eq!(change(&desk, Some(WORDS), Some(OTHER)), Unlocked::Open);
    assert_eq!(readable(&desk), 0);
    assert_eq!(holding(&data, &secrets), Vec::<String>::new());
}

#[test]
fn an_empty_desk_takes_the_place_of_one_that_nobody_can_open() {
    let (mut desk, class, _) = worked();
    let begin = |desk: &Device| desk.app.device.begin_new_desk(Nothing {});
    assert!(matches!(begin(&desk), Err(CallError::Invalid { .. })));
    change(&desk, None, Some(WORDS));
    assert!(matches!(begin(&desk), Err(CallError::Invalid { .. })));
    desk.to("2026-09-04");
    let done = begin(&desk).unwrap();
    assert!(done.quarantined && done.start.classes.is_empty());
    assert!(!done.start.desk_lock.has_lock);
    let other = desk.new_class("Room 9 (invented)", &["Eve"]).id;
    assert_eq!(names(&desk, &other).len(), 1);
    let copies = desk.app.device.copies(StoreName::Desk).unwrap().copies;
    let asked = RestoreCopy {
        store: StoreName::Desk,
        name: (copies
            .into_iter()
            .find(|copy| copy.kind == CopyKind::Replaced))
        .unwrap()
        .name,
    };
    assert!(
        desk.app
            .device
            .restore_copy(asked)
            .unwrap()
            .start
            .desk_lock
            .locked
    );
    assert_eq!(unlock(&desk, WORDS), Unlocked::Open);
    assert_eq!(names(&desk, &class).len(), 3);
}

#[test]
fn an_import_finishes_behind_the_lock_and_tells_its_report_later() {
    let (desk, _, tablet, sky) = class_and_tablet(TODAY);
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let inbox = tempfile::tempdir().unwrap();
    for number in 0..40 {
        let name = format!("{number}.sfhandin");
        fs::copy(hand_in(&tablet, &sky), inbox.path().join(name)).unwrap();
    }
    change(&desk, None, Some(WORDS));
    desk.hands.will_pick(inbox.path());
    let asked = ImportAsked {
        from: ImportFrom::Folder,
    };
    let job = desk.app.desk.import_hand_ins(asked).unwrap().unwrap();
    desk.app.device.lock_desk(Nothing {}).unwrap();
    for _ in 0..200 {
        let state = desk.app.device.job(job).unwrap();
        assert!(state.result.is_none(), "it names files");
        if state.total > 0 && state.done == state.total {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(20));
    }
    // The report of the finished import waits until the desk is unlocked.
    assert_eq!(unlock(&desk, WORDS), Unlocked::Open);
    match desk.finish(job) {
        JobResult::Import { report } => assert_eq!(report.tally.files(), 40),
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_change_of_the_lock_that_was_cut_short_is_finished_at_the_next_opening() {
    let (mut desk, class, secrets) = worked();
    let data = desk.folder.path().join("data");
    // The copies that a kill left after the desk was replaced.
    let copies = data.join("own/copies/desk");
    let kept = desk.folder.path().join("kept");
    fs::create_dir(&kept).unwrap();
    for entry in fs::read_dir(&copies).unwrap() {
        let path = entry.unwrap().path();
        fs::copy(&path, kept.join(path.file_name().unwrap())).unwrap();
    }
    let before = key_facts(&desk_file(&desk)).unwrap().number;
    change(&desk, None, Some(WORDS));
    desk.close();
    for entry in fs::read_dir(&kept).unwrap() {
        let path = entry.unwrap().path();
        fs::copy(&path, copies.join(path.file_name().unwrap())).unwrap();
    }
    fs::remove_dir_all(&kept).unwrap();
    let number: String = before.iter().map(|byte| format!("{byte:02x}")).collect();
    let sql = format!("UPDATE data_key SET replaces = x'{number}' WHERE replaces IS NULL");
    execute(&desk_file(&desk), &sql);
    assert!(!holding(&data, &secrets).is_empty());
    desk.to("2026-09-04");
    assert_eq!(unlock(&desk, WORDS), Unlocked::Open);
    assert_eq!(names(&desk, &class).len(), 3);
    assert_eq!(holding(&data, &secrets), Vec::<String>::new());
}

#[test]
fn a_locked_desk_among_the_copies_is_not_removed() {
    let (mut desk, class, _) = worked();
    change(&desk, None, Some(WORDS));
    desk.to("2026-09-04");
    desk.app.device.begin_new_desk(Nothing {}).unwrap();
    assert_eq!(
        desk.app.device.remove_everything(Nothing {}),
        Err(CallError::Invalid {
            field: Field::Copies,
            rule: Rule::Locked,
        })
    );
    assert_eq!(restore_replaced(&desk), Unlocked::Open);
    assert_eq!(names(&desk, &class)[0].as_deref(), Some("Amara"));
    desk.app.device.remove_everything(Nothing {}).unwrap();
    assert!(!desk_file(&desk).exists());
}

/// Goes back to the newest replaced desk and unlocks it.
fn restore_replaced(desk: &Device) -> Unlocked {
    let copies = desk.app.device.copies(StoreName::Desk).unwrap().copies;
    let newest = copies
        .into_iter()
        .find(|copy| copy.kind == CopyKind::Replaced);
    let asked = RestoreCopy {
        store: StoreName::Desk,
        name: newest.unwrap().name,
    };
    desk.app.device.restore_copy(asked).unwrap();
    unlock(desk, WORDS)
}

#[test]
fn going_back_to_a_copy_saves_no_wait() {
    let (mut desk, _, _) = worked();
    change(&desk, None, Some(WORDS));
    // A copy of a day without wrong tries.
    desk.to("2026-09-04");
    assert_eq!(unlock(&desk, WORDS), Unlocked::Open);
    desk.to("2026-09-05");
    for wait_seconds in [0, 0, 5] {
        assert_eq!(unlock(&desk, "no"), Unlocked::Wrong { wait_seconds });
    }
    desk.app.device.begin_new_desk(Nothing {}).unwrap();
    let copies = desk.app.device.copies(StoreName::Desk).unwrap().copies;
    let daily = (copies.into_iter()).filter(|copy| copy.kind == CopyKind::Daily);
    let names: Vec<_> = daily.map(|copy| copy.name).collect();
    assert!(!names.is_empty());
    for name in names {
        let asked = RestoreCopy {
            store: StoreName::Desk,
            name,
        };
        let done = desk.app.device.restore_copy(asked).unwrap();
        if done.start.desk_lock.has_lock {
            assert!(matches!(unlock(&desk, "no"), Unlocked::Wait { .. }));
            desk.app.device.begin_new_desk(Nothing {}).unwrap();
        }
    }
}

#[test]
fn a_copy_that_cannot_be_wiped_keeps_no_other_readable_and_is_told() {
    let (desk, _, secrets) = worked();
    let copies = desk.folder.path().join("data/own/copies/desk");
    let mut made: Vec<_> = fs::read_dir(&copies).unwrap().flatten().collect();
    made.retain(|file| file.file_name().to_string_lossy().ends_with(".sqlite"));
    assert!(made.len() > 1, "{made:?}");
    made.sort_by_key(fs::DirEntry::file_name);
    // A folder has the name of a file beside the newest copy, which is the first to go.
    let mut beside = made.pop().unwrap().path().into_os_string();
    beside.push("-shm");
    fs::create_dir(&beside).unwrap();
    assert_eq!(change(&desk, None, Some(WORDS)), Unlocked::Open);
    assert_eq!(state(&desk), (true, false, Some(10)));
    let data = desk.folder.path().join("data");
    assert_eq!(holding(&data, &secrets), Vec::<String>::new());
    let found = || desk.app.device.copies(StoreName::Desk).unwrap();
    assert!(found().lock_trouble.is_some() && found().trouble.is_none());
}

#[test]
fn a_locked_desk_shows_a_projector_without_names_and_numbers() {
    let (desk, class, _) = worked();
    let shown = || {
        let asked = ClassId {
            class: class.clone(),
        };
        desk.app.device.projector(asked).unwrap()
    };
    let open = shown();
    change(&desk, None, Some(WORDS));
    desk.app.device.lock_desk(Nothing {}).unwrap();
    assert!(state(&desk).1);
    let titles = desk.app.device.projector_classes(Nothing {}).unwrap();
    assert_eq!(titles[0].id, class);
    let view = shown();
    assert_eq!(view, open);
    assert!(view.concepts.iter().any(|one| one.exercise.is_some()));
    let said = serde_json::to_string(&view).unwrap();
    // The first is called Amara, as one of the invented people of the exercises.
    for name in ["Bao", "Carlos"] {
        assert!(!said.contains(name), "{name}");
    }
    // It has nothing but this, in the order of the review.
    let keys = |value: &serde_json::Value| -> Vec<String> {
        value.as_object().unwrap().keys().cloned().collect()
    };
    let json = serde_json::to_value(&view).unwrap();
    assert_eq!(keys(&json), ["concepts", "day"]);
    for one in json["concepts"].as_array().unwrap() {
        assert_eq!(keys(one), ["concept", "exercise"]);
    }
    // The desk itself stays locked.
    refused(desk.app.desk.class_setup(ClassId { class }));
}
