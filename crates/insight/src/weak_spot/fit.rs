//! Weighing the evidence and the additive fit of students and concepts.

use super::scale::Scale;
use super::{ChanceEstimate, Settings};
use crate::evidence::Evidence;
use crate::stats::mean;
use std::collections::BTreeMap;

/// Class shares are kept inside this range.
const SHARE_RANGE: (f64, f64) = (0.02, 0.98);
/// The class picture in a student's own estimate is kept inside this range.
const OWN_RANGE: (f64, f64) = (0.03, 0.97);
/// Least residual variance, and the variance when nothing is known.
const LEAST_VARIANCE: f64 = 0.02;
const UNKNOWN_VARIANCE: f64 = 0.25;

/// Weight and value sum of the evidence per student and concept.
pub(super) struct Sums {
    students: usize,
    concepts: usize,
    weight: Vec<f64>,
    value: Vec<f64>,
}

impl Sums {
    /// Students whose evidence on a concept weighs at least `least`.
    pub fn raters(&self, concept: usize, least: f64) -> usize {
        (0..self.students)
            .filter(|i| self.weight[i * self.concepts + concept] >= least)
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
    let mut weight = vec![0.0; students * concepts];
    let mut value = vec![0.0; students * concepts];
    for student in 0..students {
        for concept in 0..concepts {
            let place = student * concepts + concept;
            for (pass, fade) in fade.iter().enumerate() {
                if let Some(rating) = evidence.rating(student, concept, pass) {
                    let w = settings.rating_weight * fade;
                    weight[place] += w;
                    value[place] += w * scale.rating_value[student][rating.index()];
                }
                if let Some(right) = evidence.result(student, concept, pass) {
                    let w = settings.result_weight * fade;
                    weight[place] += w;
                    value[place] += w * f64::from(u8::from(right));
                }
            }
        }
    }
    // Answers of one pass are alike whatever the rating before them, so they
    // are put together first.
    let mut practice: BTreeMap<(usize, usize), (f64, f64)> = BTreeMap::new();
    for count in evidence.practice().iter().filter(|p| p.pass < passes) {
        let sum = practice
            .entry((count.student * concepts + count.concept, count.pass))
            .or_default();
        sum.0 += f64::from(count.right);
        sum.1 += f64::from(count.right) + f64::from(count.wrong);
    }
    for ((place, pass), (right, answers)) in practice {
        let w = settings.result_weight * fade[pass] * answers
            / (1.0 + settings.practice_likeness * (answers - 1.0));
        weight[place] += w;
        value[place] += w * right / answers;
    }
    Sums {
        students,
        concepts,
        weight,
        value,
    }
}

/// The fitted class picture.
pub(super) struct Fitted {
    mean: f64,
    student: Vec<f64>,
    concept: Vec<f64>,
    pub share: Vec<f64>,
    pub sd: Vec<f64>,
}

/// Fits value ≈ mean + student + concept with shrinkage, one vote a student.
pub(super) fn additive(sums: &Sums, settings: &Settings) -> Fitted {
    let (students, concepts) = (sums.students, sums.concepts);
    let vote: Vec<f64> = sums
        .weight
        .iter()
        .map(|n| n / (n + settings.half_vote_weight))
        .collect();
    let seen: Vec<f64> = sums
        .weight
        .iter()
        .zip(&sums.value)
        .map(|(n, y)| if *n > 0.0 { y / n } else { 0.0 })
        .collect();
    let votes: f64 = vote.iter().sum();
    let mut mu = if votes > 0.0 {
        vote.iter().zip(&seen).map(|(w, u)| w * u).sum::<f64>() / votes
    } else {
        0.5
    };
    let mut student = vec![0.0; students];
    let mut concept = vec![0.0; concepts];
    for _ in 0..settings.sweeps {
        for (i, effect) in student.iter_mut().enumerate() {
            let (mut total, mut sum) = (settings.student_shrinkage, 0.0);
            for (c, beta) in concept.iter().enumerate() {
                let place = i * concepts + c;
                total += vote[place];
                sum += vote[place] * (seen[place] - mu - beta);
            }
            *effect = sum / total;
        }
        let mut total = vec![settings.concept_shrinkage; concepts];
        let mut sum = vec![0.0; concepts];
        for (i, alpha) in student.iter().enumerate() {
            for c in 0..concepts {
                let place = i * concepts + c;
                total[c] += vote[place];
                sum[c] += vote[place] * (seen[place] - mu - alpha);
            }
        }
        for (c, effect) in concept.iter_mut().enumerate() {
            *effect = sum[c] / total[c];
        }
        if votes > 0.0 {
            let mut sum = 0.0;
            for (i, alpha) in student.iter().enumerate() {
                for (c, beta) in concept.iter().enumerate() {
                    let place = i * concepts + c;
                    sum += vote[place] * (seen[place] - alpha - beta);
                }
            }
            mu = sum / votes;
        }
    }

    let mut squares = 0.0;
    let mut concept_votes = vec![0.0; concepts];
    for (i, alpha) in student.iter().enumerate() {
        for (c, beta) in concept.iter().enumerate() {
            let place = i * concepts + c;
            squares += vote[place] * (seen[place] - mu - alpha - beta).powi(2);
            concept_votes[c] += vote[place];
        }
    }
    let variance = if votes > 0.0 {
        (squares / votes).max(LEAST_VARIANCE)
    } else {
        UNKNOWN_VARIANCE
    };
    let middle = mu + mean(&student).unwrap_or(0.0);
    let share = concept
        .iter()
        .map(|beta| (middle + beta).clamp(SHARE_RANGE.0, SHARE_RANGE.1))
        .collect();
    let sd = concept_votes
        .iter()
        .map(|n| (variance / (1.0 + n) + settings.floor_sd.powi(2)).sqrt())
        .collect();
    Fitted {
        mean: mu,
        student,
        concept,
        share,
        sd,
    }
}

/// Each student's own chance on each concept, student by student.
pub(super) fn chances(sums: &Sums, fitted: &Fitted, settings: &Settings) -> Vec<ChanceEstimate> {
    let mut chances = Vec::with_capacity(sums.weight.len());
    for (i, alpha) in fitted.student.iter().enumerate() {
        for (c, beta) in fitted.concept.iter().enumerate() {
            let place = i * sums.concepts + c;
            let prior = (fitted.mean + alpha + beta).clamp(OWN_RANGE.0, OWN_RANGE.1);
            let weight = sums.weight[place];
            // Stretched rating values may leave 0 to 1.
            let value = sums.value[place].clamp(0.0, weight);
            chances.push(ChanceEstimate {
                success: settings.class_weight * prior + value,
                failure: settings.class_weight * (1.0 - prior) + weight - value,
            });
        }
    }
    chances
}
