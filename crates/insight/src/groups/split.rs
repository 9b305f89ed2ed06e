//! Splitting the students of one concept in one slot into its groups.

use super::model::{GroupProblem, PlannedGroup, Units};
use std::collections::BTreeMap;

/// Steps after which a split is given up.
const MOST_STEPS: usize = 100_000;

/// Turns chosen (slot, unit, concept) seats into groups of the right size;
/// `None` when some concept's students cannot be split.
pub(super) fn split(
    problem: &GroupProblem,
    units: &Units,
    chosen: &[(usize, usize, usize)],
) -> Option<Vec<PlannedGroup>> {
    let mut by_lesson: BTreeMap<(usize, usize), Vec<usize>> = BTreeMap::new();
    for &(slot, unit, concept) in chosen {
        by_lesson.entry((slot, concept)).or_default().push(unit);
    }
    let mut groups = Vec::new();
    for ((slot, concept), mut lesson) in by_lesson {
        let students = |u: &usize| units.slots[slot][*u].members.len();
        let total: usize = lesson.iter().map(students).sum();
        lesson.sort_by_key(|u| std::cmp::Reverse((units.slots[slot][*u].apart.len(), students(u))));
        let fewest = total.div_ceil(problem.size_max).max(1);
        let most = problem.copies.min(total / problem.size_min);
        let parts = (fewest..=most).find_map(|copies| {
            let mut parts: Vec<Vec<usize>> = vec![Vec::new(); copies];
            let mut steps = 0;
            place(problem, units, slot, &lesson, 0, &mut parts, &mut steps).then_some(parts)
        })?;
        for part in parts {
            let mut members: Vec<usize> = part
                .iter()
                .flat_map(|u| units.slots[slot][*u].members.iter().copied())
                .collect();
            members.sort_unstable();
            groups.push(PlannedGroup {
                slot,
                concept,
                members,
            });
        }
    }
    Some(groups)
}

fn place(
    problem: &GroupProblem,
    units: &Units,
    slot: usize,
    lesson: &[usize],
    next: usize,
    parts: &mut Vec<Vec<usize>>,
    steps: &mut usize,
) -> bool {
    *steps += 1;
    if *steps > MOST_STEPS {
        return false;
    }
    let all = &units.slots[slot];
    let size = |part: &[usize]| part.iter().map(|u| all[*u].members.len()).sum::<usize>();
    let Some(&unit) = lesson.get(next) else {
        return parts.iter().all(|p| size(p) >= problem.size_min);
    };
    // Smallest part first keeps the sizes even.
    let mut order: Vec<usize> = (0..parts.len()).collect();
    order.sort_by_key(|p| size(&parts[*p]));
    for number in order {
        if size(&parts[number]) + all[unit].members.len() > problem.size_max
            || all[unit].apart.iter().any(|o| parts[number].contains(o))
        {
            continue;
        }
        parts[number].push(unit);
        if place(problem, units, slot, lesson, next + 1, parts, steps) {
            return true;
        }
        parts[number].pop();
    }
    false
}
