//! Small classes whose answers are written down. The sentences on simulated classes, and the
//! arithmetic beside another program, are in `tests/oracle/taught_again.py`.

use super::super::class_estimate::class_estimate;
use super::super::evidence::PracticeCount;
use super::*;
use proptest::prelude::*;

const STUDENTS: usize = 20;
const CONCEPTS: usize = 14;
const TAUGHT: usize = 3;
/// Passes before the teaching.
const BEFORE: usize = 4;

/// Reports in which `right` says what a student answers on a concept in a pass.
fn reports(
    passes: std::ops::Range<usize>,
    right: impl Fn(usize, usize, usize) -> Option<bool>,
) -> Evidence {
    let mut class = Evidence::new(STUDENTS, CONCEPTS, BEFORE + 3).unwrap();
    for student in 0..STUDENTS {
        for concept in 0..CONCEPTS {
            for pass in passes.clone() {
                if let Some(right) = right(student, concept, pass) {
                    class.mark(student, concept, pass, right).unwrap();
                }
            }
        }
    }
    class
}

/// A number from 0 to 99 that looks drawn by chance.
fn draw(student: usize, concept: usize, pass: usize) -> usize {
    let mut mixed = u64::try_from(student * 10_007 + concept * 101 + pass + 1).unwrap();
    for _ in 0..3 {
        mixed = (mixed ^ (mixed >> 15)).wrapping_mul(0x9E37_79B9_7F4A_7C15);
    }
    usize::try_from((mixed >> 32) % 100).unwrap()
}

/// How many of a hundred are right without an effect: 15 to 80, of the taught concept 25.
fn level(concept: usize) -> usize {
    if concept == TAUGHT {
        25
    } else {
        15 + 5 * concept
    }
}

fn usual(student: usize, concept: usize, pass: usize) -> bool {
    draw(student, concept, pass) < level(concept)
}

fn before() -> ClassEstimate {
    class_estimate(
        &reports(0..BEFORE, |s, c, t| Some(usual(s, c, t))),
        BEFORE - 1,
    )
}

fn found(since: &Evidence, students: &[usize]) -> Result<Effect, NoEffect> {
    taught_again(
        &before(),
        since,
        &TaughtAgain {
            concept: TAUGHT,
            students,
            others: &(0..CONCEPTS).collect(),
            left_out: &BTreeSet::new(),
        },
    )
}

fn all() -> Vec<usize> {
    (0..STUDENTS).collect()
}

#[test]
fn a_class_that_does_well_on_what_was_taught_again_rose_more_than_the_others() {
    let since = reports(BEFORE..BEFORE + 2, |s, c, t| {
        Some(if c == TAUGHT {
            (s + t) % 5 > 0
        } else {
            usual(s, c, t)
        })
    });
    let effect = found(&since, &all()).unwrap();
    assert_eq!(effect.verdict, HelpVerdict::RoseMore, "{effect:?}");
    assert_eq!((effect.answers, effect.right), (40, 32));
    assert!(
        effect.foretold < 15.0 && effect.expected < 15.0,
        "{effect:?}"
    );
    let more = f64::from(effect.right) - effect.expected;
    assert!(
        effect.more_low > 0.0 && effect.more_low < more,
        "{effect:?}"
    );
    assert!(effect.more_high > more, "{effect:?}");
    assert_eq!(effect.concepts, CONCEPTS - 1);
}

#[test]
fn a_class_that_rises_on_everything_did_not_rise_more() {
    let since = reports(BEFORE..BEFORE + 2, |s, c, t| {
        // About a logit more, at every level.
        Some(draw(s, c, t) < level(c) + level(c) * (100 - level(c)) / 110)
    });
    let effect = found(&since, &all()).unwrap();
    assert!(effect.others_logit > 0.4, "{effect:?}");
    assert!(effect.verdict < HelpVerdict::LikelyRoseMore, "{effect:?}");
}

#[test]
fn a_class_that_goes_on_as_before_shows_no_sign_after_three_passes() {
    let since = reports(BEFORE..BEFORE + 3, |s, c, t| Some(usual(s, c, t)));
    let effect = found(&since, &all()).unwrap();
    assert_eq!(effect.verdict, HelpVerdict::NoSign, "{effect:?}");
}

