use super::*;
use crate::stats::{logit, normal_cdf, trigamma};
use proptest::prelude::*;
use surefoot_catalogue::rating::Confidence;

/// A report: student, concept, pass, rating, result.
type Report = (usize, usize, usize, u8, Option<bool>);

const SIZE: (usize, usize, usize) = (7, 5, 4);

fn class(reports: &[Report], rename: impl Fn(usize, usize) -> (usize, usize)) -> Evidence {
    let mut evidence = Evidence::new(SIZE.0, SIZE.1, SIZE.2).unwrap();
    for &(student, concept, pass, rating, result) in reports {
        let (student, concept) = rename(student, concept);
        evidence
            .rate(
                student,
                concept,
                pass,
                Confidence::try_from(rating).unwrap(),
            )
            .unwrap();
        if let Some(right) = result {
            evidence.mark(student, concept, pass, right).unwrap();
        }
    }
    evidence
}

fn reports() -> impl Strategy<Value = Vec<Report>> {
    // A map, so that each key is reported once and the order does not matter.
    prop::collection::btree_map(
        (0..SIZE.0, 0..SIZE.1, 0..SIZE.2),
        (0u8..4, prop::option::of(any::<bool>())),
        0..120,
    )
    .prop_map(|map| {
        map.into_iter()
            .map(|((i, c, t), (r, y))| (i, c, t, r, y))
            .collect()
    })
}

#[test]
fn a_class_without_a_report_is_fifty_fifty_and_says_few_have_reported() {
    let evidence = Evidence::new(5, 3, 2).unwrap();
    let estimate = class_estimate(&evidence, 1, &Settings::default());
    for concept in &estimate.concepts {
        assert!((concept.share - 0.5).abs() < 1e-12);
        assert!(concept.few_reports);
    }
    assert_eq!(estimate.ranking, vec![0, 1, 2]);
    assert!((estimate.probability(4, 2).unwrap().mean() - 0.5).abs() < 1e-12);
    assert_eq!(estimate.probability(5, 0), None);
    assert_eq!(estimate.probability(0, 3), None);
}

#[test]
fn no_student_or_no_concept_is_no_trouble() {
    for (students, concepts) in [(0, 3), (3, 0), (0, 0)] {
        let evidence = Evidence::new(students, concepts, 2).unwrap();
        let estimate = class_estimate(&evidence, 1, &Settings::default());
        assert_eq!(estimate.concepts.len(), concepts);
        assert!(estimate.concepts.iter().all(|c| c.share.is_finite()));
    }
}

/// ψ(2) − ψ(2) = 0, so an even estimate needs help with probability Φ(logit .6 / h).
#[test]
fn need_of_an_even_estimate() {
    let even = ProbabilityEstimate {
        success: 2.0,
        failure: 2.0,
    };
    let h = (2.0 * trigamma(2.0)).sqrt();
    assert!((even.need(0.6) - normal_cdf(logit(0.6) / h)).abs() < 1e-12);
    assert!((even.need(0.5) - 0.5).abs() < 1e-9);
    let (low, high) = even.range(1.2816);
    assert!((low + high - 1.0).abs() < 1e-9 && low < 0.5);
}

proptest! {
    #[test]
    fn estimates_lie_in_their_ranges(reports in reports()) {
        let estimate = class_estimate(&class(&reports, |i, c| (i, c)), SIZE.2 - 1, &Settings::default());
        for concept in &estimate.concepts {
            prop_assert!(concept.low <= concept.share && concept.share <= concept.high);
            prop_assert!(0.0 <= concept.low && concept.high <= 1.0);
        }
        for student in 0..SIZE.0 {
            for concept in 0..SIZE.1 {
                let probability = estimate.probability(student, concept).unwrap();
                prop_assert!(probability.success > 0.0 && probability.failure > 0.0);
                let (low, high) = probability.range(1.2816);
                prop_assert!(low < high);
                prop_assert!((0.0..=1.0).contains(&probability.need(0.6)));
            }
        }
        prop_assert!(estimate.level_value.windows(2).all(|w| w[0] <= w[1]));
    }

    #[test]
    fn the_order_of_students_and_concepts_does_not_matter(
        reports in reports(), turn_i in 0..SIZE.0, turn_c in 0..SIZE.1,
    ) {
        let settings = Settings::default();
        let turned = |i: usize, c: usize| ((i + turn_i) % SIZE.0, (c + turn_c) % SIZE.1);
        let plain = class_estimate(&class(&reports, |i, c| (i, c)), SIZE.2 - 1, &settings);
        let other = class_estimate(&class(&reports, turned), SIZE.2 - 1, &settings);
        for i in 0..SIZE.0 {
            for c in 0..SIZE.1 {
                let (j, d) = turned(i, c);
                prop_assert!((plain.concepts[c].share - other.concepts[d].share).abs() < 1e-9);
                let (a, b) = (plain.probability(i, c).unwrap(), other.probability(j, d).unwrap());
                prop_assert!((a.mean() - b.mean()).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn a_pass_after_the_last_asked_for_changes_nothing(reports in reports()) {
        let settings = Settings::default();
        let early: Vec<Report> = reports.iter().filter(|r| r.2 <= 1).copied().collect();
        let all = class_estimate(&class(&reports, |i, c| (i, c)), 1, &settings);
        let only = class_estimate(&class(&early, |i, c| (i, c)), 1, &settings);
        prop_assert_eq!(all.concepts, only.concepts);
    }
}
