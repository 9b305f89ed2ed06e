//! Several simulated classes under every rule, with intervals of the differences.

use super::knowledge::Kind;
use super::luck::{Luck, Purpose};
use super::plan::YearPlan;
use super::rules::RuleName;
use super::sim_student::Constants;
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

/// The lines of one model of learning.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ModelTable {
    /// The model of learning.
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

/// Returns the quarter of a class that knows least without practice.
fn bottom_quarter(without: &YearResult) -> Vec<usize> {
    let mut shares: Vec<(usize, f64)> = without
        .known
        .iter()
        .map(|known| of_student(known))
        .enumerate()
        .collect();
    shares.sort_by(|(_, a), (_, b)| a.total_cmp(b));
    shares.truncate(shares.len().div_ceil(4));
    shares.into_iter().map(|(student, _)| student).collect()
}

/// Returns the 95% bootstrap interval of the mean over classes (Efron 1979, percentile).
fn interval(differences: &[f64]) -> [f64; 2] {
    let luck = Luck::new(20_260_901, 0);
    let count = differences.len();
    let mut means: [f64; RESAMPLINGS] = std::array::from_fn(|round| {
        mean((0..count).filter_map(|i| {
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                clippy::cast_precision_loss,
                reason = "an index below the number of classes"
            )]
            let pick = (luck.draw(round, i, Purpose::Rule) * count as f64) as usize;
            differences.get(pick).or(differences.last()).copied()
        }))
    });
    means.sort_by(f64::total_cmp);
    [
        means[RESAMPLINGS * 25 / 1000],
        means[RESAMPLINGS * 975 / 1000],
    ]
}

/// The results of a rule in one class.
struct ClassYear {
    /// Share known at the year's end.
    class: f64,
    /// The same of the bottom quarter.
    bottom: f64,
    minutes: f64,
    exercises: f64,
    /// Share known of the slowest concepts.
    slowest: f64,
}

/// The classes under one rule.
struct RuleYears {
    rule: RuleName,
    classes: Vec<ClassYear>,
}

impl RuleYears {
    fn mean(&self, of: impl Fn(&ClassYear) -> f64) -> f64 {
        mean(self.classes.iter().map(of))
    }
}

fn ratio(part: f64, whole: f64) -> f64 {
    if whole.abs() < 1e-12 {
        0.0
    } else {
        part / whole
    }
}

/// Runs every rule in one model of learning. Calls `step` after each finished year of a
/// class.
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
    let mut all = RuleName::ALL.map(|rule| RuleYears {
        rule,
        classes: Vec::new(),
    });
    for seed in &setup.seeds {
        let plan = YearPlan::invented(*seed, setup.concepts, setup.minutes);
        let mut bottom = Vec::new();
        for years in &mut all {
            let year = run(
                kind,
                &plan,
                setup.constants,
                setup.students,
                *seed,
                years.rule,
                Tuning::USED,
            )?;
            if years.rule == RuleName::None {
                bottom = bottom_quarter(&year);
            }
            let slowest = year.known.iter().flat_map(|known| {
                let concepts = year.slowest.iter();
                concepts.filter_map(|concept| known.get(*concept).copied())
            });
            years.classes.push(ClassYear {
                class: mean(year.known.iter().map(|k| of_student(k))),
                bottom: mean(
                    bottom
                        .iter()
                        .filter_map(|s| year.known.get(*s))
                        .map(|k| of_student(k)),
                ),
                minutes: year.minutes,
                exercises: year.exercises,
                slowest: mean(slowest),
            });
            step();
        }
    }
    let [none, random, .., oracle] = &all;
    let class = |year: &ClassYear| year.class;
    let bottom = |year: &ClassYear| year.bottom;
    let lines = all
        .iter()
        .map(|years| {
            let minus = |of: fn(&ClassYear) -> f64| years.mean(of) - random.mean(of);
            let edge =
                |of: fn(&ClassYear) -> f64| ratio(minus(of), oracle.mean(of) - random.mean(of));
            let differences = |of: fn(&ClassYear) -> f64| -> Vec<f64> {
                let pairs = years.classes.iter().zip(&random.classes);
                pairs.map(|(own, other)| of(own) - of(other)).collect()
            };
            Line {
                rule: years.rule.words(),
                class: years.mean(class),
                class_minus_random: minus(class),
                class_interval: interval(&differences(class)),
                bottom: years.mean(bottom),
                bottom_minus_random: minus(bottom),
                bottom_interval: interval(&differences(bottom)),
                slowest: years.mean(|year| year.slowest),
                share_of_oracle: ratio(
                    years.mean(class) - none.mean(class),
                    oracle.mean(class) - none.mean(class),
                ),
                class_edge: edge(class),
                bottom_edge: edge(bottom),
                minutes: years.mean(|year| year.minutes),
                exercises: years.mean(|year| year.exercises),
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

    /// In both models our rule stays clearly above random, and no rule has more minutes
    /// than another.
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
            // Minutes count, but concepts that take long are practised too.
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