/// Five students are taught. All rise on the concept, because its problems are easier now.
#[test]
fn a_group_is_compared_with_the_others_on_the_same_problems() {
    let group: Vec<usize> = (0..5).collect();
    // The problems of every second concept are far easier than before, the others far harder.
    let with = |others: usize| {
        reports(BEFORE..BEFORE + 2, move |s, c, t| {
            let of_concept = if c.is_multiple_of(2) { 90 } else { 10 };
            let of_taught = if s < 5 { 90 } else { others };
            Some(draw(s, c, t) < if c == TAUGHT { of_taught } else { of_concept })
        })
    };
    let alone = found(&with(10), &group).unwrap();
    let together = found(&with(90), &group).unwrap();
    assert_eq!(alone.verdict, HelpVerdict::RoseMore, "{alone:?}");
    assert_eq!(together.verdict, HelpVerdict::CannotTell, "{together:?}");
}

#[test]
fn without_answers_or_other_concepts_nothing_is_said() {
    let since = reports(BEFORE..BEFORE + 1, |s, c, t| {
        (c != TAUGHT).then(|| usual(s, c, t))
    });
    assert_eq!(found(&since, &all()), Err(NoEffect::NoAnswers));
    let since = reports(BEFORE..BEFORE + 1, |s, c, t| {
        (c < 6).then(|| usual(s, c, t))
    });
    assert_eq!(found(&since, &all()), Err(NoEffect::FewOthers));
    assert_eq!(found(&since, &[]), Err(NoEffect::NoAnswers));
    assert_eq!(found(&since, &[99]), Err(NoEffect::NoAnswers));
}

#[test]
fn cells_taught_again_elsewhere_are_left_out() {
    let since = reports(BEFORE..BEFORE + 1, |s, c, t| Some(c == 5 || usual(s, c, t)));
    let others: BTreeSet<usize> = (0..CONCEPTS).collect();
    let ask = |left_out: &BTreeSet<(usize, usize)>| {
        taught_again(
            &before(),
            &since,
            &TaughtAgain {
                concept: TAUGHT,
                students: &all(),
                others: &others,
                left_out,
            },
        )
        .unwrap()
    };
    let (with, without) = (
        ask(&BTreeSet::new()),
        ask(&all().into_iter().map(|s| (s, 5)).collect()),
    );
    assert_eq!(
        (with.concepts, without.concepts),
        (CONCEPTS - 1, CONCEPTS - 2)
    );
    assert!(with.sd > without.sd, "{with:?} {without:?}");
}

#[test]
fn practice_at_home_changes_nothing() {
    let mut since = reports(BEFORE..BEFORE + 1, |s, c, t| Some(usual(s, c, t)));
    let before = found(&since, &all()).unwrap();
    for student in 0..STUDENTS {
        since
            .practise(PracticeCount {
                student,
                concept: TAUGHT,
                pass: BEFORE,
                right: 200,
                wrong: 0,
            })
            .unwrap();
    }
    assert_eq!(found(&since, &all()).unwrap(), before);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]

    /// One more right result of somebody who was taught never makes the verdict worse; one more
    /// wrong one never makes it better. What is right beyond the expected lies in its own range.
    #[test]
    fn one_more_right_result_never_makes_the_verdict_worse(
        marks in prop::collection::vec(prop::option::of(any::<bool>()), STUDENTS),
        members in 1..STUDENTS,
        seed in 0..1000usize,
    ) {
        let student = seed % members;
        let since = |more: Option<bool>| {
            let mut class = reports(BEFORE..BEFORE + 1, |s, c, t| {
                if c == TAUGHT { marks[s] } else { Some(usual(s + seed, c, t)) }
            });
            // So that there is always something to judge.
            class.mark((student + 1) % members, TAUGHT, BEFORE + 2, seed % 2 == 0).unwrap();
            if let Some(right) = more {
                class.mark(student, TAUGHT, BEFORE + 1, right).unwrap();
            }
            class
        };
        let students: Vec<usize> = (0..members).collect();
        let effect = |more| found(&since(more), &students).unwrap();
        let now = effect(None);
        prop_assert!(effect(Some(true)).verdict >= now.verdict);
        prop_assert!(effect(Some(false)).verdict <= now.verdict);
        let more = f64::from(now.right) - now.expected;
        prop_assert!(now.more_low < more && more < now.more_high, "{now:?}");
        prop_assert_eq!(now.more_low > 0.0, now.verdict >= HelpVerdict::LikelyRoseMore);
    }
}
