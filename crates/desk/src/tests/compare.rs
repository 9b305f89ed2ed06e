//! Ratings compared with results.

use super::{Desk, date};
use crate::{CalibrationVerdict, EntryMade, EntryValue};
use crate::{board, comparison, make_entry, student_page};
use surefoot_catalogue::Language;
use surefoot_catalogue::rating::{Confidence, Outcome};
use surefoot_record::{AnswerCount, MisconceptionCode};

const TODAY: &str = "2026-10-30";

fn practise(
    desk: &Desk,
    seat: u32,
    on: &str,
    concept: &str,
    confidence: u8,
    alone: u32,
    wrong: u32,
) {
    let count = AnswerCount {
        confidence: Some(confidence.try_into().unwrap()),
        alone,
        with_help: 0,
        wrong,
    };
    desk.practise(seat, on, concept, |entry| entry.answers.push(count));
}

fn compare(desk: &Desk) -> crate::Comparison {
    comparison(&desk.store, &desk.open(), Language::first(), date(TODAY)).unwrap()
}

fn listed(desk: &Desk) -> Vec<crate::ConceptMisconception> {
    let found = board(
        &desk.store,
        &desk.open(),
        &[],
        Language::first(),
        date(TODAY),
    );
    found.unwrap().misconceptions
}

#[test]
fn sure_but_wrong_and_right_but_unsure_are_told_from_the_last_rating_on() {
    let desk = Desk::with_seats(4);
    let concept = desk.concept(0);
    // 1: sure, then wrong. 2: unsure, then right. 3: wrong only before the last rating.
    // 4: unsure, then right once, which may be luck.
    desk.rate(1, "2026-09-14", &concept, 3);
    practise(&desk, 1, "2026-09-15", &concept, 3, 0, 3);
    desk.rate(2, "2026-09-14", &concept, 0);
    practise(&desk, 2, "2026-09-15", &concept, 1, 4, 0);
    practise(&desk, 3, "2026-09-01", &concept, 3, 0, 5);
    desk.rate(3, "2026-09-14", &concept, 3);
    practise(&desk, 3, "2026-09-15", &concept, 3, 2, 0);
    desk.rate(4, "2026-09-14", &concept, 1);
    practise(&desk, 4, "2026-09-15", &concept, 1, 1, 0);
    let found = compare(&desk);
    let seats =
        |list: &[crate::Contradiction]| list.iter().map(|m| m.student.seat).collect::<Vec<_>>();
    assert_eq!(seats(&found.sure_but_wrong), [1]);
    assert_eq!(seats(&found.unsure_but_right), [2]);
    let practice = found.sure_but_wrong[0].practice;
    assert_eq!(
        (practice.alone, practice.with_help, practice.wrong),
        (0, 0, 3)
    );
    assert_eq!(found.sure_but_wrong[0].rating, Confidence::CouldTeach);
}

#[test]
fn calibration_is_told_from_twenty_answers_on() {
    let desk = Desk::with_seats(2);
    for day in 0..6 {
        let concept = desk.concept(day);
        practise(&desk, 1, "2026-09-15", &concept, 3, 1, 4);
        practise(&desk, 2, "2026-09-15", &concept, 3, 1, 0);
    }
    let found = compare(&desk);
    assert_eq!(found.students[0].answers, 30);
    assert_eq!(found.students[0].verdict, CalibrationVerdict::Over);
    // 30 answers at "could teach it" (.95 claimed), 6 right.
    assert!((found.students[0].bias.unwrap() - (0.95 - 0.2)).abs() < 1e-9);
    assert_eq!(found.students[1].verdict, CalibrationVerdict::TooLittle);
    assert_eq!(found.students[1].bias, None);
}

#[test]
fn misconceptions_are_counted_by_students_first() {
    let desk = Desk::with_seats(3);
    let concept = "g4-prime-composite".to_owned();
    let add = |seat: u32, code: &str, times: u32| {
        desk.practise(seat, "2026-10-20", &concept, |entry| {
            let code = MisconceptionCode::new(code).unwrap();
            entry.misconceptions.insert(code, times);
        });
    };
    add(1, "odd-means-prime", 9);
    add(1, "one-taken-as-prime", 1);
    add(2, "one-taken-as-prime", 1);
    add(3, "one-taken-as-prime", 1);
    let found = listed(&desk);
    assert_eq!(found[0].code, "one-taken-as-prime");
    assert_eq!(
        (found[0].students, found[0].count, found[0].newest_days),
        (3, 3, 10)
    );
    assert_eq!((found[1].students, found[1].count), (1, 9));
}

