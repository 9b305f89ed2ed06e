//! Properties of tonight's queue after any history.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test that cannot go on fails"
)]

use chrono::{Days, NaiveDate};
use proptest::prelude::*;
use surefoot_catalogue::rating::{AnswerResult, Confidence, Outcome};
use surefoot_practice::estimate::{Belief, Estimator};
use surefoot_practice::memory::{Grade, Memory, MemoryState};
use surefoot_practice::{Assigned, ConceptFacts, Evening, Event, EventKind, StudentMemory};
use surefoot_record::Reason;

const CONCEPTS: usize = 8;

fn day(number: u64) -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 9, 1)
        .unwrap()
        .checked_add_days(Days::new(number))
        .unwrap()
}

fn facts() -> Vec<ConceptFacts> {
    (0..CONCEPTS)
        .map(|c| ConceptFacts {
            key: format!("c{c}"),
            prerequisites: if c >= 2 {
                vec![format!("c{}", c - 2)]
            } else {
                Vec::new()
            },
            open_from: Some(day(c as u64 * 3)),
            has_exercises: true,
            meetings: (0..18).map(|pass| day(c as u64 + pass * 14)).collect(),
        })
        .collect()
}

/// An event whose sequence rises with its date.
fn event(on: u64, concept: &str, kind: EventKind) -> Event {
    Event {
        date: day(on),
        sequence: u32::try_from(on).unwrap(),
        concept: concept.to_owned(),
        kind,
    }
}

fn evening(today: NaiveDate) -> Evening {
    Evening {
        today,
        minutes: 8.0,
        most_minutes: 16.0,
        exercises: None,
        evenings_a_week: 7,
        focus: Vec::new(),
        assigned: Vec::new(),
        goal: Some(day(270)),
    }
}

/// Events as (days since the last, concept, what).
fn histories() -> impl Strategy<Value = Vec<(u64, usize, u8)>> {
    prop::collection::vec((0_u64..12, 0..CONCEPTS, 0_u8..18), 0..40)
}

fn build(history: &[(u64, usize, u8)]) -> (StudentMemory, u64) {
    let mut memory = StudentMemory::new(facts());
    let mut today = 0;
    for (gap, concept, what) in history {
        today += gap;
        let kind = match what {
            0..3 => EventKind::Answer {
                level: 2,
                result: [
                    AnswerResult::Alone,
                    AnswerResult::WithHelp,
                    AnswerResult::Wrong,
                ][usize::from(*what)],
                minutes: 1.0,
            },
            _ => EventKind::CheckIn {
                confidence: Confidence::try_from((what - 3) % 5).ok(),
                outcome: [Some(Outcome::Right), Some(Outcome::Wrong), None]
                    [usize::from((what - 3) / 5)],
                preview: today < *concept as u64 * 3,
            },
        };
        memory.apply(&event(today, &format!("c{concept}"), kind));
    }
    (memory, today)
}

fn answer(memory: &mut StudentMemory, concept: &str, on: u64, minutes: f64) {
    answer_with(memory, concept, on, minutes, AnswerResult::Alone);
}

