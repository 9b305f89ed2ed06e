//! A student moves to another class or to a colleague, a device to the right seat, and one code
//! joins twice on a tablet.

use crate::support::{Device, class_and_tablet, date, hand_in, pin_signs, rate, rating, seat_code};
use std::fs;
use std::path::{Path, PathBuf};
use surefoot_app::{
    CallError, ClassId, DeviceMove, Entries, Join, JournalAsked, NewPin, Nothing, PinReset,
    RemovedId, RemovedWhat, SeatCodeTyped, SeatId, SeatMove, SlipChange, TransferAsked,
    TransferOpened, WhoHasNotAsked,
};
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::Confidence;
use surefoot_desk::{
    EntryMade, EntryValue, LackingKind, SeatDeviceState, SeatHoldings, TransferTaken, Verdict,
};
use surefoot_exchange::{HandIn, Refusal, SigningKey, open_transfer, seal_transfer};
use surefoot_record::{DeviceId, Field, Rule, Thing};

const WORDS: &str = "seven quiet rivers";

fn holdings(desk: &Device, class: &str, seat: u32) -> SeatHoldings {
    let id = SeatId {
        class: class.into(),
        seat,
    };
    desk.app.desk.seat_holdings(id).unwrap()
}

fn seats(desk: &Device, class: &str) -> Vec<(u32, Option<String>)> {
    let id = ClassId {
        class: class.into(),
    };
    let setup = desk.app.desk.class_setup(id).unwrap();
    (setup.seats.into_iter())
        .map(|seat| (seat.number, seat.name))
        .collect()
}

fn devices(desk: &Device, class: &str, seat: u32) -> Vec<(i64, SeatDeviceState)> {
    let id = ClassId {
        class: class.into(),
    };
    let setup = desk.app.desk.class_setup(id).unwrap();
    let found = setup.seats.into_iter().find(|one| one.number == seat);
    let devices = found.unwrap().devices;
    devices.iter().map(|one| (one.id, one.state)).collect()
}

/// Imports one file; returns its verdict, its seat and the title of its class.
fn bring(desk: &Device, file: &Path) -> (Verdict, Option<u32>, Option<String>) {
    let inbox = tempfile::tempdir().unwrap();
    fs::copy(file, inbox.path().join("one.sfhandin")).unwrap();
    let report = desk.import(inbox.path());
    let line = report.files.into_iter().next().unwrap();
    (line.verdict, line.seat, line.class_title)
}

fn on_paper(desk: &Device, class: &str, seat: u32, on: &str) {
    let asked = surefoot_app::EntryAsked {
        class: class.into(),
        date: Some(date(on)),
    };
    let day = desk.app.desk.entry_day(asked).unwrap();
    let concept = day.concepts[0].id.clone();
    desk.app
        .desk
        .make_entries(Entries {
            class: class.into(),
            date: date(on),
            made: vec![EntryMade {
                seat,
                concept,
                value: EntryValue::Rating {
                    rating: Some(Confidence::WithHelp),
                },
            }],
        })
        .unwrap();
}

fn move_to(desk: &Device, from: &str, seat: u32, to: &str) -> Result<SeatId, CallError> {
    desk.app.desk.move_seat(SeatMove {
        class: from.into(),
        seat,
        to: to.into(),
    })
}

