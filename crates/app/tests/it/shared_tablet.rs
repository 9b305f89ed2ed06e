//! Several students on one tablet, with PINs.

use crate::support::{Device, class_and_tablet, pin_signs, rate, rating, seat_code};
use surefoot_app::{
    BackUp, CALLS, Call, CallError, NewPin, Nothing, OpenSealed, PinReset, PinTyped, RemoveStudent,
    StoreName, StudentDay, StudentId, Unlocked, dispatch,
};
use surefoot_catalogue::rating::Confidence;
use surefoot_exchange::SeatCodeError;
use surefoot_record::Appearance;

fn typed(student: &str, pin: &str) -> PinTyped {
    PinTyped {
        student: student.into(),
        pin: pin.into(),
    }
}

/// A new PIN with what is typed from a slip.
fn new_pin(student: &str, pin: &str, pin_signs: String, seat_code: Option<String>) -> NewPin {
    NewPin {
        student: student.into(),
        pin: pin.into(),
        pin_signs,
        seat_code,
    }
}

fn refused<T: std::fmt::Debug>(answer: Result<T, CallError>) -> SeatCodeError {
    match answer {
        Err(CallError::SeatCode { error }) => error,
        other => panic!("{other:?}"),
    }
}

/// Two students; the first has a PIN and is not at the tablet.
fn two() -> (Device, String, Device, String, String) {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    let pack = desk.pack_of(&class);
    let code = seat_code(&desk, &class, 1);
    let rain = tablet.join(&pack, &code, "Rain").unwrap().id;
    rate(&tablet, &sky, Confidence::NotYet);
    let slip = (
        pin_signs(&desk, &class, 0),
        Some(seat_code(&desk, &class, 0)),
    );
    tablet
        .app
        .student
        .set_pin(new_pin(&sky, "4071", slip.0, slip.1))
        .unwrap();
    tablet.app.student.lock_students(Nothing {}).unwrap();
    (desk, class, tablet, sky, rain)
}

#[test]
fn no_call_about_a_locked_student_answers() {
    let (_, _, tablet, sky, rain) = two();
    let args = serde_json::json!({ "student": sky, "date": null, "concept": "x", "confidence": null,
        "outcome": null, "exercise": "x", "confidence": 0, "response": null, "seconds": 0, "concepts": [],
        "more": false, "language": "en", "minutes": 10, "exercises": null, "evenings": 5, "draft": null, "goals": [],
        "appearance": Appearance::default(), "pin": "1234", "pin_signs": "ABC-DEF", "seat_code": null, "passphrase": "seven quiet rivers",
        "name": "1.2026-09-01.sqlite", "kind": "student",
        "store": { "kind": "student", "student": sky } });
    let mut asked = 0;
    for Call { name, .. } in CALLS {
        if matches!(
            *name,
            "unlock" | "reset_pin" | "make_sample" | "enter_sample"
        ) {
            continue;
        }
        let answer = dispatch(&tablet.app, name, args.clone());
        match *name {
            "check_in"
            | "today"
            | "practice"
            | "hint"
            | "show_steps"
            | "practice_summary"
            | "keep_draft"
            | "my_path"
            | "set_focus"
            | "set_goals"
            | "hand_in_preview"
            | "hand_in"
            | "student_settings"
            | "save_student_settings"
            | "set_pin"
            | "remove_pin"
            | "make_carry"
            | "remove_student"
            | "copies"
            | "restore_copy"
            | "back_up" => {
                let mut args = args.clone();
                if *name == "check_in" {
                    args["date"] = "2026-09-01".into();
                }
                let answer = dispatch(&tablet.app, name, args);
                assert_eq!(answer, Err(CallError::Locked), "{name}");
                asked += 1;
            }
            _ => {
                // Other calls may answer, but not with what the student did.
                if let Ok(value) = answer {
                    assert!(!value.to_string().contains("not_yet"), "{name}");
                }
            }
        }
    }
    assert_eq!(asked, 21);
    let start = tablet.app.device.start(Nothing {}).unwrap();
    let locked = start.students.iter().find(|s| s.id == sky).unwrap();
    assert!(locked.has_pin);
    // The other student need not wait.
    rate(&tablet, &rain, Confidence::OnMyOwn);
}

