//! Orders the slots so that prerequisites come first.

use super::model::{GroupProblem, PlannedGroup};

/// Slots up to which every order is tried (720 orders).
const MOST_SLOTS: usize = 6;

/// Reorders whole slots, if absences and joined students allow it, so that the fewest students meet a
/// concept before its prerequisite. The worth stays the same.
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
            if let Some(slot) = order.get(group.slot) {
                group.slot = *slot;
            }
        }
        let early = too_early(problem, &moved);
        if early < best.0 && problem.violations(&moved).is_empty() {
            best = (early, moved);
        }
    }
    best.1
}

/// Counts the pairs of concept and prerequisite that students meet in the wrong order.
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
    // The longest falling end, and the entry before it.
    let mut end = order.len();
    let falling = loop {
        match order.get(..end) {
            Some([.., before, first]) if before < first => break end - 1,
            Some([_, _, ..]) => end -= 1,
            _ => return false,
        }
    };
    let Some((before, rest)) = order.split_at_mut_checked(falling) else {
        return false;
    };
    let Some(pivot) = before.last_mut() else {
        return false;
    };
    if let Some(larger) = rest.iter_mut().rev().find(|entry| **entry > *pivot) {
        std::mem::swap(pivot, larger);
    }
    rest.reverse();
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
