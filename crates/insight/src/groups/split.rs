//! Splits the students of one concept in one slot into groups.

use super::model::{GroupProblem, PlannedGroup, Unit, Units};
use std::collections::BTreeMap;

/// Steps after which a split is given up.
const MOST_STEPS: usize = 100_000;

/// Turns chosen seats (slot, unit, concept) into groups of the right size; `None` if the
/// students of a concept cannot be split.
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
        let unit = |u: &usize| units.unit(slot, *u);
        let students = |u: &usize| unit(u).members.len();
        let total: usize = lesson.iter().map(students).sum();
        lesson.sort_by_key(|u| std::cmp::Reverse((unit(u).apart.len(), students(u))));
        let fewest = total.div_ceil(problem.size_max).max(1);
        let most = problem.copies.min(total / problem.size_min);
        let parts = (fewest..=most).find_map(|copies| {
            let mut parts: Vec<Vec<usize>> = vec![Vec::new(); copies];
            let mut steps = 0;
            place(problem, &unit, &lesson, &mut parts, &mut steps).then_some(parts)
        })?;
        for part in parts {
            let mut members: Vec<usize> = part
                .iter()
                .flat_map(|u| unit(u).members.iter().copied())
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

/// Puts the remaining units into parts. Returns false if no way is found.
fn place<'a>(
    problem: &GroupProblem,
    unit: &impl Fn(&usize) -> &'a Unit,
    lesson: &[usize],
    parts: &mut [Vec<usize>],
    steps: &mut usize,
) -> bool {
    *steps += 1;
    if *steps > MOST_STEPS {
        return false;
    }
    let size = |part: &[usize]| part.iter().map(|u| unit(u).members.len()).sum::<usize>();
    let Some((next, rest)) = lesson.split_first() else {
        return parts.iter().all(|p| size(p) >= problem.size_min);
    };
    let next_unit = unit(next);
    // Smallest part first keeps the sizes even.
    let mut order: Vec<(usize, usize)> = parts.iter().map(|part| size(part)).enumerate().collect();
    order.sort_by_key(|(_, size)| *size);
    for (number, size) in order {
        let Some(part) = parts.get_mut(number) else {
            continue;
        };
        if size + next_unit.members.len() > problem.size_max
            || next_unit.apart.iter().any(|other| part.contains(other))
        {
            continue;
        }
        part.push(*next);
        if place(problem, unit, rest, parts, steps) {
            return true;
        }
        if let Some(part) = parts.get_mut(number) {
            part.pop();
        }
    }
    false
}
