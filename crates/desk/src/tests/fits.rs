//! Every use-case estimates the class only once.

use super::{Desk, date};
use crate::estimate::fits;
use crate::{
    GroupEffort, GroupWishes, board, class_now, comparison, concept_reports, group_page,
    groups_desk, plan_groups, score_groups, seat_practice, share_table, student_page,
    student_pages, talk,
};
use surefoot_catalogue::Language;

#[test]
fn a_call_estimates_the_class_once() {
    let desk = Desk::with_seats(4);
    let concept = desk.concept(0);
    for seat in 1..=3 {
        desk.rate(seat, "2026-08-31", &concept, 1);
    }
    let (store, class, today) = (&desk.store, desk.open(), date("2026-09-14"));
    let language = Language::first();
    let wishes = GroupWishes::default();
    let counts = [
        (
            "board",
            fits::during(|| board(store, &class, &[], language, today).unwrap()),
        ),
        (
            "board of a group",
            fits::during(|| board(store, &class, &[1, 2], language, today).unwrap()),
        ),
        (
            "concept",
            fits::during(|| concept_reports(store, &class, &concept, language, today).unwrap()),
        ),
        (
            "comparison",
            fits::during(|| comparison(store, &class, language, today).unwrap()),
        ),
        (
            "student",
            fits::during(|| student_page(store, &class, 1, language, today).unwrap()),
        ),
        (
            "students",
            fits::during(|| student_pages(store, &class, language, today).unwrap()),
        ),
        (
            "talk",
            fits::during(|| talk(store, &class, language, today, 5).unwrap()),
        ),
        (
            "sentences",
            fits::during(|| class_now(store, &class, language, today).unwrap()),
        ),
        (
            "groups",
            fits::during(|| groups_desk(store, &class, language, today).unwrap()),
        ),
        (
            "plan",
            fits::during(|| {
                plan_groups(
                    store,
                    &class,
                    language,
                    today,
                    &wishes,
                    None,
                    GroupEffort::Quick,
                )
                .unwrap()
            }),
        ),
        (
            "score",
            fits::during(|| score_groups(store, &class, language, today, &wishes, &[], 0).unwrap()),
        ),
        (
            "group page",
            fits::during(|| group_page(store, &class, language, today, &concept, &[1]).unwrap()),
        ),
        (
            "practice",
            fits::during(|| seat_practice(store, &class, 1, today, 3).unwrap()),
        ),
        (
            "practice without a report",
            fits::during(|| seat_practice(store, &class, 4, today, 3).unwrap()),
        ),
    ];
    for (call, count) in counts {
        assert_eq!(count, 1, "{call}");
    }
    let share = fits::during(|| share_table(store, &class, language, today).unwrap());
    assert_eq!(share, 0, "a share-safe table counts and estimates nothing");
}

#[test]
fn the_pages_of_all_students_are_the_page_of_each() {
    let desk = Desk::with_seats(3);
    desk.rate(2, "2026-08-31", &desk.concept(0), 2);
    let (class, today) = (desk.open(), date("2026-09-14"));
    let all = student_pages(&desk.store, &class, Language::first(), today).unwrap();
    for (seat, page) in (1..).zip(&all) {
        let alone = student_page(&desk.store, &class, seat, Language::first(), today).unwrap();
        assert_eq!(*page, alone);
    }
    assert_eq!(all.len(), 3);
}
