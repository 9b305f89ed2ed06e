//! A stronger partner for each group: a student who has the concept and says so.

use crate::estimate::Reports;
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::rating::Confidence;
use surefoot_insight::groups::{GroupProblem, PlannedGroup};

/// Probability of a right answer from which a student can explain a concept. Our choice: clearly
/// above that from which a student has it.
const EXPLAINS_FROM: f64 = 0.75;

/// Chooses a partner for each group of a plan, or none: a student who is there, in no group at that
/// time, not to be kept apart from a member, who rated the concept On my own or Could teach it and
/// likely has it. Nobody is a partner more often than needed. While the level is not known, nobody
/// is known to have a concept.
pub(super) fn choose(
    reports: &Reports,
    problem: &GroupProblem,
    concepts: &[usize],
    groups: &[PlannedGroup],
) -> Vec<Vec<usize>> {
    let mut times: BTreeMap<usize, usize> = BTreeMap::new();
    let mut taken: BTreeSet<(usize, usize)> = groups
        .iter()
        .flat_map(|group| group.members.iter().map(|student| (*student, group.slot)))
        .collect();
    groups
        .iter()
        .map(|group| {
            let concept = concepts.get(group.concept).copied();
            let apart = |student: usize| {
                problem.apart.iter().any(|(a, b)| {
                    (*a == student && group.members.contains(b))
                        || (*b == student && group.members.contains(a))
                })
            };
            let best = (0..reports.seats.len())
                .filter(|student| {
                    problem.present(*student, group.slot)
                        && !taken.contains(&(*student, group.slot))
                        && !apart(*student)
                })
                .filter_map(|student| {
                    let concept = concept?;
                    let has_it = reports.has_it(student, concept)?;
                    let says = reports
                        .evidence
                        .last_rating(student, concept, reports.pass)?;
                    (has_it >= EXPLAINS_FROM && says >= Confidence::OnMyOwn)
                        .then_some((student, says, has_it))
                })
                .min_by(|(a, says_a, has_a), (b, says_b, has_b)| {
                    let times = |student| times.get(student).copied().unwrap_or(0);
                    (times(a).cmp(&times(b)))
                        .then(says_b.cmp(says_a))
                        .then(has_b.total_cmp(has_a))
                });
            let Some((student, ..)) = best else {
                return Vec::new();
            };
            *times.entry(student).or_default() += 1;
            taken.insert((student, group.slot));
            vec![student]
        })
        .collect()
}

/// The partners of groups edited by hand, without those who sit in a group at that time.
pub(super) fn free(partners: Vec<Vec<usize>>, groups: &[PlannedGroup]) -> Vec<Vec<usize>> {
    let sits = |student: usize, slot: usize| {
        let mut at_once = groups.iter().filter(|group| group.slot == slot);
        at_once.any(|group| group.members.contains(&student))
    };
    partners
        .into_iter()
        .zip(groups)
        .map(|(mut own, group)| {
            own.retain(|student| !sits(*student, group.slot));
            own
        })
        .collect()
}
