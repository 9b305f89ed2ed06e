//! What would be expected of a concept by how the others moved: a random-effects regression over
//! concepts.

use super::super::stats::count;
use super::change::{Change, Changes};
use std::collections::BTreeSet;

/// Least information of the answers on a concept to compare with.
const LEAST_INFORMATION: f64 = 0.05;
/// Fewest concepts to compare with.
const FEWEST_CONCEPTS: usize = 6;
/// Fewest concepts to compare with if the regression has the other students as well.
const FEWEST_CONCEPTS_WITH_OTHERS: usize = 10;
/// Least information of the answers of the other students for the regression to have them.
const LEAST_OTHERS: f64 = 1.0;

/// A concept that was not taught again.
struct Point {
    /// Its change.
    change: f64,
    /// Variance of the change by chance alone.
    variance: f64,
    /// 1; its forecast less that of the taught concept; the change of the other students on it less
    /// that on the taught concept.
    row: Vec<f64>,
}

/// The change to be expected of the taught concept without the teaching.
pub(super) struct Comparison {
    /// On the logit of success.
    pub expected: f64,
    /// Variance of that.
    pub variance: f64,
    /// Variance of the change between concepts, beyond chance.
    pub between: f64,
    /// Concepts less the numbers fitted to them.
    pub freedom: usize,
    /// Concepts compared with.
    pub concepts: usize,
}

impl Comparison {
    /// Fits the other concepts. The rows are counted from the taught concept, so that the first
    /// coefficient is what is expected of it.
    pub fn of(
        own: &Change,
        changes: &Changes,
        taught: usize,
        others: &BTreeSet<usize>,
    ) -> Option<Self> {
        let rest = changes.others.get(taught);
        let rest = rest.filter(|of| of.information >= LEAST_OTHERS);
        let points = |rest: Option<&Change>| -> Vec<Point> {
            others
                .iter()
                .filter(|concept| **concept != taught)
                .filter_map(|concept| {
                    let of = changes.members.get(*concept)?;
                    let mut row = vec![1.0];
                    if of.information < LEAST_INFORMATION {
                        return None;
                    }
                    row.push(of.start() - own.start());
                    if let Some(rest) = rest {
                        let other = changes.others.get(*concept)?;
                        if other.information < LEAST_OTHERS {
                            return None;
                        }
                        row.push(other.logit() - rest.logit());
                    }
                    Some(Point {
                        change: of.logit(),
                        variance: 1.0 / of.information,
                        row,
                    })
                })
                .collect()
        };
        let with_rest = rest.map(|rest| points(Some(rest)));
        if let Some(points) = with_rest.filter(|p| p.len() >= FEWEST_CONCEPTS_WITH_OTHERS)
            && let Some(found) = fit(&points)
        {
            return Some(found);
        }
        let points = points(None);
        if points.len() < FEWEST_CONCEPTS {
            return None;
        }
        fit(&points)
    }
}

/// The variance between concepts by moments (DerSimonian & Laird 1986), then the coefficients with
/// weights 1/(variance + between), and their covariance with the factor of Knapp & Hartung 2003.
fn fit(points: &[Point]) -> Option<Comparison> {
    let freedom = points.len().checked_sub(points.first()?.row.len())?;
    if freedom == 0 {
        return None;
    }
    let fixed = Weighted::fit(points, |point| 1.0 / point.variance)?;
    // The mean of Q is freedom + between · (Σw − tr((X'WX)⁻¹ X'W²X)).
    let per_variance = fixed.weights() - fixed.trace_of_squares(points);
    let between = ((fixed.squares(points) - count(freedom)) / per_variance).max(0.0);
    let between = if between.is_finite() { between } else { 0.0 };
    let fitted = Weighted::fit(points, |point| 1.0 / (point.variance + between))?;
    let factor = (fitted.squares(points) / count(freedom)).max(1.0);
    Some(Comparison {
        expected: *fitted.coefficients.first()?,
        variance: fitted.inverse.first()?.first()? * factor,
        between,
        freedom,
        concepts: points.len(),
    })
}

/// Weighted least squares.
struct Weighted {
    weight: Vec<f64>,
    coefficients: Vec<f64>,
    /// (X'WX)⁻¹.
    inverse: Vec<Vec<f64>>,
}

impl Weighted {
    fn fit(points: &[Point], weight: impl Fn(&Point) -> f64) -> Option<Self> {
        let weight: Vec<f64> = points.iter().map(weight).collect();
        let width = points.first()?.row.len();
        let mut normal = vec![vec![0.0; width]; width];
        let mut right = vec![0.0; width];
        for (point, weight) in points.iter().zip(&weight) {
            for ((line, sum), a) in normal.iter_mut().zip(&mut right).zip(&point.row) {
                *sum += weight * a * point.change;
                for (cell, b) in line.iter_mut().zip(&point.row) {
                    *cell += weight * a * b;
                }
            }
        }
        let inverse = inverse(normal)?;
        Some(Self {
            coefficients: inverse.iter().map(|line| dot(line, &right)).collect(),
            weight,
            inverse,
        })
    }

    fn weights(&self) -> f64 {
        self.weight.iter().sum()
    }

    /// Weighted sum of the squared residuals.
    fn squares(&self, points: &[Point]) -> f64 {
        points
            .iter()
            .zip(&self.weight)
            .map(|(point, weight)| {
                weight * (point.change - dot(&self.coefficients, &point.row)).powi(2)
            })
            .sum()
    }

    /// tr((X'WX)⁻¹ X'W²X).
    fn trace_of_squares(&self, points: &[Point]) -> f64 {
        points
            .iter()
            .zip(&self.weight)
            .map(|(point, weight)| {
                let turned: Vec<f64> = self
                    .inverse
                    .iter()
                    .map(|line| dot(line, &point.row))
                    .collect();
                weight * weight * dot(&turned, &point.row)
            })
            .sum()
    }
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

/// The inverse of a symmetric positive matrix of two or three rows, by Gauss and Jordan; `None` if a
/// column says next to nothing beyond those before it.
fn inverse(mut matrix: Vec<Vec<f64>>) -> Option<Vec<Vec<f64>>> {
    const LEAST_SHARE: f64 = 1e-9;
    let size = matrix.len();
    let diagonal: Vec<f64> = (0..size)
        .filter_map(|at| matrix.get(at)?.get(at).copied())
        .collect();
    for (at, line) in matrix.iter_mut().enumerate() {
        line.extend((0..size).map(|column| f64::from(u8::from(column == at))));
    }
    for (at, whole) in diagonal.iter().enumerate() {
        let line = matrix.get(at)?.clone();
        let pivot = *line.get(at)?;
        if pivot.is_nan() || pivot <= LEAST_SHARE * whole {
            return None;
        }
        let line: Vec<f64> = line.iter().map(|cell| cell / pivot).collect();
        for (row, other) in matrix.iter_mut().enumerate() {
            if row == at {
                other.clone_from(&line);
                continue;
            }
            let by = *other.get(at)?;
            for (cell, of) in other.iter_mut().zip(&line) {
                *cell -= by * of;
            }
        }
    }
    Some(
        matrix
            .into_iter()
            .map(|line| line.into_iter().skip(size).collect())
            .collect(),
    )
}
