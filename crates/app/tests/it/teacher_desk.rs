//! The teacher's desk: set-up, import, quarantined devices, undo, assignments in class packs.

use crate::support::{Device, date};
use std::path::{Path, PathBuf};
use surefoot_app::{
    Assign, AssignmentId, CallError, CheckInTap, ClassConcept, ClassId, CreateClass,
    DeviceDecision, DeviceOfSeat, JournalAsked, NameSeat, NewPractice, NewRotation, Nothing,
    PracticeAsked, StudentDay, StudentId, TaughtFrom,
};
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_desk::SeatDeviceState::{Accepted, Quarantined, Rejected};
use surefoot_desk::{Board, ClassSetup, NewAssignment, NewClass, SeatDeviceState, Verdict};
use surefoot_record::{Field, Rule};
use surefoot_record::{PracticeRules, Reason};
use surefoot_student::Tap;
use surefoot_student::practice_views::PracticeStep;

fn id(class: &str) -> ClassId {
    ClassId {
        class: class.into(),
    }
}

/// Rates every concept of the day and makes a hand-in; returns its file.
fn rate_and_hand_in(tablet: &Device, student: &str, confidence: Confidence) -> PathBuf {
    let today = tablet
        .app
        .student
        .today(StudentDay {
            student: student.into(),
            date: None,
        })
        .unwrap();
    for row in &today.concepts {
        tablet
            .app
            .student
            .check_in(CheckInTap {
                student: student.into(),
                tap: Tap {
                    date: today.date,
                    concept: row.concept.id.clone(),
                    confidence: Some(confidence),
                    outcome: Some(Outcome::Right),
                },
            })
            .unwrap();
    }
    hand_in(tablet, student)
}

fn hand_in(tablet: &Device, student: &str) -> PathBuf {
    let made = tablet
        .app
        .student
        .hand_in(StudentId {
            student: student.into(),
        })
        .unwrap();
    tablet.hands.saved.join(made.file_name)
}

fn inbox(files: &[&Path]) -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    for (nth, file) in files.iter().enumerate() {
        std::fs::copy(file, folder.path().join(format!("{nth}.sfhandin"))).unwrap();
    }
    folder
}

fn verdicts(desk: &Device, files: &[&Path]) -> Vec<Verdict> {
    let folder = inbox(files);
    let mut files = desk.import(folder.path()).files;
    files.sort_by(|a, b| a.file_name.cmp(&b.file_name));
    files.into_iter().map(|f| f.verdict).collect()
}

fn latest_ratings(board: &Board) -> u32 {
    board
        .rows
        .iter()
        .map(|r| r.latest.iter().sum::<u32>())
        .sum()
}

#[test]
fn a_class_stands_balanced_and_bad_values_are_named() {
    let desk = Device::on("2026-09-01");
    let class = desk.new_class("Room 7 (invented)", &["Amara", "", "Carlos"]);
    assert_eq!(
        (class.seats, class.concepts, class.pack_version),
        (3, 60, 0)
    );
    assert!(class.pack_outdated);
    let setup = desk.app.desk.class_setup(id(&class.id)).unwrap();
    assert_eq!(setup.school_days, 179);
    assert_eq!(setup.rotation.len(), 10);
    assert!(setup.rotation.iter().all(|day| day.len() == 6));
    assert_eq!(setup.seats[1].name, None);
    let good = NewClass {
        title: "Room 8".into(),
        names: vec!["Amara".into()],
        year: setup.year,
        grades: vec![4],
        rotation_days: 10,
        concepts_a_day: 6,
    };
    let field = |class: NewClass| match desk.app.desk.create_class(CreateClass { class }) {
        Err(CallError::Invalid { field, rule }) => format!("{field} {rule}"),
        other => format!("{other:?}"),
    };
    assert_eq!(
        field(NewClass {
            title: " ".into(),
            ..good.clone()
        }),
        "title empty"
    );
    assert_eq!(
        field(NewClass {
            names: vec![],
            ..good.clone()
        }),
        "names too_few"
    );
    assert_eq!(
        field(NewClass {
            names: vec![String::new(); 61],
            ..good.clone()
        }),
        "names too_many"
    );
    assert_eq!(
        field(NewClass {
            grades: vec![9],
            ..good.clone()
        }),
        "concepts too_few"
    );
    assert!(matches!(
        desk.app.desk.create_class(CreateClass {
            class: NewClass {
                rotation_days: 21,
                ..good
            }
        }),
        Err(CallError::Rotation { .. })
    ));
}

