//! The union of records, and what counts.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use proptest::collection::vec;
use proptest::prelude::*;
use std::collections::BTreeMap;
use surefoot_catalogue::calendar::{SchoolYear, monday_to_friday};
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_record::CheckInSource::{Device, Paper};
use surefoot_record::*;
use surefoot_test_support::record::*;

fn union(a: &Record, b: &Record) -> Record {
    let mut union = a.clone();
    union.merge(b.clone());
    union
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(500))]

    #[test]
    fn the_union_is_idempotent_commutative_and_associative(
        a in any_record(), b in any_record(), c in any_record()
    ) {
        prop_assert_eq!(union(&a, &a), a.clone());
        prop_assert_eq!(union(&a, &b), union(&b, &a));
        prop_assert_eq!(union(&union(&a, &b), &c), union(&a, &union(&b, &c)));
        prop_assert_eq!(union(&a, &Record::default()), a);
    }

    #[test]
    fn files_in_any_order_and_more_than_once_end_the_same(
        (files, schedule) in vec(any_record(), 1..6).prop_flat_map(|files| {
            let count = files.len();
            (Just(files), vec(0..count, 0..20))
        })
    ) {
        let mut in_order = Record::default();
        for file in &files {
            in_order.merge(file.clone());
        }
        let mut scheduled = Record::default();
        for &place in schedule.iter().chain((0..files.len()).rev().collect::<Vec<_>>().iter()) {
            scheduled.merge(files[place].clone());
        }
        prop_assert_eq!(&scheduled, &in_order);
        // The second time, nothing is new.
        for file in &files {
            prop_assert_eq!(scheduled.merge(file.clone()).entries(), 0);
        }
    }

    #[test]
    fn of_each_key_the_latest_rating_and_the_latest_outcome_stay(check_ins in vec(any_check_in(), 0..30)) {
        let record = Record::from_entries(check_ins.clone(), []);
        type Latest = (Option<Said<Confidence>>, Option<Said<Outcome>>);
        let mut latest: BTreeMap<_, Latest> = BTreeMap::new();
        for entry in &check_ins {
            let (confidence, outcome) = latest.entry(entry.key()).or_default();
            *confidence = (*confidence).max(entry.confidence);
            *outcome = (*outcome).max(entry.outcome);
        }
        let found: BTreeMap<_, _> = record
            .check_ins()
            .iter()
            .map(|entry| (entry.key(), (entry.confidence, entry.outcome)))
            .collect();
        prop_assert_eq!(found, latest);
    }

    #[test]
    fn a_merge_returns_what_it_changed(a in any_record(), b in any_record()) {
        let mut merged = a.clone();
        let changed = merged.merge(b);
        for entry in merged.check_ins() {
            let was = a.check_ins().iter().find(|before| before.key() == entry.key());
            prop_assert_eq!(changed.check_ins().contains(entry), was != Some(entry));
        }
        for entry in merged.practice() {
            let was = a.practice().iter().find(|before| before.key() == entry.key());
            prop_assert_eq!(changed.practice().contains(entry), was != Some(entry));
        }
    }

    #[test]
    fn entries_go_out_and_come_back(record in any_record()) {
        let (check_ins, practice) = record.clone().into_entries();
        prop_assert_eq!(Record::from_entries(check_ins, practice), record);
    }

    /// The rule again, field by field, without its code.
    #[test]
    fn what_counts_is_the_latest_of_each_field_up_to_today(check_ins in vec(any_check_in(), 0..30), today in 7..13u32) {
        let today = date(&format!("2026-09-{today:02}"));
        let counted = what_counts(&check_ins, up_to(today));
        let mut days: std::collections::BTreeSet<_> = std::collections::BTreeSet::new();
        for entry in &check_ins {
            days.insert((entry.date, entry.concept.clone()));
        }
        for (day, of) in days {
            let same = || check_ins.iter().filter(|e| e.date == day && e.concept == of);
            let rating = same().filter_map(|e| e.confidence).max().and_then(|said| said.value);
            let outcome = same().filter_map(|e| e.outcome).max().and_then(|said| said.value);
            let found = counted.iter().find(|c| c.date == day && *c.concept == of);
            if day > today || (rating.is_none() && outcome.is_none()) {
                prop_assert!(found.is_none());
            } else {
                let found = found.unwrap();
                prop_assert_eq!((found.confidence, found.outcome), (rating, outcome));
            }
        }
        prop_assert!(counted.is_sorted_by_key(|c| c.sequence));
    }
}

