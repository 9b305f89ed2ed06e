//! What holds for any class.

use super::*;
use proptest::prelude::*;
use std::collections::BTreeMap;

const SIZE: (usize, usize, usize) = (7, 5, 4);

type Reports = BTreeMap<(usize, usize, usize), (Option<u8>, Option<bool>, (u32, u32))>;

fn said(reports: &Reports, place: (usize, usize, usize)) -> Vec<Said> {
    let Some((rating, result, (right, wrong))) = reports.get(&place) else {
        return Vec::new();
    };
    let mut said = vec![Said::Practice(*right, *wrong)];
    said.extend(rating.map(Said::Rating));
    said.extend(result.map(Said::Result));
    said
}

fn of(reports: &Reports) -> Evidence {
    class(SIZE, |student, concept, pass| {
        said(reports, (student, concept, pass))
    })
}

fn reports() -> impl Strategy<Value = Reports> {
    prop::collection::btree_map(
        (0..SIZE.0, 0..SIZE.1, 0..SIZE.2),
        (
            prop::option::of(0u8..4),
            prop::option::of(any::<bool>()),
            (0u32..3, 0u32..3),
        ),
        0..120,
    )
}

proptest! {
    #[test]
    fn every_number_is_sound(reports in reports()) {
        let evidence = of(&reports);
        assert_sound(&evidence, &class_estimate(&evidence, SIZE.2 - 1));
    }

    #[test]
    fn the_order_of_students_and_concepts_does_not_matter(
        reports in reports(),
        students in Just((0..SIZE.0).collect::<Vec<_>>()).prop_shuffle(),
        concepts in Just((0..SIZE.1).collect::<Vec<_>>()).prop_shuffle(),
    ) {
        let turned: Reports = reports
            .iter()
            .map(|(&(i, c, t), said)| ((students[i], concepts[c], t), *said))
            .collect();
        let plain = class_estimate(&of(&reports), SIZE.2 - 1);
        let other = class_estimate(&of(&turned), SIZE.2 - 1);
        for (i, &j) in students.iter().enumerate() {
            for (c, &d) in concepts.iter().enumerate() {
                let (a, b) = (&plain.concepts[c], &other.concepts[d]);
                prop_assert!((a.share - b.share).abs() < 1e-9, "{a:?} {b:?}");
                prop_assert!((a.sd - b.sd).abs() < 1e-9, "{a:?} {b:?}");
                let (a, b) = (plain.student(i, c).unwrap(), other.student(j, d).unwrap());
                prop_assert!((a.mean() - b.mean()).abs() < 1e-9, "{a:?} {b:?}");
                prop_assert!((a.need(0.6) - b.need(0.6)).abs() < 1e-9, "{a:?} {b:?}");
            }
        }
    }

    /// One more right answer never makes the student's probability smaller, one more wrong
    /// never larger.
    #[test]
    fn an_answer_moves_the_student_its_own_way(
        reports in reports(), student in 0..SIZE.0, concept in 0..SIZE.1, pass in 0..SIZE.2,
    ) {
        let mean = |said: Option<Said>| {
            let mut evidence = of(&reports);
            if let Some(said) = said {
                report(&mut evidence, (student, concept, pass), said);
            }
            let estimate = class_estimate(&evidence, SIZE.2 - 1);
            estimate.student(student, concept).unwrap().mean()
        };
        let before = mean(None);
        let right = mean(Some(Said::Practice(1, 0)));
        let wrong = mean(Some(Said::Practice(0, 1)));
        prop_assert!(right > before, "{before} {right}");
        prop_assert!(wrong < before, "{before} {wrong}");
        let place = (student, concept, pass);
        if reports.get(&place).is_none_or(|(_, result, _)| result.is_none()) {
            let right = mean(Some(Said::Result(true)));
            let wrong = mean(Some(Said::Result(false)));
            prop_assert!(right > before, "{before} {right}, a result");
            prop_assert!(wrong < before, "{before} {wrong}, a result");
        }
    }

    #[test]
    fn a_pass_after_the_last_asked_for_changes_nothing(reports in reports()) {
        let mut early = reports.clone();
        early.retain(|(_, _, pass), _| *pass <= 1);
        let all = class_estimate(&of(&reports), 1);
        let only = class_estimate(&of(&early), 1);
        prop_assert_eq!(all.concepts, only.concepts);
    }
}
