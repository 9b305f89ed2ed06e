//! Step 3: what the model says about each student and each concept.

use super::constants::{
    CLASS_DRIFT, CLASS_WALK, ENOUGH_REPORTERS, INTERVAL_Z, REPORTED_WEIGHT, STUDENT_WALK,
    SURE_SHARE, WRONG_BELOW,
};
use super::estimates::{ConceptEstimate, StudentEstimate};
use super::model::Model;
use super::pair::Pair;
use super::round::Round;
use super::slopes::Slope;
use super::solve::Covariance;
use super::weighed::{CellEvidence, Weighed};
use crate::grid::Grid;
use crate::stats::{count, logistic, logit};

/// The range of a share of which nothing is known.
const UNKNOWN_RANGE: (f64, f64) = (0.1, 0.9);

/// A student on a concept.
#[derive(Debug, Clone, Copy)]
struct CellAnswer {
    estimate: StudentEstimate,
    /// The part of the variance that no other cell shares.
    own_variance: f64,
    /// The weights of the effects of class and student in the logit.
    weights: Pair,
    evidence: CellEvidence,
}

/// A concept over all students.
#[derive(Debug, Clone, Copy)]
struct ConceptAnswer {
    /// The part of the concept's effect that belongs to the problems met.
    of_problems: f64,
    /// The part of the variance that all students share: of problems and of change.
    shared_variance: f64,
    /// The same for the range of the share. There unforeseen change is a walk, whose variance
    /// grows with the age of the evidence. If it grew with the square of the age, as in
    /// `shared_variance`, ranges from old evidence would be too wide.
    range_variance: f64,
}

/// Everything that can be asked of a fitted class.
#[derive(Debug)]
pub(super) struct Answers {
    students: usize,
    cells: Grid<CellAnswer>,
    concepts: Vec<ConceptAnswer>,
    covariance: Covariance,
}

impl Answers {
    pub fn new(weighed: &Weighed, model: &Model, round: Round, slopes: &[Slope]) -> Self {
        let variances = &model.variances;
        let concepts: Vec<ConceptAnswer> = weighed
            .concepts
            .iter()
            .zip(slopes)
            .map(|(evidence, slope)| {
                let problems = variances.of_problems(evidence.occasions);
                let of_problems = problems / (variances.ease + problems);
                let age = evidence.age;
                let foreseen = (1.0 - of_problems) * problems + slope.variance * age * age;
                ConceptAnswer {
                    of_problems,
                    shared_variance: foreseen + CLASS_DRIFT * CLASS_DRIFT * age * age,
                    range_variance: foreseen + CLASS_WALK * CLASS_WALK * age,
                }
            })
            .collect();
        let students = model.effects.students.len();
        let mut cells = Vec::with_capacity(students * concepts.len());
        for student in 0..students {
            for (concept, answer) in concepts.iter().enumerate() {
                cells.push(cell_answer(
                    weighed,
                    model,
                    &round,
                    slopes,
                    answer,
                    (student, concept),
                ));
            }
        }
        Self {
            students,
            cells: Grid::of(concepts.len(), cells),
            concepts,
            covariance: round.covariance,
        }
    }

    /// The number of students.
    pub fn students(&self) -> usize {
        self.students
    }

    /// A student on a concept, if there are such.
    pub fn student(&self, student: usize, concept: usize) -> Option<StudentEstimate> {
        let inside = student < self.students && concept < self.concepts.len();
        inside.then(|| self.cells[(student, concept)].estimate)
    }

    /// Every concept, over some students of the class.
    pub fn concepts(&self, students: &[usize], level_known: bool) -> Vec<ConceptEstimate> {
        let concepts = self.concepts.iter().enumerate();
        concepts
            .map(|(concept, answer)| self.concept(concept, answer, students, level_known))
            .collect()
    }

