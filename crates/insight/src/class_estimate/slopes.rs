//! Which way the class moves on each concept, on the logit of success.
//!
//! Evidence that fades is on average some passes old, so it lags behind a class that moves.

use super::constants::{SLOPE, SLOPE_ROUNDS, TREND_HALF_LIFE_PASSES};
use super::residuals::Residual;
use super::weighed::passes_before;
use crate::grid::Grid;
use crate::stats::count;

/// The change of a concept in a pass.
#[derive(Debug, Clone, Copy)]
pub(super) struct Slope {
    pub change: f64,
    pub variance: f64,
}

/// The weighted sums of a straight line through the residuals of a concept.
struct Line {
    /// Σ weight · (pass − mean pass)².
    squares: f64,
    /// Σ weight · (pass − mean pass) · (distance − mean distance).
    products: f64,
}

impl Line {
    fn through(residuals: &[Residual], last_pass: usize, problem_variance: f64) -> Self {
        let points: Vec<(f64, f64, f64)> = residuals
            .iter()
            .enumerate()
            .filter(|(_, residual)| residual.information > 0.0)
            .map(|(pass, residual)| {
                let fade = (-passes_before(last_pass, pass) / TREND_HALF_LIFE_PASSES).exp2();
                let weight = fade / (1.0 / residual.information + problem_variance);
                (count(pass), residual.distance(), weight)
            })
            .collect();
        let weights: f64 = points.iter().map(|(_, _, weight)| weight).sum();
        if weights <= 0.0 {
            return Self {
                squares: 0.0,
                products: 0.0,
            };
        }
        let mean = |of: fn(&(f64, f64, f64)) -> f64| {
            points.iter().map(|point| point.2 * of(point)).sum::<f64>() / weights
        };
        let (middle, level) = (mean(|point| point.0), mean(|point| point.1));
        let sum = |of: &dyn Fn(f64, f64) -> f64| {
            let terms = points
                .iter()
                .map(|(pass, distance, weight)| weight * of(pass - middle, distance - level));
            terms.sum::<f64>()
        };
        Self {
            squares: sum(&|pass, _| pass * pass),
            products: sum(&|pass, distance| pass * distance),
        }
    }

    /// The slope, shrunk towards 0 by the variance of the slopes of all concepts.
    fn slope(&self, slope_variance: f64) -> Slope {
        let information = self.squares + 1.0 / slope_variance;
        Slope {
            change: self.products / information,
            variance: 1.0 / information,
        }
    }
}

/// The slope of every concept.
pub(super) fn slopes(
    residuals: &Grid<Residual>,
    last_pass: usize,
    problem_variance: f64,
) -> Vec<Slope> {
    let lines: Vec<Line> = residuals
        .rows()
        .map(|row| Line::through(row, last_pass, problem_variance))
        .collect();
    let mut variance = SLOPE.variance;
    for _ in 0..SLOPE_ROUNDS {
        let (mut squares, mut determined) = (SLOPE.weight * SLOPE.variance, SLOPE.weight);
        for line in &lines {
            let slope = line.slope(variance);
            squares += slope.change * slope.change;
            determined += line.squares * slope.variance;
        }
        variance = squares / determined;
    }
    lines.iter().map(|line| line.slope(variance)).collect()
}
