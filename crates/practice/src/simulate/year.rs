//! One school year of a class under one rule.

use super::knowledge::Kind;
use super::plan::YearPlan;
use super::rules::{Rule, RuleName};
use super::sim_student::{Constants, SimStudent};
use crate::estimate::Tuning;
use crate::memory::MemoryError;

/// The result of a year.
#[derive(Debug, Clone, PartialEq)]
pub struct YearResult {
    /// True share known at the year's end, by student and concept.
    pub known: Vec<Vec<f64>>,
    /// The quarter of the concepts on which an exercise takes this class longest.
    pub slowest: Vec<usize>,
    /// Practice minutes a student, on average.
    pub minutes: f64,
    /// Exercises a student, on average.
    pub exercises: f64,
}

/// Runs a class through a year.
pub fn run(
    kind: Kind,
    plan: &YearPlan,
    constants: Constants,
    students: usize,
    seed: u64,
    name: RuleName,
    tuning: Tuning,
) -> Result<YearResult, MemoryError> {
    let mut class: Vec<SimStudent> = (0..students)
        .map(|number| SimStudent::new(kind, plan, constants, seed, number))
        .collect();
    let mut rule = Rule::new(name, plan, students, seed, tuning)?;
    // Minutes by which each student's last evening was too long.
    let mut overruns = vec![0.0_f64; students];
    let mut minutes_all = 0.0;
    let mut exercises = 0.0;
    for on in plan.school_days() {
        for ((number, student), overrun) in class.iter_mut().enumerate().zip(&mut overruns) {
            student.lessons(plan, on);
            let notes = student.review(plan, on);
            rule.noted(number, on, &notes)?;
            if !student.practises(on) {
                continue;
            }
            // An exercise that was begun is finished; its overrun shortens the next evening.
            let budget = plan.minutes - *overrun;
            let mut spent = 0.0;
            let mut tonight = Vec::new();
            while spent < budget {
                let Some(concept) = rule.choose(number, on, &tonight, student) else {
                    break;
                };
                let (result, minutes) = student.answer(plan, concept, on);
                rule.answered(number, on, concept, result, minutes)?;
                spent += minutes;
                exercises += 1.0;
                tonight.push(concept);
            }
            minutes_all += spent;
            *overrun = (spent - budget).max(0.0);
        }
    }
    let slowest = slowest_quarter(&class, plan.concepts.len());
    let end = plan.calendar.last().copied().unwrap_or(0);
    #[expect(clippy::cast_precision_loss, reason = "a class")]
    let count = students.max(1) as f64;
    Ok(YearResult {
        known: class
            .iter()
            .map(|s| (0..plan.concepts.len()).map(|c| s.knows(c, end)).collect())
            .collect(),
        slowest,
        minutes: minutes_all / count,
        exercises: exercises / count,
    })
}

fn slowest_quarter(class: &[SimStudent], concepts: usize) -> Vec<usize> {
    let mut minutes: Vec<(usize, f64)> = (0..concepts)
        .map(|concept| class.iter().map(|s| s.usual_minutes(concept)).sum())
        .enumerate()
        .collect();
    minutes.sort_by(|(_, a), (_, b)| b.total_cmp(a));
    minutes.truncate(concepts.div_ceil(4));
    minutes.into_iter().map(|(concept, _)| concept).collect()
}
