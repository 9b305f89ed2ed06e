//! Putting the slots in an order in which prerequisites come first.

use super::model::{GroupProblem, PlannedGroup};

/// Most slots whose every order is tried (720 orders).
const MOST_SLOTS: usize = 6;

/// Reorders whole slots, where absences and joins allow it, so that fewest
/// students meet a concept before its prerequisite. The worth stays the same.
pub(super) fn prerequisites_first(
    problem: &GroupProblem,
    groups: Vec<PlannedGroup>,
) -> Vec<PlannedGroup> {
    if problem.slots < 2 || problem.slots > MOST_SLOTS || problem.prerequisites.is_empty() {
        return groups;
    }
    let mut best = (too_early(problem, &groups), groups.clone());
    let mut order: Vec<usize> = (0..problem.slots).collect();
    while best.0 > 0 && next_order(&mut order) {
        let mut moved = groups.clone();
        for group in &mut moved {
            group.slot = order[group.slot];
        }
        let early = too_early(problem, &moved);
        if early < best.0 && problem.violations(&moved).is_empty() {
            best = (early, moved);
        }
    }
    best.1
}

/// Students × prerequisite pairs met in the wrong order.
fn too_early(problem: &GroupProblem, groups: &[PlannedGroup]) -> usize {
    let mut count = 0;
    for first in groups {
        for second in groups.iter().filter(|g| g.slot > first.slot) {
            if problem
                .prerequisites
                .contains(&(second.concept, first.concept))
            {
                count += first
                    .members
                    .iter()
                    .filter(|m| second.members.contains(m))
                    .count();
            }
        }
    }
    count
}

/// The next permutation in lexicographic order; false after the last.
fn next_order(order: &mut [usize]) -> bool {
    let Some(pivot) = (1..order.len()).rev().find(|i| order[i - 1] < order[*i]) else {
        return false;
    };
    let Some(swap) = (pivot..order.len())
        .rev()
        .find(|i| order[*i] > order[pivot - 1])
    else {
        return false;
    };
    order.swap(pivot - 1, swap);
    order[pivot..].reverse();
    true
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn all_orders_come_once() {
        let mut order = [0, 1, 2, 3];
        let mut seen = vec![order];
        while next_order(&mut order) {
            assert!(!seen.contains(&order));
            seen.push(order);
        }
        assert_eq!(seen.len(), 24);
    }

    #[test]
    fn the_prerequisite_moves_to_the_front() {
        let problem = GroupProblem {
            weights: vec![vec![1, 1]; 2],
            concepts: 2,
            slots: 2,
            groups_per_slot: 1,
            size_min: 2,
            size_max: 2,
            copies: 1,
            prerequisites: vec![(0, 1)],
            apart: vec![],
            join: vec![],
            absent: vec![],
            coverage: 0,
        };
        let group = |slot, concept| PlannedGroup {
            slot,
            concept,
            members: vec![0, 1],
        };
        let moved = prerequisites_first(&problem, vec![group(0, 1), group(1, 0)]);
        assert_eq!(moved, vec![group(1, 1), group(0, 0)]);
    }
}
