//! The stored cases, the inputs at the edge, and what holds for any input.

mod edges;
mod properties;
mod vectors;

use super::*;
use crate::evidence::PracticeCount;
use surefoot_catalogue::rating::Confidence;

/// What is reported of one student, concept and pass: a rating, a result, or practice.
#[derive(Debug, Clone, Copy)]
enum Said {
    Rating(u8),
    Result(bool),
    Practice(u32, u32),
}

/// Reports one thing.
fn report(class: &mut Evidence, (student, concept, pass): (usize, usize, usize), said: Said) {
    match said {
        Said::Rating(rating) => {
            let rating = Confidence::try_from(rating).unwrap();
            class.rate(student, concept, pass, rating)
        }
        Said::Result(right) => class.mark(student, concept, pass, right),
        Said::Practice(right, wrong) => class.practise(PracticeCount {
            student,
            concept,
            pass,
            right,
            wrong,
        }),
    }
    .unwrap();
}

/// A class in which `said` tells what is reported at each place.
fn class(
    (students, concepts, passes): (usize, usize, usize),
    said: impl Fn(usize, usize, usize) -> Vec<Said>,
) -> Evidence {
    let mut class = Evidence::new(students, concepts, passes).unwrap();
    for student in 0..students {
        for concept in 0..concepts {
            for pass in 0..passes {
                for one in said(student, concept, pass) {
                    report(&mut class, (student, concept, pass), one);
                }
            }
        }
    }
    class
}

/// Every number is finite, and ranges and probabilities are in order.
fn assert_sound(evidence: &Evidence, estimate: &ClassEstimate) {
    assert_eq!(estimate.concepts.len(), evidence.concepts());
    for c in &estimate.concepts {
        assert!(0.0 < c.low && c.high < 1.0, "{c:?}");
        assert!(c.low <= c.share && c.share <= c.high, "{c:?}");
        assert!(c.sd.is_finite() && c.certain_need.is_finite(), "{c:?}");
    }
    for student in 0..evidence.students() {
        for concept in 0..evidence.concepts() {
            let found = estimate.student(student, concept).unwrap();
            assert!(found.logit.is_finite() && found.sd > 0.0, "{found:?}");
            assert!((0.0..=1.0).contains(&found.need(0.6)), "{found:?}");
        }
    }
    let mut places = estimate.ranking.clone();
    places.sort_unstable();
    assert!(places.into_iter().eq(0..evidence.concepts()));
}
