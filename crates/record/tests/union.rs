//! The union of records, and what it says across devices.

use proptest::collection::vec;
use proptest::prelude::*;
use std::collections::BTreeMap;
use surefoot_catalogue::rating::{Confidence, Outcome};
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
        // And a second time nothing is new.
        for file in &files {
            prop_assert_eq!(scheduled.merge(file.clone()), 0);
        }
    }

    #[test]
    fn the_highest_sequence_of_each_key_counts(check_ins in vec(any_check_in(), 0..30)) {
        let record = Record::from_entries(check_ins.clone(), []);
        let mut highest = BTreeMap::new();
        for entry in &check_ins {
            let key = (entry.device.clone(), entry.date, entry.concept.clone());
            let sequence: &mut u32 = highest.entry(key).or_default();
            *sequence = entry.sequence.max(*sequence);
        }
        let found: BTreeMap<_, _> = record
            .check_in_entries()
            .into_iter()
            .map(|e| ((e.device, e.date, e.concept), e.sequence))
            .collect();
        prop_assert_eq!(found, highest);
    }

    #[test]
    fn entries_go_out_and_come_back(record in any_record()) {
        let again = Record::from_entries(record.check_in_entries(), record.practice_entries());
        prop_assert_eq!(again, record);
    }
}

fn view_of(check_ins: &[CheckIn], today: &str) -> View {
    Record::from_entries(check_ins.to_vec(), []).view(
        date("2026-08-24"),
        date("2027-06-04"),
        date(today),
    )
}

#[test]
fn across_devices_what_was_said_last_counts_field_by_field() {
    let mut later = check_in(2, "2026-09-08", CONCEPTS[0], 5, 2);
    later.confidence = None;
    later.outcome = Some(Outcome::Wrong);
    let view = view_of(
        &[check_in(1, "2026-09-08", CONCEPTS[0], 4, 3), later],
        "2026-09-08",
    );
    let day = &view.days[&(concept(CONCEPTS[0]), date("2026-09-08"))];
    assert_eq!(
        day.confidence,
        Some(Said {
            sequence: 4,
            value: Confidence::CouldTeach
        })
    );
    assert_eq!(
        day.outcome,
        Some(Said {
            sequence: 5,
            value: Outcome::Wrong
        })
    );
}

fn practice() -> Practice {
    Practice {
        device: device(8),
        date: date("2026-09-08"),
        concept: concept(CONCEPTS[0]),
        sequence: 6,
        answers: vec![
            AnswerCount {
                sure: Some(Confidence::OnMyOwn),
                alone: 2,
                with_help: 1,
                wrong: 0,
            },
            AnswerCount {
                sure: None,
                alone: 0,
                with_help: 0,
                wrong: 1,
            },
        ],
        mistakes: BTreeMap::from([(MisconceptionCode::new("added-denominators").unwrap(), 1)]),
    }
}

#[test]
fn practice_adds_up_over_devices_and_never_twice_over_files() {
    let mut first = vec![practice()];
    let mut grown = first[0].clone();
    grown.sequence = 9;
    grown.answers[0].alone = 5;
    first.push(grown);
    let mut second = practice();
    second.device = device(9);
    first.push(second);
    let view = Record::from_entries([], first).view(
        date("2026-08-24"),
        date("2027-06-04"),
        date("2026-09-08"),
    );
    let day = &view.days[&(concept(CONCEPTS[0]), date("2026-09-08"))];
    // 5 from the grown state of the first device, 2 from the second.
    assert_eq!(day.answers[&Some(Confidence::OnMyOwn)], [7, 2, 0]);
    assert_eq!(day.answers[&None], [0, 0, 2]);
    assert_eq!(day.mistakes.values().sum::<u32>(), 2);
}

#[test]
fn a_rating_dated_ahead_waits_and_never_outranks_what_was_said_after_it() {
    let entries = [
        // Made by a clock that stood at Christmas, in September.
        check_in(1, "2026-12-22", CONCEPTS[0], 7, 3),
        check_in(1, "2026-09-10", CONCEPTS[0], 8, 0),
        check_in(1, "1970-01-01", CONCEPTS[0], 9, 3),
    ];
    let now = view_of(&entries, "2026-09-11");
    assert_eq!(
        (now.waiting.len(), now.outside.len(), now.days.len()),
        (1, 1, 1)
    );
    let said_last = Some((date("2026-09-10"), Confidence::NotYet));
    assert_eq!(now.last_confidence(&concept(CONCEPTS[0])), said_last);
    // When its date has come it is shown under it, but the later word still counts.
    let later = view_of(&entries, "2026-12-23");
    assert_eq!((later.waiting.len(), later.days.len()), (0, 2));
    assert_eq!(later.last_confidence(&concept(CONCEPTS[0])), said_last);
}