#[test]
fn names_lessons_and_rotation_are_edited() {
    let desk = Device::on("2026-09-01");
    let class = desk.new_class("Room 7 (invented)", &["Amara", "Bao"]).id;
    desk.pack_of(&class);
    let setup = desk
        .app
        .desk
        .name_seat(NameSeat {
            class: class.clone(),
            seat: 2,
            name: Some("Bo".into()),
        })
        .unwrap();
    assert_eq!(setup.seats[1].name.as_deref(), Some("Bo"));
    // No class pack holds a name, so a new name makes it no older.
    assert!(!setup.summary.pack_outdated);
    let mut days: Vec<Vec<String>> = setup
        .rotation
        .iter()
        .map(|d| d.iter().map(|c| c.concept.id.clone()).collect())
        .collect();
    let moved = days[0].remove(0);
    days[1].push(moved.clone());
    let setup = desk
        .app
        .desk
        .set_rotation(NewRotation {
            class: class.clone(),
            days: days.clone(),
        })
        .unwrap();
    assert!(setup.summary.pack_outdated);
    assert_eq!(setup.rotation[1].last().unwrap().concept.id, moved);
    days[2].push(moved.clone());
    assert!(matches!(
        desk.app.desk.set_rotation(NewRotation {
            class: class.clone(),
            days
        }),
        Err(CallError::Rotation { .. })
    ));
    let setup = desk
        .app
        .desk
        .set_taught_from(TaughtFrom {
            class,
            concept: moved,
            date: Some(date("2026-10-05")),
        })
        .unwrap();
    assert_eq!(
        setup.rotation[1].last().unwrap().taught_from,
        Some(date("2026-10-05"))
    );
}

#[test]
fn bounds_of_practice_and_a_test_travel_in_the_next_pack() {
    let desk = Device::on("2026-09-01");
    let class = desk.new_class("Room 7 (invented)", &["Amara"]).id;
    let slips = desk.app.desk.join_slips(id(&class)).unwrap();
    let mut tablet = Device::on("2026-09-01");
    let student = tablet
        .join(&desk.pack_of(&class), &slips[0].code, "Sky")
        .unwrap()
        .id;
    let before = desk.app.desk.class_setup(id(&class)).unwrap();
    assert_eq!(before.practice, PracticeRules::USUAL);
    assert!(!before.summary.pack_outdated);
    let set = |practice| {
        desk.app.desk.set_practice(NewPractice {
            class: class.clone(),
            practice,
        })
    };
    let test_on = Some(date("2026-10-02"));
    let narrow = PracticeRules {
        minutes_least: 9,
        minutes_most: 12,
        evenings_least: 2,
        evenings_most: 3,
        test_on,
    };
    let setup = set(narrow).unwrap();
    assert_eq!(setup.practice, narrow);
    assert!(setup.summary.pack_outdated);
    for (fault, bad) in [
        (
            Rule::Minutes,
            PracticeRules {
                minutes_least: 13,
                ..narrow
            },
        ),
        (
            Rule::Minutes,
            PracticeRules {
                minutes_most: 121,
                ..narrow
            },
        ),
        (
            Rule::Evenings,
            PracticeRules {
                evenings_least: 0,
                ..narrow
            },
        ),
        (
            Rule::Evenings,
            PracticeRules {
                evenings_most: 8,
                ..narrow
            },
        ),
        (
            Rule::TestOn,
            PracticeRules {
                test_on: Some(date("2030-01-01")),
                ..narrow
            },
        ),
    ] {
        assert!(matches!(
            set(bad),
            Err(CallError::Invalid { field, rule }) if field == Field::Practice && rule == fault
        ));
    }
    tablet.hands.will_pick(&desk.pack_of(&class));
    let student_id = || StudentId {
        student: student.clone(),
    };
    tablet.app.student.take_class_pack(student_id()).unwrap();
    // Eight minutes on five evenings lie outside the new bounds.
    let settings = tablet.app.student.student_settings(student_id()).unwrap();
    assert_eq!((settings.minutes, settings.evenings), (9, 3));
    assert_eq!(settings.test_on, test_on);
    tablet.to("2026-10-02");
    let settings = tablet.app.student.student_settings(student_id()).unwrap();
    assert_eq!(settings.test_on, None);
}