fn up_to(today: chrono::NaiveDate) -> CountedDates {
    let year = SchoolYear::new(
        date("2026-08-24"),
        date("2027-06-04"),
        monday_to_friday(),
        Default::default(),
    )
    .unwrap();
    CountedDates::of(&year, today)
}

#[test]
fn a_mark_made_later_on_a_device_that_has_not_seen_the_rating_leaves_the_rating() {
    let mut rated = check_in(1, "2026-09-08", CONCEPTS[0], 4, 3);
    rated.outcome = None;
    let mut marked = check_in(2, "2026-09-08", CONCEPTS[0], 5, 2);
    marked.confidence = None;
    let entries = [rated, marked];
    let counted = what_counts(&entries, up_to(date("2026-09-08")))[0];
    assert_eq!(counted.confidence, Some(Confidence::CouldTeach));
    assert_eq!(counted.outcome, Some(Outcome::Right));
}

#[test]
fn a_rating_taken_back_later_does_not_count() {
    let given = check_in(1, "2026-09-08", CONCEPTS[0], 4, 3);
    let mut taken_back = check_in(2, "2026-09-08", CONCEPTS[0], 5, 2);
    taken_back.confidence = Some(Said { at: 6, value: None });
    let entries = [given, taken_back];
    let counted = what_counts(&entries, up_to(date("2026-09-08")))[0];
    assert_eq!(counted.confidence, None);
    assert_eq!(counted.outcome, Some(Outcome::Right));
}

#[test]
fn at_one_place_in_the_order_the_greater_value_counts() {
    let entries = [
        check_in(1, "2026-09-08", CONCEPTS[0], 4, 1),
        check_in(2, "2026-09-08", CONCEPTS[0], 4, 2),
    ];
    let counted = what_counts(&entries, up_to(date("2026-09-08")))[0];
    assert_eq!(counted.confidence, Some(Confidence::OnMyOwn));
}

#[test]
fn paper_overrides_the_fields_that_are_filled_in() {
    let mut counting = Counting::new((), up_to(date("2026-09-08")));
    let said = |at, value| Some(Said { at, value });
    let on = date("2026-09-08");
    counting.add("c", on, Paper(Some(Confidence::NotYet), None));
    let marked = Some(Said {
        at: 8,
        value: Some(Outcome::Wrong),
    });
    counting.add(
        "c",
        on,
        Device(said(7, Some(Confidence::CouldTeach)), marked),
    );
    let counted = counting.finish()[0];
    assert_eq!(counted.confidence, Some(Confidence::NotYet));
    assert_eq!(counted.outcome, Some(Outcome::Wrong));
}

#[test]
fn what_came_later_in_the_students_order_comes_later_whatever_the_dates_say() {
    let entries = [
        // In September the clock was at Christmas.
        check_in(1, "2026-12-22", CONCEPTS[0], 7, 3),
        check_in(1, "2026-09-10", CONCEPTS[0], 8, 0),
        check_in(1, "1970-01-01", CONCEPTS[0], 9, 3),
    ];
    let last = |today: &str| {
        let counted = what_counts(&entries, up_to(date(today)));
        (
            counted.len(),
            counted.last().map(|c| (c.date, c.confidence)),
        )
    };
    let rated_last = Some((date("2026-09-10"), Some(Confidence::NotYet)));
    assert_eq!(last("2026-09-11"), (1, rated_last));
    // Once its date has come it counts, but the later rating is still the last.
    assert_eq!(last("2026-12-23"), (2, rated_last));
}

#[test]
fn paper_follows_what_the_devices_have_up_to_its_date() {
    let mut counting = Counting::new((), up_to(date("2026-12-23")));
    let said = |at| {
        Some(Said {
            at,
            value: Some(Confidence::WithHelp),
        })
    };
    for (on, said) in [
        ("2026-09-10", Device(said(5), None)),
        ("2026-09-24", Device(said(9), None)),
        ("2026-09-17", Paper(Some(Confidence::NotYet), None)),
        ("2026-10-08", Paper(Some(Confidence::OnMyOwn), None)),
    ] {
        counting.add("c", date(on), said);
    }
    let days: Vec<u32> = counting
        .finish()
        .iter()
        .map(|c| chrono::Datelike::day(&c.date))
        .collect();
    assert_eq!(days, [10, 17, 24, 8]);
}