fn answer_with(
    memory: &mut StudentMemory,
    concept: &str,
    on: u64,
    minutes: f64,
    result: AnswerResult,
) {
    let kind = EventKind::Answer {
        level: 2,
        result,
        minutes,
    };
    memory.apply(&event(on, concept, kind));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// A worse answer never leads to a longer gap.
    #[test]
    fn more_failure_never_lengthens_a_gap(
        grades in prop::collection::vec((0_u32..200, 0_usize..3), 1..12),
        gap in 0_u32..200,
    ) {
        let memory = Memory::new().unwrap();
        let all = [Grade::Wrong, Grade::Helped, Grade::Alone];
        let mut state: Option<MemoryState> = None;
        for (days, grade) in grades {
            state = Some(memory.after(state, days).unwrap().with(all[grade]));
        }
        let after = memory.after(state, gap).unwrap();
        prop_assert!(after.wrong.stability_days <= after.helped.stability_days);
        prop_assert!(after.helped.stability_days <= after.alone.stability_days);
        // The curve falls, so a shorter stability is due sooner.
        prop_assert!(after.wrong.recall(30.0) <= after.alone.recall(30.0));
    }

    /// A higher rating never brings a concept up earlier than a lower one does.
    #[test]
    fn a_higher_rating_never_moves_a_concept_up(history in histories(), concept in 0..CONCEPTS) {
        let place = |confidence| {
            let (mut memory, today) = build(&history);
            let key = format!("c{concept}");
            let kind = EventKind::CheckIn { confidence: Some(confidence), outcome: None, preview: false };
            memory.apply(&event(today + 1, &key, kind));
            memory.plan(&evening(day(today + 2)), 99)
                .iter().position(|e| e.concept == key)
        };
        let places: Vec<_> = Confidence::ALL.into_iter().map(place).collect();
        for pair in places.windows(2) {
            prop_assert!(pair[0] <= pair[1], "{places:?}");
        }
    }

    /// Only open concepts, no two neighbours alike while another is open,
    /// at most three of one concept while others are open, an end by the minutes.
    #[test]
    fn an_evening_keeps_its_bounds(
        history in histories(),
        minutes in 4_u32..=16,
        results in prop::collection::vec(0_usize..3, 16),
    ) {
        let (mut memory, before) = build(&history);
        let today = before + 1;
        let mut evening = evening(day(today));
        evening.minutes = f64::from(minutes);
        let open = (0..CONCEPTS).filter(|c| *c as u64 * 3 <= today).count();
        let mut last: Option<String> = None;
        let mut items = 0_u32;
        while let Some(entry) = memory.next(&evening) {
            let number: u64 = entry.concept[1..].parse().unwrap();
            prop_assert!(number * 3 <= today, "{} is not open", entry.concept);
            if open > 1 && items > 0 {
                prop_assert_ne!(Some(&entry.concept), last.as_ref());
            }
            let result = [AnswerResult::Alone, AnswerResult::WithHelp, AnswerResult::Wrong]
                [results[items as usize]];
            answer_with(&mut memory, &entry.concept, today, 1.0, result);
            last = Some(entry.concept);
            items += 1;
            prop_assert!(items <= minutes);
        }
        prop_assert_eq!(items, minutes);
    }

    /// The same events, the same queue.
    #[test]
    fn the_queue_is_determined(history in histories()) {
        let (a, today) = build(&history);
        let (b, _) = build(&history);
        let evening = evening(day(today));
        prop_assert_eq!(a.plan(&evening, 99), b.plan(&evening, 99));
    }
}

fn assignment(concepts: &[&str], items_each: u32, from: u64, due: u64) -> Vec<Assigned> {
    vec![Assigned {
        concepts: concepts.iter().map(|c| (*c).to_owned()).collect(),
        items_each,
        from: day(from),
        due: day(due),
    }]
}

#[test]
fn assigned_practice_comes_first_within_its_dates_and_ends() {
    let (mut memory, _) = build(&[]);
    let mut evening = evening(day(30));
    evening.assigned = assignment(&["c7"], 3, 30, 31);
    let assigned = |memory: &StudentMemory, evening: &Evening| {
        memory
            .plan(evening, 99)
            .iter()
            .filter(|e| matches!(e.reason, Reason::Assigned { .. }))
            .count()
    };
    let first = memory.next(&evening).unwrap();
    assert_eq!(first.concept, "c7");
    assert_eq!(
        first.reason,
        Reason::Assigned {
            due: day(31),
            done: 0,
            of: 3
        }
    );
    answer(&mut memory, "c7", 30, 9.0);
    // The minutes are used up; half of what is assigned is done tonight all the same.
    assert_eq!(memory.next(&evening).unwrap().concept, "c7");
    answer(&mut memory, "c7", 30, 1.0);
    assert_eq!(memory.next(&evening), None);
    evening.today = day(31);
    assert_eq!(assigned(&memory, &evening), 1);
    answer(&mut memory, "c7", 31, 1.0);
    assert_eq!(assigned(&memory, &evening), 0);
    let (fresh, _) = build(&[]);
    for (today, count) in [(29, 0), (30, 1), (31, 1), (32, 0)] {
        evening.today = day(today);
        assert_eq!(assigned(&fresh, &evening), count, "day {today}");
    }
}

/// Even on the due date, and with more than can be done, an evening ends at
/// twice its minutes.
#[test]
fn assigned_work_never_takes_more_than_two_evenings() {
    let (mut memory, _) = build(&[]);
    let mut evening = evening(day(30));
    evening.assigned = assignment(&["c4", "c5", "c6", "c7"], 20, 1, 30);
    let mut items = 0;
    let mut last = None;
    while let Some(entry) = memory.next(&evening) {
        assert_ne!(Some(&entry.concept), last.as_ref());
        answer(&mut memory, &entry.concept, 30, 1.0);
        last = Some(entry.concept);
        items += 1;
        assert!(items <= 16);
    }
    assert_eq!(items, 16);
}

