//! A student joins, checks in, practises, hands in; the program is closed in between.

use crate::support::{Device, date};
use surefoot_app::{
    AnswerGiven, CallError, CheckInTap, ClassId, ExerciseId, Focus, NewStudentSettings,
    PracticeAsked, StudentDay, StudentId, Sure,
};
use surefoot_core::catalogue::Language;
use surefoot_core::exchange::{Refusal, SeatCodeError};
use surefoot_core::item::{self, Level, Response};
use surefoot_core::rating::{Confidence, Outcome};
use surefoot_core::student::practice_views::{OpenExercise, PracticeStep};
use surefoot_core::student::views::Today;

/// A class of two, and a tablet on which Amara has joined.
fn joined(today: &str) -> (Device, Device, String, String) {
    let desk = Device::on(today);
    let class = desk.new_class("Room 7 (invented)", &["Amara", "Bao"]).id;
    let pack = desk.pack_of(&class);
    let slips = desk
        .app
        .join_slips(ClassId {
            class: class.clone(),
        })
        .unwrap();
    let tablet = Device::on(today);
    let profile = tablet
        .join(&pack, &slips[0].code.to_lowercase(), "Sky")
        .unwrap();
    (desk, tablet, profile.id, class)
}

fn day(student: &str) -> StudentDay {
    StudentDay {
        student: student.into(),
        date: None,
    }
}

fn tap(
    student: &str,
    on: &str,
    concept: &str,
    confidence: Option<Confidence>,
    outcome: Option<Outcome>,
) -> CheckInTap {
    CheckInTap {
        student: student.into(),
        date: date(on),
        concept: concept.into(),
        confidence,
        outcome,
    }
}

fn asked(student: &str, concept: Option<&str>) -> PracticeAsked {
    PracticeAsked {
        student: student.into(),
        concept: concept.map(Into::into),
        more: false,
    }
}

fn exercise(tablet: &Device, student: &str) -> Box<OpenExercise> {
    match tablet.app.practice(asked(student, None)).unwrap() {
        PracticeStep::Exercise(open) => open,
        other => panic!("{other:?}"),
    }
}

fn rated(today: &Today) -> Vec<Option<Confidence>> {
    today.concepts.iter().map(|c| c.confidence).collect()
}

#[test]
fn a_typing_slip_and_a_slip_of_another_class_are_caught_on_the_device() {
    let desk = Device::on("2026-09-01");
    let class = desk.new_class("Room 7 (invented)", &["Amara"]).id;
    let other = desk.new_class("Room 8 (invented)", &["Bao"]).id;
    let pack = desk.pack_of(&class);
    let code = |class: &str| {
        desk.app
            .join_slips(ClassId {
                class: class.into(),
            })
            .unwrap()[0]
            .code
            .clone()
    };
    let tablet = Device::on("2026-09-01");
    let mut slip = code(&class);
    let last = slip.pop().unwrap();
    slip.push(if last == '7' { '8' } else { '7' });
    assert!(matches!(
        tablet.join(&pack, &slip, "Sky"),
        Err(CallError::SeatCode { .. })
    ));
    assert!(matches!(
        tablet.join(&pack, &code(&other), "Sky"),
        Err(CallError::SeatCode {
            error: SeatCodeError::OtherClass
        })
    ));
    assert!(
        tablet
            .app
            .start(surefoot_app::Nothing {})
            .unwrap()
            .students
            .is_empty()
    );
    assert!(tablet.join(&pack, &code(&class), "Sky").is_ok());
}

#[test]
fn what_is_not_a_class_pack_is_refused_by_name() {
    let tablet = Device::on("2026-09-01");
    let path = tablet.folder.path().join("x.sfclass");
    std::fs::write(&path, b"not a class pack").unwrap();
    assert_eq!(
        tablet.join(&path, "AAA", "Sky"),
        Err(CallError::Refused {
            refusal: Refusal::NotOurs
        })
    );
}

