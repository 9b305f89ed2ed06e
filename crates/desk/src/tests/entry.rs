//! Paper entries and observations of a day.

use super::{Desk, date};
use crate::{DeskError, board, entry_day, make_entry};
use crate::{EntryDay, EntryMade, EntryValue};
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_record::Thing;

const DAY: &str = "2026-09-14";
const TODAY: &str = "2026-09-15";

fn open(desk: &Desk, on: &str) -> EntryDay {
    entry_day(
        &desk.store,
        &desk.open(),
        Language::first(),
        date(on),
        date(TODAY),
    )
    .unwrap()
}

fn fill(desk: &Desk, seat: u32, concept: &str, value: EntryValue) -> Result<(), DeskError> {
    let made = EntryMade {
        seat,
        concept: concept.to_owned(),
        value,
    };
    make_entry(&desk.store, &desk.open(), date(DAY), &made, date(TODAY))
}

fn rating(rating: u8) -> EntryValue {
    EntryValue::Rating {
        rating: Some(rating.try_into().unwrap()),
    }
}

#[test]
fn a_day_has_its_concepts_and_its_neighbours() {
    let desk = Desk::with_seats(3);
    let day = open(&desk, DAY);
    assert_eq!(day.day, Some(1));
    assert_eq!(
        day.concepts.len(),
        desk.open().facts.rotation.days()[0].len()
    );
    assert_eq!(day.rows.len(), 3);
    assert_eq!(day.earlier, Some(date("2026-09-11")), "the Friday before");
    assert_eq!(day.later, Some(date(TODAY)));
    let sunday = open(&desk, "2026-09-13");
    assert!(sunday.concepts.is_empty() && sunday.day.is_none());
    assert_eq!(sunday.earlier, Some(date("2026-09-11")));
    for bad in ["2026-09-16", "2026-08-01"] {
        assert!(matches!(
            entry_day(
                &desk.store,
                &desk.open(),
                Language::first(),
                date(bad),
                date(TODAY)
            ),
            Err(DeskError::Invalid { .. })
        ));
    }
}

#[test]
fn paper_stands_above_a_device_for_what_is_on_it_and_goes_again() {
    let desk = Desk::with_seats(2);
    let concept = desk.concept(0);
    desk.rate(1, DAY, &concept, 3);
    let latest = || {
        let board = board(
            &desk.store,
            &desk.open(),
            &[],
            Language::first(),
            date(TODAY),
        )
        .unwrap();
        let row = board
            .rows
            .into_iter()
            .find(|r| r.concept.id == concept)
            .unwrap();
        (
            row.latest,
            [row.results.right, row.results.wrong],
            row.reporters,
            board.seats_reporting,
        )
    };
    assert_eq!(latest(), ([0, 0, 0, 1], [0, 0], 1, 1));
    let right = EntryValue::Outcome {
        outcome: Some(Outcome::Right),
    };
    fill(&desk, 1, &concept, right).unwrap();
    assert_eq!(
        latest(),
        ([0, 0, 0, 1], [1, 0], 1, 1),
        "the device's rating stays"
    );
    fill(&desk, 1, &concept, rating(1)).unwrap();
    fill(&desk, 2, &concept, rating(0)).unwrap();
    assert_eq!(latest(), ([1, 1, 0, 0], [1, 0], 2, 2));
    let day = open(&desk, DAY);
    let cell = day.rows[0].cells[0];
    assert_eq!(cell.rating, Some(Confidence::WithHelp));
    assert_eq!(cell.device_rating, Some(Confidence::CouldTeach));
    assert_eq!(cell.outcome, Some(Outcome::Right));
    for value in [
        EntryValue::Rating { rating: None },
        EntryValue::Outcome { outcome: None },
    ] {
        fill(&desk, 1, &concept, value).unwrap();
        fill(&desk, 2, &concept, value).unwrap();
    }
    assert_eq!(latest(), ([0, 0, 0, 1], [0, 0], 1, 1));
}

#[test]
fn a_seat_or_concept_that_is_not_there_is_named() {
    let desk = Desk::with_seats(2);
    let concept = desk.concept(0);
    assert!(matches!(
        fill(&desk, 9, &concept, rating(1)),
        Err(DeskError::NotFound(Thing::Seat))
    ));
    assert!(matches!(
        fill(&desk, 1, "none", rating(1)),
        Err(DeskError::NotFound(Thing::Concept))
    ));
}

#[test]
fn an_observation_counts_as_a_result_and_can_be_taken_back() {
    let desk = Desk::with_seats(8);
    let concept = desk.concept(0);
    for seat in 1..=4 {
        desk.rate(seat, DAY, &concept, 1);
    }
    // With results of other concepts, shares are known from the start.
    desk.mark_enough(1);
    let share = || {
        let board = board(
            &desk.store,
            &desk.open(),
            &[],
            Language::first(),
            date(TODAY),
        )
        .unwrap();
        board
            .rows
            .into_iter()
            .find(|r| r.concept.id == concept)
            .unwrap()
            .has_it
            .unwrap()
    };
    let before = share();
    for seat in 1..=4 {
        let seen = EntryValue::Seen {
            rating: Some(Confidence::CouldTeach),
        };
        fill(&desk, seat, &concept, seen).unwrap();
    }
    let after = share();
    assert!(after > before + 0.01, "{before} {after}");
    assert_eq!(
        open(&desk, DAY).rows[2].cells[0].seen,
        Some(Confidence::CouldTeach)
    );
    for seat in 1..=4 {
        fill(&desk, seat, &concept, EntryValue::Seen { rating: None }).unwrap();
    }
    assert!((share() - before).abs() < 1e-12);
}
