//! A student's second device by carry file, a teacher's second computer by class key.

use crate::support::{Device, class_and_tablet, hand_in, rate, rating};
use std::fs;
use std::path::{Path, PathBuf};
use surefoot_app::{CallError, CarryAsked, CarryDone, ClassId, ClassKeyAsked, Nothing, OpenSealed};
use surefoot_catalogue::rating::Confidence;
use surefoot_desk::{SeatDeviceState, Verdict};
use surefoot_exchange::Refusal;

const WORDS: &str = "seven quiet rivers";

fn carry(device: &Device, student: &str) -> PathBuf {
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
    assert!(matches!(
        add(&second),
        Err(CallError::Invalid { rule, .. }) if rule == "already_here"
    ));
}