#[test]
fn a_tap_is_there_after_the_program_was_closed_and_the_last_tap_counts() {
    let (_desk, mut tablet, student, _) = joined("2026-09-01");
    let today = tablet.app.today(day(&student)).unwrap();
    assert_eq!(
        (today.pass, today.day, today.concepts.len()),
        (Some(1), Some(2), 6)
    );
    let first = today.concepts[0].concept.id.clone();
    for confidence in [Confidence::NotYet, Confidence::OnMyOwn] {
        let tap = tap(
            &student,
            "2026-09-01",
            &first,
            Some(confidence),
            Some(Outcome::Right),
        );
        tablet.app.check_in(tap).unwrap();
    }
    tablet.to("2026-09-01");
    let today = tablet.app.today(day(&student)).unwrap();
    assert_eq!(today.concepts[0].confidence, Some(Confidence::OnMyOwn));
    assert_eq!(today.concepts[0].outcome, Some(Outcome::Right));
    let cleared = tap(&student, "2026-09-01", &first, None, None);
    assert_eq!(rated(&tablet.app.check_in(cleared).unwrap()), vec![None; 6]);
}

#[test]
fn days_without_school_and_days_to_come_cannot_be_rated_and_missed_ones_can() {
    let (_desk, mut tablet, student, _) = joined("2026-09-01");
    let concept = tablet.app.today(day(&student)).unwrap().concepts[0]
        .concept
        .id
        .clone();
    let on = |d: &str| tap(&student, d, &concept, Some(Confidence::WithHelp), None);
    assert!(matches!(
        tablet.app.check_in(on("2026-09-15")),
        Err(CallError::Invalid { .. })
    ));
    assert!(tablet.app.check_in(on("2026-09-01")).is_ok());
    assert!(matches!(
        tablet.app.check_in(on("2026-08-31")),
        Err(CallError::NotFound { .. })
    ));
    tablet.to("2026-09-07");
    let closed = tablet.app.today(day(&student)).unwrap();
    assert!(closed.concepts.is_empty());
    assert_eq!(closed.next_school_day, Some(date("2026-09-08")));
    assert_eq!(
        closed.catch_up,
        ["2026-09-04", "2026-09-03", "2026-09-02", "2026-09-01"].map(date)
    );
}

#[test]
fn an_exercise_survives_closing_and_a_second_try_counts_as_help() {
    let (_desk, mut tablet, student, _) = joined("2026-09-01");
    let open = exercise(&tablet, &student);
    let sure = Sure {
        student: student.clone(),
        exercise: open.exercise.clone(),
        sure: Confidence::OnMyOwn,
    };
    assert_eq!(
        tablet.app.sure(sure).unwrap().sure,
        Some(Confidence::OnMyOwn)
    );
    tablet.to("2026-09-02");
    let again = exercise(&tablet, &student);
    assert_eq!(
        (again.exercise.clone(), again.item.clone()),
        (open.exercise, open.item)
    );

    let item = item::generate(
        &again.concept.id,
        Level::try_from(again.level).unwrap(),
        seed_of(&again),
    )
    .unwrap();
    assert_eq!(item.view(), again.item);
    let give = |response: Response| {
        tablet.app.answer(AnswerGiven {
            student: student.clone(),
            exercise: again.exercise.clone(),
            response,
            seconds: 20,
        })
    };
    let unreadable = give(Response::WholeNumber { text: "??".into() });
    assert!(unreadable.is_err(), "{unreadable:?}");
    let wrong = give(item::response_for(&item.mistakes[0].answer)).unwrap();
    assert_eq!(
        (wrong.right, wrong.finished, wrong.says.is_empty()),
        (false, false, false)
    );
    assert!(wrong.answer.is_none() && wrong.steps.is_empty());
    let right = give(item::response_for(&item.answer)).unwrap();
    assert_eq!((right.right, right.finished), (true, true));
    assert!(!right.steps.is_empty());
    let summary = tablet
        .app
        .practice_summary(StudentId {
            student: student.clone(),
        })
        .unwrap();
    assert_eq!(
        (summary.finished, summary.alone, summary.with_help),
        (1, 0, 1)
    );
    assert_eq!(summary.concepts[0].thought, [0, 0, 1, 0]);
    assert_eq!(summary.concepts[0].thought_right, [0; 4]);
}