#[test]
fn a_code_that_its_concept_does_not_have_is_counted_as_another_misconception() {
    let desk = Desk::with_seats(2);
    let concept = desk.concept(0);
    desk.practise(1, "2026-10-20", &concept, |entry| {
        for code in ["ask-mia", "added-tops-and-bottoms", "other"] {
            let code = MisconceptionCode::new(code).unwrap();
            entry.misconceptions.insert(code, 2);
        }
    });
    let found = listed(&desk);
    assert_eq!(found.len(), 1);
    assert_eq!((found[0].code.as_str(), found[0].count), ("other", 6));
}

/// The skin-condition table of SAS PROC FREQ (88 pairs, quadratic .6607) as
/// self-ratings and observations of one pass.
#[test]
fn agreement_is_the_published_kappa_of_the_same_pairs() {
    let table = [[10, 4, 1, 0], [5, 10, 12, 2], [2, 4, 12, 5], [0, 2, 6, 13]];
    let desk = Desk::with_seats(60);
    let days = desk.open().facts.rotation.days().to_vec();
    let concepts = [days[0][0].clone(), days[0][1].clone()];
    let mut place = 0;
    for (own, row) in table.iter().enumerate() {
        for (seen, times) in row.iter().enumerate() {
            for _ in 0..*times {
                let seat = place % 60 + 1;
                let concept = &concepts[place as usize / 60];
                desk.rate(seat, "2026-09-14", concept, u8::try_from(own).unwrap());
                // The observation is later in the same pass.
                let made = EntryMade {
                    seat,
                    concept: concept.clone(),
                    value: EntryValue::Seen {
                        rating: Some(u8::try_from(seen).unwrap().try_into().unwrap()),
                    },
                };
                make_entry(
                    &desk.store,
                    &desk.open(),
                    date("2026-09-16"),
                    &made,
                    date(TODAY),
                )
                .unwrap();
                place += 1;
            }
        }
    }
    let found = compare(&desk).agreement;
    assert_eq!(found.pairs, 88);
    assert_eq!(found.table, table);
    assert!((found.kappa.unwrap() - 0.660_722_891_6).abs() < 1e-9);
    assert!((found.standard_error.unwrap() - 0.061_642_832_4).abs() < 1e-9);
}

#[test]
fn an_observation_of_another_pass_makes_no_pair_and_few_pairs_no_kappa() {
    let desk = Desk::with_seats(2);
    let concept = desk.concept(0);
    desk.rate(1, "2026-09-01", &concept, 2);
    desk.rate(2, "2026-09-15", &concept, 2);
    for seat in [1, 2] {
        let made = EntryMade {
            seat,
            concept: concept.clone(),
            value: EntryValue::Seen {
                rating: Some(Confidence::WithHelp),
            },
        };
        make_entry(
            &desk.store,
            &desk.open(),
            date("2026-09-16"),
            &made,
            date(TODAY),
        )
        .unwrap();
    }
    let found = compare(&desk).agreement;
    assert_eq!((found.pairs, found.kappa), (1, None));
    assert_eq!(found.table[2][1], 1);
}

#[test]
fn a_students_page_lists_what_is_known_weakest_first() {
    let desk = Desk::with_seats(9);
    desk.mark_enough(4);
    let concepts: Vec<String> = (0..3).map(|day| desk.concept(day)).collect();
    for seat in 1..=3 {
        desk.rate(seat, "2026-10-12", &concepts[0], 3);
        desk.rate(seat, "2026-10-13", &concepts[1], 0);
    }
    let made = EntryMade {
        seat: 1,
        concept: concepts[2].clone(),
        value: EntryValue::Outcome {
            outcome: Some(Outcome::Wrong),
        },
    };
    make_entry(
        &desk.store,
        &desk.open(),
        date("2026-10-14"),
        &made,
        date(TODAY),
    )
    .unwrap();
    let page = student_page(&desk.store, &desk.open(), 1, Language::first(), date(TODAY)).unwrap();
    assert_eq!(page.concepts.len(), 3);
    assert_eq!(page.without_report, 37);
    let chances: Vec<f64> = page.concepts.iter().map(|c| c.has_it.unwrap()).collect();
    let taught = page
        .concepts
        .iter()
        .filter(|c| c.phase != surefoot_catalogue::rotation::Phase::Preview)
        .count();
    assert!(chances[..taught].is_sorted());
    let typed = page
        .concepts
        .iter()
        .find(|c| c.concept.id == concepts[2])
        .unwrap();
    assert_eq!(
        (typed.outcome, typed.newest_days),
        (Some(Outcome::Wrong), 16)
    );
    assert!(
        student_page(
            &desk.store,
            &desk.open(),
            10,
            Language::first(),
            date(TODAY)
        )
        .is_err()
    );
}
