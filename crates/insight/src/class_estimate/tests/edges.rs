//! Inputs at the edge. Each ends with finite numbers in order.

use super::*;

fn estimate(evidence: &Evidence) -> ClassEstimate {
    let estimate = class_estimate(evidence, evidence.passes() - 1);
    assert_sound(evidence, &estimate);
    estimate
}

#[test]
fn a_class_without_a_report_is_wide_open_and_in_its_order() {
    let evidence = class((5, 4, 3), |_, _, _| Vec::new());
    let estimate = estimate(&evidence);
    for concept in &estimate.concepts {
        assert!((concept.share - 0.585).abs() < 0.001, "{concept:?}");
        assert!(concept.low < 0.21 && concept.high > 0.88, "{concept:?}");
        assert!(concept.few_reports && !concept.sure_and_wrong);
    }
    assert_eq!(estimate.ranking, [0, 1, 2, 3]);
    assert!(!estimate.level_known);
    assert_eq!(estimate.student(5, 0), None);
    assert_eq!(estimate.student(0, 4), None);
}

#[test]
fn no_student_or_no_concept_says_nothing() {
    for (students, concepts) in [(0, 3), (3, 0), (0, 0)] {
        let estimate = estimate(&class((students, concepts, 2), |_, _, _| Vec::new()));
        for concept in &estimate.concepts {
            let range = [concept.low, concept.share, concept.high];
            assert_eq!(range, [0.1, 0.5, 0.9]);
        }
    }
    let one = estimate(&class((2, 1, 1), |_, _, _| Vec::new()));
    assert_eq!(one.of_students(&[9])[0].share, 0.5);
}

#[test]
fn everybody_alike() {
    let size = (6, 4, 5);
    for said in [
        Said::Result(true),
        Said::Result(false),
        Said::Rating(0),
        Said::Rating(3),
        Said::Practice(100_000, 0),
        Said::Practice(50_000, 50_000),
    ] {
        let estimate = estimate(&class(size, |_, _, _| vec![said]));
        let shares: Vec<f64> = estimate.concepts.iter().map(|c| c.share).collect();
        assert!(
            shares.iter().all(|s| (s - shares[0]).abs() < 1e-9),
            "{shares:?}"
        );
        assert_eq!(estimate.ranking, [0, 1, 2, 3], "{said:?}");
    }
}

#[test]
fn one_student_and_one_concept() {
    for right in [true, false] {
        let estimate = estimate(&class((1, 1, 1), |_, _, _| vec![Said::Result(right)]));
        assert_eq!(estimate.concepts[0].share > 0.585, right);
    }
}

/// A class of eight students and six concepts, in which `right` says who is right.
fn halves(right: fn(usize, usize, usize) -> bool) -> ClassEstimate {
    estimate(&class((8, 6, 5), |student, concept, pass| {
        let right = right(student, concept, pass);
        vec![Said::Result(right), Said::Rating(if right { 0 } else { 3 })]
    }))
}

#[test]
fn half_of_the_students_have_everything_and_are_above_the_others() {
    let estimate = halves(|student, _, _| student % 2 == 0);
    let of = |student, concept| estimate.student(student, concept).unwrap().mean();
    for concept in 0..6 {
        assert!(of(0, concept) > of(1, concept) + 0.5, "{concept}");
        assert!((of(0, concept) - of(6, concept)).abs() < 1e-6);
    }
}

#[test]
fn half_of_the_concepts_are_wrong_and_come_first() {
    let estimate = halves(|_, concept, _| concept % 2 == 0);
    let mut first = estimate.ranking[..3].to_vec();
    first.sort_unstable();
    assert_eq!(first, [1, 3, 5]);
    for pair in estimate.concepts.chunks(2) {
        assert!(pair[0].low > pair[1].high, "{pair:?}");
    }
}