/// The seed is the second part of an exercise's name.
fn seed_of(open: &OpenExercise) -> u64 {
    u64::from_str_radix(open.exercise.split_once('-').unwrap().1, 16).unwrap()
}

#[test]
fn giving_up_shows_the_steps_and_hints_are_kept() {
    let (_desk, tablet, student, _) = joined("2026-09-01");
    let open = exercise(&tablet, &student);
    let id = || ExerciseId {
        student: student.clone(),
        exercise: open.exercise.clone(),
    };
    assert_eq!(tablet.app.hint(id()).unwrap().hints_taken.len(), 1);
    let shown = tablet.app.show_steps(id()).unwrap();
    assert!(shown.finished && !shown.right && !shown.steps.is_empty());
    assert!(matches!(
        tablet.app.hint(id()),
        Err(CallError::NotFound { .. })
    ));
}

#[test]
fn the_evening_ends_when_its_minutes_are_used_up() {
    let (_desk, tablet, student, _) = joined("2026-09-01");
    let mut finished = 0;
    let done = loop {
        match tablet.app.practice(asked(&student, None)).unwrap() {
            PracticeStep::Exercise(open) => {
                let item = item::generate(
                    &open.concept.id,
                    Level::try_from(open.level).unwrap(),
                    seed_of(&open),
                )
                .unwrap();
                let feedback = tablet
                    .app
                    .answer(AnswerGiven {
                        student: student.clone(),
                        exercise: open.exercise.clone(),
                        response: item::response_for(&item.answer),
                        seconds: 60,
                    })
                    .unwrap();
                assert!(feedback.right);
                finished += 1;
                assert!(finished < 20, "the evening does not end");
            }
            PracticeStep::Done(summary) => break summary,
            PracticeStep::NothingYet => panic!("something is open"),
        }
    };
    // Eight minutes of one minute each, unless fewer concepts are open on the second day.
    assert_eq!((done.finished, done.alone), (finished, finished));
    assert!(finished == 8 || (finished > 0 && !done.more), "{finished}");
    let path = tablet
        .app
        .my_path(StudentId {
            student: student.clone(),
        })
        .unwrap();
    assert_eq!(path.practised, finished);
}

#[test]
fn focus_and_minutes_have_bounds() {
    let (_desk, tablet, student, _) = joined("2026-09-01");
    let path = tablet
        .app
        .my_path(StudentId {
            student: student.clone(),
        })
        .unwrap();
    let ids: Vec<String> = path
        .concepts
        .iter()
        .map(|c| c.concept.id.clone())
        .take(4)
        .collect();
    let focus = |concepts: &[String]| {
        tablet.app.set_focus(Focus {
            student: student.clone(),
            concepts: concepts.to_vec(),
        })
    };
    assert_eq!(focus(&ids[..3]).unwrap().focus, ids[..3]);
    assert!(matches!(focus(&ids), Err(CallError::Invalid { .. })));
    let minutes = |minutes| {
        tablet.app.save_student_settings(NewStudentSettings {
            student: student.clone(),
            language: Language::Es,
            minutes,
        })
    };
    assert_eq!(minutes(12).unwrap().minutes, 12);
    assert!(minutes(3).is_err() && minutes(17).is_err());
}

#[test]
fn a_profile_name_cannot_lead_out_of_the_folder() {
    let tablet = Device::on("2026-09-01");
    for id in ["../own/desk", "", "a/b", "..", "x\0"] {
        assert!(matches!(
            tablet.app.my_path(StudentId { student: id.into() }),
            Err(CallError::NotFound { .. })
        ));
    }
}
