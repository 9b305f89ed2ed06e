//! The Brier score and its three parts.

use super::special::count;

/// The mean squared distance of forecasts from 0/1 outcomes; `None` for an empty list.
#[must_use]
pub fn brier_score(forecasts: &[f64], outcomes: &[bool]) -> Option<f64> {
    let n = forecasts.len().min(outcomes.len());
    if n == 0 {
        return None;
    }
    let sum: f64 = forecasts
        .iter()
        .zip(outcomes)
        .map(|(f, o)| (f - f64::from(u8::from(*o))).powi(2))
        .sum();
    Some(sum / count(n))
}

/// Answers with the same forecast.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LevelCount {
    /// The forecast share right, 0 to 1.
    pub forecast: f64,
    /// Answers.
    pub n: usize,
    /// Answers that were right.
    pub right: usize,
}

/// The parts of Murphy 1973, BRIER = REL − RES + UNC (from memory), and the estimates of Ferro &
/// Fricker 2012, which are corrected for small counts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BrierParts {
    /// Mean squared distance of forecast from outcome.
    pub brier: f64,
    /// Reliability: how far each forecast is from its share right (0 is best).
    pub reliability: f64,
    /// Resolution: how much the shares right differ between forecasts.
    pub resolution: f64,
    /// Uncertainty: the spread of the outcomes themselves.
    pub uncertainty: f64,
    /// Reliability, corrected for small counts.
    pub reliability_corrected: f64,
    /// Resolution, corrected for small counts.
    pub resolution_corrected: f64,
    /// Uncertainty, corrected for small counts.
    pub uncertainty_corrected: f64,
}

/// The parts of the Brier score over `levels`, each with another forecast. `None` for fewer than two
/// answers.
#[must_use]
pub fn brier_parts(levels: &[LevelCount]) -> Option<BrierParts> {
    let answers: usize = levels.iter().map(|l| l.n).sum();
    if answers < 2 {
        return None;
    }
    let total = count(answers);
    let base = levels.iter().map(|l| count(l.right)).sum::<f64>() / total;
    let (mut brier, mut reliability, mut resolution, mut within) = (0.0, 0.0, 0.0, 0.0);
    for level in levels.iter().filter(|l| l.n > 0) {
        let n = count(level.n);
        let share = count(level.right) / n;
        let f = level.forecast;
        brier += count(level.right) * (1.0 - f).powi(2) + (n - count(level.right)) * f * f;
        reliability += n * (f - share).powi(2);
        resolution += n * (share - base).powi(2);
        if level.n > 1 {
            within += n * share * (1.0 - share) / (n - 1.0);
        }
    }
    let within = within / total;
    let uncertainty = base * (1.0 - base);
    let between = uncertainty / (total - 1.0);
    Some(BrierParts {
        brier: brier / total,
        reliability: reliability / total,
        resolution: resolution / total,
        uncertainty,
        reliability_corrected: reliability / total - within,
        resolution_corrected: resolution / total - within + between,
        uncertainty_corrected: uncertainty + between,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Docstring of scikit-learn `brier_score_loss`: 0.0375.
    #[test]
    fn scikit_learn_example() {
        let score = brier_score(&[0.1, 0.9, 0.8, 0.3], &[false, true, true, false]).unwrap();
        assert!((score - 0.0375).abs() < 1e-15);
        assert_eq!(brier_score(&[], &[]), None);
    }

    /// Our own numbers, exact: REL 29/1600, RES 3/64, UNC 399/1600, score 353/1600.
    #[test]
    fn four_levels_split_exactly() {
        let levels: Vec<LevelCount> = [(0.1, 2), (0.4, 4), (0.7, 5), (0.95, 8)]
            .into_iter()
            .map(|(forecast, right)| LevelCount {
                forecast,
                n: 10,
                right,
            })
            .collect();
        let parts = brier_parts(&levels).unwrap();
        for (value, expected) in [
            (parts.reliability, 29.0 / 1600.0),
            (parts.resolution, 3.0 / 64.0),
            (parts.uncertainty, 399.0 / 1600.0),
            (parts.brier, 353.0 / 1600.0),
        ] {
            assert!((value - expected).abs() < 1e-12);
        }
        assert!(brier_parts(&levels[..0]).is_none());
    }

    proptest! {
        #[test]
        fn both_splits_add_up(
            cells in prop::collection::vec((0.0f64..1.0, 0usize..20, 0usize..20), 1..6),
        ) {
            let levels: Vec<LevelCount> = cells
                .into_iter()
                .map(|(forecast, right, wrong)| LevelCount { forecast, n: right + wrong, right })
                .collect();
            if let Some(p) = brier_parts(&levels) {
                prop_assert!((p.reliability - p.resolution + p.uncertainty - p.brier).abs() < 1e-12);
                let corrected =
                    p.reliability_corrected - p.resolution_corrected + p.uncertainty_corrected;
                prop_assert!((corrected - p.brier).abs() < 1e-12);
            }
        }
    }
}