#[test]
fn the_pin_opens_wrong_ones_wait_and_a_new_start_locks_again() {
    let (_, _, mut tablet, sky, _) = two();
    for _ in 0..2 {
        assert_eq!(
            tablet.app.student.unlock(typed(&sky, "0000")).unwrap(),
            Unlocked::Wrong { wait_seconds: 0 }
        );
    }
    assert_eq!(
        tablet.app.student.unlock(typed(&sky, "4071")).unwrap(),
        Unlocked::Open
    );
    assert_eq!(
        rating(&tablet, &sky, "2026-09-01"),
        Some(Confidence::NotYet)
    );
    tablet.to("2026-09-01");
    let id = || StudentDay {
        student: sky.clone(),
        date: None,
    };
    assert_eq!(tablet.app.student.today(id()), Err(CallError::Locked));
    for wait in [0, 0, 5] {
        assert_eq!(
            tablet.app.student.unlock(typed(&sky, "0000")).unwrap(),
            Unlocked::Wrong { wait_seconds: wait }
        );
    }
    // The right PIN waits too, also after a new start.
    for again in [false, true] {
        if again {
            tablet.to("2026-09-01");
        }
        let answer = tablet.app.student.unlock(typed(&sky, "4071")).unwrap();
        assert!(
            matches!(
                answer,
                Unlocked::Wait {
                    wait_seconds: 1..=5
                }
            ),
            "{answer:?}"
        );
    }
    std::thread::sleep(std::time::Duration::from_millis(5_100));
    assert_eq!(
        tablet.app.student.unlock(typed(&sky, "4071")).unwrap(),
        Unlocked::Open
    );
}

#[test]
fn a_forgotten_pin_goes_by_the_pin_signs_alone_and_nothing_else_changes() {
    let (desk, class, tablet, sky, _) = two();
    let reset = |signs: String| {
        tablet.app.student.reset_pin(PinReset {
            student: sky.clone(),
            pin_signs: signs,
        })
    };
    // Neither the seat code nor any part of it removes a PIN.
    let code = seat_code(&desk, &class, 0);
    assert!(matches!(
        refused(reset(code.clone())),
        SeatCodeError::Length {
            found: 15,
            expected: 6
        }
    ));
    let plain = code.replace('-', "");
    for part in [&plain[8..14], &plain[9..]] {
        refused(reset(part.to_owned()));
    }
    refused(reset(pin_signs(&desk, &class, 1)));
    // Whoever knows the token can make signs whose check character fits.
    let token = surefoot_record::SeatToken::new(&plain[8..14]).unwrap();
    let other = surefoot_exchange::SigningKey::from_seed(&[9; 32]);
    let class_id = surefoot_record::ClassId::new(class.clone()).unwrap();
    let made = surefoot_exchange::pin_signs_of(&other, &class_id, &token);
    assert_eq!(refused(reset(made.in_groups())), SeatCodeError::OtherSeat);
    // Wrong PINs of others do not keep the owner of the slip waiting.
    for _ in 0..5 {
        tablet.app.student.unlock(typed(&sky, "0000")).unwrap();
    }
    reset(pin_signs(&desk, &class, 0)).unwrap();
    assert_eq!(
        rating(&tablet, &sky, "2026-09-01"),
        Some(Confidence::NotYet)
    );
    let start = tablet.app.device.start(Nothing {}).unwrap();
    assert!(start.students.iter().all(|s| !s.has_pin));
    assert_eq!(start.students.len(), 2);
    // The device knows the slip now: the next PIN needs no seat code, but the PIN signs.
    let set = |signs: String| {
        tablet
            .app
            .student
            .set_pin(new_pin(&sky, "5544", signs, None))
    };
    assert_eq!(refused(set(made.in_groups())), SeatCodeError::OtherSeat);
    set(pin_signs(&desk, &class, 0)).unwrap();
}

