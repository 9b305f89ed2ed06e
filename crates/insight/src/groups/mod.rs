//! Plans of small groups: who works together on which concept in which slot.
//!
//! A search always finds a valid plan. A mixed-integer model then improves it, or proves its gap to
//! the best plan. Model, limits and sources:
//! `docs/insight.md`, "Groups".

mod exact;
mod model;
mod order;
mod search;
mod split;
mod state;
mod weights;

pub use exact::ExactLimits;
use exact::Proven;
pub use model::{GroupProblem, GroupProblemError, PlannedGroup, Violation};
pub use search::SearchLimits;
pub use weights::{WeightRule, weights};

/// Limits of planning.
#[derive(Debug, Clone, Default)]
pub struct Limits {
    /// Rounds and seed of the search.
    pub search: SearchLimits,
    /// Limits of the exact model; `None` leaves it out.
    pub exact: Option<ExactLimits>,
}

/// A plan with a proven gap.
#[derive(Debug, Clone, PartialEq)]
pub struct GroupPlan {
    /// The groups, by slot, then concept, then members.
    pub groups: Vec<PlannedGroup>,
    /// Sum of weights plus coverage.
    pub value: u64,
    /// From 0 to 1: the best plan is worth at most `value / (1 − proven_gap)`. With 0, no plan is
    /// better.
    pub proven_gap: f64,
}

/// Plans groups by [`search_groups`], then by [`prove_groups`] if the limits ask for it.
///
/// # Errors
/// Returns [`GroupProblemError`] for a number outside the class, or sizes that contradict one another.
pub fn plan_groups(
    problem: &GroupProblem,
    limits: &Limits,
) -> Result<GroupPlan, GroupProblemError> {
    let found = search_groups(problem, &limits.search)?;
    match &limits.exact {
        Some(exact) => prove_groups(problem, found, exact),
        None => Ok(found),
    }
}

/// Plans groups by the search alone: quick and valid, with a rough gap.
pub fn search_groups(
    problem: &GroupProblem,
    limits: &SearchLimits,
) -> Result<GroupPlan, GroupProblemError> {
    problem.check()?;
    let units = model::Units::of(problem);
    let found = search::search(problem, &units, limits);
    Ok(finish(problem, exact::bound_only(problem, &units, found)))
}

/// Improves a plan, or proves its gap. Begins with an empty plan if the given one breaks a rule.
pub fn prove_groups(
    problem: &GroupProblem,
    plan: GroupPlan,
    limits: &ExactLimits,
) -> Result<GroupPlan, GroupProblemError> {
    problem.check()?;
    let units = model::Units::of(problem);
    let start = if problem.violations(&plan.groups).is_empty() {
        plan.groups
    } else {
        Vec::new()
    };
    Ok(finish(
        problem,
        exact::improve(problem, &units, start, limits),
    ))
}

fn finish(problem: &GroupProblem, proven: Proven) -> GroupPlan {
    let mut groups = order::prerequisites_first(problem, proven.groups);
    groups.sort();
    let value = problem.value(&groups);
    GroupPlan {
        proven_gap: gap(value, proven.bound),
        groups,
        value,
    }
}

/// The share of `bound` that `value` may miss.
#[expect(
    clippy::cast_precision_loss,
    reason = "plan values stay far below 2^52"
)]
fn gap(value: u64, bound: u64) -> f64 {
    if bound <= value {
        return 0.0;
    }
    (bound - value) as f64 / bound as f64
}

#[cfg(test)]
mod tests;