#[test]
fn a_student_moves_to_another_class_with_the_history_and_back() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    let other = desk.new_class("Room 9 (invented)", &["Dora", "Emil"]).id;
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let first = hand_in(&tablet, &sky);
    assert_eq!(bring(&desk, &first).0, Verdict::New);
    on_paper(&desk, &class, 1, "2026-09-01");
    on_paper(&desk, &class, 2, "2026-09-01");
    // The slip of the seat before the move; the desk forgets it.
    let earlier = seat_code(&desk, &class, 0);
    let (before, neighbour) = (holdings(&desk, &class, 1), holdings(&desk, &class, 2));
    assert_eq!((before.hand_ins, before.reports), (1, 2));

    let there = move_to(&desk, &class, 1, &other).unwrap();
    assert_eq!((there.class.as_str(), there.seat), (other.as_str(), 3));
    assert_eq!(holdings(&desk, &other, 3), before);
    assert_eq!(holdings(&desk, &class, 2), neighbour);
    let named = |of: &[(u32, Option<String>)]| of.iter().map(|(n, _)| *n).collect::<Vec<_>>();
    assert_eq!(named(&seats(&desk, &class)), [2, 3]);
    assert_eq!(seats(&desk, &other)[2].1.as_deref(), Some("Amara"));

    // The tablet still has the earlier slip: its hand-ins go along, also a repeated one.
    let title = Some("Room 9 (invented)".to_owned());
    assert_eq!(
        bring(&desk, &first),
        (Verdict::Known, Some(3), title.clone())
    );
    let later = hand_in(&tablet, &sky);
    assert_eq!(bring(&desk, &later).1, Some(3));

    // With the new slip the record stays on the tablet, and the desk knows the device.
    let pack = desk.pack_of(&other);
    tablet.hands.will_pick(&pack);
    let offer = tablet.app.student.pick_class_pack(Nothing {}).unwrap();
    let profile = tablet
        .app
        .student
        .change_slip(SlipChange {
            student: sky.clone(),
            pack: offer.unwrap().pack,
            seat_code: seat_code(&desk, &other, 2),
            earlier,
        })
        .unwrap();
    assert_eq!(profile.class_title, "Room 9 (invented)");
    rate(&tablet, &sky, Confidence::NotYet);
    let (verdict, seat, in_class) = bring(&desk, &hand_in(&tablet, &sky));
    assert_eq!(
        (verdict, seat, in_class),
        (Verdict::Updated, Some(3), title)
    );
    assert_eq!(devices(&desk, &other, 3).len(), 1);

    // Undone, all of it is back, also what came meanwhile.
    let removed = desk.app.device.start(Nothing {}).unwrap().removed;
    assert!(
        matches!(&removed[0].what, RemovedWhat::Moved { seat: 1, to, .. } if to == "Room 9 (invented)")
    );
    let number = removed[0].number;
    desk.app.desk.restore_removed(RemovedId { number }).unwrap();
    let now = holdings(&desk, &class, 1);
    // Of one date two hand-ins stay.
    assert_eq!((now.hand_ins, now.observations), (2, 0));
    assert_eq!(named(&seats(&desk, &class)), [1, 2, 3]);
    assert_eq!(named(&seats(&desk, &other)), [1, 2]);
    assert_eq!(holdings(&desk, &class, 2), neighbour);
    assert_eq!(
        bring(&desk, &later),
        (Verdict::Known, Some(1), Some("Room 7 (invented)".into()))
    );
}

#[test]
fn a_move_is_refused_where_it_makes_no_sense() {
    let desk = Device::on("2026-09-01");
    let class = desk.new_class("Room 7 (invented)", &["Amara", "Bao"]).id;
    let refused = |to: &str, seat| match move_to(&desk, &class, seat, to).unwrap_err() {
        CallError::Invalid { field, rule } => (field, rule),
        other => panic!("{other:?}"),
    };
    assert_eq!(refused(&class, 1), (Field::Class, Rule::AlreadyHere));
    let full = desk.new_class("Full (invented)", &["A"; surefoot_desk::MOST_SEATS]);
    assert_eq!(refused(&full.id, 1), (Field::Names, Rule::TooMany));
    let third = desk.new_class("Room 8 (invented)", &["Carla"]).id;
    move_to(&desk, &class, 1, &third).unwrap();
    assert_eq!(refused(&third, 2), (Field::Seats, Rule::TooFew));
    assert_eq!(seats(&desk, &class).len(), 1);
}

