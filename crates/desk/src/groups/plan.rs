//! Plans of small groups.

use super::partners;
use super::views::{
    AloneWork, GroupChosen, GroupFault, GroupFaultKind, GroupView, GroupWishes, GroupsFirst,
    GroupsView,
};
use crate::class::OpenClass;
use crate::error::{DeskError, Field, Rule, Thing};
use crate::estimate::GroupMember;
use crate::estimate::Reports;
use chrono::NaiveDate;
use std::collections::BTreeSet;
use surefoot_catalogue::Language;
use surefoot_catalogue::rotation::Phase;
use surefoot_insight::class_estimate::StudentEstimate;
use surefoot_insight::groups::{
    ExactLimits, GroupPlan, GroupProblem, Limits, PlannedGroup, Violation, WeightRule, plan_groups,
    weights,
};
use surefoot_store::DeskStore;

/// Probability of a right answer from which a student counts as having a concept.
pub(crate) const HAS_IT_FROM: f64 = 0.6;

/// Weak concepts that are planned for at most.
const CONCEPTS_PLANNED: usize = 15;

/// Value of each student with a place.
const COVERAGE: u32 = 300;

/// Further value of a student in a group that comes first: two of them are worth more than a usual
/// group on another concept. Far above that, the solver's gap would hide the other groups.
const FIRST_OF_ALL: u32 = 8_000;

/// The least weight of a student in a group that comes first, as of one who just needs it.
const LEAST_OF_FIRST: u32 = 500;

/// Slots, groups at once, and students of a group at most.
const MOST: [usize; 3] = [6, 12, 12];

/// How much computing a suggestion may take.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GroupEffort {
    /// Only the search: at once, with a rough bound.
    Quick,
    /// Also the exact model: about a second, for a proof or a small gap.
    Proven,
}

/// Suggests groups on the weakest concepts that have been taught.
///
/// # Errors
/// Returns [`DeskError::Invalid`] for wishes out of range or that contradict one another.
pub fn suggest_groups(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
    wishes: &GroupWishes,
) -> Result<GroupsView, DeskError> {
    let effort = GroupEffort::Quick;
    plan(desk, class, language, today, wishes, None, effort)
}

/// [`suggest_groups`] with a choice of effort. With groups that come first, those students sit in groups
/// on that concept, as many as there is room for, and the rest is planned around them. `best_at_most` is
/// then the best among the plans that place as many of them so.
///
/// # Errors
/// As [`suggest_groups`], and [`DeskError::NotFound`] for an unknown concept or seat.
pub fn plan(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
    wishes: &GroupWishes,
    first: Option<&GroupsFirst>,
    effort: GroupEffort,
) -> Result<GroupsView, DeskError> {
    let wanted: BTreeSet<&str> = first.iter().map(|first| first.concept.as_str()).collect();
    let planned = PlannedClass::of(desk, class, today, wishes, &wanted)?;
    let limits = Limits {
        exact: (effort == GroupEffort::Proven).then(ExactLimits::default),
        ..Limits::default()
    };
    let mut problem = planned.problem.clone();
    let concept = first.and_then(|first| planned.place_of(&first.concept));
    let students: Vec<usize> = (first.iter().flat_map(|first| &first.seats))
        .map(|seat| {
            planned
                .reports
                .student_at(*seat)
                .ok_or(DeskError::NotFound(Thing::Seat))
        })
        .collect::<Result<_, _>>()?;
    for student in &students {
        let own = problem.weights.get_mut(*student);
        if let Some(weight) = own.zip(concept).and_then(|(own, at)| own.get_mut(at)) {
            *weight = (*weight).max(LEAST_OF_FIRST).saturating_add(FIRST_OF_ALL);
        }
    }
    let mut plan = plan_groups(&problem, &limits)
        .map_err(|_| DeskError::invalid(Field::Groups, Rule::Contradiction))?;
    let is_first = |group: &PlannedGroup| Some(group.concept) == concept;
    // The weight added above steers the search alone, so the worth of the plan leaves it out.
    let further: u64 = (plan.groups.iter().filter(|group| is_first(group)))
        .flat_map(|group| &group.members)
        .map(|student| {
            let of = |problem: &GroupProblem| {
                let own = problem.weights.get(*student);
                let weight = own.zip(concept).and_then(|(own, at)| own.get(at));
                weight.copied().unwrap_or(0)
            };
            u64::from(of(&problem).saturating_sub(of(&planned.problem)))
        })
        .sum();
    let best = best_at_most(&plan).saturating_sub(further);
    plan.groups
        .sort_by_key(|group| (group.slot, !is_first(group)));
    let partners = if wishes.with_partner {
        partners::choose(
            &planned.reports,
            &planned.problem,
            &planned.concepts,
            &plan.groups,
        )
    } else {
        Vec::new()
    };
    Ok(planned.view(class, language, &plan.groups, &partners, best))
}