/// An evening by number ends there, however quick; assigned work that cannot wait goes
/// on to twice the number; and the minutes end it too.
#[test]
fn an_evening_by_number_ends_at_its_number() {
    let count = |minutes_each: f64, assigned: Vec<Assigned>| {
        let (mut memory, _) = build(&[]);
        let mut evening = evening(day(30));
        evening.exercises = Some(6);
        evening.assigned = assigned;
        let mut items = 0;
        while let Some(entry) = memory.next(&evening) {
            answer(&mut memory, &entry.concept, 30, minutes_each);
            items += 1;
            assert!(items <= 16);
        }
        items
    };
    let owed = || assignment(&["c4", "c5", "c6", "c7"], 20, 1, 30);
    assert_eq!(count(0.1, Vec::new()), 6);
    assert_eq!(count(0.1, owed()), 12);
    assert_eq!(count(2.0, Vec::new()), 4);
    assert_eq!(count(2.0, owed()), 8);
}

/// After three weeks without an evening every concept waits. Each evening
/// is as long as any other, and within a few all have come up.
#[test]
fn a_backlog_is_spread_over_the_evenings_that_follow() {
    let many: Vec<ConceptFacts> = (0..24)
        .map(|c| ConceptFacts {
            key: format!("c{c}"),
            open_from: Some(day(0)),
            has_exercises: true,
            ..ConceptFacts::default()
        })
        .collect();
    let mut memory = StudentMemory::new(many);
    for c in 0..24 {
        answer(&mut memory, &format!("c{c}"), c / 8, 1.0);
    }
    let mut seen = std::collections::BTreeSet::new();
    for today in 24..28 {
        let evening = evening(day(today));
        let mut items = 0;
        while let Some(entry) = memory.next(&evening) {
            answer(&mut memory, &entry.concept, today, 1.0);
            seen.insert(entry.concept[1..].parse::<u64>().unwrap());
            items += 1;
        }
        assert_eq!(items, 8, "day {today}");
    }
    assert_eq!(seen.len(), 24);
}

/// How far apart two answers should lie grows with the days after which it
/// should still be known: Cepeda et al. 2008 (over 1,350 learners).
#[test]
fn the_best_gap_grows_with_the_horizon() {
    let estimator = Estimator::default();
    let best_gap = |horizon: i32| {
        (1..200)
            .map(|gap| {
                let mut belief = Belief::default();
                estimator.taught(&mut belief, 0);
                estimator.answer(&mut belief, 0, AnswerResult::Alone);
                estimator.answer(&mut belief, gap, AnswerResult::Alone);
                (gap, estimator.strength(&belief, gap + horizon))
            })
            .max_by(|a, b| a.1.total_cmp(&b.1))
            .unwrap()
            .0
    };
    let gaps = [7, 35, 70, 200].map(best_gap);
    // Traces are told apart by steps of decay, so horizons near each other may fall together.
    assert!(gaps.is_sorted(), "{gaps:?}");
    assert!(gaps[0] < gaps[1] && gaps[2] < gaps[3], "{gaps:?}");
    assert!(gaps[3] < 199, "{gaps:?}");
}

/// Seen yesterday or three weeks ago: the nearer the date aimed at, the more
/// the fresh one is worth against the old one.
#[test]
fn a_test_soon_changes_what_comes_first() {
    let value = |goal: u64| {
        let (mut memory, _) = build(&[]);
        for (concept, on) in [("c0", 3), ("c0", 39), ("c1", 3), ("c1", 20)] {
            answer(&mut memory, concept, on, 1.0);
        }
        let mut evening = evening(day(40));
        evening.goal = Some(day(goal));
        let plan = memory.plan(&evening, 99);
        plan.iter().map(|e| e.concept.clone()).collect::<Vec<_>>()
    };
    assert_ne!(value(50), value(270));
}

#[test]
fn a_concept_that_another_builds_on_says_so() {
    let (mut memory, _) = build(&[]);
    answer(&mut memory, "c0", 10, 1.0);
    answer_with(&mut memory, "c2", 11, 1.0, AnswerResult::Wrong);
    let plan = memory.plan(&evening(day(20)), 99);
    let reason = |concept: &str| {
        let found = plan.iter().find(|e| e.concept == concept);
        found.unwrap().reason.clone()
    };
    assert_eq!(
        reason("c0"),
        Reason::Before {
            concept: "c2".into()
        }
    );
    assert_eq!(reason("c2"), Reason::WrongLastTime { on: day(11) });
}