#[test]
fn a_device_with_the_wrong_slip_goes_to_the_right_seat_and_back() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let first = hand_in(&tablet, &sky);
    assert_eq!(bring(&desk, &first).1, Some(1));
    let [(device, SeatDeviceState::Accepted)] = devices(&desk, &class, 1)[..] else {
        panic!("one accepted device");
    };
    let give = |seat, to, accept| {
        desk.app.desk.move_device(DeviceMove {
            class: class.clone(),
            seat,
            device,
            to,
            accept,
        })
    };
    give(1, 2, Some(true)).unwrap();
    assert_eq!(holdings(&desk, &class, 1).reports, 0);
    assert_eq!(holdings(&desk, &class, 2).reports, 1);
    assert_eq!(
        give(2, 2, Some(true)).unwrap_err(),
        CallError::Invalid {
            field: Field::Device,
            rule: Rule::AlreadyHere
        }
    );

    // What it hands in later counts at the right seat, although it names the other one.
    rate(&tablet, &sky, Confidence::NotYet);
    assert_eq!(
        bring(&desk, &hand_in(&tablet, &sky)),
        (Verdict::Updated, Some(2), Some("Room 7 (invented)".into()))
    );
    // The rightful owner of the slip is the first device of that seat.
    let own = Device::on("2026-09-01");
    let amara = own
        .join(&desk.pack_of(&class), &seat_code(&desk, &class, 0), "Heron")
        .unwrap()
        .id;
    rate(&own, &amara, Confidence::CouldTeach);
    assert_eq!(bring(&desk, &hand_in(&own, &amara)).0, Verdict::New);
    assert_eq!(devices(&desk, &class, 1)[0].1, SeatDeviceState::Accepted);

    give(2, 1, None).unwrap();
    assert_eq!(holdings(&desk, &class, 2).reports, 0);
    assert_eq!(devices(&desk, &class, 1).len(), 2);
    assert_eq!(
        holdings(&desk, &class, 1).reports,
        1,
        "a quarantined device counts"
    );
}

#[test]
fn a_code_that_joins_twice_on_a_tablet_is_asked_about() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    let code = seat_code(&desk, &class, 0);
    let pack = desk.pack_of(&class);
    tablet.hands.will_pick(&pack);
    let offer = tablet
        .app
        .student
        .pick_class_pack(Nothing {})
        .unwrap()
        .unwrap();
    let read = |seat_code: &str| {
        let typed = SeatCodeTyped {
            pack: offer.pack,
            seat_code: seat_code.into(),
        };
        tablet.app.student.check_seat_code(typed).unwrap().joined
    };
    let there: Vec<_> = read(&code).into_iter().map(|one| one.id).collect();
    assert_eq!(there, std::slice::from_ref(&sky));
    assert_eq!(read(&seat_code(&desk, &class, 1)), []);
    let join = |beside| {
        tablet.app.student.join(Join {
            pack: offer.pack,
            seat_code: code.clone(),
            nickname: "Wren".into(),
            avatar: "heron".into(),
            language: Language::first(),
            beside,
        })
    };
    assert_eq!(
        join(false).unwrap_err(),
        CallError::Invalid {
            field: Field::Seats,
            rule: Rule::Taken
        }
    );
    let wren = join(true).unwrap().id;
    assert_ne!(hand_in(&tablet, &sky), hand_in(&tablet, &wren));

    // Wren takes a slip of her own; the one of Sky is taken.
    let own = seat_code(&desk, &class, 1);
    let change = |student: &str, seat_code: &str, earlier: &str| {
        tablet.app.student.change_slip(SlipChange {
            student: student.into(),
            pack: offer.pack,
            seat_code: seat_code.into(),
            earlier: earlier.into(),
        })
    };
    change(&wren, &own, &code).unwrap();
    assert_eq!(
        change(&wren, &code, &own).unwrap_err(),
        CallError::Invalid {
            field: Field::Seats,
            rule: Rule::Taken
        }
    );
    assert_eq!(bring(&desk, &hand_in(&tablet, &wren)).1, Some(2));
}

