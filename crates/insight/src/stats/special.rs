//! Small functions of one number, and means.

use statrs::distribution::{ContinuousCDF, Normal, StudentsT};

/// σ(x) = 1 / (1 + e^−x).
#[must_use]
pub fn logistic(x: f64) -> f64 {
    1.0 / (1.0 + (-x).exp())
}

/// ln(p / (1 − p)); infinite at 0 and 1.
#[must_use]
pub fn logit(p: f64) -> f64 {
    (p / (1.0 - p)).ln()
}

/// The standard normal distribution function.
#[must_use]
pub fn normal_cdf(z: f64) -> f64 {
    Normal::standard().cdf(z)
}

/// The standard normal quantile of `p` in 0 to 1.
#[must_use]
pub fn normal_quantile(p: f64) -> f64 {
    Normal::standard().inverse_cdf(p)
}

/// The quantile of `p` in 0 to 1 of Student's distribution. Without a degree of freedom, that of the
/// normal one.
#[must_use]
pub fn student_quantile(p: f64, freedom: usize) -> f64 {
    StudentsT::new(0.0, 1.0, count(freedom))
        .map_or_else(|_| normal_quantile(p), |t| t.inverse_cdf(p))
}

/// The two-sided probability of a standard normal value at least as far from
/// 0 as `z`. Computed from the tail, so small probabilities keep their digits.
#[must_use]
pub fn normal_two_sided(z: f64) -> f64 {
    statrs::function::erf::erfc(z.abs() / std::f64::consts::SQRT_2)
}

/// The mean; `None` for an empty list.
#[must_use]
pub fn mean(values: &[f64]) -> Option<f64> {
    if values.is_empty() {
        return None;
    }
    Some(values.iter().sum::<f64>() / count(values.len()))
}

/// The median: of an even number, the mean of the middle two. `None` for an empty list.
#[must_use]
pub fn median(values: &[f64]) -> Option<f64> {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let half = sorted.len() / 2;
    let upper = *sorted.get(half)?;
    if sorted.len() % 2 == 1 {
        return Some(upper);
    }
    let lower = *sorted.get(half.checked_sub(1)?)?;
    Some((lower + upper) / 2.0)
}

/// A count as a real number, exact below 2^52.
#[expect(
    clippy::cast_precision_loss,
    reason = "counts of pupils, concepts and answers stay far below 2^52"
)]
pub(crate) fn count(n: usize) -> f64 {
    n as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn median_of_few() {
        assert_eq!(median(&[]), None);
        assert_eq!(median(&[3.0]), Some(3.0));
        assert_eq!(median(&[4.0, 1.0, 3.0, 2.0]), Some(2.5));
        assert_eq!(mean(&[1.0, 2.0]), Some(1.5));
    }

    /// Φ(1.959963984540054) = 0.975 (the 95% point of any table).
    #[test]
    fn normal_tail_and_quantile_agree() {
        assert!((normal_quantile(0.975) - 1.959_963_984_540_054).abs() < 1e-9);
        assert!((normal_two_sided(1.959_963_984_540_054) - 0.05).abs() < 1e-10);
        assert!((normal_cdf(-1.0) + normal_cdf(1.0) - 1.0).abs() < 1e-12);
        assert!((logit(logistic(0.7)) - 0.7).abs() < 1e-12);
        // The same table for 10 degrees of freedom.
        assert!((student_quantile(0.975, 10) - 2.228_138_852).abs() < 1e-6);
        assert!((student_quantile(0.9, 10) - 1.372_183_641).abs() < 1e-6);
        assert!((student_quantile(0.975, 0) - normal_quantile(0.975)).abs() < 1e-12);
    }
}
