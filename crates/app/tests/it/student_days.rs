//! A student joins, checks in, practises, hands in; the program is closed in between.

use crate::support::{Device, date};
use surefoot_app::{
    AnswerGiven, CallError, CheckInTap, ClassId, ConfidenceSaid, DraftKept, ExerciseId, Focus,
    NewStudentSettings, PracticeAsked, StudentDay, StudentId,
};
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_exchange::{Refusal, SeatCodeError};
use surefoot_exercises::{Level, Response};
use surefoot_record::Field;
use surefoot_record::{Appearance, DecimalSign};
use surefoot_student::Tap;
use surefoot_student::draft::Draft;
use surefoot_student::practice_views::{OpenExercise, PracticeStep, Summary, SummaryConcept};
use surefoot_student::views::{StudentSettings, Today};

/// A class of two, and a tablet on which Amara has joined.
fn joined(today: &str) -> (Device, Device, String, String) {
    let desk = Device::on(today);
    let class = desk.new_class("Room 7 (invented)", &["Amara", "Bao"]).id;
    let pack = desk.pack_of(&class);
    let slips = desk
        .app
        .desk
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
        tap: Tap {
            date: date(on),
            concept: concept.into(),
            confidence,
            outcome,
        },
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
    match tablet.app.student.practice(asked(student, None)).unwrap() {
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
            .desk
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
            .device
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
    let today = tablet.app.student.today(day(&student)).unwrap();
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
        tablet.app.student.check_in(tap).unwrap();
    }
    tablet.to("2026-09-01");
    let today = tablet.app.student.today(day(&student)).unwrap();
    assert_eq!(today.concepts[0].confidence, Some(Confidence::OnMyOwn));
    assert_eq!(today.concepts[0].outcome, Some(Outcome::Right));
    let cleared = tap(&student, "2026-09-01", &first, None, None);
    tablet.app.student.check_in(cleared).unwrap();
    let today = tablet.app.student.today(day(&student)).unwrap();
    assert_eq!(rated(&today), vec![None; 6]);
}

#[test]
fn days_without_school_and_days_to_come_cannot_be_rated_and_missed_ones_can() {
    let (_desk, mut tablet, student, _) = joined("2026-09-01");
    let concept = tablet.app.student.today(day(&student)).unwrap().concepts[0]
        .concept
        .id
        .clone();
    let on = |d: &str| tap(&student, d, &concept, Some(Confidence::WithHelp), None);
    assert!(matches!(
        tablet.app.student.check_in(on("2026-09-15")),
        Err(CallError::Invalid { .. })
    ));
    assert!(tablet.app.student.check_in(on("2026-09-01")).is_ok());
    assert!(matches!(
        tablet.app.student.check_in(on("2026-08-31")),
        Err(CallError::NotFound { .. })
    ));
    tablet.to("2026-09-07");
    let closed = tablet.app.student.today(day(&student)).unwrap();
    assert!(closed.concepts.is_empty());
    assert_eq!(closed.next_school_day, Some(date("2026-09-08")));
    assert_eq!(
        closed.catch_up,
        ["2026-09-04", "2026-09-03", "2026-09-02", "2026-09-01"].map(date)
    );
    // The last rating that a missed day lacked takes the day from the list.
    let missed = StudentDay {
        student: student.clone(),
        date: Some(date("2026-09-02")),
    };
    let mut left = Vec::new();
    for concept in tablet.app.student.today(missed).unwrap().concepts {
        let rating = Some(Confidence::WithHelp);
        let tap = tap(&student, "2026-09-02", &concept.concept.id, rating, None);
        left.push(tablet.app.student.check_in(tap).unwrap());
    }
    let days = ["2026-09-04", "2026-09-03", "2026-09-01"].map(date);
    assert_eq!(left.pop().unwrap(), days);
    assert!(left.iter().all(|left| *left == closed.catch_up));
}

