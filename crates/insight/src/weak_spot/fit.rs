//! Weights the evidence, and fits students and concepts additively.

use super::probability::ProbabilityEstimate;
use super::scale::Scale;
use super::settings::Settings;
use crate::evidence::Evidence;
use crate::grid::Grid;
use crate::stats::mean;
use std::collections::BTreeMap;

/// Range of class shares.
const SHARE_RANGE: (f64, f64) = (0.02, 0.98);
/// Range of the class estimate in a student's own estimate.
const OWN_RANGE: (f64, f64) = (0.03, 0.97);
/// Residual variance at least, and the variance without reports.
const LEAST_VARIANCE: f64 = 0.02;
const UNKNOWN_VARIANCE: f64 = 0.25;

/// Weight and value sum of the evidence, by student and concept.
pub(super) struct Sums {
    weight: Grid<f64>,
    value: Grid<f64>,
}

impl Sums {
    /// Students whose evidence on a concept weighs at least `least`.
    pub fn raters(&self, concept: usize, least: f64) -> usize {
        self.weight
            .rows()
            .filter(|row| row.get(concept).is_some_and(|weight| *weight >= least))
            .count()
    }
}

/// Adds ratings, results and practice, each fading with age.
pub(super) fn weigh(
    evidence: &Evidence,
    last_pass: usize,
    scale: &Scale,
    settings: &Settings,
) -> Sums {
    let (students, concepts) = (evidence.students(), evidence.concepts());
    let passes = evidence.passes().min(last_pass.saturating_add(1));
    let fade: Vec<f64> = (0..passes)
        .map(|pass| {
            let age = f64::from(u32::try_from(last_pass - pass).unwrap_or(u32::MAX));
            (-age / settings.half_life_passes).exp2()
        })
        .collect();
    let mut weight = Grid::filled(students, concepts, 0.0);
    let mut value = Grid::filled(students, concepts, 0.0);
    for (student, rating_value) in scale.rating_value.iter().enumerate() {
        for concept in 0..concepts {
            let (mut weights, mut values) = (0.0, 0.0);
            for (pass, fade) in fade.iter().enumerate() {
                if let Some(rating) = evidence.rating(student, concept, pass) {
                    let w = settings.rating_weight * fade;
                    weights += w;
                    values += w * rating.pick(rating_value);
                }
                if let Some(right) = evidence.result(student, concept, pass) {
                    let w = settings.result_weight * fade;
                    weights += w;
                    values += w * f64::from(u8::from(right));
                }
            }
            weight[(student, concept)] = weights;
            value[(student, concept)] = values;
        }
    }
    // Answers of one pass are similar, whatever the rating before them, so they are added up first.
    let mut practice: BTreeMap<(usize, usize, usize), (f64, f64)> = BTreeMap::new();
    for count in evidence.practice() {
        let sum = practice
            .entry((count.student, count.concept, count.pass))
            .or_default();
        sum.0 += f64::from(count.right);
        sum.1 += f64::from(count.right) + f64::from(count.wrong);
    }
    for ((student, concept, pass), (right, answers)) in practice {
        let Some(fade) = fade.get(pass) else {
            // The pass is after `last_pass`.
            continue;
        };
        let w = settings.result_weight * fade * answers
            / (1.0 + settings.practice_likeness * (answers - 1.0));
        weight[(student, concept)] += w;
        value[(student, concept)] += w * right / answers;
    }
    Sums { weight, value }
}

/// The share of the class that has a concept.
pub(super) struct Share {
    pub mean: f64,
    pub sd: f64,
}

/// The fitted class estimate.
pub(super) struct Fitted {
    mean: f64,
    student: Vec<f64>,
    concept: Vec<f64>,
    pub concepts: Vec<Share>,
}

