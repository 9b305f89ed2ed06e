use super::*;
use proptest::prelude::*;

fn small(weights: Vec<Vec<u32>>) -> GroupProblem {
    GroupProblem {
        concepts: weights.first().map_or(0, Vec::len),
        weights,
        slots: 1,
        groups_per_slot: 2,
        size_min: 2,
        size_max: 3,
        copies: 2,
        prerequisites: vec![],
        apart: vec![],
        join: vec![],
        absent: vec![],
        coverage: 300,
    }
}

fn both() -> Limits {
    Limits {
        search: SearchLimits {
            rounds: 100,
            seed: 7,
        },
        exact: Some(ExactLimits {
            gap: 0.0,
            ..ExactLimits::default()
        }),
    }
}

#[test]
fn four_students_one_concept_sit_in_two_pairs() {
    let plan = plan_groups(&small(vec![vec![600]; 4]), &both()).unwrap();
    assert_eq!(plan.value, 4 * 900);
    assert_eq!(plan.groups.len(), 2);
    assert!(plan.proven_gap.abs() < 1e-12);
}

#[test]
fn nobody_is_no_trouble() {
    for weights in [vec![], vec![vec![]; 3], vec![vec![0, 0]; 3]] {
        let plan = plan_groups(&small(weights), &both()).unwrap();
        assert_eq!((plan.value, plan.groups.len()), (0, 0));
        assert!(plan.proven_gap.abs() < 1e-12);
    }
}

#[test]
fn contradictions_are_refused() {
    let mut problem = small(vec![vec![600]; 4]);
    problem.size_min = 4;
    assert!(matches!(
        plan_groups(&problem, &both()),
        Err(GroupProblemError::Sizes { .. })
    ));
    let mut problem = small(vec![vec![600]; 4]);
    problem.join = vec![(0, 4)];
    assert_eq!(
        plan_groups(&problem, &both()),
        Err(GroupProblemError::OutOfRange {
            what: "student",
            found: 4,
            count: 4
        })
    );
}

#[test]
fn each_rule_broken_is_named() {
    let mut problem = small(vec![
        vec![600, 0],
        vec![600, 500],
        vec![600, 500],
        vec![600, 500],
    ]);
    problem.apart = vec![(0, 1)];
    problem.join = vec![(2, 3)];
    problem.absent = vec![(1, 0)];
    let group = |concept, members: &[usize]| PlannedGroup {
        slot: 0,
        concept,
        members: members.to_vec(),
    };
    let wrong = problem.violations(&[group(0, &[0, 1, 2]), group(1, &[0, 2])]);
    for expected in [
        Violation::Together(0, 1),
        Violation::Absent {
            student: 1,
            slot: 0,
        },
        Violation::NotNeeded {
            student: 0,
            concept: 1,
        },
        Violation::TwiceInSlot {
            student: 2,
            slot: 0,
        },
        Violation::Split {
            pair: (2, 3),
            slot: 0,
        },
    ] {
        assert!(wrong.contains(&expected), "{expected:?}");
    }
    assert!(problem.violations(&[group(0, &[0, 2, 3])]).is_empty());
    assert_eq!(
        problem.violations(&[group(2, &[0, 2])]),
        vec![Violation::Unknown(group(2, &[0, 2]))]
    );
}

#[test]
fn weights_follow_dependants_and_prerequisites() {
    // .8 with one dependant needed: 800 · 1.25; .6 with one prerequisite needed: 600 / 2.
    let found = weights(
        &[vec![0.8, 0.6, 0.4]],
        &[(0, 1), (0, 2)],
        &WeightRule::default(),
    );
    assert_eq!(found, vec![vec![1000, 300, 0]]);
}