#[test]
fn files_may_come_in_any_order_twice_or_be_undone() {
    let desk = Device::on("2026-09-01");
    let class = desk.new_class("Room 7 (invented)", &["Amara", "Bao"]).id;
    let pack = desk.pack_of(&class);
    let slips = desk.app.desk.join_slips(id(&class)).unwrap();
    let mut tablet = Device::on("2026-09-01");
    let student = tablet.join(&pack, &slips[0].code, "Sky").unwrap().id;
    let first = rate_and_hand_in(&tablet, &student, Confidence::WithHelp);
    tablet.to("2026-09-02");
    let second = rate_and_hand_in(&tablet, &student, Confidence::OnMyOwn);
    let mut desk = desk;
    desk.to("2026-09-03");

    assert_eq!(verdicts(&desk, &[&first]), [Verdict::New]);
    assert_eq!(verdicts(&desk, &[&first]), [Verdict::Known]);
    assert_eq!(verdicts(&desk, &[&second]), [Verdict::Updated]);
    let board = desk.app.desk.board(id(&class)).unwrap();
    assert_eq!(
        (board.seats, board.seats_reporting, latest_ratings(&board)),
        (2, 1, 12)
    );
    assert_eq!(board.newest_report_days, Some(1));

    desk.app.desk.undo_import(Nothing {}).unwrap();
    assert_eq!(latest_ratings(&desk.app.desk.board(id(&class)).unwrap()), 6);
    // The import of a known file is undone, then the first one.
    desk.app.desk.undo_import(Nothing {}).unwrap();
    desk.app.desk.undo_import(Nothing {}).unwrap();
    assert_eq!(latest_ratings(&desk.app.desk.board(id(&class)).unwrap()), 0);
    assert!(matches!(
        desk.app.desk.undo_import(Nothing {}),
        Err(CallError::NotFound { .. })
    ));

    assert_eq!(verdicts(&desk, &[&second]), [Verdict::New]);
    assert_eq!(verdicts(&desk, &[&first]), [Verdict::Older]);
    assert_eq!(desk.app.desk.board(id(&class)).unwrap(), board);
    let journal = desk
        .app
        .desk
        .imports(JournalAsked { before: None })
        .unwrap();
    assert_eq!(journal.imports.len(), 5);
    assert_eq!(journal.undoable.unwrap().files, 1);
    assert!(!journal.older);
    let before = Some(journal.imports[1].import);
    let older = desk.app.desk.imports(JournalAsked { before }).unwrap();
    assert_eq!(older.imports, journal.imports[2..]);
}

#[test]
fn a_second_device_with_its_own_key_waits_for_the_teacher() {
    let desk = Device::on("2026-09-01");
    let class = desk.new_class("Room 7 (invented)", &["Amara"]).id;
    let pack = desk.pack_of(&class);
    let code = desk.app.desk.join_slips(id(&class)).unwrap()[0]
        .code
        .clone();
    let (tablet, other) = (Device::on("2026-09-01"), Device::on("2026-09-01"));
    let one = tablet.join(&pack, &code, "Sky").unwrap().id;
    let two = other.join(&pack, &code, "Rain").unwrap().id;
    let own = rate_and_hand_in(&tablet, &one, Confidence::WithHelp);
    // Tapped twice, so that this device's ratings are the later ones.
    rate_and_hand_in(&other, &two, Confidence::NotYet);
    let claim = rate_and_hand_in(&other, &two, Confidence::CouldTeach);
    assert_eq!(
        verdicts(&desk, &[&own, &claim]),
        [Verdict::New, Verdict::Quarantined]
    );
    let teach = |desk: &Device| -> u32 {
        desk.app
            .desk
            .board(id(&class))
            .unwrap()
            .rows
            .iter()
            .map(|r| r.latest[3])
            .sum()
    };
    assert_eq!(teach(&desk), 0);
    let setup = desk.app.desk.class_setup(id(&class)).unwrap();
    let states = |setup: &ClassSetup| -> Vec<SeatDeviceState> {
        (setup.seats[0].devices.iter()).map(|d| d.state).collect()
    };
    assert_eq!(states(&setup), [Accepted, Quarantined]);
    let [first, second] = [0, 1].map(|at| setup.seats[0].devices[at].id);
    let decide = |device, accept| {
        desk.app.desk.decide_device(DeviceDecision {
            class: class.clone(),
            seat: 1,
            device,
            accept,
        })
    };
    let discard = |device| {
        desk.app.desk.discard_device(DeviceOfSeat {
            class: class.clone(),
            seat: 1,
            device,
        })
    };
    let after = decide(second, Some(false)).unwrap();
    assert_eq!(states(&after), [Accepted, Rejected]);
    assert_eq!(teach(&desk), 0);
    // A rejected device can still be accepted, and an accepted one rejected: also the first.
    let after = decide(second, Some(true)).unwrap();
    assert_eq!(states(&after), [Accepted, Accepted]);
    assert_eq!(teach(&desk), 6);
    assert!(discard(first).is_err(), "it counts");
    let after = decide(first, Some(false)).unwrap();
    assert_eq!(states(&after), [Rejected, Accepted]);
    assert_eq!(teach(&desk), 6);
    let after = decide(second, None).unwrap();
    assert_eq!(states(&after), [Rejected, Quarantined]);
    assert_eq!(teach(&desk), 0);
    // What is discarded is gone. If it comes again it waits, although no device counts.
    assert_eq!(states(&discard(second).unwrap()), [Rejected]);
    assert_eq!(verdicts(&desk, &[&claim]), [Verdict::Quarantined]);
    assert_eq!(teach(&desk), 0);
}

