//! The talk plan of a day.

use super::{Desk, date};
use crate::GroupWishes;
use crate::{DeskError, keep_group_wishes, note_talk, set_closures, set_taught_from, talk};
use crate::{TalkView, TalkWay};
use surefoot_catalogue::Language;

/// Day 1 of the rotation, in pass 3.
const TODAY: &str = "2026-09-28";

fn plan(desk: &Desk, today: &str, minutes: u32) -> TalkView {
    talk(
        &desk.store,
        &desk.open(),
        Language::first(),
        date(today),
        minutes,
    )
    .unwrap()
}

/// All students lack the first concept of day 1 and have the second, and the level of the class
/// is known.
fn desk() -> (Desk, Vec<String>) {
    let (desk, today) = rated();
    desk.mark_enough(1);
    (desk, today)
}

/// The same by ratings alone.
fn rated() -> (Desk, Vec<String>) {
    let desk = Desk::with_seats(8);
    let today: Vec<String> = desk.open().facts.rotation.days()[0].clone();
    for concept in &today {
        let first = Some(date("2026-08-31"));
        set_taught_from(&desk.store, &desk.class, concept, first).unwrap();
    }
    for seat in 1..=8 {
        for on in ["2026-08-31", "2026-09-14"] {
            desk.rate(seat, on, &today[0], 0);
            desk.rate(seat, on, &today[1], 3);
        }
    }
    (desk, today)
}

#[test]
fn the_weak_concept_of_the_day_is_chosen_and_minutes_are_kept() {
    let (desk, today) = desk();
    let view = plan(&desk, TODAY, 4);
    assert_eq!(view.day, Some(1));
    assert!(view.is_today);
    assert_eq!(view.concepts.len(), today.len());
    let first = &view.concepts[0];
    assert_eq!(first.concept.id, today[0]);
    assert!(first.chosen && first.worth.unwrap() > 0.0 && first.exercise.is_some());
    assert!(first.expected_wrong.unwrap() > 0.0 && view.level_known);
    assert!(view.minutes_used <= 4);
    let unheard = view
        .concepts
        .iter()
        .find(|c| c.concept.id == today[2])
        .unwrap();
    assert!(!unheard.chosen && unheard.way.is_none() && unheard.has_it.is_none());
    // The same day has the same exercise.
    assert_eq!(plan(&desk, TODAY, 4), view);
    assert!(matches!(
        talk(&desk.store, &desk.open(), Language::first(), date(TODAY), 0),
        Err(DeskError::Invalid { .. })
    ));
}

/// How many would get it wrong is a question of the level. Without one, the way and the minutes
/// do not depend on it.
#[test]
fn by_ratings_alone_the_plan_goes_by_the_order_and_gives_no_number_of_students() {
    let (desk, today) = rated();
    let chosen = |view: &TalkView| -> Vec<String> {
        let of_talk = view.concepts.iter().filter(|c| c.chosen);
        of_talk.map(|c| c.concept.id.clone()).collect()
    };
    let view = plan(&desk, TODAY, 4);
    assert!(!view.level_known);
    assert_eq!((chosen(&view).len(), view.minutes_used), (2, 4));
    assert_eq!(view.concepts[0].concept.id, today[0]);
    for concept in &view.concepts {
        assert_eq!(
            (concept.has_it, concept.low, concept.high),
            (None, None, None)
        );
        let numbers = (concept.worth, concept.expected_wrong, concept.sure_wrong);
        assert_eq!(numbers, (None, None, None));
        let reported = today[..2].contains(&concept.concept.id);
        assert_eq!(concept.way, reported.then_some(TalkWay::PairTalk));
    }
    // There is time for one: the weaker, unless it was talked about lately.
    assert_eq!(chosen(&plan(&desk, TODAY, 2)), [today[0].as_str()]);
    let class = desk.open();
    note_talk(&desk.store, &class, date("2026-09-14"), &today[0], true).unwrap();
    assert_eq!(chosen(&plan(&desk, TODAY, 2)), [today[1].as_str()]);
}

#[test]
fn nothing_in_it_names_a_student() {
    let (desk, _) = desk();
    let text = serde_json::to_string(&plan(&desk, TODAY, 4)).unwrap();
    for seat in 1..=8 {
        assert!(!text.contains(&format!("\"A{seat}\"")));
    }
    assert!(!text.contains("\"seat\""));
}

#[test]
fn what_was_talked_about_lately_counts_half_and_absent_students_not_at_all() {
    let (desk, today) = desk();
    let worth = || {
        plan(&desk, TODAY, 4)
            .concepts
            .iter()
            .find(|c| c.concept.id == today[0])
            .and_then(|c| c.worth)
    };
    let before = worth().unwrap();
    note_talk(
        &desk.store,
        &desk.open(),
        date("2026-09-14"),
        &today[0],
        true,
    )
    .unwrap();
    assert!((worth().unwrap() - before / 2.0).abs() < 0.002);
    note_talk(
        &desk.store,
        &desk.open(),
        date("2026-09-14"),
        &today[0],
        false,
    )
    .unwrap();
    assert_eq!(worth(), Some(before));
    // On that day it is marked, and the plan stays the same.
    note_talk(&desk.store, &desk.open(), date(TODAY), &today[0], true).unwrap();
    let view = plan(&desk, TODAY, 4);
    assert!(view.concepts[0].talked && !view.concepts[0].talked_lately);
    let wishes = GroupWishes {
        absent: vec![1, 2, 3, 4],
        ..GroupWishes::default()
    };
    keep_group_wishes(&desk.store, &desk.open(), date(TODAY), &wishes).unwrap();
    let half = worth().unwrap();
    assert!(
        (half - before / 2.0).abs() < before * 0.05,
        "{half} of {before}"
    );
    assert!(note_talk(&desk.store, &desk.open(), date(TODAY), "none", true).is_err());
}

#[test]
fn a_day_without_school_looks_to_the_next_and_the_end_says_so() {
    let (desk, _) = desk();
    set_closures(&desk.store, &desk.class, [date(TODAY)].into()).unwrap();
    let view = plan(&desk, TODAY, 4);
    assert_eq!((view.date, view.is_today), (date("2026-09-29"), false));
    assert_eq!(view.day, Some(1), "the rotation moved with the closure");
    assert_eq!(plan(&desk, "2026-07-01", 4).date, date("2026-08-31"));
    let over = plan(&desk, "2027-06-01", 4);
    assert!(over.concepts.is_empty() && over.day.is_none());
}