fn problems() -> impl Strategy<Value = GroupProblem> {
    (
        2usize..9,
        1usize..4,
        1usize..3,
        1usize..3,
        1usize..4,
        0usize..3,
        1usize..3,
    )
        .prop_flat_map(
            |(students, concepts, slots, groups_per_slot, size_min, wider, copies)| {
                let pair = (0..students, 0..students);
                let pairs = prop::collection::vec(pair.clone(), 0..4);
                let seats = prop::collection::vec((0..students, 0..slots), 0..4);
                let weight = prop_oneof![Just(0u32), 500u32..1500];
                let weights = prop::collection::vec(
                    prop::collection::vec(weight, concepts..=concepts),
                    students..=students,
                );
                let edges = prop::collection::vec((0..concepts, 0..concepts), 0..3);
                (weights, pairs.clone(), pairs, seats, edges).prop_map(
                    move |(weights, apart, join, absent, prerequisites)| GroupProblem {
                        weights,
                        concepts,
                        slots,
                        groups_per_slot,
                        size_min,
                        size_max: size_min + wider,
                        copies,
                        prerequisites,
                        apart: apart.into_iter().filter(|(a, b)| a != b).collect(),
                        join: join.into_iter().filter(|(a, b)| a != b).collect(),
                        absent,
                        coverage: 300,
                    },
                )
            },
        )
}

/// The best value by trying every plan: in every slot, every student is in one of the groups or in
/// none. Only for the smallest classes.
fn best_by_trying(problem: &GroupProblem) -> u64 {
    fn place(problem: &GroupProblem, seat: usize, groups: &mut Vec<PlannedGroup>, best: &mut u64) {
        let students = problem.students();
        if seat == students * problem.slots {
            let running: Vec<PlannedGroup> = groups
                .iter()
                .filter(|g| !g.members.is_empty())
                .cloned()
                .collect();
            let value = problem.value(&running);
            if value > *best && problem.violations(&running).is_empty() {
                *best = value;
            }
            return;
        }
        let (slot, student) = (seat / students, seat % students);
        place(problem, seat + 1, groups, best);
        for number in 0..groups.len() {
            let group = &groups[number];
            if group.slot == slot
                && group.members.len() < problem.size_max
                && problem.weights[student][group.concept] > 0
            {
                groups[number].members.push(student);
                place(problem, seat + 1, groups, best);
                groups[number].members.pop();
            }
        }
    }
    let mut groups = Vec::new();
    for slot in 0..problem.slots {
        for concept in 0..problem.concepts {
            for _ in 0..problem.copies {
                groups.push(PlannedGroup {
                    slot,
                    concept,
                    members: vec![],
                });
            }
        }
    }
    let mut best = 0;
    place(problem, 0, &mut groups, &mut best);
    best
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn no_plan_breaks_a_rule_and_the_gap_is_honest(problem in problems(), seed in 0u64..99) {
        let mut limits = both();
        limits.search.seed = seed;
        let plan = plan_groups(&problem, &limits).unwrap();
        prop_assert_eq!(problem.violations(&plan.groups), vec![]);
        prop_assert_eq!(plan.value, problem.value(&plan.groups));
        prop_assert!((0.0..=1.0).contains(&plan.proven_gap));

        limits.exact = None;
        let rough = plan_groups(&problem, &limits).unwrap();
        prop_assert_eq!(problem.violations(&rough.groups), vec![]);
        prop_assert!(rough.value <= plan.value);
        // The rough bound is above the value of the better plan.
        let bound = rough.value as f64 / (1.0 - rough.proven_gap.min(0.999_999));
        prop_assert!(rough.proven_gap > 0.999 || bound + 1e-6 >= plan.value as f64);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    #[test]
    fn small_classes_get_the_best_plan(problem in problems()) {
        prop_assume!(problem.students() <= 5 && problem.concepts * problem.slots * problem.copies <= 4);
        let plan = plan_groups(&problem, &both()).unwrap();
        let best = best_by_trying(&problem);
        prop_assert!(plan.value <= best);
        prop_assert!(plan.value as f64 >= best as f64 * (1.0 - plan.proven_gap) - 1e-6);
        if plan.proven_gap == 0.0 {
            prop_assert_eq!(plan.value, best);
        }
    }
}
