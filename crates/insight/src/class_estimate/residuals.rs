//! What the class did on a concept in one pass, beyond what the model expects.

use super::constants::RATING_WEIGHT;
use super::model::Model;
use super::weighed::Weighed;
use crate::evidence::Evidence;
use crate::grid::Grid;

/// A concept in a pass, over all students. Age does not count here.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Residual {
    score: f64,
    /// The information about the logit of success.
    pub information: f64,
}

impl Residual {
    fn add(&mut self, score: f64, information: f64) {
        self.score += score;
        self.information += information;
    }

    /// How far the logit is from the model's, if there is any evidence.
    pub fn distance(&self) -> f64 {
        self.score / self.information
    }
}

/// The residuals by concept and pass.
pub(super) fn of_reports(evidence: &Evidence, model: &Model, weighed: &Weighed) -> Grid<Residual> {
    let passes = evidence.passes().min(weighed.last_pass.saturating_add(1));
    let mut found = Grid::filled(evidence.concepts(), passes, Residual::default());
    for (student, row) in weighed.plain.rows().enumerate() {
        let slope = model.scale.slope(student);
        for (concept, cell) in row.iter().enumerate() {
            if cell.weight() <= 0.0 {
                continue;
            }
            let success = model.success(student, concept);
            let ratings = cell.has_ratings().then(|| model.ratings(student, concept));
            for pass in 0..passes {
                let residual = &mut found[(concept, pass)];
                if let Some(right) = evidence.result(student, concept, pass) {
                    residual.add(f64::from(u8::from(right)) - success.value, success.slope);
                }
                if let (Some(ratings), Some(rating)) =
                    (&ratings, evidence.rating(student, concept, pass))
                {
                    let mut one = [0.0; 4];
                    *rating.pick_mut(&mut one) = RATING_WEIGHT;
                    residual.add(
                        slope * ratings.score(&one),
                        slope * slope * ratings.information(&one),
                    );
                }
            }
        }
    }
    found
}

/// Adds practice to the residuals.
pub(super) fn add_practice(residuals: &mut Grid<Residual>, model: &Model, weighed: &Weighed) {
    for practised in &weighed.practice {
        let success = model.success(practised.student, practised.concept);
        residuals[(practised.concept, practised.pass)].add(
            practised.worth * (practised.share_right - success.value),
            practised.worth * success.slope,
        );
    }
}
