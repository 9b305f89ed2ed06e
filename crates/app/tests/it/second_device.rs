//! A student's second device by carry file, a teacher's second computer by class key.

use crate::support::{Device, class_and_tablet, hand_in, rate, rating, seat_code};
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use surefoot_app::{
    AddSeats, CallError, CarryAsked, CarryDone, ClassId, ClassKeyAsked, Nothing, OpenSealed,
    SavesPacks, StudentId,
};
use surefoot_catalogue::rating::Confidence;
use surefoot_desk::{SeatDeviceState, Verdict};
use surefoot_exchange::{Refusal, open_carry, seal_carry};
use surefoot_record::{Field, Rule};

const WORDS: &str = "seven quiet rivers";

pub fn carry(device: &Device, student: &str) -> PathBuf {
    let made = device
        .app
        .student
        .make_carry(CarryAsked {
            student: student.into(),
            passphrase: WORDS.into(),
        })
        .unwrap();
    device.hands.saved.join(made.file_name)
}

fn take(device: &Device, file: &Path, words: &str) -> Result<CarryDone, CallError> {
    device.hands.will_pick(file);
    let picked = device.app.student.pick_carry(Nothing {}).unwrap().unwrap();
    device.app.student.take_carry(OpenSealed {
        picked: picked.picked,
        passphrase: words.into(),
    })
}

