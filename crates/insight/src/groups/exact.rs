//! The mixed-integer model: improves the plan of the search, or proves its gap.
//!
//! The model counts the groups of one concept in one slot and does not distinguish them, so it has no
//! plan twice. Every plan is a solution of the model, so its bound holds. A solution whose students
//! cannot be split into groups, because of pairs to keep apart or together, is not used.

use super::model::{GroupProblem, PlannedGroup, Units};
use super::split::split;
use super::state::State;
use crate::grid::Grid;
use microlp::{ComparisonOp, LinearExpr, OptimizationDirection, Problem, SolveOptions, Variable};
use std::collections::BTreeMap;
use std::time::Duration;

/// Limits of the exact model.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ExactLimits {
    /// Branch-and-bound nodes.
    pub nodes: u64,
    /// The solver stops if no plan can be better by more than this share.
    pub gap: f64,
    /// Time for the solver, for callers with a clock. Results may then differ between devices.
    pub time: Option<Duration>,
    /// Placements (variables) above which the model is not used.
    pub most_placements: usize,
}

impl Default for ExactLimits {
    fn default() -> Self {
        Self {
            nodes: 500,
            gap: 0.005,
            time: None,
            most_placements: 2_500,
        }
    }
}

/// A plan and an upper bound on every plan.
#[derive(Debug, Clone, PartialEq)]
pub struct Proven {
    /// The plan.
    pub groups: Vec<PlannedGroup>,
    /// The worth that no plan exceeds.
    pub bound: u64,
}

/// A unit that may learn a concept in a slot.
struct Seat {
    slot: usize,
    unit: usize,
    concept: usize,
    /// Whether the unit learns it.
    taken: Variable,
}

/// A concept that may run in a slot.
struct Running {
    slot: usize,
    concept: usize,
    /// In how many groups.
    groups: Variable,
}

/// The variables of the model.
struct Model {
    problem: Problem,
    seats: Vec<Seat>,
    running: Vec<Running>,
    /// Whether each student is placed.
    covered: Vec<Option<Variable>>,
}

/// Solves the model, beginning with the plan of the search.
pub(super) fn improve(
    problem: &GroupProblem,
    units: &Units,
    found: Vec<PlannedGroup>,
    limits: &ExactLimits,
) -> Proven {
    let mut proven = bound_only(problem, units, found);
    let value = problem.value(&proven.groups);
    if proven.bound <= value {
        return proven;
    }
    let model = build(problem, units);
    if model.seats.is_empty() || model.seats.len() > limits.most_placements {
        return proven;
    }
    let mut options = SolveOptions::default();
    options.node_limit = Some(limits.nodes);
    options.mip_gap = limits.gap;
    options.time_limit = limits.time;
    options.warm_start = Some(start(problem, units, &model, &proven.groups));
    // If the solver fails numerically, the plan of the search stays.
    let Ok(outcome) = model.problem.solve_with(options) else {
        return proven;
    };
    if let Some(bound) = outcome.stats().best_bound.and_then(whole_bound) {
        proven.bound = proven.bound.min(bound);
    }
    if let Some(solution) = outcome.solution() {
        let chosen: Vec<(usize, usize, usize)> = model
            .seats
            .iter()
            .filter(|seat| solution.var_value(seat.taken) > 0.5)
            .map(|seat| (seat.slot, seat.unit, seat.concept))
            .collect();
        if let Some(groups) = split(problem, units, &chosen)
            && problem.violations(&groups).is_empty()
        {
            let mut state = State::of_plan(problem, units, &groups);
            state.polish();
            let groups = state.plan();
            if problem.value(&groups) > value {
                proven.groups = groups;
            }
        }
    }
    proven.bound = proven.bound.max(problem.value(&proven.groups));
    proven
}

/// Worths are whole numbers, so the bound is rounded down. The small addition compensates for
/// round-off.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "checked to be finite and not below 0; the cast saturates"
)]
fn whole_bound(bound: f64) -> Option<u64> {
    (bound.is_finite() && bound >= 0.0).then(|| (bound * (1.0 + 1e-9) + 1e-6).floor() as u64)
}

/// A simple bound: every student gets the best concepts, one in each slot, and the best of these
/// placements fill all seats.
pub(super) fn bound_only(
    problem: &GroupProblem,
    units: &Units,
    groups: Vec<PlannedGroup>,
) -> Proven {
    let mut offers: Vec<u64> = Vec::new();
    let mut reachable = 0u64;
    for student in 0..problem.students() {
        let slots = units
            .slots()
            .filter(|slot| slot.iter().any(|u| u.members.contains(&student)))
            .count();
        let mut own: Vec<u64> = (0..problem.concepts)
            .filter(|c| {
                units
                    .slots()
                    .flatten()
                    .any(|u| u.worth(*c) > 0 && u.members.contains(&student))
            })
            .filter_map(|c| problem.weight(student, c).map(u64::from))
            .collect();
        own.sort_unstable_by(|a, b| b.cmp(a));
        own.truncate(slots);
        if !own.is_empty() {
            reachable += 1;
        }
        offers.extend(own);
    }
    offers.sort_unstable_by(|a, b| b.cmp(a));
    let seats = problem
        .slots
        .saturating_mul(problem.groups_per_slot)
        .saturating_mul(problem.size_max);
    let covered = reachable.min(seats as u64);
    let bound = offers.iter().take(seats).sum::<u64>() + covered * u64::from(problem.coverage);
    Proven { groups, bound }
}

