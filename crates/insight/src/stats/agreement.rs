//! Cohen's kappa: agreement of two raters beyond that expected by chance.

use super::special::count;

/// How much two different categories agree.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum KappaWeights {
    /// Not at all.
    Equal,
    /// 1 − |i − j| / (k − 1).
    Linear,
    /// 1 − ((i − j) / (k − 1))².
    Quadratic,
}

/// Kappa with its standard error.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Kappa {
    /// (observed − expected) / (1 − expected) agreement.
    pub kappa: f64,
    /// Large-sample standard error (Fleiss, Cohen & Everitt 1969, from memory).
    pub standard_error: f64,
    /// Pairs of ratings.
    pub n: usize,
}

/// Weighted kappa of a square table with one rater in rows, the other in columns. `None` for an empty
/// or ragged table, and if all ratings are the same category (0/0).
#[must_use]
pub fn weighted_kappa(table: &[Vec<usize>], weights: KappaWeights) -> Option<Kappa> {
    let k = table.len();
    let n: usize = table.iter().flatten().sum();
    if k < 2 || n == 0 || table.iter().any(|row| row.len() != k) {
        return None;
    }
    let total = count(n);
    let shares: Vec<Vec<f64>> = table
        .iter()
        .map(|row| row.iter().map(|n| count(*n) / total).collect())
        .collect();
    let row: Vec<f64> = shares.iter().map(|row| row.iter().sum()).collect();
    let column: Vec<f64> = (0..k)
        .map(|j| shares.iter().filter_map(|row| row.get(j)).sum())
        .collect();
    let weight = |i: usize, j: usize| {
        let distance = count(i.abs_diff(j)) / count(k - 1);
        match weights {
            KappaWeights::Equal => f64::from(u8::from(i == j)),
            KappaWeights::Linear => 1.0 - distance,
            KappaWeights::Quadratic => 1.0 - distance * distance,
        }
    };
    let mean_weights = |shares: &[f64]| -> Vec<f64> {
        let mean = |i| {
            shares
                .iter()
                .enumerate()
                .map(|(j, share)| share * weight(i, j))
                .sum()
        };
        (0..k).map(mean).collect()
    };
    let (row_mean, column_mean) = (mean_weights(&column), mean_weights(&row));
    // Observed share, expected share, weight, and the sum of the mean weights of the
    // row and the column.
    let mut cells = Vec::with_capacity(k * k);
    for (i, (shares, (row, row_mean))) in shares.iter().zip(row.iter().zip(&row_mean)).enumerate() {
        let columns = column.iter().zip(&column_mean);
        for (j, (share, (column, column_mean))) in shares.iter().zip(columns).enumerate() {
            cells.push((*share, row * column, weight(i, j), row_mean + column_mean));
        }
    }
    let observed: f64 = cells
        .iter()
        .map(|(share, _, weight, _)| share * weight)
        .sum();
    let expected: f64 = cells
        .iter()
        .map(|(_, chance, weight, _)| chance * weight)
        .sum();
    if 1.0 - expected < 1e-12 {
        return None;
    }
    let kappa = (observed - expected) / (1.0 - expected);
    let spread: f64 = cells
        .iter()
        .map(|(share, _, weight, mean_weight)| {
            let term = weight - mean_weight * (1.0 - kappa);
            share * term * term
        })
        .sum();
    let centre = kappa - expected * (1.0 - kappa);
    let variance = (spread - centre * centre) / (total * (1.0 - expected).powi(2));
    Some(Kappa {
        kappa,
        standard_error: variance.max(0.0).sqrt(),
        n,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(table: &[Vec<usize>], expected: [(f64, f64); 3]) {
        let kinds = [
            KappaWeights::Equal,
            KappaWeights::Linear,
            KappaWeights::Quadratic,
        ];
        for (weights, (kappa, se)) in kinds.into_iter().zip(expected) {
            let found = weighted_kappa(table, weights).unwrap();
            assert!((found.kappa - kappa).abs() < 1e-9, "{weights:?}");
            assert!((found.standard_error - se).abs() < 1e-9, "{weights:?}");
        }
    }

    /// Skin condition, SAS PROC FREQ "Getting Started" agreement study:
    /// .3449 plain, .5082 linear; errors by statsmodels.
    #[test]
    fn skin_condition() {
        check(
            &[
                vec![10, 4, 1, 0],
                vec![5, 10, 12, 2],
                vec![2, 4, 12, 5],
                vec![0, 2, 6, 13],
            ],
            [
                (0.344_875_346_3, 0.072_396_687_4),
                (0.508_160_071_5, 0.065_508_381_0),
                (0.660_722_891_6, 0.061_642_832_4),
            ],
        );
    }

    /// R package vcd, `SexualFun`: .1293 plain, .2374 linear.
    #[test]
    fn vcd_four_by_four() {
        check(
            &[
                vec![7, 7, 2, 3],
                vec![2, 8, 3, 7],
                vec![1, 5, 4, 9],
                vec![2, 8, 9, 14],
            ],
            [
                (0.129_330_254_0, 0.068_598_532_5),
                (0.237_380_627_6, 0.078_316_334_8),
                (0.332_045_586_2, 0.097_297_522_0),
            ],
        );
    }

    #[test]
    fn one_category_throughout_has_no_kappa() {
        assert_eq!(
            weighted_kappa(&[vec![5, 0], vec![0, 0]], KappaWeights::Linear),
            None
        );
        assert_eq!(weighted_kappa(&[vec![1]], KappaWeights::Equal), None);
        let all = weighted_kappa(&[vec![5, 0], vec![0, 4]], KappaWeights::Equal).unwrap();
        assert!((all.kappa - 1.0).abs() < 1e-12);
    }
}
