//! Many tests at once.

use super::special::count;

/// Which hypotheses the Benjamini-Hochberg step-up procedure rejects at false
/// discovery rate `rate`, in the order of `p_values` (Benjamini & Hochberg
/// 1995, from memory).
#[must_use]
pub fn benjamini_hochberg(p_values: &[f64], rate: f64) -> Vec<bool> {
    let mut sorted = p_values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let tests = count(sorted.len());
    let bar = sorted
        .iter()
        .enumerate()
        .rev()
        .find(|(place, p)| **p <= rate * count(place + 1) / tests)
        .map(|(_, p)| *p);
    p_values
        .iter()
        .map(|p| bar.is_some_and(|bar| *p <= bar))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The fifteen p-values of Benjamini & Hochberg 1995, section 3: at 5%
    /// the procedure rejects the four smallest (from memory).
    #[test]
    fn the_example_of_1995() {
        let p = [
            0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262,
            0.5719, 0.6528, 0.7590, 1.0000,
        ];
        let rejected = benjamini_hochberg(&p, 0.05);
        assert_eq!(rejected.iter().filter(|r| **r).count(), 4);
        assert!(rejected[..4].iter().all(|r| *r));
        assert!(benjamini_hochberg(&[], 0.1).is_empty());
    }
}
