//! The share-safe table, its log, and practice for one seat.

use super::{Desk, date};
use crate::{DeskError, Field, Rule, release_share_table, remove_seat, seat_practice, share_table};
use crate::{ShareRelease, ShareShown, ShareStep};
use surefoot_catalogue::Language;
use surefoot_exercises::has_generator;

/// A date on which every concept is taught.
const LATE: &str = "2027-05-06";

fn rated_by(seats: u32) -> Desk {
    let desk = Desk::with_seats(24);
    let concept = desk.concept(0);
    for seat in 1..=seats {
        desk.rate(seat, "2026-08-31", &concept, u8::from(seat > 10) * 3);
    }
    desk
}

#[test]
fn a_table_is_handed_out_once_for_a_class_and_not_for_nearly_the_same_one() {
    let desk = rated_by(24);
    let today = date(LATE);
    let table = share_table(&desk.store, &desk.open(), Language::first(), today).unwrap();
    assert_eq!(table.release, ShareRelease::Allowed { earlier: 0 });
    assert_eq!(
        table.step,
        ShareStep::ConceptCounts,
        "10 and 14 of one concept"
    );
    assert!(table.rows.iter().any(|row| row.shown
        == ShareShown::Counts {
            low: Some(10),
            high: Some(14),
            reporters: 24
        }));
    release_share_table(&desk.store, &desk.open(), &table).unwrap();
    // Two tables of the same class reveal nothing together.
    let again = share_table(&desk.store, &desk.open(), Language::first(), today).unwrap();
    assert_eq!(again.release, ShareRelease::Allowed { earlier: 1 });
    // One student leaves, so two tables together would reveal that student's ratings.
    remove_seat(&desk.store, &desk.class, 24).unwrap();
    let less = share_table(&desk.store, &desk.open(), Language::first(), today).unwrap();
    let refused = ShareRelease::NearlySameClass {
        made_on: today,
        differing: 1,
        least: 10,
    };
    assert_eq!(less.release, refused);
    assert!(matches!(
        release_share_table(&desk.store, &desk.open(), &less),
        Err(DeskError::Invalid {
            field: Field::ShareTable,
            rule: Rule::NearlySameClass
        })
    ));
    assert_eq!(desk.store.releases(&desk.class).unwrap().len(), 1);
}

#[test]
fn a_class_of_nine_gives_nothing_and_says_so() {
    let desk = rated_by(9);
    let table = share_table(&desk.store, &desk.open(), Language::first(), date(LATE)).unwrap();
    assert_eq!(table.release, ShareRelease::Nothing);
    assert!(matches!(
        release_share_table(&desk.store, &desk.open(), &table),
        Err(DeskError::Invalid {
            rule: Rule::Nothing,
            ..
        })
    ));
}

#[test]
fn practice_for_a_seat_begins_with_what_it_needs_and_ends_at_the_number_asked_for() {
    let desk = rated_by(3);
    let today = date("2026-09-20");
    let class = desk.open();
    let asked = |seat, most| seat_practice(&desk.store, &class, seat, today, most).unwrap();
    let own = asked(1, 4);
    assert!(own.len() <= 4);
    for practice in &own {
        assert!(has_generator(practice.concept));
    }
    // A seat without a report gets what the class needs most.
    assert!(!asked(20, 4).is_empty());
    assert!(matches!(
        seat_practice(&desk.store, &class, 99, today, 4),
        Err(DeskError::NotFound("seat"))
    ));
}
