//! A beta prior fitted by moments to shares.

use super::special::count;

/// The pseudo-count if the shares scatter more than a beta distribution can. Such a prior hardly
/// changes a share.
const LEAST_PSEUDO_COUNT: f64 = 1e-6;

/// A beta prior: `alpha` pseudo-hits, `beta` pseudo-misses.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BetaPrior {
    /// Pseudo-hits.
    pub alpha: f64,
    /// Pseudo-misses.
    pub beta: f64,
}

/// Fits a beta prior to raw shares by their mean and sample variance (Gelman
/// et al., Bayesian Data Analysis, 3rd ed., section 5.1). `None` with fewer
/// than two shares, if all are equal, or if the mean is 0 or 1.
#[must_use]
pub fn beta_by_moments(shares: &[f64]) -> Option<BetaPrior> {
    if shares.len() < 2 {
        return None;
    }
    let n = count(shares.len());
    let mean = shares.iter().sum::<f64>() / n;
    let variance = shares.iter().map(|s| (s - mean).powi(2)).sum::<f64>() / (n - 1.0);
    if variance <= 0.0 || mean <= 0.0 || mean >= 1.0 {
        return None;
    }
    let total = (mean * (1.0 - mean) / variance - 1.0).max(LEAST_PSEUDO_COUNT);
    Some(BetaPrior {
        alpha: mean * total,
        beta: (1.0 - mean) * total,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Rat tumour data (Tarone 1982), fit on the first 70 groups: Gelman et al. 5.1 print 1.4
    /// and 8.6.
    #[test]
    fn rat_tumours() {
        let vectors: serde_json::Value = serde_json::from_str(include_str!(
            "../../../../shared/vectors/insight/worked-examples.json"
        ))
        .unwrap();
        let example = vectors["examples"]
            .as_array()
            .unwrap()
            .iter()
            .find(|e| e["id"] == "beta-binomial-rats")
            .unwrap();
        let shares: Vec<f64> = example["inputs"]["y_over_n"]
            .as_array()
            .unwrap()
            .iter()
            .take(70)
            .map(|text| {
                let (y, n) = text.as_str().unwrap().split_once('/').unwrap();
                y.parse::<f64>().unwrap() / n.parse::<f64>().unwrap()
            })
            .collect();
        let prior = beta_by_moments(&shares).unwrap();
        assert!((prior.alpha - 1.356_149_391).abs() < 1e-9);
        assert!((prior.beta - 8.615_057_891_3).abs() < 1e-9);
    }

    /// Our own numbers, by exact rational arithmetic: α = 31001/27750, β = 7483/9250.
    #[test]
    fn a_class_of_five_concepts() {
        let hits = [9, 6, 3, 1, 14];
        let n = [10, 8, 10, 4, 20];
        let shares: Vec<f64> = hits
            .iter()
            .zip(n)
            .map(|(&h, n)| count(h) / count(n))
            .collect();
        let prior = beta_by_moments(&shares).unwrap();
        assert!((prior.alpha - 31001.0 / 27750.0).abs() < 1e-12);
        assert!((prior.beta - 7483.0 / 9250.0).abs() < 1e-12);
        assert_eq!(beta_by_moments(&[0.5]), None);
        assert_eq!(beta_by_moments(&[0.5, 0.5]), None);
    }
}
