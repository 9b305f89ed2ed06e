//! Adding hand-ins one after the other gives their union.

use super::Desk;
use crate::error::DeskError;
use crate::files::derive::additions;
use proptest::collection::vec;
use proptest::prelude::*;
use surefoot_record::{MisconceptionCode, Record};
use surefoot_store::StoreError;
use surefoot_test_support::record::any_record;

proptest! {
    #![proptest_config(surefoot_test_support::few(15, 400))]

    #[test]
    fn adding_one_by_one_ends_at_the_union_and_counts_what_is_new(
        records in vec(any_record(), 1..6),
    ) {
        let desk = Desk::with_seats(2);
        let device = desk.device(1);
        let add = |record: &Record| {
            let added = additions(&desk.store, &desk.class, 1, Some(device), record.clone());
            let added = added.unwrap().expect("the seat is not full");
            let mut writer = desk.store.report_writer(device).unwrap();
            writer.write(&added).unwrap();
            added.entries()
        };
        let mut union = Record::default();
        for record in &records {
            prop_assert_eq!(add(record), union.merge(record.clone()).entries());
            // The same hand-in again adds nothing.
            prop_assert_eq!(add(record), 0);
        }
        prop_assert_eq!(desk.store.record_of(device).unwrap(), union);
        let other = desk.device(2);
        prop_assert_eq!(desk.store.record_of(other).unwrap(), Record::default());
    }
}

/// A merge of what is left would drop it without a word.
#[test]
fn a_misconception_without_practice_is_a_damaged_store() {
    let desk = Desk::with_seats(1);
    desk.practise(1, "2026-09-14", &desk.concept(0), |entry| {
        let code = MisconceptionCode::new("off-by-ten").unwrap();
        entry.misconceptions.insert(code, 2);
    });
    let device = desk.device(1);
    let practice = desk.store.record_of(device).unwrap();
    assert_eq!(practice.practice()[0].misconceptions.len(), 1);
    desk.damage("DELETE FROM practice_count");
    let found = additions(&desk.store, &desk.class, 1, Some(device), Record::default());
    assert!(
        matches!(&found, Err(DeskError::Store(StoreError::Unreadable { what, .. })) if *what == "misconception"),
        "{found:?}"
    );
}