/// Fits value ≈ mean + student + concept with shrinkage; each student has one vote.
pub(super) fn additive(
    sums: &Sums,
    students: usize,
    concepts: usize,
    settings: &Settings,
) -> Fitted {
    let vote = sums.weight.map(|n| n / (n + settings.half_vote_weight));
    let seen: Vec<f64> = sums
        .weight
        .cells()
        .iter()
        .zip(sums.value.cells())
        .map(|(n, y)| if *n > 0.0 { y / n } else { 0.0 })
        .collect();
    // Each student's pairs of vote and value, by concept.
    let rows = || vote.rows().zip(seen.chunks_exact(concepts.max(1)));
    let votes: f64 = vote.cells().iter().sum();
    let mut mu = if votes > 0.0 {
        vote.cells()
            .iter()
            .zip(&seen)
            .map(|(w, u)| w * u)
            .sum::<f64>()
            / votes
    } else {
        0.5
    };
    let mut student = vec![0.0; students];
    let mut concept = vec![0.0; concepts];
    for _ in 0..settings.sweeps {
        for (effect, (votes, seen)) in student.iter_mut().zip(rows()) {
            let (mut total, mut sum) = (settings.student_shrinkage, 0.0);
            for ((vote, seen), beta) in votes.iter().zip(seen).zip(&concept) {
                total += vote;
                sum += vote * (seen - mu - beta);
            }
            *effect = sum / total;
        }
        let mut sums = vec![(settings.concept_shrinkage, 0.0); concepts];
        for (alpha, (votes, seen)) in student.iter().zip(rows()) {
            for ((vote, seen), (total, sum)) in votes.iter().zip(seen).zip(&mut sums) {
                *total += vote;
                *sum += vote * (seen - mu - alpha);
            }
        }
        for (effect, (total, sum)) in concept.iter_mut().zip(sums) {
            *effect = sum / total;
        }
        if votes > 0.0 {
            let mut sum = 0.0;
            for (alpha, (votes, seen)) in student.iter().zip(rows()) {
                for ((vote, seen), beta) in votes.iter().zip(seen).zip(&concept) {
                    sum += vote * (seen - alpha - beta);
                }
            }
            mu = sum / votes;
        }
    }

    let mut squares = 0.0;
    let mut concept_votes = vec![0.0; concepts];
    for (alpha, (votes, seen)) in student.iter().zip(rows()) {
        let cells = votes.iter().zip(seen).zip(&concept);
        for (((vote, seen), beta), concept_vote) in cells.zip(&mut concept_votes) {
            squares += vote * (seen - mu - alpha - beta).powi(2);
            *concept_vote += vote;
        }
    }
    let variance = if votes > 0.0 {
        (squares / votes).max(LEAST_VARIANCE)
    } else {
        UNKNOWN_VARIANCE
    };
    let middle = mu + mean(&student).unwrap_or(0.0);
    let concepts = concept
        .iter()
        .zip(&concept_votes)
        .map(|(beta, votes)| Share {
            mean: (middle + beta).clamp(SHARE_RANGE.0, SHARE_RANGE.1),
            sd: (variance / (1.0 + votes) + settings.floor_sd.powi(2)).sqrt(),
        })
        .collect();
    Fitted {
        mean: mu,
        student,
        concept,
        concepts,
    }
}

/// Each student's own probability of success on each concept, student by student.
pub(super) fn probabilities(
    sums: &Sums,
    fitted: &Fitted,
    settings: &Settings,
) -> Vec<ProbabilityEstimate> {
    let mut probabilities = Vec::with_capacity(sums.weight.cells().len());
    for (alpha, (weights, values)) in fitted
        .student
        .iter()
        .zip(sums.weight.rows().zip(sums.value.rows()))
    {
        for ((weight, value), beta) in weights.iter().zip(values).zip(&fitted.concept) {
            let prior = (fitted.mean + alpha + beta).clamp(OWN_RANGE.0, OWN_RANGE.1);
            // Stretched rating values may leave 0 to 1.
            let value = value.clamp(0.0, *weight);
            probabilities.push(ProbabilityEstimate {
                success: settings.class_weight * prior + value,
                failure: settings.class_weight * (1.0 - prior) + weight - value,
            });
        }
    }
    probabilities
}