/// Scores groups that were edited by hand: their value, the students they leave out, and the
/// rules they break. `best_at_most` comes from the suggestion.
///
/// # Errors
/// Returns [`DeskError::NotFound`] for an unknown seat or concept, and [`DeskError::Invalid`] for
/// wishes out of range.
pub fn score_groups(
    desk: &DeskStore,
    class: &OpenClass,
    language: Language,
    today: NaiveDate,
    wishes: &GroupWishes,
    groups: &[GroupChosen],
    best_at_most: u64,
) -> Result<GroupsView, DeskError> {
    let chosen: BTreeSet<&str> = groups.iter().map(|g| g.concept.as_str()).collect();
    let planned = PlannedClass::of(desk, class, today, wishes, &chosen)?;
    let partners = groups
        .iter()
        .map(|group| {
            let seats = group.partners.iter();
            seats
                .filter(|seat| !group.seats.contains(seat))
                .map(|seat| {
                    let student = planned.reports.student_at(*seat);
                    student.ok_or(DeskError::NotFound(Thing::Seat))
                })
                .collect::<Result<Vec<_>, _>>()
        })
        .collect::<Result<Vec<_>, DeskError>>()?;
    let groups = groups
        .iter()
        .map(|group| planned.group(group))
        .collect::<Result<Vec<_>, DeskError>>()?;
    let partners = partners::free(partners, &groups);
    Ok(planned.view(class, language, &groups, &partners, best_at_most))
}

/// An upper bound for the value of every plan, from the proven gap of this one.
#[expect(
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "values stay far below 2^52, and the bound is never below the value"
)]
fn best_at_most(plan: &GroupPlan) -> u64 {
    if plan.proven_gap <= 0.0 {
        plan.value
    } else if plan.proven_gap >= 1.0 {
        u64::from(u32::MAX)
    } else {
        (plan.value as f64 / (1.0 - plan.proven_gap)).round() as u64
    }
}

/// The class as input of the planner.
struct PlannedClass {
    reports: Reports,
    /// Indices in `reports.concepts` of the planner's concepts.
    concepts: Vec<usize>,
    problem: GroupProblem,
}

impl PlannedClass {
    fn of(
        desk: &DeskStore,
        class: &OpenClass,
        today: NaiveDate,
        wishes: &GroupWishes,
        wanted: &BTreeSet<&str>,
    ) -> Result<Self, DeskError> {
        let given = [wishes.slots, wishes.groups_at_once, wishes.size_most];
        if given.iter().zip(MOST).any(|(n, most)| *n == 0 || *n > most)
            || wishes.size_least == 0
            || wishes.size_least > wishes.size_most
        {
            return Err(DeskError::invalid(Field::Groups, Rule::Range));
        }
        let reports = Reports::read(desk, class, today)?;
        let mut concepts = weakest_taught(class, &reports, today);
        concepts.truncate(CONCEPTS_PLANNED);
        for concept in wanted {
            let at = reports
                .concept_at(concept)
                .ok_or(DeskError::NotFound(Thing::Concept))?;
            if !concepts.contains(&at) {
                concepts.push(at);
            }
        }
        let need = need(&reports, &concepts);
        let prerequisites = prerequisites(class, &reports, &concepts);
        let pairs = |seats: &[(u32, u32)]| -> Vec<(usize, usize)> {
            seats
                .iter()
                .filter_map(|(a, b)| Some((reports.student_at(*a)?, reports.student_at(*b)?)))
                .filter(|(a, b)| a != b)
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
                .filter_map(|seat| reports.student_at(*seat))
                .flat_map(|student| (0..wishes.slots).map(move |slot| (student, slot)))
                .collect(),
            coverage: COVERAGE,
        };
        Ok(Self {
            reports,
            concepts,
            problem,
        })
    }

    /// The planner's index of a concept.
    fn place_of(&self, concept: &str) -> Option<usize> {
        let mut ids = self.concepts.iter();
        ids.position(|at| {
            self.reports
                .concepts
                .get(*at)
                .is_some_and(|id| id == concept)
        })
    }

    fn group(&self, group: &GroupChosen) -> Result<PlannedGroup, DeskError> {
        let concept = self
            .place_of(&group.concept)
            .ok_or(DeskError::NotFound(Thing::Concept))?;
        let seats: BTreeSet<u32> = group.seats.iter().copied().collect();
        let members = seats
            .into_iter()
            .map(|seat| {
                let student = self.reports.student_at(seat);
                student.ok_or(DeskError::NotFound(Thing::Seat))
            })
            .collect::<Result<_, _>>()?;
        Ok(PlannedGroup {
            slot: group.slot,
            concept,
            members,
        })
    }