#[test]
fn nobody_without_the_slip_sets_a_pin() {
    let (desk, class, tablet, sky) = class_and_tablet("2026-09-01");
    let own = pin_signs(&desk, &class, 0);
    let set = |signs: &str, code: Option<String>| {
        tablet
            .app
            .student
            .set_pin(new_pin(&sky, "4071", signs.into(), code))
    };
    assert!(matches!(
        refused(set(&own, None)),
        SeatCodeError::Length { found: 0, .. }
    ));
    assert_eq!(
        refused(set(&own, Some(seat_code(&desk, &class, 1)))),
        SeatCodeError::OtherSeat
    );
    refused(set(
        &pin_signs(&desk, &class, 1),
        Some(seat_code(&desk, &class, 1)),
    ));
    refused(set("000-000", Some(seat_code(&desk, &class, 0))));
    let start = tablet.app.device.start(Nothing {}).unwrap();
    assert!(!start.students[0].has_pin && !start.students[0].has_pin_signs);
    set(&own, Some(seat_code(&desk, &class, 0))).unwrap();
    let start = tablet.app.device.start(Nothing {}).unwrap();
    assert!(start.students[0].has_pin && start.students[0].has_pin_signs);
}

#[test]
fn a_pin_can_be_changed_and_taken_away_by_its_student_alone() {
    let (desk, class, tablet, sky, _) = two();
    let new = |pin: &str| new_pin(&sky, pin, pin_signs(&desk, &class, 0), None);
    assert_eq!(
        tablet.app.student.remove_pin(StudentId {
            student: sky.clone()
        }),
        Err(CallError::Locked)
    );
    assert_eq!(
        tablet.app.device.remove_student(RemoveStudent {
            student: sky.clone()
        }),
        Err(CallError::Locked)
    );
    assert_eq!(
        tablet.app.device.back_up(BackUp {
            store: StoreName::Student {
                student: sky.clone()
            },
            passphrase: "seven quiet rivers".into()
        }),
        Err(CallError::Locked)
    );
    tablet.app.student.unlock(typed(&sky, "4071")).unwrap();
    assert!(matches!(
        tablet.app.student.set_pin(new("12")),
        Err(CallError::Invalid { .. })
    ));
    tablet.app.student.set_pin(new("998877")).unwrap();
    tablet.app.student.lock_students(Nothing {}).unwrap();
    assert_eq!(
        tablet.app.student.unlock(typed(&sky, "4071")).unwrap(),
        Unlocked::Wrong { wait_seconds: 0 }
    );
    assert_eq!(
        tablet.app.student.unlock(typed(&sky, "998877")).unwrap(),
        Unlocked::Open
    );
    tablet
        .app
        .student
        .remove_pin(StudentId {
            student: sky.clone(),
        })
        .unwrap();
}

#[test]
fn a_backup_does_not_take_the_place_of_a_locked_student() {
    let (_, _, tablet, sky, _) = two();
    let pin = || typed(&sky, "4071");
    tablet.app.student.unlock(pin()).unwrap();
    let store = StoreName::Student {
        student: sky.clone(),
    };
    let passphrase = "seven quiet rivers".to_owned();
    let asked = BackUp {
        store,
        passphrase: passphrase.clone(),
    };
    let made = tablet.app.device.back_up(asked).unwrap();
    let file = tablet.hands.saved.join(made.file_name);
    tablet.app.student.lock_students(Nothing {}).unwrap();
    let restore = || {
        tablet.hands.will_pick(&file);
        let picked = tablet.app.device.pick_backup(Nothing {}).unwrap().unwrap();
        tablet.app.device.restore_backup(OpenSealed {
            picked: picked.picked,
            passphrase: passphrase.clone(),
        })
    };
    assert_eq!(restore().unwrap_err(), CallError::Locked);
    tablet.app.student.unlock(pin()).unwrap();
    assert!(restore().unwrap().quarantined);
}
