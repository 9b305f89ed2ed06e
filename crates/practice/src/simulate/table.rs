//! Several simulated classes under every rule, with how sure one can be of
//! the differences.

use super::knowledge::Kind;
use super::learner::Constants;
use super::luck::{Luck, Purpose};
use super::plan::YearPlan;
use super::rules::RuleName;
use super::year::{YearResult, run};
use crate::estimate::Tuning;
use crate::memory::MemoryError;
use serde::Serialize;

/// Resamplings of the classes behind an interval.
const RESAMPLINGS: usize = 2000;

/// What to simulate.
#[derive(Debug, Clone, PartialEq)]
pub struct Setup {
    /// Seeds, one a class.
    pub seeds: Vec<u64>,
    /// Students a class.
    pub students: usize,
    /// Concepts a year.
    pub concepts: usize,
    /// Minutes an evening.
    pub minutes: f64,
    /// How the students differ and err.
    pub constants: Constants,
}

/// A rule's line in one model.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Line {
    /// The rule.
    pub rule: &'static str,
    /// Share known at the year's end, over the class.
    pub class: f64,
    /// Its difference from random.
    pub class_minus_random: f64,
    /// 95% bootstrap interval of that difference, over classes.
    pub class_interval: [f64; 2],
    /// Share known by the bottom quarter (by what they know without practice).
    pub bottom: f64,
    /// Its difference from random.
    pub bottom_minus_random: f64,
    /// 95% bootstrap interval of that difference, over classes.
    pub bottom_interval: [f64; 2],
    /// Share known of the quarter of the concepts that takes longest.
    pub slowest: f64,
    /// Share of what the oracle gains over no practice.
    pub share_of_oracle: f64,
    /// (rule - random) / (oracle - random), class.
    pub class_edge: f64,
    /// The same for the bottom quarter.
    pub bottom_edge: f64,
    /// Practice minutes a student.
    pub minutes: f64,
    /// Exercises a student.
    pub exercises: f64,
}

/// The lines of one learner model.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ModelTable {
    /// The learner model.
    pub model: &'static str,
    /// The rules.
    pub lines: Vec<Line>,
}

fn mean(values: impl Iterator<Item = f64>) -> f64 {
    let (sum, count) = values.fold((0.0, 0.0), |(s, n), v| (s + v, n + 1.0));
    if count > 0.0 { sum / count } else { 0.0 }
}

fn of_student(known: &[f64]) -> f64 {
    mean(known.iter().copied())
}

/// The quarter of a class that knows least without practice.
fn bottom_quarter(without: &YearResult) -> Vec<usize> {
    let mut order: Vec<usize> = (0..without.known.len()).collect();
    order.sort_by(|a, b| of_student(&without.known[*a]).total_cmp(&of_student(&without.known[*b])));
    order.truncate(order.len().div_ceil(4));
    order
}

/// 95% bootstrap interval of the mean over classes (Efron 1979, percentile).
fn interval(differences: &[f64]) -> [f64; 2] {
    let luck = Luck::new(20_260_901, 0);
    let count = differences.len();
    let mut means: Vec<f64> = (0..RESAMPLINGS)
        .map(|round| {
            mean((0..count).map(|i| {
                #[expect(
                    clippy::cast_possible_truncation,
                    clippy::cast_sign_loss,
                    clippy::cast_precision_loss,
                    reason = "an index below the number of classes"
                )]
                let pick = (luck.chance(round, i, Purpose::Rule) * count as f64) as usize;
                differences[pick.min(count - 1)]
            }))
        })
        .collect();
    means.sort_by(f64::total_cmp);
    [
        means[RESAMPLINGS * 25 / 1000],
        means[RESAMPLINGS * 975 / 1000],
    ]
}

fn ratio(part: f64, whole: f64) -> f64 {
    if whole.abs() < 1e-12 {
        0.0
    } else {
        part / whole
    }
}

