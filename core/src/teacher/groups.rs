//! Small groups: who would gain most by sitting together on what.

use super::picture::Reports;
use super::views::{GroupMember, GroupView, GroupsView};
use super::{OpenClass, TeacherError};
use crate::catalogue::Language;
use crate::insight::groups::{GroupProblem, Limits, WeightRule, plan_groups, weights};
use crate::rotation::Phase;
use crate::store::DeskStore;
use chrono::NaiveDate;
use std::collections::BTreeSet;

/// Chance of a right answer from which a student counts as having a concept.
const HAS_IT_FROM: f64 = 0.6;

/// Weak concepts that are planned for at most.
const CONCEPTS_PLANNED: usize = 15;

/// Worth of each student placed at least once.
const COVERAGE: u32 = 300;

/// What the teacher has room for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct GroupWishes {
    /// Times at which groups meet, one after the other.
    pub slots: usize,
    /// Groups at the same time.
    pub groups_at_once: usize,
    /// Fewest students of a group.
    pub size_least: usize,
    /// Most students of a group. Groups of two to five gain most (EEF toolkit,
    /// small group tuition); above six the gain falls off.
    pub size_most: usize,
    /// Seats that must not sit together.
    pub keep_apart: Vec<(u32, u32)>,
    /// Seats that should sit together.
    pub keep_together: Vec<(u32, u32)>,
    /// Seats that are not there today.
    pub absent: Vec<u32>,
}

impl Default for GroupWishes {
    fn default() -> Self {
        Self {
            slots: 2,
            groups_at_once: 3,
            size_least: 2,
            size_most: 5,
            keep_apart: Vec::new(),
            keep_together: Vec::new(),
            absent: Vec::new(),
        }
    }
}

/// Suggests groups on the weakest concepts that have been taught.
///
/// # Errors
/// [`TeacherError::Invalid`] for wishes that contradict one another, or the store's.
pub fn suggest_groups(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
    wishes: &GroupWishes,
) -> Result<GroupsView, TeacherError> {
    let reports = Reports::read(desk, class, today)?;
    let seat_at = |seat: u32| reports.seats.iter().position(|s| *s == seat);
    let reporting: BTreeSet<u32> = reports
        .check_ins
        .iter()
        .map(|r| r.seat)
        .chain(reports.practice.iter().map(|r| r.seat))
        .collect();
    let concepts: Vec<usize> = reports
        .picture
        .ranking
        .iter()
        .copied()
        .filter(|index| {
            reports
                .concepts
                .get(*index)
                .is_some_and(|c| class.facts.phase(c, today) != Phase::Preview)
                && reports
                    .picture
                    .concepts
                    .get(*index)
                    .is_some_and(|e| e.raters > 0)
        })
        .take(CONCEPTS_PLANNED)
        .collect();
    let need: Vec<Vec<f64>> = (0..reports.seats.len())
        .map(|student| {
            concepts
                .iter()
                .map(|concept| {
                    // Nothing is planned for a student from whom nothing has come.
                    let known = reports
                        .seats
                        .get(student)
                        .is_some_and(|s| reporting.contains(s));
                    match reports.picture.chance(student, *concept) {
                        Some(chance) if known => chance.need(HAS_IT_FROM),
                        _ => 0.0,
                    }
                })
                .collect()
        })
        .collect();
    let prerequisites = prerequisites(class, &reports, &concepts);
    let pairs = |seats: &[(u32, u32)]| -> Vec<(usize, usize)> {
        seats
            .iter()
            .filter_map(|(a, b)| Some((seat_at(*a)?, seat_at(*b)?)))
            .collect()
    };
    let problem = GroupProblem {
        weights: weights(&need, &prerequisites, &WeightRule::default()),
        concepts: concepts.len(),
        slots: wishes.slots,
        groups_per_slot: wishes.groups_at_once,
        size_min: wishes.size_least,
        size_max: wishes.size_most,
        copies: 2,
        prerequisites,
        apart: pairs(&wishes.keep_apart),
        join: pairs(&wishes.keep_together),
        absent: wishes
            .absent
            .iter()
            .filter_map(|seat| seat_at(*seat))
            .flat_map(|student| (0..wishes.slots).map(move |slot| (student, slot)))
            .collect(),
        coverage: COVERAGE,
    };
    let plan = plan_groups(&problem, &Limits::default())
        .map_err(|_| TeacherError::invalid("groups", "contradiction"))?;
    let member = |student: usize, concept: Option<usize>| {
        let seat = class.seats.get(student)?;
        Some(GroupMember {
            seat: seat.number,
            name: seat.name.clone(),
            has_it: concept
                .and_then(|concept| reports.picture.chance(student, concept))
                .map(|chance| chance.mean()),
        })
    };
    let placed: BTreeSet<usize> = plan
        .groups
        .iter()
        .flat_map(|g| g.members.iter().copied())
        .collect();
    let groups = plan
        .groups
        .iter()
        .filter_map(|group| {
            let index = *concepts.get(group.concept)?;
            Some(GroupView {
                slot: group.slot,
                concept: class.facts.name(reports.concepts.get(index)?, language),
                members: group
                    .members
                    .iter()
                    .filter_map(|s| member(*s, Some(index)))
                    .collect(),
            })
        })
        .collect();
    Ok(GroupsView {
        groups,
        unplaced: (0..reports.seats.len())
            .filter(|student| {
                !placed.contains(student)
                    && problem
                        .weights
                        .get(*student)
                        .is_some_and(|w| w.iter().any(|w| *w > 0))
            })
            .filter_map(|student| member(student, None))
            .collect(),
        proven_gap: plan.proven_gap,
    })
}

fn prerequisites(class: &OpenClass, reports: &Reports, concepts: &[usize]) -> Vec<(usize, usize)> {
    let id = |at: usize| {
        concepts
            .get(at)
            .and_then(|index| reports.concepts.get(*index))
    };
    let mut found = Vec::new();
    for after in 0..concepts.len() {
        let Some(known) = id(after).and_then(|c| class.facts.concepts.get(c)) else {
            continue;
        };
        for before in 0..concepts.len() {
            if id(before).is_some_and(|c| known.prerequisites.iter().any(|p| p.as_str() == c)) {
                found.push((before, after));
            }
        }
    }
    found
}