#[test]
fn another_slip_removes_the_pin_of_the_earlier_one_and_keeps_the_record() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let set = |seat: usize, code: Option<String>| {
        tablet.app.student.set_pin(NewPin {
            student: sky.clone(),
            pin: "2468".into(),
            pin_signs: pin_signs(&desk, &class, seat),
            seat_code: code,
        })
    };
    set(0, Some(seat_code(&desk, &class, 0))).unwrap();
    tablet.hands.will_pick(&desk.pack_of(&class));
    let offer = tablet
        .app
        .student
        .pick_class_pack(Nothing {})
        .unwrap()
        .unwrap();
    let change = || SlipChange {
        student: sky.clone(),
        pack: offer.pack,
        seat_code: seat_code(&desk, &class, 2),
        earlier: pin_signs(&desk, &class, 0),
    };
    tablet.app.student.lock_students(Nothing {}).unwrap();
    assert_eq!(
        tablet.app.student.change_slip(change()).unwrap_err(),
        CallError::Locked
    );
    tablet
        .app
        .student
        .reset_pin(PinReset {
            student: sky.clone(),
            pin_signs: pin_signs(&desk, &class, 0),
        })
        .unwrap();
    let profile = tablet.app.student.change_slip(change()).unwrap();
    assert!(!profile.has_pin && !profile.has_pin_signs);
    set(2, Some(seat_code(&desk, &class, 2))).unwrap();
    assert_eq!(
        rating(&tablet, &sky, "2026-09-01"),
        Some(Confidence::OnMyOwn)
    );
}

#[test]
fn another_slip_asks_for_the_earlier_one() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    let classmate = Device::on("2026-09-01");
    let foreign = classmate.new_class("Room 7 (invented)", &["A", "B"]).id;
    let change = |of: &Device, class: &str, seat, earlier: &str| {
        tablet.hands.will_pick(&of.pack_of(class));
        let offer = tablet.app.student.pick_class_pack(Nothing {}).unwrap();
        tablet.app.student.change_slip(SlipChange {
            student: sky.clone(),
            pack: offer.unwrap().pack,
            seat_code: seat_code(of, class, seat),
            earlier: earlier.into(),
        })
    };
    let refused = CallError::Invalid {
        field: Field::EarlierSlip,
        rule: Rule::Missing,
    };
    let code = |of: &Device, class: &str, seat| seat_code(of, class, seat);
    for earlier in [
        String::new(),
        code(&classmate, &foreign, 1),
        code(&desk, &class, 1),
        pin_signs(&desk, &class, 0),
    ] {
        let found = change(&classmate, &foreign, 1, &earlier).unwrap_err();
        assert_eq!(found, refused, "{earlier}");
    }
    let set = |of: &Device, class: &str, seat| {
        let code = Some(seat_code(of, class, seat));
        let pin_signs = pin_signs(of, class, seat);
        let (student, pin) = (sky.clone(), "2468".into());
        let new = NewPin {
            student,
            pin,
            pin_signs,
            seat_code: code,
        };
        tablet.app.student.set_pin(new)
    };
    let reset = |of: &Device, class: &str, seat| {
        let pin_signs = pin_signs(of, class, seat);
        let student = sky.clone();
        tablet
            .app
            .student
            .reset_pin(PinReset { student, pin_signs })
    };
    // Once the device knows the PIN signs, it asks for them.
    set(&desk, &class, 0).unwrap();
    for earlier in [code(&desk, &class, 0), pin_signs(&desk, &class, 1)] {
        let found = change(&classmate, &foreign, 1, &earlier).unwrap_err();
        assert_eq!(found, refused, "{earlier}");
    }
    // The slip of the earlier class goes on opening the pages, beside the new one.
    change(&classmate, &foreign, 1, &pin_signs(&desk, &class, 0)).unwrap();
    for (of, class, seat) in [(&desk, &class, 0), (&classmate, &foreign, 1)] {
        set(&classmate, &foreign, 1).unwrap();
        tablet.app.student.lock_students(Nothing {}).unwrap();
        reset(of, class, seat).unwrap();
    }
    assert!(reset(&desk, &class, 1).is_err());
    // A slip of the same class that was somebody else's opens nothing any more.
    change(&classmate, &foreign, 0, &pin_signs(&classmate, &foreign, 1)).unwrap();
    set(&classmate, &foreign, 0).unwrap();
    assert!(reset(&classmate, &foreign, 1).is_err());
    reset(&classmate, &foreign, 0).unwrap();
    assert_eq!(
        rating(&tablet, &sky, "2026-09-01"),
        Some(Confidence::OnMyOwn)
    );
}