#[test]
fn a_preview_is_no_evidence() {
    let (mut memory, _) = build(&[]);
    let kind = EventKind::CheckIn {
        confidence: Some(Confidence::CouldTeach),
        outcome: Some(Outcome::Right),
        preview: true,
    };
    memory.apply(&event(0, "c7", kind));
    let track = memory.track("c7").unwrap();
    assert_eq!(track.last_evidence_day, None);
    assert_eq!(track.rating, None);
    assert!(track.answers.abs() < f64::EPSILON);
}

/// Met in class: not again the same evening while others are open.
#[test]
fn a_concept_marked_in_class_waits_for_another_evening() {
    let (mut memory, _) = build(&[]);
    let kind = EventKind::CheckIn {
        confidence: None,
        outcome: Some(Outcome::Wrong),
        preview: false,
    };
    memory.apply(&event(30, "c0", kind));
    let plan = memory.plan(&evening(day(30)), 99);
    assert!(plan.iter().all(|e| e.concept != "c0"));
    let plan = memory.plan(&evening(day(31)), 99);
    assert!(plan.iter().any(|e| e.concept == "c0"));
}

/// A clock that ran ahead dated the student's first entries; later ones replace them also
/// once their date has come.
#[test]
fn an_entry_dated_ahead_never_replaces_a_later_one() {
    let rated = |sequence, on, confidence| Event {
        date: day(on),
        sequence,
        concept: "c0".into(),
        kind: EventKind::CheckIn {
            confidence: Some(confidence),
            outcome: None,
            preview: false,
        },
    };
    let answered = |sequence, on, result| Event {
        date: day(on),
        sequence,
        concept: "c0".into(),
        kind: EventKind::Answer {
            level: 2,
            result,
            minutes: 1.0,
        },
    };
    let reason = |events: &[Event]| {
        let mut memory = StudentMemory::new(facts());
        for event in events {
            memory.apply(event);
        }
        let plan = memory.plan(&evening(day(40)), 99);
        let found = plan.into_iter().find(|e| e.concept == "c0");
        found.unwrap().reason
    };
    assert_eq!(
        reason(&[
            rated(2, 3, Confidence::NotYet),
            rated(1, 20, Confidence::OnMyOwn)
        ]),
        Reason::MarkedNotYet { on: day(3) }
    );
    // The rating was given before the answer.
    assert_eq!(
        reason(&[
            answered(2, 3, AnswerResult::Wrong),
            rated(1, 20, Confidence::NotYet)
        ]),
        Reason::WrongLastTime { on: day(3) }
    );
    assert_eq!(
        reason(&[
            answered(2, 3, AnswerResult::Wrong),
            answered(1, 20, AnswerResult::Alone)
        ]),
        Reason::WrongLastTime { on: day(3) }
    );
    // The answer was given before the rating.
    assert_eq!(
        reason(&[
            rated(2, 3, Confidence::WithHelp),
            answered(1, 20, AnswerResult::Alone)
        ]),
        Reason::MarkedWithHelp { on: day(3) }
    );
}

/// Over a month of evenings three focus concepts come up more often than
/// without the wish, and leave the other concepts half of the evenings' items.
#[test]
fn a_focus_raises_a_share_within_bounds() {
    let share = |focus: &[&str]| {
        let (mut memory, _) = build(&[]);
        let (mut chosen, mut all) = (0, 0);
        for today in 40..70 {
            let mut evening = evening(day(today));
            evening.minutes = 4.0;
            evening.focus = focus.iter().map(|c| (*c).to_owned()).collect();
            while let Some(entry) = memory.next(&evening) {
                chosen += u32::from(["c3", "c5", "c6"].contains(&entry.concept.as_str()));
                all += 1;
                answer(&mut memory, &entry.concept, today, 1.0);
            }
        }
        f64::from(chosen) / f64::from(all)
    };
    let (without, with) = (share(&[]), share(&["c3", "c5", "c6"]));
    assert!(with > without + 0.05, "{with} against {without}");
    assert!(with < 0.6, "{with}");
}

#[test]
fn a_focus_raises_a_concept_and_does_not_fill_the_evening() {
    let (mut memory, _) = build(&[]);
    let mut evening = evening(day(40));
    let place = |memory: &StudentMemory, evening: &Evening| {
        memory
            .plan(evening, 99)
            .iter()
            .position(|e| e.concept == "c6")
            .unwrap()
    };
    let plain = place(&memory, &evening);
    evening.focus = vec!["c6".into()];
    assert!(place(&memory, &evening) <= plain);
    let mut counts = 0;
    while let Some(entry) = memory.next(&evening) {
        counts += u32::from(entry.concept == "c6");
        answer(&mut memory, &entry.concept, 40, 1.0);
    }
    assert!(counts <= 1, "{counts}");
}