    /// Whether a student is present and needs one of the planned concepts.
    fn in_need(&self, student: usize) -> bool {
        let there = (0..self.problem.slots).any(|slot| self.problem.present(student, slot));
        let needs = self
            .problem
            .weights
            .get(student)
            .is_some_and(|own| own.iter().any(|w| *w > 0));
        there && needs
    }

    fn view(
        &self,
        class: &OpenClass,
        language: Language,
        groups: &[PlannedGroup],
        partners: &[Vec<usize>],
        best: u64,
    ) -> GroupsView {
        let placed: BTreeSet<usize> = groups
            .iter()
            .flat_map(|g| g.members.iter().copied())
            .collect();
        let value = self.problem.value(groups);
        let in_need: Vec<usize> = (0..self.reports.seats.len())
            .filter(|student| self.in_need(*student))
            .collect();
        let concept = |at: usize| {
            let index = *self.concepts.get(at)?;
            Some(
                class
                    .facts
                    .name(self.reports.concepts.get(index)?, language),
            )
        };
        GroupsView {
            groups: groups
                .iter()
                .enumerate()
                .filter_map(|(at, group)| {
                    let of = |students: &[usize]| {
                        let each = students.iter();
                        each.filter_map(|s| self.member(class, *s, Some(group.concept)))
                            .collect()
                    };
                    Some(GroupView {
                        slot: group.slot,
                        concept: concept(group.concept)?,
                        members: of(&group.members),
                        partners: of(partners.get(at).map_or(&[], Vec::as_slice)),
                    })
                })
                .collect(),
            level_known: self.reports.estimate.level_known,
            unplaced: in_need
                .iter()
                .filter(|student| !placed.contains(student))
                .filter_map(|student| self.member(class, *student, None))
                .collect(),
            alone: self.alone(class, language, groups),
            in_need: in_need.len(),
            value,
            best_at_most: best.max(value),
            proven_gap: gap(value, best),
            faults: self
                .problem
                .violations(groups)
                .into_iter()
                // Order alone does not tell who does not need a concept.
                .filter(|violation| {
                    self.reports.estimate.level_known
                        || !matches!(violation, Violation::NotNeeded { .. })
                })
                .map(|violation| self.fault(class, &violation, &concept))
                .collect(),
        }
    }

    /// What each student works on alone: the concept with exercises that the student needs most and
    /// has no lesson on.
    fn alone(
        &self,
        class: &OpenClass,
        language: Language,
        groups: &[PlannedGroup],
    ) -> Vec<AloneWork> {
        let rows = self
            .problem
            .weights
            .iter()
            .zip(&self.reports.seats)
            .enumerate();
        rows.filter_map(|(student, (needs, seat))| {
            let taught = |at: usize| {
                let mut of = groups.iter().filter(|group| group.concept == at);
                of.any(|group| group.members.contains(&student))
            };
            let ids = needs.iter().zip(&self.concepts).enumerate();
            let (_, id) = ids
                .filter(|(at, (weight, _))| **weight > 0 && !taught(*at))
                .filter_map(|(_, (weight, index))| {
                    Some((*weight, self.reports.concepts.get(*index)?))
                })
                .filter(|(_, id)| class.facts.has_exercises(id))
                .max_by_key(|(weight, _)| *weight)?;
            Some(AloneWork {
                seat: *seat,
                concept: class.facts.name(id, language),
            })
        })
        .collect()
    }

    fn member(
        &self,
        class: &OpenClass,
        student: usize,
        concept: Option<usize>,
    ) -> Option<GroupMember> {
        let concept = concept.and_then(|at| self.concepts.get(at)).copied();
        self.reports.member(class, student, concept)
    }