#[test]
fn assignments_travel_in_the_next_pack_and_a_personal_one_reaches_only_its_seat() {
    let desk = Device::on("2026-09-01");
    let class = desk.new_class("Room 7 (invented)", &["Amara", "Bao"]).id;
    let pack = desk.pack_of(&class);
    let slips = desk.app.desk.join_slips(id(&class)).unwrap();
    let tablets: Vec<(Device, String)> = slips
        .iter()
        .map(|slip| {
            let tablet = Device::on("2026-09-01");
            let student = tablet.join(&pack, &slip.code, "Sky").unwrap().id;
            (tablet, student)
        })
        .collect();
    let files: Vec<PathBuf> = tablets
        .iter()
        .map(|(tablet, student)| rate_and_hand_in(tablet, student, Confidence::OnMyOwn))
        .collect();
    let paths: Vec<&Path> = files.iter().map(PathBuf::as_path).collect();
    verdicts(&desk, &paths);

    let concept = desk
        .app
        .desk
        .board(id(&class))
        .unwrap()
        .rows
        .into_iter()
        .rev()
        .find(|r| r.concept.has_exercises)
        .unwrap()
        .concept
        .id;
    let new = NewAssignment {
        concepts: vec![concept.clone()],
        items_each: 3,
        from: date("2026-09-01"),
        due: date("2026-09-04"),
        seats: vec![2],
    };
    let listed = desk
        .app
        .desk
        .assign(Assign {
            class: class.clone(),
            assignment: new.clone(),
        })
        .unwrap();
    assert_eq!(
        (listed.len(), listed[0].in_pack, listed[0].progress.len()),
        (1, false, 1)
    );
    let newer = desk.pack_of(&class);
    assert!(desk.app.desk.assignments(id(&class)).unwrap()[0].in_pack);

    let reasons: Vec<Reason> = tablets
        .iter()
        .map(|(tablet, student)| {
            tablet.hands.will_pick(&newer);
            let taken = tablet
                .app
                .student
                .take_class_pack(StudentId {
                    student: student.clone(),
                })
                .unwrap();
            assert_eq!(taken.unwrap().version, 2);
            let asked = PracticeAsked {
                student: student.clone(),
                concept: None,
                more: false,
            };
            match tablet.app.student.practice(asked).unwrap() {
                PracticeStep::Exercise(open) => open.reason,
                other => panic!("{other:?}"),
            }
        })
        .collect();
    assert!(
        !matches!(reasons[0], Reason::Assigned { .. }),
        "{reasons:?}"
    );
    assert!(
        matches!(reasons[1], Reason::Assigned { done: 0, of: 3, .. }),
        "{reasons:?}"
    );

    // The same pack and an older one are refused.
    for file in [&newer, &pack] {
        tablets[0].0.hands.will_pick(file);
        let again = tablets[0].0.app.student.take_class_pack(StudentId {
            student: tablets[0].1.clone(),
        });
        assert!(matches!(again, Err(CallError::Refused { .. })), "{again:?}");
    }
    let reports = desk
        .app
        .desk
        .concept_reports(ClassConcept {
            class: class.clone(),
            concept,
        })
        .unwrap();
    let of = |seat| {
        reports
            .students
            .iter()
            .find(|s| s.seat == seat)
            .unwrap()
            .assigned
            .map(|a| (a.done, a.of))
    };
    assert_eq!((of(1), of(2)), (None, Some((0, 3))));
    let which = || AssignmentId {
        class: class.clone(),
        assignment: listed[0].id.clone(),
    };
    assert!(
        desk.app.desk.restore_assignment(which()).is_err(),
        "it is still assigned"
    );
    let withdrawn = desk.app.desk.withdraw_assignment(which()).unwrap();
    assert!(
        withdrawn.len() == 1 && withdrawn[0].withdrawn,
        "and can come back"
    );
    let restored = desk.app.desk.restore_assignment(which()).unwrap();
    assert!(restored.len() == 1 && !restored[0].withdrawn);
    assert_eq!(
        (&restored[0].id, restored[0].due),
        (&listed[0].id, listed[0].due)
    );
    let withdrawn = desk.app.desk.withdraw_assignment(which()).unwrap();
    assert!(
        withdrawn.len() == 1 && withdrawn[0].withdrawn,
        "and can come back"
    );
    for bad in [
        NewAssignment {
            concepts: vec![],
            ..new.clone()
        },
        NewAssignment {
            items_each: 21,
            ..new.clone()
        },
        NewAssignment {
            due: date("2026-08-31"),
            ..new.clone()
        },
    ] {
        let refused = desk.app.desk.assign(Assign {
            class: class.clone(),
            assignment: bad,
        });
        assert!(
            matches!(refused, Err(CallError::Invalid { .. })),
            "{refused:?}"
        );
    }
}
