//! The share-safe table, its log, and practice for one seat.

use super::{Desk, date};
use crate::{DeskError, Field, MadeShareTable, Rule, ShareRelease, ShareShown, ShareStep};
use crate::{make_share_table, release_share_table, remove_seat, seat_practice};
use surefoot_catalogue::Language;
use surefoot_exercises::has_generator;
use surefoot_record::Thing;

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

fn made(desk: &Desk) -> MadeShareTable {
    make_share_table(&desk.store, &desk.open(), Language::first(), date(LATE)).unwrap()
}

fn release(desk: &Desk) -> Result<(), DeskError> {
    release_share_table(&desk.store, &desk.open(), &made(desk))
}

const CHANGED: ShareRelease = ShareRelease::TooFewChanged {
    unchanged: 1,
    least: 10,
};

#[test]
fn a_row_is_handed_out_again_only_when_enough_ratings_changed() {
    let desk = rated_by(24);
    let table = made(&desk).table;
    let allowed = |earlier| ShareRelease::Allowed {
        earlier,
        unchanged: 0,
    };
    assert_eq!(table.release, allowed(0));
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
    release(&desk).unwrap();
    // The same table again reveals nothing.
    assert_eq!(made(&desk).table.release, allowed(1));
    // One student rates anew, so two tables together would reveal that rating.
    let concept = desk.concept(0);
    desk.rate(24, "2026-09-14", &concept, 0);
    assert_eq!(made(&desk).table.release, CHANGED);
    assert!(matches!(
        release(&desk),
        Err(DeskError::Invalid {
            field: Field::ShareTable,
            rule: Rule::TooFewChanged
        })
    ));
    assert_eq!(desk.store.release_count(&desk.class).unwrap(), 1);
    // Twelve have changed their side: five of them were low.
    for seat in (6..=10).chain(18..=23) {
        desk.rate(seat, "2026-09-14", &concept, u8::from(seat <= 10) * 3);
    }
    let table = made(&desk).table;
    assert_eq!(table.release, allowed(1));
    // Each student counts once, with the last rating.
    assert!(table.rows.iter().any(|row| row.shown
        == ShareShown::Counts {
            low: Some(12),
            high: Some(12),
            reporters: 24
        }));
    release(&desk).unwrap();
    // A table that was made before another one was released is not released any more.
    let old = made(&desk);
    release(&desk).unwrap();
    assert!(release_share_table(&desk.store, &desk.open(), &old).is_err());
}

#[test]
fn a_removed_seat_leaves_random_marks_that_keep_the_rule() {
    let desk = rated_by(24);
    release(&desk).unwrap();
    let marks = || -> Vec<(String, String)> {
        (desk
            .store
            .released_ratings(&desk.class)
            .unwrap()
            .into_iter())
        .map(|(_, rating)| (rating.seat_mark, rating.mark))
        .collect()
    };
    let before = marks();
    let removed = remove_seat(&desk.store, &desk.class, 24, &[7; 32]).unwrap();
    let after = marks();
    let kept = after.iter().filter(|mark| before.contains(mark)).count();
    assert_eq!((before.len(), after.len(), kept), (24, 24, 23));
    assert_eq!(made(&desk).table.release, CHANGED);
    // The seat with the same number is another one.
    crate::restore(&desk.store, &removed).unwrap();
    assert_eq!(marks(), before);
    assert!(matches!(
        made(&desk).table.release,
        ShareRelease::Allowed { unchanged: 0, .. }
    ));
}

#[test]
fn a_class_of_nine_gives_nothing_and_says_so() {
    let desk = rated_by(9);
    assert_eq!(made(&desk).table.release, ShareRelease::Nothing);
    assert!(matches!(
        release(&desk),
        Err(DeskError::Invalid {
            rule: Rule::NothingToShow,
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
        Err(DeskError::NotFound(Thing::Seat))
    ));
}
