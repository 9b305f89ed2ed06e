//! The value of ratings: level values, student shifts and stretch.

use super::settings::Settings;
use crate::evidence::Evidence;
use crate::grid::Grid;
use crate::stats::{logistic, logit, pool_adjacent_violators};

/// Range of level values.
const VALUE_RANGE: (f64, f64) = (0.02, 0.98);
/// Student shift at most, up or down, on the logit scale.
const MOST_SHIFT: f64 = 1.5;
/// Range of the stretch.
const STRETCH_RANGE: (f64, f64) = (1.0, 4.0);

/// The learned scale.
pub(super) struct Scale {
    pub level_value: [f64; 4],
    pub student_shift: Vec<f64>,
    pub stretch: f64,
    /// The stretched value of each rating, by student.
    pub rating_value: Vec<[f64; 4]>,
}

/// Answers with a rating before them.
#[derive(Clone, Copy, Default)]
struct Pairs {
    /// How many at each rating.
    n: [f64; 4],
    /// Those of them that were right.
    right: [f64; 4],
}

impl Pairs {
    fn add(&mut self, other: &Pairs) {
        for (sum, n) in self.n.iter_mut().zip(other.n) {
            *sum += n;
        }
        for (sum, right) in self.right.iter_mut().zip(other.right) {
            *sum += right;
        }
    }
}

/// Learns the scale from all pairs and ratings up to `last_pass`.
pub(super) fn learn(evidence: &Evidence, last_pass: usize, settings: &Settings) -> Scale {
    let pairs = collect_pairs(evidence, last_pass);
    let concepts = evidence.concepts();

    let mut class = Pairs::default();
    let mut students = vec![Pairs::default(); evidence.students()];
    for (own, row) in students.iter_mut().zip(pairs.rows()) {
        for cell in row {
            class.add(cell);
            own.add(cell);
        }
    }

    let level_value = level_values(&class, settings);
    let student_shift: Vec<f64> = students
        .iter()
        .map(|own| shift(own, &level_value, settings))
        .collect();
    let value: Vec<[f64; 4]> = student_shift
        .iter()
        .map(|d| level_value.map(|v| logistic(logit(v) + d)))
        .collect();
    let stretch = stretch(&pairs, &students, &value, concepts, settings);
    let rating_value = value
        .iter()
        .enumerate()
        .map(|(student, own)| {
            let middle = mean_rating_value(evidence, student, last_pass, own);
            own.map(|v| middle.map_or(v, |m| m + stretch * (v - m)))
        })
        .collect();
    Scale {
        level_value,
        student_shift,
        stretch,
        rating_value,
    }
}

/// The pairs by student and concept.
fn collect_pairs(evidence: &Evidence, last_pass: usize) -> Grid<Pairs> {
    let concepts = evidence.concepts();
    let mut pairs = Grid::filled(evidence.students(), concepts, Pairs::default());
    let places = (0..evidence.students()).flat_map(|s| (0..concepts).map(move |c| (s, c)));
    for (student, concept) in places {
        let cell = &mut pairs[(student, concept)];
        for pass in 0..evidence.passes().min(last_pass.saturating_add(1)) {
            if let (Some(rating), Some(right)) = (
                evidence.rating(student, concept, pass),
                evidence.result(student, concept, pass),
            ) {
                *rating.pick_mut(&mut cell.n) += 1.0;
                *rating.pick_mut(&mut cell.right) += f64::from(u8::from(right));
            }
        }
    }
    for practice in evidence.practice().iter().filter(|p| p.pass <= last_pass) {
        if let Some(rating) = practice.rating_before {
            let cell = &mut pairs[(practice.student, practice.concept)];
            *rating.pick_mut(&mut cell.n) += f64::from(practice.right) + f64::from(practice.wrong);
            *rating.pick_mut(&mut cell.right) += f64::from(practice.right);
        }
    }
    pairs
}

fn level_values(class: &Pairs, settings: &Settings) -> [f64; 4] {
    let weight = class.n.map(|n| settings.anchor_weight + n);
    let mut raw = settings.level_anchors;
    for ((value, right), weight) in raw.iter_mut().zip(class.right).zip(weight) {
        *value = (settings.anchor_weight * *value + right) / weight;
    }
    let mut value = [0.0; 4];
    for (slot, pooled) in value.iter_mut().zip(pool_adjacent_violators(&raw, &weight)) {
        *slot = pooled.clamp(VALUE_RANGE.0, VALUE_RANGE.1);
    }
    value
}

fn shift(own: &Pairs, level_value: &[f64; 4], settings: &Settings) -> f64 {
    let (mut surplus, mut information) = (0.0, settings.shift_shrinkage);
    for ((n, right), value) in own.n.iter().zip(&own.right).zip(level_value) {
        surplus += right - n * value;
        information += n * value * (1.0 - value);
    }
    (surplus / information).clamp(-MOST_SHIFT, MOST_SHIFT)
}

/// The slope of results on ratings between concepts, after each student's own mean is
/// subtracted.
fn stretch(
    pairs: &Grid<Pairs>,
    students: &[Pairs],
    value: &[[f64; 4]],
    concepts: usize,
    settings: &Settings,
) -> f64 {
    // Sums of answers, claims and results on each concept.
    let mut sums = vec![(0.0, 0.0, 0.0); concepts];
    for ((own, v), row) in students.iter().zip(value).zip(pairs.rows()) {
        let n: f64 = own.n.iter().sum();
        if n <= 0.0 {
            continue;
        }
        let v_mean = own.n.iter().zip(v).map(|(n, v)| n * v).sum::<f64>() / n;
        let y_mean = own.right.iter().sum::<f64>() / n;
        for (cell, (n_c, x_c, y_c)) in row.iter().zip(&mut sums) {
            let n: f64 = cell.n.iter().sum();
            *n_c += n;
            *x_c += cell.n.iter().zip(v).map(|(n, v)| n * v).sum::<f64>() - n * v_mean;
            *y_c += cell.right.iter().sum::<f64>() - n * y_mean;
        }
    }
    let mut xy = settings.stretch_prior * settings.stretch_prior_weight;
    let mut xx = settings.stretch_prior_weight;
    for (n, x, y) in sums {
        if n > 0.0 {
            xy += x * y / n;
            xx += x * x / n;
        }
    }
    (xy / xx).clamp(STRETCH_RANGE.0, STRETCH_RANGE.1)
}

fn mean_rating_value(
    evidence: &Evidence,
    student: usize,
    last_pass: usize,
    value: &[f64; 4],
) -> Option<f64> {
    let (mut n, mut sum) = (0.0, 0.0);
    for concept in 0..evidence.concepts() {
        for pass in 0..evidence.passes().min(last_pass.saturating_add(1)) {
            if let Some(rating) = evidence.rating(student, concept, pass) {
                n += 1.0;
                sum += rating.pick(value);
            }
        }
    }
    (n > 0.0).then(|| sum / n)
}
