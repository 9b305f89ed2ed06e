//! The progress of assigned practice.

use super::{Desk, date};
use crate::{NewAssignment, assign, assignments};
use surefoot_catalogue::Language;
use surefoot_record::AnswerCount;

#[test]
fn practice_dated_after_today_or_outside_the_year_is_no_progress() {
    let desk = Desk::with_seats(1);
    let (class, concept) = (desk.open(), desk.concept(0));
    let last_day = class.facts.year.last_day;
    let new = NewAssignment {
        concepts: vec![concept.clone()],
        items_each: 5,
        from: date("2026-08-01"),
        due: date("2027-12-31"),
        seats: Vec::new(),
    };
    assign(
        &desk.store,
        &class,
        &new,
        "00000000000000a1",
        date("2026-09-01"),
    )
    .unwrap();
    for on in ["2026-08-02", "2026-09-02", "2026-09-30", "2027-12-01"] {
        desk.practise(1, on, &concept, |entry| {
            entry.answers.push(AnswerCount {
                confidence: None,
                alone: 1,
                with_help: 0,
                wrong: 0,
            });
        });
    }
    let done = |today| {
        let found = assignments(&desk.store, &class, Language::first(), today).unwrap();
        found[0].progress[0].amount.done
    };
    assert_eq!(done(date("2026-09-02")), 1);
    assert_eq!(done(date("2026-09-30")), 2);
    assert_eq!(done(last_day), 2);
    assert_eq!(done(date("2027-12-31")), 2);
}