#[test]
fn tablet_and_home_computer_hand_in_for_one_seat() {
    let (desk, class, mut tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let mut home = Device::on("2026-09-01");
    let file = carry(&tablet, &sky);
    assert_eq!(
        take(&home, &file, "not the words").unwrap_err(),
        CallError::Refused {
            refusal: Refusal::WrongPassphrase
        }
    );
    let done = take(&home, &file, WORDS).unwrap();
    assert!(done.new_here);
    assert_eq!((done.check_ins, done.answers), (1, 0));
    let at_home = done.student;
    let start = home.app.device.start(Nothing {}).unwrap();
    assert_eq!(start.students[0].nickname, "Sky");
    assert_eq!(
        rating(&home, &at_home, "2026-09-01"),
        Some(Confidence::OnMyOwn)
    );

    // Each device has entries of its own.
    home.to("2026-09-02");
    tablet.to("2026-09-03");
    rate(&home, &at_home, Confidence::NotYet);
    rate(&tablet, &sky, Confidence::WithHelp);
    let inbox = tempfile::tempdir().unwrap();
    fs::copy(hand_in(&tablet, &sky), inbox.path().join("a.sfhandin")).unwrap();
    fs::copy(hand_in(&home, &at_home), inbox.path().join("b.sfhandin")).unwrap();
    let mut desk = desk;
    desk.to("2026-09-03");
    let report = desk.import(inbox.path());
    assert!(
        report.files.iter().all(|f| f.verdict == Verdict::New),
        "{report:?}"
    );
    let setup = desk.app.desk.class_setup(ClassId { class }).unwrap();
    let states: Vec<_> = setup.seats[0].devices.iter().map(|d| d.state).collect();
    assert_eq!(states, [SeatDeviceState::Accepted; 2]);

    // After carrying both ways, both have all three days.
    let back = take(&tablet, &carry(&home, &at_home), WORDS).unwrap();
    assert!(!back.new_here);
    assert_eq!((back.student.as_str(), back.check_ins), (sky.as_str(), 1));
    assert_eq!(
        take(&tablet, &carry(&home, &at_home), WORDS)
            .unwrap()
            .check_ins,
        0
    );
    assert_eq!(
        take(&home, &carry(&tablet, &sky), WORDS).unwrap().check_ins,
        1
    );
    for (device, id) in [(&tablet, &sky), (&home, &at_home)] {
        let all = ["2026-09-01", "2026-09-02", "2026-09-03"].map(|day| rating(device, id, day));
        let wanted = [
            Confidence::OnMyOwn,
            Confidence::NotYet,
            Confidence::WithHelp,
        ]
        .map(Some);
        // The home computer has the date of the 2nd and shows no later day.
        assert_eq!(all[..2], wanted[..2]);
    }
}

#[test]
fn a_seat_that_was_joined_twice_keeps_both_keys_and_unites_what_was_done() {
    let (mut desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let mut home = Device::on("2026-09-01");
    let pack = desk.pack_of(&class);
    let code = seat_code(&desk, &class, 0);
    let at_home = home.join(&pack, &code, "Sky").unwrap().id;
    let key = |device: &Device, id: &str| {
        let file = hand_in(device, id);
        let opened = device
            .app
            .student
            .student_settings(StudentId { student: id.into() });
        (file, opened.unwrap().fingerprint)
    };
    let (first, on_tablet) = key(&tablet, &sky);
    let before = key(&home, &at_home).1;
    let done = take(&home, &carry(&tablet, &sky), WORDS).unwrap();
    assert!(!done.new_here);
    assert_eq!(
        (done.student.as_str(), done.check_ins),
        (at_home.as_str(), 1)
    );
    // Whoever knows the token can make a carry file, so no key is taken from one.
    home.to("2026-09-02");
    rate(&home, &at_home, Confidence::NotYet);
    let (second, after) = key(&home, &at_home);
    assert_eq!(before, after);
    assert_ne!(after, on_tablet);
    let inbox = tempfile::tempdir().unwrap();
    fs::copy(first, inbox.path().join("a.sfhandin")).unwrap();
    desk.to("2026-09-02");
    assert_eq!(desk.import(inbox.path()).files[0].verdict, Verdict::New);
    fs::copy(second, inbox.path().join("b.sfhandin")).unwrap();
    let report = desk.import(inbox.path());
    // The teacher decides about the second device, whose record is that of both.
    assert!(
        (report.files.iter()).any(|file| file.verdict == Verdict::Quarantined),
        "{report:?}"
    );
}

#[test]
fn a_carry_file_cannot_use_up_the_sequences_of_a_student() {
    let (_, _, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let file = carry(&tablet, &sky);
    let opened = open_carry(fs::File::open(&file).unwrap(), WORDS).unwrap();
    let forged = |at: u32| {
        let mut forged = opened.clone();
        forged.check_ins[0].confidence.as_mut().unwrap().at = at;
        let path = tablet.hands.saved.join("forged.sfcarry");
        fs::write(&path, seal_carry(&forged, WORDS).unwrap()).unwrap();
        take(&tablet, &path, WORDS)
    };
    for at in [u32::MAX, 1_000_002] {
        assert!(
            matches!(
                forged(at),
                Err(CallError::Refused { refusal: Refusal::BadContent { at } }) if at == "check_ins[0].confidence.at"
            ),
            "{at}"
        );
    }
    assert_eq!(forged(1_000_001).unwrap().check_ins, 1);
    rate(&tablet, &sky, Confidence::NotYet);
    assert_eq!(
        rating(&tablet, &sky, "2026-09-01"),
        Some(Confidence::NotYet)
    );
}

#[test]
fn the_names_of_files_say_nothing_of_the_student() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    let rain = tablet
        .join(&desk.pack_of(&class), &seat_code(&desk, &class, 1), "Rain")
        .unwrap()
        .id;
    let names: Vec<String> = [&sky, &sky, &rain, &rain]
        .into_iter()
        .flat_map(|student| [hand_in(&tablet, student), carry(&tablet, student)])
        .map(|file| file.file_name().unwrap().to_string_lossy().into_owned())
        .collect();
    let rest: BTreeSet<&str> = names
        .iter()
        .map(|name| {
            let kind = if name.ends_with(".sfcarry") {
                "carry"
            } else {
                "hand-in"
            };
            let end = if kind == "carry" {
                ".sfcarry"
            } else {
                ".sfhandin"
            };
            let signs = name.strip_prefix(&format!("{kind}-2026-09-01-")).unwrap();
            signs.strip_suffix(end).unwrap()
        })
        .collect();
    assert_eq!(rest.len(), names.len(), "{names:?}");
    assert!(rest.iter().all(|signs| signs.len() == 6), "{names:?}");
}

#[test]
fn a_short_passphrase_makes_no_file() {
    let (_, _, tablet, sky) = class_and_tablet("2026-09-01");
    let refused = tablet.app.student.make_carry(CarryAsked {
        student: sky,
        passphrase: "short".into(),
    });
    assert!(
        matches!(&refused, Err(CallError::Refused { refusal: Refusal::BadContent { at } }) if at == "passphrase"),
        "{refused:?}"
    );
    assert_eq!(fs::read_dir(&tablet.hands.saved).unwrap().count(), 0);
}

#[test]
fn a_second_computer_opens_the_classs_hand_ins() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let inbox = tempfile::tempdir().unwrap();
    fs::copy(hand_in(&tablet, &sky), inbox.path().join("a.sfhandin")).unwrap();
    let made = desk
        .app
        .desk
        .export_class(ClassKeyAsked {
            hand_over: false,
            class: class.clone(),
            passphrase: WORDS.into(),
        })
        .unwrap();
    let second = Device::on("2026-09-01");
    let add = |device: &Device| {
        device
            .hands
            .will_pick(&desk.hands.saved.join(&made.file_name));
        let picked = device.app.desk.pick_class_key(Nothing {}).unwrap().unwrap();
        device.app.desk.import_class(OpenSealed {
            picked: picked.picked,
            passphrase: WORDS.into(),
        })
    };
    add(&second).unwrap();
    let start = second.app.device.start(Nothing {}).unwrap();
    assert_eq!(start.classes[0].id, class);
    let id = || ClassId {
        class: class.clone(),
    };
    assert_eq!(
        second.app.desk.join_slips(id()).unwrap(),
        desk.app.desk.join_slips(id()).unwrap()
    );
    let report = second.import(inbox.path());
    assert_eq!(report.files[0].verdict, Verdict::New);
    assert_eq!(report.files[0].name.as_deref(), Some("Amara"));
    // Read again, it brings the second computer up to date; the first one knows more.
    add(&second).unwrap();
    assert!(matches!(
        add(&desk),
        Err(CallError::Invalid { rule, .. }) if rule == Rule::AlreadyHere
    ));
}

#[test]
fn one_computer_saves_the_packs_and_hands_that_over() {
    let (desk, class, _, _) = class_and_tablet("2026-09-01");
    let id = || ClassId {
        class: class.clone(),
    };
    let key = |from: &Device, hand_over| {
        let asked = ClassKeyAsked {
            class: class.clone(),
            passphrase: WORDS.into(),
            hand_over,
        };
        let made = from.app.desk.export_class(asked).unwrap();
        from.hands.saved.join(made.file_name)
    };
    let open = |device: &Device, file: &Path| {
        device.hands.will_pick(file);
        let picked = device.app.desk.pick_class_key(Nothing {}).unwrap().unwrap();
        device.app.desk.import_class(OpenSealed {
            picked: picked.picked,
            passphrase: WORDS.into(),
        })
    };
    let saves = |device: &Device| {
        let setup = device.app.desk.class_setup(id()).unwrap();
        (setup.summary.saves_packs, setup.summary.pack_outdated)
    };
    let refused = |device: &Device| match device.app.desk.save_class_pack(id()) {
        Err(CallError::Invalid { field, rule }) => {
            field == Field::ClassPack && rule == Rule::Elsewhere
        }
        _ => false,
    };
    let second = Device::on("2026-09-01");
    open(&second, &key(&desk, false)).unwrap();
    assert_eq!(
        (saves(&desk), saves(&second)),
        ((true, false), (false, false))
    );
    assert!(refused(&second));

    // What the first changed comes with the key that hands over.
    let names = vec!["Dora".to_owned()];
    let class_of = class.clone();
    let more = AddSeats {
        class: class_of,
        names,
    };
    desk.app.desk.add_seats(more).unwrap();
    let before = desk
        .app
        .desk
        .class_setup(id())
        .unwrap()
        .summary
        .pack_version;
    open(&second, &key(&desk, true)).unwrap();
    assert_eq!((saves(&desk).0, saves(&second)), (false, (true, true)));
    assert!(refused(&desk));
    let slips = |device: &Device| device.app.desk.join_slips(id()).unwrap();
    assert_eq!(slips(&second), slips(&desk));
    assert_eq!(slips(&second)[3].name.as_deref(), Some("Dora"));
    second.app.desk.save_class_pack(id()).unwrap();
    let setup = second.app.desk.class_setup(id()).unwrap();
    assert_eq!(setup.summary.pack_version, before + 1);

    // The first takes it back, above what the second may have given out, and undoes that.
    let set = |saves| {
        let class = class.clone();
        desk.app.desk.set_saves_packs(SavesPacks { class, saves })
    };
    let back = set(true).unwrap().summary;
    assert!(back.saves_packs && back.pack_version > before + 50);
    assert!(!set(false).unwrap().summary.saves_packs);
}

#[test]
fn an_older_class_key_is_refused() {
    let (desk, class, _, _) = class_and_tablet("2026-09-01");
    let second = Device::on("2026-09-01");
    let keys = tempfile::tempdir().unwrap();
    let key = |from: &Device, name: &str| {
        let asked = ClassKeyAsked {
            class: class.clone(),
            passphrase: WORDS.into(),
            hand_over: true,
        };
        let made = from.app.desk.export_class(asked).unwrap();
        let kept = keys.path().join(name);
        fs::copy(from.hands.saved.join(made.file_name), &kept).unwrap();
        kept
    };
    let open = |device: &Device, file: &Path| {
        device.hands.will_pick(file);
        let picked = device.app.desk.pick_class_key(Nothing {}).unwrap().unwrap();
        device.app.desk.import_class(OpenSealed {
            picked: picked.picked,
            passphrase: WORDS.into(),
        })
    };
    let save = |device: &Device| {
        let class = class.clone();
        device.app.desk.save_class_pack(ClassId { class })
    };
    let first = key(&desk, "first.sfkey");
    open(&second, &first).unwrap();
    save(&second).unwrap();
    open(&desk, &key(&second, "back.sfkey")).unwrap();
    save(&desk).unwrap();
    // The second computer handed back, and does not begin again by the first key.
    assert_eq!(
        open(&second, &first).unwrap_err(),
        CallError::Invalid {
            field: Field::Class,
            rule: Rule::Older
        }
    );
    assert!(save(&second).is_err());
    save(&desk).unwrap();
}
