//! Weighted isotonic regression on a line.

/// The non-decreasing sequence nearest to `values` by weighted least squares. Neighbours in the wrong
/// order are pooled to their weighted mean (Ayer et al. 1955, from memory). Weights must be positive;
/// extra entries of the longer slice are ignored.
#[must_use]
pub fn pool_adjacent_violators(values: &[f64], weights: &[f64]) -> Vec<f64> {
    // Each block: weighted mean, total weight, number of entries.
    let mut blocks: Vec<(f64, f64, usize)> = Vec::with_capacity(values.len());
    for (&value, &weight) in values.iter().zip(weights) {
        let mut block = (value, weight, 1);
        while let Some(&(mean, total, entries)) = blocks.last() {
            if mean <= block.0 {
                break;
            }
            blocks.pop();
            let sum = total + block.1;
            block = (
                (mean * total + block.0 * block.1) / sum,
                sum,
                entries + block.2,
            );
        }
        blocks.push(block);
    }
    blocks
        .into_iter()
        .flat_map(|(mean, _, entries)| std::iter::repeat_n(mean, entries))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn neighbours_out_of_order_share_their_mean() {
        assert_eq!(
            pool_adjacent_violators(&[1.0, 3.0, 2.0, 4.0], &[1.0, 1.0, 3.0, 1.0]),
            vec![1.0, 2.25, 2.25, 4.0]
        );
        assert_eq!(pool_adjacent_violators(&[], &[]), Vec::<f64>::new());
    }

    proptest! {
        #[test]
        fn the_result_never_falls_and_keeps_the_weighted_mean(
            pairs in prop::collection::vec((0.0f64..1.0, 0.1f64..5.0), 1..12),
        ) {
            let (values, weights): (Vec<f64>, Vec<f64>) = pairs.into_iter().unzip();
            let fit = pool_adjacent_violators(&values, &weights);
            prop_assert_eq!(fit.len(), values.len());
            prop_assert!(fit.windows(2).all(|w| w[0] <= w[1]));
            let mean = |v: &[f64]| v.iter().zip(&weights).map(|(a, w)| a * w).sum::<f64>();
            prop_assert!((mean(&fit) - mean(&values)).abs() < 1e-9);
        }
    }
}
