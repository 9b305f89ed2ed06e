//! Which concepts are weak now, for the class and for each student.
//!
//! One model for ratings, results and practice: a student's ability, a concept's ease, and
//! what this student has on this concept give the probability of a right answer. Ratings follow
//! that probability, each student's in their own way, and the class may be surer or less sure of a
//! concept than its success warrants. Old reports fade. In plain words, with every formula,
//! constant and source: `docs/insight.md`, "Class estimate".
//!
//! [`weighed`] takes the evidence, [`fit`] fits the model, [`answers`] reads it.

mod answers;
mod constants;
mod estimates;
mod fit;
mod model;
mod pair;
mod probabilities;
mod rating_fit;
mod rating_scale;
mod residuals;
mod round;
mod slopes;
mod solve;
mod variance_fit;
mod variances;
mod weighed;

use super::evidence::Evidence;
use answers::Answers;
pub use estimates::{ConceptEstimate, StudentEstimate};

/// The class estimate up to one pass.
#[derive(Debug)]
pub struct ClassEstimate {
    /// Every concept, in concept order.
    pub concepts: Vec<ConceptEstimate>,
    /// Concept numbers, weakest first.
    pub ranking: Vec<usize>,
    /// Whether there are enough results and practice to show shares and ranges. Ratings alone
    /// tell which concepts are weaker than others, but not how many students would succeed.
    pub level_known: bool,
    /// How much the problems of one concept differ: a variance, on the logit of success.
    pub problem_variance: f64,
    answers: Answers,
}

impl ClassEstimate {
    /// The estimate for a student on a concept; `None` outside the class.
    #[must_use]
    pub fn student(&self, student: usize, concept: usize) -> Option<StudentEstimate> {
        self.answers.student(student, concept)
    }

    /// Every concept for some students of the class, in concept order, from the same fit.
    /// Numbers outside the class are left out.
    #[must_use]
    pub fn of_students(&self, students: &[usize]) -> Vec<ConceptEstimate> {
        let inside: Vec<usize> = students
            .iter()
            .copied()
            .filter(|student| *student < self.answers.students())
            .collect();
        self.answers.concepts(&inside, self.level_known)
    }
}

/// Estimates the class from everything reported up to `last_pass`.
#[must_use]
pub fn class_estimate(evidence: &Evidence, last_pass: usize) -> ClassEstimate {
    let weighed = weighed::weigh(evidence, last_pass);
    let (model, round) = fit::fit(evidence, &weighed);
    let mut residuals = residuals::of_reports(evidence, &model, &weighed);
    residuals::add_practice(&mut residuals, &model, &weighed);
    let slopes = slopes::slopes(&residuals, last_pass, model.variances.problem);
    let answers = Answers::new(&weighed, &model, round, &slopes);

    let level_known = weighed.level_known();
    let all: Vec<usize> = (0..evidence.students()).collect();
    let concepts = answers.concepts(&all, level_known);
    ClassEstimate {
        ranking: ranking(&concepts),
        concepts,
        level_known,
        problem_variance: model.variances.problem,
        answers,
    }
}

/// Concept numbers by certain need, the greatest first. Concepts that differ by less than a
/// billionth keep their order.
#[must_use]
pub fn ranking(concepts: &[ConceptEstimate]) -> Vec<usize> {
    let needs = concepts.iter().map(|c| (c.certain_need * 1e9).round());
    let mut places: Vec<(usize, f64)> = needs.enumerate().collect();
    places.sort_by(|(_, a), (_, b)| b.total_cmp(a));
    places.into_iter().map(|(place, _)| place).collect()
}

#[cfg(test)]
mod tests;
