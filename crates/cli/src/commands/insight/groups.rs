//! The method groups.

use super::instances::{parse, settings};
use serde::Deserialize;
use serde_json::{Value, json};
use std::time::{Duration, Instant};
use surefoot_insight::groups::{
    ExactLimits, GroupProblem, SearchLimits, WeightRule, prove_groups, search_groups, weights,
};

/// Search rounds: more than on the screens, where a person waits.
const ROUNDS: u32 = 6_000;
/// Nodes of the exact search at most; the time usually ends it earlier.
const NODES: u64 = 20_000;
/// Gap at which the exact search stops.
const GAP: f64 = 0.001;

#[derive(Deserialize)]
struct Case {
    students: Option<usize>,
    concepts: Option<usize>,
    slots: Option<usize>,
    groups_per_slot: usize,
    size_min: usize,
    size_max: usize,
    copies: Option<usize>,
    coverage: Option<u32>,
    need: Option<Vec<Vec<f64>>>,
    weight: Option<Vec<Vec<u32>>>,
    #[serde(default)]
    prereq: Vec<(usize, usize)>,
    #[serde(default)]
    apart: Vec<(usize, usize)>,
    #[serde(default)]
    join: Vec<(usize, usize)>,
    #[serde(default)]
    absent: Vec<(usize, usize)>,
}

#[derive(Deserialize, Default)]
#[serde(default)]
struct Rule {
    need_at: Option<f64>,
    dep_gain: Option<f64>,
    pre_loss: Option<f64>,
    coverage: Option<u32>,
    copies: Option<usize>,
}

/// A plan, its value, and its proven gap.
pub fn answer(case: &Value, file: &Value, seconds: f64) -> Result<Value, String> {
    let start = Instant::now();
    let budget = Duration::try_from_secs_f64(seconds)
        .map_err(|_| format!("{seconds} seconds are no time"))?;
    let rule: Rule = settings(file, "rule")?;
    let problem = parse::<Case>(case)?.problem(&rule)?;
    let search = SearchLimits {
        rounds: ROUNDS,
        ..SearchLimits::default()
    };
    let found = search_groups(&problem, &search).map_err(|e| e.to_string())?;
    let exact = ExactLimits {
        nodes: NODES,
        gap: GAP,
        time: Some(budget.saturating_sub(start.elapsed())),
        ..ExactLimits::default()
    };
    let plan = prove_groups(&problem, found, &exact).map_err(|e| e.to_string())?;
    let groups: Vec<Value> = plan
        .groups
        .iter()
        .map(|g| json!({ "slot": g.slot, "concept": g.concept, "members": g.members }))
        .collect();
    Ok(json!({ "plan": groups, "value": plan.value, "proven_gap": plan.proven_gap }))
}

impl Case {
    fn problem(self, rule: &Rule) -> Result<GroupProblem, String> {
        let standard = WeightRule::default();
        let weights = match (self.weight, self.need) {
            (Some(weights), _) => weights,
            (None, Some(need)) => weights(
                &need,
                &self.prereq,
                &WeightRule {
                    need_at: rule.need_at.unwrap_or(standard.need_at),
                    dependant_gain: rule.dep_gain.unwrap_or(standard.dependant_gain),
                    prerequisite_loss: rule.pre_loss.unwrap_or(standard.prerequisite_loss),
                },
            ),
            (None, None) => return Err("neither \"weight\" nor \"need\"".into()),
        };
        if self.students.is_some_and(|n| n != weights.len()) {
            return Err(format!(
                "{} rows of weights for {} students",
                weights.len(),
                self.students.unwrap_or_default()
            ));
        }
        Ok(GroupProblem {
            concepts: self
                .concepts
                .unwrap_or_else(|| weights.first().map_or(0, Vec::len)),
            weights,
            slots: self.slots.unwrap_or(1),
            groups_per_slot: self.groups_per_slot,
            size_min: self.size_min,
            size_max: self.size_max,
            copies: self.copies.or(rule.copies).unwrap_or(2),
            prerequisites: self.prereq,
            apart: self.apart,
            join: self.join,
            absent: self.absent,
            coverage: self.coverage.or(rule.coverage).unwrap_or(300),
        })
    }
}