fn transfer(desk: &Device, class: &str, with_name: bool) -> PathBuf {
    let made = desk
        .app
        .desk
        .make_transfer(TransferAsked {
            class: class.into(),
            seat: 1,
            with_name,
            passphrase: WORDS.into(),
        })
        .unwrap();
    desk.hands.saved.join(made.file_name)
}

fn take(desk: &Device, class: &str, file: &Path, words: &str) -> Result<TransferTaken, CallError> {
    desk.hands.will_pick(file);
    let picked = desk.app.desk.pick_transfer(Nothing {}).unwrap().unwrap();
    desk.app.desk.take_transfer(TransferOpened {
        class: class.into(),
        picked,
        passphrase: words.into(),
    })
}

#[test]
fn a_colleague_takes_a_transfer_and_the_device_is_known_there() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    bring(&desk, &hand_in(&tablet, &sky));
    on_paper(&desk, &class, 1, "2026-09-01");
    on_paper(&desk, &class, 2, "2026-09-01");
    let holds = desk
        .app
        .desk
        .transfer_holdings(SeatId {
            class: class.clone(),
            seat: 1,
        })
        .unwrap();
    assert_eq!((holds.check_ins, holds.practice, holds.paper), (1, 0, 1));
    assert_eq!(
        (holds.first_date, holds.last_date),
        (Some(date("2026-09-01")), Some(date("2026-09-01")))
    );

    // Without the tick there is no name, and nothing of another seat.
    let file = transfer(&desk, &class, false);
    let bytes = fs::read(&file).unwrap();
    let opened = open_transfer(bytes.as_slice(), WORDS).unwrap();
    assert_eq!((opened.name.clone(), opened.paper.len()), (None, 1));
    let named = fs::read(transfer(&desk, &class, true)).unwrap();
    let named = open_transfer(named.as_slice(), WORDS).unwrap();
    assert_eq!(named.name.as_deref(), Some("Amara"));
    assert_ne!(file.file_name(), transfer(&desk, &class, false).file_name());

    let colleague = Device::on("2026-09-02");
    let room = colleague.new_class("Room 2 (invented)", &["Dora"]).id;
    assert_eq!(
        take(&colleague, &room, &file, "seven quiet ponds").unwrap_err(),
        CallError::Refused {
            refusal: Refusal::WrongPassphrase
        }
    );
    assert_eq!(seats(&colleague, &room).len(), 1);
    let taken = take(&colleague, &room, &file, WORDS).unwrap();
    assert_eq!(
        (taken.seat, taken.name, taken.holds, taken.outside_year),
        (2, None, holds, 0)
    );
    assert_eq!(holdings(&colleague, &room, 2).reports, 2);
    assert_eq!(holdings(&colleague, &room, 1).reports, 0);

    // With the colleague's slip the tablet's hand-in counts unasked, and nothing counts twice.
    tablet.hands.will_pick(&colleague.pack_of(&room));
    let offer = tablet
        .app
        .student
        .pick_class_pack(Nothing {})
        .unwrap()
        .unwrap();
    tablet
        .app
        .student
        .change_slip(SlipChange {
            student: sky.clone(),
            pack: offer.pack,
            seat_code: seat_code(&colleague, &room, 1),
            earlier: seat_code(&desk, &class, 0),
        })
        .unwrap();
    let (verdict, seat, _) = bring(&colleague, &hand_in(&tablet, &sky));
    assert_eq!((verdict, seat), (Verdict::Updated, Some(2)));
    assert_eq!(holdings(&colleague, &room, 2).reports, 2);

    // Taking it is undone by removing the seat; the file can be taken again.
    colleague
        .app
        .desk
        .remove_seat(SeatId {
            class: room.clone(),
            seat: 2,
        })
        .unwrap();
    assert_eq!(take(&colleague, &room, &file, WORDS).unwrap().holds, holds);
    // Nothing changed at the first desk.
    assert_eq!(seats(&desk, &class).len(), 3);
}

