//! Fits slopes and thresholds of the ratings: step 7 of the fit.

use super::constants::{MOST_RATING_STEP, RATING_SCALE_VARIANCE, THRESHOLD_GAP};
use super::model::Model;
use super::rating_scale::RatingScale;
use super::weighed::Weighed;

/// A gradient and the information beside it.
#[derive(Debug, Clone, Copy, Default)]
struct Scoring {
    gradient: f64,
    information: f64,
}

impl Scoring {
    fn add(&mut self, gradient: f64, information: f64) {
        self.gradient += gradient;
        self.information += information;
    }

    /// The step of a value with the given distance from its prior mean.
    fn step(&self, distance: f64) -> f64 {
        let gradient = self.gradient - distance / RATING_SCALE_VARIANCE;
        let information = self.information + 1.0 / RATING_SCALE_VARIANCE;
        (gradient / information).clamp(-MOST_RATING_STEP, MOST_RATING_STEP)
    }
}

/// One scoring step of slopes and gaps.
pub(super) fn step(model: &Model, weighed: &Weighed) -> RatingScale {
    let scale = &model.scale;
    let [below, above] = scale.gaps;
    let mut gaps = [Scoring::default(); 2];
    let mut slopes = Vec::with_capacity(scale.slopes.len());
    for (student, row) in weighed.cells.rows().enumerate() {
        let slope = scale.slope(student);
        let mut rated = Vec::with_capacity(row.len());
        for (concept, cell) in row
            .iter()
            .enumerate()
            .filter(|(_, cell)| cell.has_ratings())
        {
            let probabilities = model.ratings(student, concept);
            let score = probabilities.score(&cell.ratings);
            let information = probabilities.information(&cell.ratings);
            rated.push((concept, model.logit(student, concept), score, information));

            let [k0, k1, k2, k3] = cell.ratings;
            let [p0, p1, p2, p3] = probabilities.of;
            let [low, _, high] = probabilities.slopes;
            let total = k0 + k1 + k2 + k3;
            let [first, last] = &mut gaps;
            first.add(
                -below * low * (k0 / p0 - k1 / p1),
                (below * low).powi(2) * total * (1.0 / p0 + 1.0 / p1),
            );
            last.add(
                above * high * (k2 / p2 - k3 / p3),
                (above * high).powi(2) * total * (1.0 / p2 + 1.0 / p3),
            );
        }
        // A slope turns about the mean logit of what the student rated, which the shift of
        // the student's ratings holds.
        let informed: f64 = rated.iter().map(|(_, _, _, information)| information).sum();
        let weighted: f64 = rated.iter().map(|(_, logit, _, i)| logit * i).sum();
        let middle = if informed > 0.0 {
            weighted / informed
        } else {
            0.0
        };
        let mut own = Scoring::default();
        for (concept, logit, score, information) in rated {
            let spread = model.spread[(student, concept)];
            let with_feeling = slope * spread.logit + spread.cross;
            let distance = logit - middle;
            own.add(
                slope * (distance * score - with_feeling * information),
                slope * slope * (distance * distance + spread.logit) * information,
            );
        }
        slopes.push(own);
    }
    let mut class = Scoring::default();
    for own in &slopes {
        class.add(own.gradient, own.information);
    }
    let log_own = scale.log_own.iter().zip(&slopes);
    let [first, last] = gaps;
    let [log_below, log_above] = scale.log_gaps;
    let moved =
        |log_gap: f64, scoring: Scoring| log_gap + scoring.step(log_gap - THRESHOLD_GAP.ln());
    RatingScale::new(
        scale.log_slope + class.step(scale.log_slope),
        log_own
            .map(|(own, scoring)| own + scoring.step(*own))
            .collect(),
        [moved(log_below, first), moved(log_above, last)],
    )
}
