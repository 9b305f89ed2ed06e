//! What the board may say: with ratings alone, and of a class that is sure and wrong.

use super::{Desk, date};
use crate::{Board, BoardRow, board, concept_reports, set_taught_from, student_page, talk};
use surefoot_catalogue::Language;

const TODAY: &str = "2026-09-28";

fn of(desk: &Desk) -> Board {
    board(
        &desk.store,
        &desk.open(),
        &[],
        Language::first(),
        date(TODAY),
    )
    .unwrap()
}

fn row(desk: &Desk, concept: &str) -> BoardRow {
    let mut rows = of(desk).rows.into_iter();
    rows.find(|row| row.concept.id == concept).unwrap()
}

/// Eight seats; the first concept is rated low, the second high.
fn rated() -> (Desk, [String; 2]) {
    let desk = Desk::with_seats(8);
    let concepts = [0, 1].map(|day| desk.concept(day));
    for (concept, rating) in concepts.iter().zip([0, 3]) {
        set_taught_from(&desk.store, &desk.class, concept, Some(date("2026-08-31"))).unwrap();
        for seat in 1..=8 {
            desk.rate(seat, "2026-09-14", concept, rating);
        }
    }
    (desk, concepts)
}

#[test]
fn ratings_alone_rank_concepts_and_show_no_share() {
    let (desk, [weak, strong]) = rated();
    assert!(!of(&desk).level_known);
    for (concept, rank) in [(&weak, 1), (&strong, 2)] {
        let row = row(&desk, concept);
        assert_eq!((row.rank, row.reporters), (Some(rank), 8));
        assert_eq!((row.has_it, row.low, row.high), (None, None, None));
    }
    let (class, language, today) = (desk.open(), Language::first(), date(TODAY));
    let page = concept_reports(&desk.store, &class, &weak, language, today).unwrap();
    assert!(page.students.iter().all(|student| student.has_it.is_none()));
    let page = student_page(&desk.store, &class, 1, language, today).unwrap();
    let order: Vec<&str> = page
        .concepts
        .iter()
        .map(|c| c.concept.id.as_str())
        .collect();
    assert_eq!(order, [&weak, &strong]);
    assert!(page.concepts.iter().all(|c| c.has_it.is_none()));
    let today = talk(&desk.store, &class, language, today, 4).unwrap();
    let first = &today.concepts[0];
    assert_eq!(
        (first.concept.id.as_str(), first.has_it),
        (weak.as_str(), None)
    );
    assert!(first.chosen && first.way.is_some());

    // One result anywhere, and shares are shown with their ranges.
    desk.rate_and_mark(1, "2026-09-15", &weak, 0, false);
    assert!(of(&desk).level_known);
    let row = row(&desk, &strong);
    assert!(row.low.unwrap() < row.has_it.unwrap() && row.has_it.unwrap() < row.high.unwrap());
}

#[test]
fn a_class_that_is_sure_and_wrong_is_told_so() {
    let desk = Desk::with_seats(8);
    let concepts = [0, 1, 2].map(|day| desk.concept(day));
    for (at, concept) in concepts.iter().enumerate() {
        set_taught_from(&desk.store, &desk.class, concept, Some(date("2026-08-31"))).unwrap();
        for on in ["2026-08-31", "2026-09-14", "2026-09-28"] {
            for seat in 1..=8 {
                desk.rate_and_mark(seat, on, concept, 3, at != 1);
            }
        }
    }
    let seen: Vec<bool> = concepts
        .iter()
        .map(|c| row(&desk, c).sure_and_wrong)
        .collect();
    assert_eq!(seen, [false, true, false]);
    let first = row(&desk, &concepts[1]);
    assert_eq!(first.rank, Some(1));
    assert!(first.has_it.unwrap() < 0.3, "{first:?}");
}