#[test]
fn a_student_who_is_here_is_not_taken_again_and_undoing_leaves_a_transfer_alone() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    bring(&desk, &hand_in(&tablet, &sky));
    let file = transfer(&desk, &class, false);
    let other = desk.new_class("Room 9 (invented)", &["Dora"]).id;
    let refused = CallError::Invalid {
        field: Field::Student,
        rule: Rule::AlreadyHere,
    };
    for room in [&class, &other] {
        assert_eq!(take(&desk, room, &file, WORDS).unwrap_err(), refused);
    }
    assert_eq!(
        (seats(&desk, &class).len(), seats(&desk, &other).len()),
        (3, 1)
    );

    let colleague = Device::on("2026-09-02");
    let room = colleague.new_class("Room 2 (invented)", &["Dora"]).id;
    take(&colleague, &room, &file, WORDS).unwrap();
    assert_eq!(take(&colleague, &room, &file, WORDS).unwrap_err(), refused);
    let journal = colleague
        .app
        .desk
        .imports(JournalAsked { before: None })
        .unwrap();
    assert_eq!((journal.imports.len(), journal.undoable), (1, None));
    assert_eq!(
        colleague.app.desk.undo_import(Nothing {}).unwrap_err(),
        CallError::NotFound {
            what: Thing::Import,
        }
    );
    assert_eq!(holdings(&colleague, &room, 2).reports, 1);
}

#[test]
fn a_transfer_has_eight_devices_at_most() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    rate(&tablet, &sky, Confidence::OnMyOwn);
    bring(&desk, &hand_in(&tablet, &sky));
    let bytes = fs::read(transfer(&desk, &class, false)).unwrap();
    let mut forged = open_transfer(bytes.as_slice(), WORDS).unwrap();
    let key = SigningKey::from_seed(&[7; 32]);
    forged.teacher_key = key.public();
    let one = forged.hand_ins[0].clone();
    let mut with = |devices: u8| {
        forged.hand_ins = (0..devices)
            .map(|n| HandIn {
                device: DeviceId::from_bytes(&[n; 16]),
                check_ins: Vec::new(),
                ..one.clone()
            })
            .collect();
        seal_transfer(&forged, &key, WORDS)
    };
    assert!(with(8).is_ok());
    assert_eq!(
        with(9).unwrap_err(),
        Refusal::BadContent {
            at: "hand_ins".into()
        }
    );
}

#[test]
fn a_moved_device_has_no_pack_of_its_new_class() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    let other = desk.new_class("Room 9 (invented)", &["Dora"]).id;
    desk.pack_of(&other);
    rate(&tablet, &sky, Confidence::OnMyOwn);
    bring(&desk, &hand_in(&tablet, &sky));
    let there = move_to(&desk, &class, 1, &other).unwrap();
    let has_pack = || -> Vec<u32> {
        let asked = WhoHasNotAsked {
            class: other.clone(),
            school_days: 5,
        };
        let lacking = desk.app.desk.who_has_not(asked).unwrap().lacking;
        (lacking.into_iter())
            .filter(|one| one.seat == Some(there.seat))
            .filter_map(|one| match one.what {
                LackingKind::OldPack { version, .. } => Some(version),
                _ => None,
            })
            .collect()
    };
    assert_eq!(has_pack(), [0]);
    rate(&tablet, &sky, Confidence::NotYet);
    assert_eq!(bring(&desk, &hand_in(&tablet, &sky)).1, Some(there.seat));
    assert_eq!(has_pack(), [0]);
}
