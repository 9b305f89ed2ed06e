//! Adding hand-ins one after the other gives their union.

use super::Desk;
use crate::files::derive::add;
use proptest::collection::vec;
use proptest::prelude::*;
use surefoot_record::Record;
use surefoot_test_support::record::any_record;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]

    #[test]
    fn adding_one_by_one_ends_at_the_union_and_counts_what_is_new(
        records in vec(any_record(), 1..6),
    ) {
        let desk = Desk::with_seats(2);
        let mut union = Record::default();
        for record in &records {
            let counted = add(&desk.store, &desk.class, 1, record.clone()).unwrap();
            prop_assert_eq!(counted, union.merge(record.clone()).entries());
            // The same hand-in again adds nothing.
            prop_assert_eq!(add(&desk.store, &desk.class, 1, record.clone()).unwrap(), 0);
        }
        prop_assert_eq!(desk.store.record_of(&desk.class, 1).unwrap(), union);
        prop_assert_eq!(desk.store.record_of(&desk.class, 2).unwrap(), Record::default());
    }
}