fn build(group: &GroupProblem, units: &Units) -> Model {
    let mut problem = Problem::new(OptimizationDirection::Maximize);
    let mut seats = Vec::new();
    let mut running = Vec::new();
    let most = i32::try_from(group.copies.min(group.groups_per_slot)).unwrap_or(i32::MAX);
    let mut of_student: Vec<Option<LinearExpr>> = vec![None; group.students()];
    let mut lessons: Grid<(LinearExpr, usize)> =
        Grid::filled(group.students(), group.concepts, (LinearExpr::empty(), 0));

    for (slot, members) in units.slots().enumerate() {
        let mut at_once: Vec<LinearExpr> = vec![LinearExpr::empty(); members.len()];
        let mut groups_now = LinearExpr::empty();
        for concept in 0..group.concepts {
            let able = || {
                members
                    .iter()
                    .enumerate()
                    .filter(|(_, unit)| unit.worth(concept) > 0)
            };
            let students: usize = able().map(|(_, unit)| unit.members.len()).sum();
            if students < group.size_min {
                continue;
            }
            let y = problem.add_integer_var(0.0, (0, most));
            running.push(Running {
                slot,
                concept,
                groups: y,
            });
            groups_now.add(y, 1.0);
            let mut least = LinearExpr::empty();
            let mut at_most = LinearExpr::empty();
            least.add(y, -size(group.size_min));
            at_most.add(y, -size(group.size_max));
            let mut seat_of = BTreeMap::new();
            for (number, unit) in able() {
                let x = problem.add_binary_var(worth(unit.worth(concept)));
                seats.push(Seat {
                    slot,
                    unit: number,
                    concept,
                    taken: x,
                });
                seat_of.insert(number, x);
                least.add(x, size(unit.members.len()));
                at_most.add(x, size(unit.members.len()));
                if let Some(at_once) = at_once.get_mut(number) {
                    at_once.add(x, 1.0);
                }
                problem.add_constraint([(x, 1.0), (y, -1.0)], ComparisonOp::Le, 0.0);
                for &student in &unit.members {
                    if let Some(expression) = of_student.get_mut(student) {
                        expression.get_or_insert_with(LinearExpr::empty).add(x, 1.0);
                    }
                    let lesson = &mut lessons[(student, concept)];
                    lesson.0.add(x, 1.0);
                    lesson.1 += 1;
                }
            }
            problem.add_constraint(least, ComparisonOp::Ge, 0.0);
            problem.add_constraint(at_most, ComparisonOp::Le, 0.0);
            for (a, data) in members.iter().enumerate() {
                for &b in data.apart.iter().filter(|b| **b > a) {
                    if let (Some(&x), Some(&other)) = (seat_of.get(&a), seat_of.get(&b)) {
                        problem.add_constraint(
                            [(x, 1.0), (other, 1.0), (y, -1.0)],
                            ComparisonOp::Le,
                            0.0,
                        );
                    }
                }
            }
        }
        for expression in at_once {
            problem.add_constraint(expression, ComparisonOp::Le, 1.0);
        }
        problem.add_constraint(groups_now, ComparisonOp::Le, size(group.groups_per_slot));
    }
    for (expression, slots) in lessons.into_cells() {
        if slots > 1 {
            problem.add_constraint(expression, ComparisonOp::Le, 1.0);
        }
    }
    let covered = of_student
        .into_iter()
        .map(|expression| {
            let mut expression = expression?;
            let z = problem.add_var(f64::from(group.coverage), (0.0, 1.0));
            expression.add(z, -1.0);
            problem.add_constraint(expression, ComparisonOp::Ge, 0.0);
            Some(z)
        })
        .collect();
    Model {
        problem,
        seats,
        running,
        covered,
    }
}

fn start(
    group: &GroupProblem,
    units: &Units,
    model: &Model,
    plan: &[PlannedGroup],
) -> Vec<(Variable, f64)> {
    let mut hint = Vec::new();
    for seat in &model.seats {
        // The students of a unit sit together.
        let student = units.unit(seat.slot, seat.unit).members.first();
        let seated = plan.iter().any(|g| {
            g.slot == seat.slot
                && g.concept == seat.concept
                && student.is_some_and(|student| g.members.contains(student))
        });
        hint.push((seat.taken, f64::from(u8::from(seated))));
    }
    for running in &model.running {
        let number = plan
            .iter()
            .filter(|g| g.slot == running.slot && g.concept == running.concept)
            .count();
        hint.push((running.groups, size(number)));
    }
    for (student, z) in model.covered.iter().enumerate().take(group.students()) {
        if let Some(z) = z {
            let placed = plan.iter().any(|g| g.members.contains(&student));
            hint.push((*z, f64::from(u8::from(placed))));
        }
    }
    hint
}

fn size(number: usize) -> f64 {
    crate::stats::count(number)
}

#[expect(clippy::cast_precision_loss, reason = "weights stay far below 2^52")]
fn worth(weight: i64) -> f64 {
    weight as f64
}