#[test]
fn an_exercise_survives_closing_and_a_second_try_counts_as_help() {
    let (_desk, mut tablet, student, _) = joined("2026-09-01");
    let open = exercise(&tablet, &student);
    let said = ConfidenceSaid {
        student: student.clone(),
        exercise: open.exercise.clone(),
        confidence: Confidence::OnMyOwn,
    };
    assert_eq!(
        tablet.app.student.say_confidence(said).unwrap().confidence,
        Some(Confidence::OnMyOwn)
    );
    tablet.to("2026-09-02");
    let again = exercise(&tablet, &student);
    assert_eq!(
        (again.exercise.clone(), again.item.clone()),
        (open.exercise, open.item)
    );

    let item = surefoot_exercises::generate(
        &again.concept.id,
        Level::try_from(again.level).unwrap(),
        seed_of(&again),
    )
    .unwrap();
    assert_eq!(item.view(), again.item);
    let give = |response: Response| {
        tablet.app.student.answer(AnswerGiven {
            student: student.clone(),
            exercise: again.exercise.clone(),
            response,
            seconds: 20,
        })
    };
    let unreadable = give(Response::WholeNumber { text: "??".into() });
    assert!(unreadable.is_err(), "{unreadable:?}");
    let give_wrong = || {
        give(surefoot_exercises::response_for(
            &item.misconceptions[0].answer,
        ))
        .unwrap()
    };
    let wrong = give_wrong();
    assert_eq!(
        (wrong.right, wrong.finished, wrong.says.is_empty()),
        // A first wrong tap may be a slip of the finger, so nothing is said of it.
        (false, false, item.is_tapped())
    );
    assert!(wrong.answer.is_none() && wrong.steps.is_empty());
    let same = give_wrong();
    assert!(!same.finished, "a second press is no second try");
    assert_ne!(same.says, wrong.says);
    let right = give(surefoot_exercises::response_for(&item.answer)).unwrap();
    assert_eq!((right.right, right.finished), (true, true));
    assert!(!right.steps.is_empty());
    let summary = tablet
        .app
        .student
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
    assert_eq!(tablet.app.student.hint(id()).unwrap().hints_taken.len(), 1);
    let shown = tablet.app.student.show_steps(id()).unwrap();
    assert!(shown.finished && !shown.right && !shown.steps.is_empty());
    assert!(matches!(
        tablet.app.student.hint(id()),
        Err(CallError::NotFound { .. })
    ));
}

/// Answers every exercise right, each in a minute, until the evening is over.
fn whole_evening(tablet: &Device, student: &str, more: bool) -> Summary {
    for _ in 0..20 {
        let asked = PracticeAsked {
            more,
            ..asked(student, None)
        };
        match tablet.app.student.practice(asked).unwrap() {
            PracticeStep::Exercise(open) => answer_right(tablet, student, &open, 60),
            PracticeStep::Done(summary) => return summary,
            PracticeStep::NothingYet => panic!("something is open"),
        }
    }
    panic!("the evening does not end");
}

fn answer_right(tablet: &Device, student: &str, open: &OpenExercise, seconds: u32) {
    let level = Level::try_from(open.level).unwrap();
    let item = surefoot_exercises::generate(&open.concept.id, level, seed_of(open)).unwrap();
    let feedback = tablet
        .app
        .student
        .answer(AnswerGiven {
            student: student.into(),
            exercise: open.exercise.clone(),
            response: surefoot_exercises::response_for(&item.answer),
            seconds,
        })
        .unwrap();
    assert!(feedback.right);
}

#[test]
fn an_answer_dated_after_today_does_not_count_yet() {
    let (_desk, mut tablet, student, _) = joined("2026-09-01");
    let open = exercise(&tablet, &student);
    // The tablet's clock was wrong for a while.
    tablet.to("2026-09-20");
    answer_right(&tablet, &student, &open, 60);
    let practised = |tablet: &Device| {
        let student = student.clone();
        let path = tablet.app.student.my_path(StudentId { student }).unwrap();
        let answered: u32 = path.concepts.iter().map(|c| c.answered).sum();
        (path.practised, answered)
    };
    assert_eq!(practised(&tablet), (1, 1));
    tablet.to("2026-09-01");
    assert_eq!(practised(&tablet), (0, 0));
    let again = exercise(&tablet, &student);
    assert_eq!(
        (&again.concept, &again.reason, &again.session.ahead),
        (&open.concept, &open.reason, &open.session.ahead)
    );
}

#[test]
fn what_was_thought_stands_beside_what_was_done() {
    let (_desk, tablet, student, _) = joined("2026-09-01");
    for (confidence, right) in [
        (Confidence::CouldTeach, true),
        (Confidence::CouldTeach, false),
        (Confidence::NotYet, true),
    ] {
        let open = exercise(&tablet, &student);
        let said = ConfidenceSaid {
            student: student.clone(),
            exercise: open.exercise.clone(),
            confidence,
        };
        tablet.app.student.say_confidence(said).unwrap();
        if right {
            answer_right(&tablet, &student, &open, 20);
        } else {
            let id = ExerciseId {
                student: student.clone(),
                exercise: open.exercise.clone(),
            };
            tablet.app.student.show_steps(id).unwrap();
        }
    }
    let summary = tablet
        .app
        .student
        .practice_summary(StudentId {
            student: student.clone(),
        })
        .unwrap();
    let sum = |of: fn(&SummaryConcept) -> [u32; 4]| {
        summary.concepts.iter().map(of).fold([0; 4], |sum, one| {
            std::array::from_fn(|place| sum[place] + one[place])
        })
    };
    assert_eq!(sum(|c| c.thought), [1, 0, 0, 2]);
    assert_eq!(sum(|c| c.thought_right), [1, 0, 0, 1]);
    let helped: u32 = summary.concepts.iter().map(|c| c.with_help).sum();
    assert_eq!(helped as usize, summary.with_help);
}

