//! One school year of a class under one rule.

use super::knowledge::Kind;
use super::learner::{Constants, SimStudent};
use super::plan::YearPlan;
use super::rules::{Rule, RuleName};
use crate::estimate::Tuning;
use crate::memory::MemoryError;

/// What a year came to.
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
///
/// # Errors
/// [`MemoryError`], never with finite states.
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
    let mut overrun = vec![0.0_f64; students];
    let mut minutes_all = 0.0;
    let mut exercises = 0.0;
    for (school_day, _) in plan.calendar.iter().enumerate() {
        for (number, student) in class.iter_mut().enumerate() {
            student.lessons(plan, school_day);
            let notes = student.review(plan, school_day);
            rule.noted(number, school_day, &notes)?;
            if !student.practises(school_day) {
                continue;
            }
            // The item in hand is finished; what it runs over is taken off the next evening.
            let budget = plan.minutes - overrun[number];
            let mut spent = 0.0;
            let mut tonight = Vec::new();
            while spent < budget {
                let Some(concept) = rule.choose(number, school_day, &tonight, student)? else {
                    break;
                };
                let (result, minutes) = student.answer(plan, concept, school_day);
                rule.answered(number, school_day, concept, result, minutes)?;
                spent += minutes;
                exercises += 1.0;
                tonight.push(concept);
            }
            minutes_all += spent;
            overrun[number] = (spent - budget).max(0.0);
        }
    }
    let slowest = slowest_quarter(&class, plan.taught.len());
    let end = plan.calendar.last().copied().unwrap_or(0);
    #[expect(clippy::cast_precision_loss, reason = "a class")]
    let count = students.max(1) as f64;
    Ok(YearResult {
        known: class
            .iter()
            .map(|s| (0..plan.taught.len()).map(|c| s.knows(c, end)).collect())
            .collect(),
        slowest,
        minutes: minutes_all / count,
        exercises: exercises / count,
    })
}

fn slowest_quarter(class: &[SimStudent], concepts: usize) -> Vec<usize> {
    let minutes: Vec<f64> = (0..concepts)
        .map(|concept| class.iter().map(|s| s.usual_minutes(concept)).sum())
        .collect();
    let mut order: Vec<usize> = (0..concepts).collect();
    order.sort_by(|a, b| minutes[*b].total_cmp(&minutes[*a]));
    order.truncate(concepts.div_ceil(4));
    order
}
