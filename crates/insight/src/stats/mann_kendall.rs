//! The Mann-Kendall trend test of a series, and its median slope.

use super::special::{count, median, normal_two_sided};
use std::collections::BTreeMap;

/// The trend test of one series.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MannKendall {
    /// Rising pairs minus falling pairs.
    pub s: f64,
    /// Variance of `s` without trend, corrected for ties.
    pub variance: f64,
    /// Normal score with continuity correction; 0 if the variance is 0.
    pub z: f64,
    /// Two-sided normal probability.
    pub p: f64,
}

/// Tests a series (Mann 1945, with the tie correction of Kendall; both from memory). For at most ten
/// values without ties, the exact distribution is more accurate than `p`.
#[must_use]
pub fn mann_kendall(values: &[f64]) -> MannKendall {
    let mut s = 0.0;
    for (place, later) in values.iter().enumerate() {
        for earlier in values.iter().take(place) {
            s += sign(later - earlier);
        }
    }
    let variance = tie_corrected_variance(values);
    let z = continuity_z(s, variance);
    MannKendall {
        s,
        variance,
        z,
        p: normal_two_sided(z),
    }
}

/// 97.5% of a normal variable lie below it.
const NORMAL_975: f64 = 1.959_963_984_540_054;

/// The median slope of a series, with its 95% interval.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slope {
    /// The median of all pairwise slopes.
    pub median: f64,
    /// Low end of its 95% interval.
    pub low: f64,
    /// High end of its 95% interval.
    pub high: f64,
}

/// The median of all pairwise slopes, with the interval of Sen 1968 (from memory): the slopes at the
/// ranks that follow from the variance of S. Pairs at the same time are left out. `None` without a
/// pair.
#[must_use]
pub fn theil_sen(points: &[(f64, f64)]) -> Option<Slope> {
    let mut slopes = Vec::new();
    for (place, (later, high)) in points.iter().enumerate() {
        for (earlier, low) in points.iter().take(place) {
            if later != earlier {
                slopes.push((high - low) / (later - earlier));
            }
        }
    }
    slopes.sort_by(f64::total_cmp);
    let pairs = count(slopes.len());
    let values: Vec<f64> = points.iter().map(|(_, value)| *value).collect();
    let reach = NORMAL_975 * tie_corrected_variance(&values).max(0.0).sqrt();
    let rank = |at: f64| {
        slopes
            .iter()
            .copied()
            .zip(0_u32..)
            .find(|(_, place)| f64::from(*place) >= at)
    };
    let last = slopes.last().copied()?;
    let low = rank(((pairs - reach) / 2.0).round_ties_even() - 1.0);
    let high = rank(((pairs + reach) / 2.0).round_ties_even());
    Some(Slope {
        median: median(&slopes)?,
        low: low.map_or(last, |(slope, _)| slope),
        high: high.map_or(last, |(slope, _)| slope),
    })
}

/// [n(n−1)(2n+5) − Σ over ties u(u−1)(2u+5)] / 18.
pub(crate) fn tie_corrected_variance(values: &[f64]) -> f64 {
    let term = |n: usize| {
        let n = count(n);
        n * (n - 1.0) * (2.0 * n + 5.0)
    };
    let mut ties: BTreeMap<u64, usize> = BTreeMap::new();
    for value in values {
        // Adding 0 turns −0 into 0.
        *ties.entry((value + 0.0).to_bits()).or_default() += 1;
    }
    (term(values.len()) - ties.into_values().map(term).sum::<f64>()) / 18.0
}

/// sign(S)(|S| − 1)/√variance; 0 when S or the variance is 0.
pub(crate) fn continuity_z(s: f64, variance: f64) -> f64 {
    if variance > 0.0 {
        sign(s) * (s.abs() - 1.0) / variance.sqrt()
    } else {
        0.0
    }
}

/// −1, 0 or 1.
pub(crate) fn sign(x: f64) -> f64 {
    if x > 0.0 {
        1.0
    } else if x < 0.0 {
        -1.0
    } else {
        0.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(a: f64, b: f64) {
        assert!((a - b).abs() < 1e-9, "{a} {b}");
    }

    /// Hollander & Wolfe, Nonparametric Statistical Methods, examples 9.1-9.2.
    #[test]
    fn hollander_and_wolfe() {
        let y = [1.26, 1.27, 1.12, 1.16, 1.03];
        let test = mann_kendall(&y);
        near(test.s, -6.0);
        near(test.variance, 16.666_666_666_666_668);
        near(test.z, -1.224_744_871_391_589);
        assert!((test.p - 0.220_671_361_9).abs() < 1e-9);
        let points: Vec<(f64, f64)> = (1..).map(f64::from).zip(y).collect();
        let slope = theil_sen(&points).unwrap();
        near(slope.median, -0.056_25);
        // The interval of stats.theilslopes of scipy.
        near(slope.low, -0.15);
        near(slope.high, 0.04);
    }

    /// Helsel & Hirsch, Statistical Methods in Water Resources, chapter 10.
    #[test]
    fn helsel_and_hirsch() {
        let y = [1.0, 2.0, 3.0, 4.0, 5.0, 16.0, 7.0];
        let test = mann_kendall(&y);
        near(test.s, 19.0);
        near(test.variance, 44.333_333_333_333_336);
        assert!((test.p - 0.006_863_795).abs() < 1e-8);
        let points: Vec<(f64, f64)> = (1..).map(f64::from).zip(y).collect();
        let slope = theil_sen(&points).unwrap();
        near(slope.median, 1.0);
        // The interval of stats.theilslopes of scipy.
        near(slope.low, 1.0);
        near(slope.high, 3.5);
    }

    /// Ties: computed with pymannkendall 1.4.3.
    #[test]
    fn ties() {
        let test = mann_kendall(&[1.0, 1.0, 2.0, 2.0, 2.0, 3.0, 2.0, 3.0]);
        near(test.s, 18.0);
        near(test.variance, 54.666_666_666_666_664);
        assert!((test.z - 2.299_257_568_4).abs() < 1e-9);
        assert!((test.p - 0.021_490_317_7).abs() < 1e-9);
    }

    #[test]
    fn nothing_to_say_is_not_a_trend() {
        assert_eq!(mann_kendall(&[]).p, 1.0);
        assert_eq!(mann_kendall(&[2.0, 2.0]).z, 0.0);
        assert_eq!(theil_sen(&[(1.0, 1.0)]), None);
    }
}