#[test]
fn an_evening_past_those_of_the_week_is_free_and_an_overrun_is_taken_off() {
    // A Tuesday.
    let (_desk, mut tablet, student, _) = joined("2026-09-01");
    let settings = |tablet: &Device, minutes, evenings| {
        let new = NewStudentSettings {
            student: student.clone(),
            language: Language::first(),
            minutes,
            exercises: None,
            evenings,
            appearance: Appearance::default(),
        };
        tablet.app.student.save_student_settings(new).unwrap();
    };
    settings(&tablet, 4, 2);
    // An evening of four minutes takes six: the next one is two minutes shorter.
    for seconds in [180, 180] {
        let open = exercise(&tablet, &student);
        answer_right(&tablet, &student, &open, seconds);
    }
    let done = whole_evening(&tablet, &student, false);
    assert_eq!(
        (done.finished, done.evenings_done, done.evenings_planned),
        (2, 0, 2)
    );
    tablet.to("2026-09-02");
    let open = exercise(&tablet, &student);
    assert!((open.session.minutes_planned - 2.0).abs() < 1e-9);
    let done = whole_evening(&tablet, &student, false);
    assert_eq!((done.finished, done.evenings_done), (2, 1));
    tablet.to("2026-09-03");
    let free = whole_evening(&tablet, &student, false);
    assert_eq!((free.finished, free.evenings_done, free.more), (0, 2, true));
    let asked = PracticeAsked {
        more: true,
        ..asked(&student, None)
    };
    assert!(matches!(
        tablet.app.student.practice(asked),
        Ok(PracticeStep::Exercise(_))
    ));
    // A new week begins.
    tablet.to("2026-09-07");
    exercise(&tablet, &student);
}

#[test]
fn the_evening_ends_when_its_minutes_are_used_up() {
    let (_desk, tablet, student, _) = joined("2026-09-01");
    let done = whole_evening(&tablet, &student, false);
    let finished = done.finished;
    // Eight exercises of one minute each, or fewer if fewer concepts are open on the second day.
    assert_eq!((done.finished, done.alone), (finished, finished));
    assert!(finished == 8 || (finished > 0 && !done.more), "{finished}");
    let path = tablet
        .app
        .student
        .my_path(StudentId {
            student: student.clone(),
        })
        .unwrap();
    assert_eq!(path.practised, finished);
}

/// Saves the minutes and exercises of an evening.
fn evening(
    tablet: &Device,
    student: &str,
    minutes: u32,
    exercises: Option<u32>,
) -> Result<StudentSettings, CallError> {
    tablet
        .app
        .student
        .save_student_settings(NewStudentSettings {
            student: student.into(),
            language: Language::first(),
            minutes,
            exercises,
            evenings: 5,
            appearance: Appearance::default(),
        })
}

#[test]
fn an_evening_may_end_by_a_number_of_exercises() {
    let (_desk, mut tablet, student, _) = joined("2026-09-01");
    let saved = evening(&tablet, &student, 4, Some(5)).unwrap();
    // The teacher's 4 to 16 minutes leave room for 4 to 13.
    assert_eq!(
        (saved.exercises, saved.exercises_least, saved.exercises_most),
        (Some(5), 4, 13)
    );
    // It ends after five exercises, also if they take longer than the minutes.
    for seconds in [10, 200, 20, 60, 10] {
        let open = exercise(&tablet, &student);
        assert_eq!(open.session.exercises_planned, Some(5));
        answer_right(&tablet, &student, &open, seconds);
    }
    let done = whole_evening(&tablet, &student, false);
    assert_eq!((done.finished, done.more), (5, true));
    // The next evening is not shorter, and the one before counts as practised.
    tablet.to("2026-09-02");
    let done = whole_evening(&tablet, &student, false);
    assert_eq!((done.finished, done.evenings_done), (5, 1));
    // Slow exercises end the evening at the teacher's upper bound.
    tablet.to("2026-09-03");
    for _ in 0..2 {
        let open = exercise(&tablet, &student);
        answer_right(&tablet, &student, &open, 500);
    }
    assert_eq!(whole_evening(&tablet, &student, false).finished, 2);
    // Back to minutes: an earlier evening shortens none.
    evening(&tablet, &student, 8, None).unwrap();
    tablet.to("2026-09-14");
    let open = exercise(&tablet, &student);
    assert_eq!(open.session.exercises_planned, None);
    assert!((open.session.minutes_planned - 8.0).abs() < 1e-9);
    for exercises in [0, 3, 14] {
        assert!(matches!(
            evening(&tablet, &student, 8, Some(exercises)),
            Err(CallError::Invalid { field, .. }) if field == Field::Exercises
        ));
    }
}