/// Runs every rule in one learner model; `step` is told of every finished class-year.
///
/// # Errors
/// [`MemoryError`], never with finite states.
pub fn compare(
    kind: Kind,
    setup: &Setup,
    mut step: impl FnMut(),
) -> Result<ModelTable, MemoryError> {
    if setup.seeds.is_empty() {
        return Ok(ModelTable {
            model: kind.words(),
            lines: Vec::new(),
        });
    }
    // By rule, then by class: (class mean, bottom quarter, minutes, exercises, slowest concepts).
    let mut all: Vec<Vec<[f64; 5]>> = vec![Vec::new(); RuleName::ALL.len()];
    for seed in &setup.seeds {
        let plan = YearPlan::invented(*seed, setup.concepts, setup.minutes);
        let mut bottom = Vec::new();
        for (place, rule) in RuleName::ALL.into_iter().enumerate() {
            let year = run(
                kind,
                &plan,
                setup.constants,
                setup.students,
                *seed,
                rule,
                Tuning::USED,
            )?;
            if rule == RuleName::None {
                bottom = bottom_quarter(&year);
            }
            all[place].push([
                mean(year.known.iter().map(|k| of_student(k))),
                mean(bottom.iter().map(|s| of_student(&year.known[*s]))),
                year.minutes,
                year.exercises,
                mean(
                    year.known
                        .iter()
                        .flat_map(|known| year.slowest.iter().map(|concept| known[*concept])),
                ),
            ]);
            step();
        }
    }
    let place_of = |name| RuleName::ALL.iter().position(|r| *r == name).unwrap_or(0);
    let at = |place: usize, column: usize| mean(all[place].iter().map(|c| c[column]));
    let (none, random, oracle) = (
        place_of(RuleName::None),
        place_of(RuleName::Random),
        place_of(RuleName::Oracle),
    );
    let lines = RuleName::ALL
        .into_iter()
        .enumerate()
        .map(|(place, rule)| {
            let differences = |column: usize| -> Vec<f64> {
                all[place]
                    .iter()
                    .zip(&all[random])
                    .map(|(own, other)| own[column] - other[column])
                    .collect()
            };
            let minus = |column| at(place, column) - at(random, column);
            let edge = |column| ratio(minus(column), at(oracle, column) - at(random, column));
            Line {
                rule: rule.words(),
                class: at(place, 0),
                class_minus_random: minus(0),
                class_interval: interval(&differences(0)),
                bottom: at(place, 1),
                bottom_minus_random: minus(1),
                bottom_interval: interval(&differences(1)),
                slowest: at(place, 4),
                share_of_oracle: ratio(at(place, 0) - at(none, 0), at(oracle, 0) - at(none, 0)),
                class_edge: edge(0),
                bottom_edge: edge(1),
                minutes: at(place, 2),
                exercises: at(place, 3),
            }
        })
        .collect();
    Ok(ModelTable {
        model: kind.words(),
        lines,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn small(seeds: Vec<u64>) -> Setup {
        Setup {
            seeds,
            students: 8,
            concepts: 20,
            minutes: 8.0,
            constants: Constants::default(),
        }
    }

    /// The measure must not fall: in both models ours stays clearly above
    /// random and no rule is given more minutes than another.
    #[test]
    fn ours_beats_random_at_equal_minutes_in_both_models() {
        for kind in Kind::ALL {
            let table = compare(kind, &small(vec![501, 502]), || {}).unwrap();
            let line = |name: RuleName| {
                table
                    .lines
                    .iter()
                    .find(|l| l.rule == name.words())
                    .unwrap()
                    .clone()
            };
            let (random, ours) = (line(RuleName::Random), line(RuleName::Surefoot));
            assert!(ours.class_edge > 0.3, "{table:?}");
            assert!(ours.class > random.class && ours.bottom > random.bottom);
            // Minutes count, but not so much that what takes long is left behind.
            assert!(ours.slowest > random.slowest, "{table:?}");
            for other in &table.lines {
                if other.rule != RuleName::None.words() {
                    assert!(
                        (other.minutes / random.minutes - 1.0).abs() < 0.02,
                        "{table:?}"
                    );
                }
                assert!(other.class_interval[0] <= other.class_interval[1]);
            }
        }
    }

    #[test]
    fn the_same_seed_gives_the_same_table() {
        let setup = small(vec![7]);
        assert_eq!(
            compare(Kind::Pools, &setup, || {}).unwrap(),
            compare(Kind::Pools, &setup, || {}).unwrap()
        );
    }
}