    fn fault(
        &self,
        class: &OpenClass,
        violation: &Violation,
        name: &impl Fn(usize) -> Option<surefoot_record::ConceptName>,
    ) -> GroupFault {
        use GroupFaultKind as Kind;
        let (kind, students, slot, concept): (Kind, Vec<usize>, Option<usize>, Option<usize>) =
            match violation {
                Violation::Unknown(group) => (
                    Kind::NoSuchSlot,
                    Vec::new(),
                    Some(group.slot),
                    Some(group.concept),
                ),
                Violation::Size(group) => (
                    Kind::Size,
                    group.members.clone(),
                    Some(group.slot),
                    Some(group.concept),
                ),
                Violation::NotNeeded { student, concept } => {
                    (Kind::NotNeeded, vec![*student], None, Some(*concept))
                }
                Violation::Absent { student, slot } => {
                    (Kind::Absent, vec![*student], Some(*slot), None)
                }
                Violation::TwiceInSlot { student, slot } => {
                    (Kind::TwiceInSlot, vec![*student], Some(*slot), None)
                }
                Violation::TwiceOnConcept { student, concept } => {
                    (Kind::TwiceOnConcept, vec![*student], None, Some(*concept))
                }
                Violation::Together(a, b) => (Kind::Apart, vec![*a, *b], None, None),
                Violation::Split { pair, slot } => {
                    (Kind::Split, vec![pair.0, pair.1], Some(*slot), None)
                }
                Violation::TooManyGroups { slot } => {
                    (Kind::TooManyGroups, Vec::new(), Some(*slot), None)
                }
                Violation::TooManyCopies { slot, concept } => {
                    (Kind::TooManyCopies, Vec::new(), Some(*slot), Some(*concept))
                }
            };
        GroupFault {
            kind,
            students: students
                .into_iter()
                .filter_map(|student| self.member(class, student, None))
                .collect(),
            slot,
            concept: concept.and_then(name),
        }
    }
}

#[expect(clippy::cast_precision_loss, reason = "a class has few pairs")]
fn share(part: usize, all: usize) -> f64 {
    part as f64 / all as f64
}

/// The share of the best possible value that a plan may miss.
#[expect(
    clippy::cast_precision_loss,
    reason = "plan values stay far below 2^52"
)]
fn gap(value: u64, best: u64) -> f64 {
    if best <= value {
        0.0
    } else {
        (best - value) as f64 / best as f64
    }
}

/// Indices of the concepts that are taught and have a rating, weakest first.
pub(crate) fn weakest_taught(class: &OpenClass, reports: &Reports, today: NaiveDate) -> Vec<usize> {
    reports
        .estimate
        .ranking
        .iter()
        .copied()
        .filter(|index| {
            reports
                .concepts
                .get(*index)
                .is_some_and(|c| class.facts.phase(c, today) != Phase::Preview)
                && reports
                    .estimate
                    .concepts
                    .get(*index)
                    .is_some_and(|e| e.reporters > 0)
        })
        .collect()
}

/// The concepts that groups are planned for, weakest first, each with the students who may join a
/// group on it and the probability that they need it; all by index.
pub(crate) fn needed(
    class: &OpenClass,
    reports: &Reports,
    today: NaiveDate,
) -> Vec<(usize, Vec<(usize, f64)>)> {
    let mut concepts = weakest_taught(class, reports, today);
    concepts.truncate(CONCEPTS_PLANNED);
    let need = need(reports, &concepts);
    let from = WeightRule::default().need_at;
    let joining = |place: usize| -> Vec<(usize, f64)> {
        let of = need.iter().enumerate();
        of.filter_map(|(student, own)| Some((student, *own.get(place)?)))
            .filter(|(_, need)| *need >= from)
            .collect()
    };
    (concepts.iter().enumerate())
        .map(|(place, concept)| (*concept, joining(place)))
        .collect()
}

/// The probability that each student needs each concept; 0 for a student without a report.
/// While the level is not known, it is the share of all these pairs of student and concept that
/// are stronger, so that the weaker half may join.
fn need(reports: &Reports, concepts: &[usize]) -> Vec<Vec<f64>> {
    let known: BTreeSet<u32> = reports
        .check_ins
        .iter()
        .map(|r| r.seat)
        .chain(reports.practice.iter().map(|r| r.seat))
        .chain(reports.observations.iter().map(|r| r.seat))
        .collect();
    let estimates: Vec<Vec<Option<StudentEstimate>>> = (0..reports.seats.len())
        .map(|student| {
            let seat = reports.seats.get(student);
            let has_reported = seat.is_some_and(|seat| known.contains(seat));
            let of = |concept: &usize| reports.estimate.student(student, *concept);
            let own = concepts.iter().map(of);
            own.map(|estimate| estimate.filter(|_| has_reported))
                .collect()
        })
        .collect();
    let each = |need: &dyn Fn(StudentEstimate) -> f64| -> Vec<Vec<f64>> {
        let rows = estimates.iter();
        rows.map(|row| row.iter().map(|e| e.map_or(0.0, need)).collect())
            .collect()
    };
    if reports.estimate.level_known {
        return each(&|estimate| estimate.need(HAS_IT_FROM));
    }
    let mut logits: Vec<f64> = estimates
        .iter()
        .flatten()
        .flatten()
        .map(|e| e.logit)
        .collect();
    logits.sort_by(f64::total_cmp);
    each(&|estimate| {
        let below = logits.partition_point(|logit| *logit < estimate.logit);
        let up_to = logits.partition_point(|logit| *logit <= estimate.logit);
        // Equals count half.
        share(2 * logits.len() - below - up_to, 2 * logits.len())
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