    fn concept(
        &self,
        concept: usize,
        answer: &ConceptAnswer,
        students: &[usize],
        level_known: bool,
    ) -> ConceptEstimate {
        let size = count(students.len());
        let (mut class, mut ease) = (Pair::default(), Pair::default());
        let mut weights = vec![Pair::default(); self.students];
        let (mut share, mut slopes, mut own_variance) = (0.0, 0.0, 0.0);
        for student in students {
            let cell = &self.cells[(*student, concept)];
            let probability = cell.estimate.mean();
            let slope = probability * (1.0 - probability) / size;
            let weight = cell.weights * slope;
            share += probability / size;
            slopes += slope;
            own_variance += slope * slope * cell.own_variance;
            class += weight;
            ease += weight
                + Pair {
                    logit: -slope * answer.of_problems,
                    shift: 0.0,
                };
            if let Some(own) = weights.get_mut(*student) {
                *own += weight;
            }
        }
        let evidence = || {
            let rows = students.iter();
            rows.map(|student| &self.cells[(*student, concept)].evidence)
        };
        let reporters = evidence().filter(|e| e.weight() >= REPORTED_WEIGHT).count();
        let mut found = ConceptEstimate {
            share: 0.5,
            sd: logit(UNKNOWN_RANGE.1) / INTERVAL_Z * 0.25,
            low: UNKNOWN_RANGE.0,
            high: UNKNOWN_RANGE.1,
            reporters,
            certain_need: 0.0,
            few_reports: reporters < ENOUGH_REPORTERS,
            sure_and_wrong: false,
        };
        if !students.is_empty() {
            let of_fit = self.covariance.of_sum(class, &weights, concept, ease) + own_variance;
            let with = |shared: f64| (of_fit + slopes * slopes * shared).sqrt();
            found.share = share;
            found.sd = with(answer.shared_variance);
            let range_sd = with(answer.range_variance);
            let reach = INTERVAL_Z * range_sd / (share * (1.0 - share));
            found.low = logistic(logit(share) - reach);
            found.high = logistic(logit(share) + reach);
        }
        found.certain_need = 1.0 - found.share - INTERVAL_Z * found.sd;
        found.sure_and_wrong = level_known && found.high < WRONG_BELOW && is_sure(evidence());
        found
    }
}

fn cell_answer(
    weighed: &Weighed,
    model: &Model,
    round: &Round,
    slopes: &[Slope],
    answer: &ConceptAnswer,
    (student, concept): (usize, usize),
) -> CellAnswer {
    let evidence = weighed.plain[(student, concept)];
    let cell = &round.cells[(student, concept)];
    let weights = cell.weights();
    let own_variance = cell.variance + STUDENT_WALK * STUDENT_WALK * evidence.age;
    let of = |list: &[Pair]| list.get(concept).map_or(0.0, |pair| pair.logit);
    let trend = slopes.get(concept).map_or(0.0, |slope| slope.change);
    let age = weighed.concepts.get(concept).map_or(0.0, |c| c.age);
    let covariance = &round.covariance;
    let with_ease = covariance.cell_with_ease(student, concept);
    let variance =
        own_variance + answer.shared_variance + round.others[(student, concept)].form(weights)
            - 2.0 * answer.of_problems * weights.dot(with_ease)
            + answer.of_problems.powi(2) * covariance.concept(concept).logit;
    CellAnswer {
        estimate: StudentEstimate {
            logit: model.logit(student, concept) - answer.of_problems * of(&model.effects.concepts)
                + trend * age,
            sd: variance.sqrt(),
        },
        own_variance,
        weights,
        evidence,
    }
}

/// Whether a class feels sure and enough of it has answers: by the weight of its ratings.
fn is_sure<'e>(evidence: impl Iterator<Item = &'e CellEvidence>) -> bool {
    let (mut sure, mut all) = (0.0, 0.0);
    let (mut rated, mut answered) = (0, 0);
    for of in evidence {
        let [_, _, on_my_own, could_teach] = of.ratings;
        let ratings: f64 = of.ratings.iter().sum();
        sure += on_my_own + could_teach;
        all += ratings;
        rated += usize::from(ratings >= REPORTED_WEIGHT);
        answered += usize::from(of.answers >= REPORTED_WEIGHT);
    }
    rated.min(answered) >= ENOUGH_REPORTERS && sure >= SURE_SHARE * all
}