#[test]
fn a_checkerboard_makes_all_concepts_alike() {
    let estimate = halves(|student, concept, _| (student + concept) % 2 == 0);
    let shares: Vec<f64> = estimate.concepts.iter().map(|c| c.share).collect();
    for share in &shares {
        assert!((share - shares[0]).abs() < 0.01, "{shares:?}");
    }
}

#[test]
fn evidence_of_long_ago() {
    let evidence = class((4, 3, 60), |_, concept, pass| {
        if pass > 0 {
            return Vec::new();
        }
        vec![
            Said::Rating(3),
            Said::Result(concept > 0),
            Said::Practice(1, 1),
        ]
    });
    let estimate = estimate(&evidence);
    assert!(
        estimate
            .concepts
            .iter()
            .all(|c| c.few_reports && c.reporters == 0)
    );
    // It still gives an order.
    assert_eq!(estimate.ranking[0], 0);
}

/// Ratings give an order. The level is known from answers of weight 350, of five students.
#[test]
fn ratings_give_an_order_and_enough_answers_the_level() {
    // Results in the last pass, so each of weight 1: of some students, on some concepts.
    let rated = |students: usize, concepts: usize| {
        class((25, 20, 2), move |student, concept, pass| {
            let rating = u8::try_from(concept / 5).unwrap();
            let mut said = vec![Said::Rating(rating)];
            if pass == 1 && student < students && concept < concepts {
                said.push(Said::Result(concept > 9));
            }
            said
        })
    };
    let alone = estimate(&rated(0, 0));
    assert!(!alone.level_known);
    assert!(alone.ranking[..10].iter().all(|concept| *concept < 10));
    for (students, concepts, known) in [(1, 1, false), (17, 20, false), (25, 14, true)] {
        assert_eq!(estimate(&rated(students, concepts)).level_known, known);
    }
    // A hundred answers of a student and concept in one pass weigh 4.8, because they are alike.
    let practised = |students: usize, concepts: usize| {
        class((25, 20, 1), move |student, concept, _| {
            let there = student < students && concept < concepts;
            vec![Said::Practice(if there { 100 } else { 0 }, 0)]
        })
    };
    assert!(!estimate(&practised(18, 4)).level_known);
    assert!(estimate(&practised(15, 5)).level_known);
    // Four students do not tell the level of a class, however much they practise.
    assert!(!estimate(&practised(4, 20)).level_known);
    assert!(estimate(&practised(5, 20)).level_known);
    // Answers lose their weight with age.
    assert!(!class_estimate(&practised(15, 5), 1).level_known);
}

/// Everyone rates everything high. One concept is always wrong: it comes first, and is the
/// only one that is sure and wrong.
#[test]
fn a_class_that_is_sure_and_wrong_is_seen() {
    let evidence = class((20, 6, 6), |_, concept, _| {
        vec![Said::Rating(3), Said::Result(concept != 4)]
    });
    let estimate = estimate(&evidence);
    assert_eq!(estimate.ranking[0], 4);
    assert!(
        estimate.concepts[4].high < 0.3,
        "{:?}",
        estimate.concepts[4]
    );
    let seen: Vec<bool> = estimate.concepts.iter().map(|c| c.sure_and_wrong).collect();
    assert_eq!(seen, [false, false, false, false, true, false]);
    // Four students are too few to say so.
    assert!(!estimate.of_students(&[0, 1, 2, 3])[4].sure_and_wrong);
}

/// The whole class is one of the groups that can be asked for.
#[test]
fn the_class_is_a_group_of_its_students() {
    let evidence = class((5, 3, 2), |student, concept, _| {
        vec![Said::Result(student > concept), Said::Rating(2)]
    });
    let estimate = estimate(&evidence);
    assert_eq!(estimate.of_students(&[0, 1, 2, 3, 4]), estimate.concepts);
    let [strong] = [estimate.of_students(&[4])];
    let own = estimate.student(4, 2).unwrap();
    assert!((strong[2].share - own.mean()).abs() < 1e-12);
    assert!(strong[2].share > estimate.concepts[2].share);
}