fn boxes(texts: &[&str]) -> Draft {
    Draft::Boxes {
        texts: texts.iter().map(|text| (*text).to_owned()).collect(),
        half_day: None,
    }
}

#[test]
fn an_answer_that_is_not_checked_yet_stands_there_again() {
    let (_desk, mut tablet, student, _) = joined("2026-09-01");
    let open = exercise(&tablet, &student);
    assert_eq!(open.draft, None);
    let keep = |tablet: &Device, name: &str, draft: Option<Draft>| {
        tablet.app.student.keep_draft(DraftKept {
            student: student.clone(),
            exercise: name.into(),
            draft,
        })
    };
    keep(&tablet, &open.exercise, Some(boxes(&["12", ""]))).unwrap();
    assert_eq!(exercise(&tablet, &student).draft, Some(boxes(&["12", ""])));
    // Also after a new start, and for answers that are chosen.
    tablet.to("2026-09-01");
    assert_eq!(exercise(&tablet, &student).draft, Some(boxes(&["12", ""])));
    let tapped = Draft::Tapped {
        response: Response::Ordering {
            order: vec![2, 0, 1],
        },
    };
    keep(&tablet, &open.exercise, Some(tapped.clone())).unwrap();
    assert_eq!(exercise(&tablet, &student).draft, Some(tapped));
    keep(&tablet, &open.exercise, None).unwrap();
    assert_eq!(exercise(&tablet, &student).draft, None);

    // A draft that is refused changes nothing.
    keep(&tablet, &open.exercise, Some(boxes(&["7"]))).unwrap();
    assert!(matches!(
        keep(&tablet, &open.exercise, Some(boxes(&[&"7".repeat(5000)]))),
        Err(CallError::Invalid { field, .. }) if field == Field::Draft
    ));
    assert!(matches!(
        keep(&tablet, "another", Some(boxes(&["8"]))),
        Err(CallError::NotFound { .. })
    ));
    assert_eq!(exercise(&tablet, &student).draft, Some(boxes(&["7"])));

    // Another decimal sign would change the meaning of a draft, so the draft is discarded.
    let mut appearance = Appearance {
        text_percent: 150,
        ..Appearance::default()
    };
    let save = |appearance: Appearance| {
        tablet
            .app
            .student
            .save_student_settings(NewStudentSettings {
                student: student.clone(),
                language: Language::first(),
                minutes: 8,
                exercises: None,
                evenings: 5,
                appearance,
            })
            .unwrap()
    };
    save(appearance);
    assert_eq!(exercise(&tablet, &student).draft, Some(boxes(&["7"])));
    appearance.decimal_sign = DecimalSign::Comma;
    save(appearance);
    assert_eq!(exercise(&tablet, &student).draft, None);

    // The end of an exercise discards its draft.
    keep(&tablet, &open.exercise, Some(boxes(&["7"]))).unwrap();
    answer_right(&tablet, &student, &open, 30);
    assert_eq!(exercise(&tablet, &student).draft, None);
}

#[test]
fn focus_and_minutes_have_bounds() {
    let (_desk, tablet, student, _) = joined("2026-09-01");
    let path = tablet
        .app
        .student
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
        tablet.app.student.set_focus(Focus {
            student: student.clone(),
            concepts: concepts.to_vec(),
        })
    };
    assert_eq!(focus(&ids[..3]).unwrap().focus, ids[..3]);
    assert!(matches!(focus(&ids), Err(CallError::Invalid { .. })));
    let settings = |minutes, evenings| {
        tablet
            .app
            .student
            .save_student_settings(NewStudentSettings {
                student: student.clone(),
                language: Language::tagged("es").unwrap(),
                minutes,
                exercises: None,
                evenings,
                appearance: Appearance::default(),
            })
    };
    let saved = settings(12, 3).unwrap();
    assert_eq!((saved.minutes, saved.evenings), (12, 3));
    for (minutes, evenings, field) in [
        (3, 3, Field::Minutes),
        (17, 3, Field::Minutes),
        (12, 8, Field::Evenings),
    ] {
        assert!(matches!(
            settings(minutes, evenings),
            Err(CallError::Invalid { field: found, .. }) if found == field
        ));
    }
}

#[test]
fn a_profile_name_cannot_lead_out_of_the_folder() {
    let tablet = Device::on("2026-09-01");
    for id in ["../own/desk", "", "a/b", "..", "x\0"] {
        assert!(matches!(
            tablet.app.student.my_path(StudentId { student: id.into() }),
            Err(CallError::NotFound { .. })
        ));
    }
}
