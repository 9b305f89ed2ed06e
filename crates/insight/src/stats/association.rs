//! Association of two ordered classifications.

use super::special::count;

/// Goodman and Kruskal's gamma with its standard error.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Association {
    /// Pairs in the same order by both classifications.
    pub concordant: f64,
    /// Pairs in opposite orders.
    pub discordant: f64,
    /// (C − D) / (C + D).
    pub gamma: f64,
    /// Asymptotic standard error (Goodman & Kruskal 1963, from memory).
    pub standard_error: f64,
}

/// Gamma of a table with ordered rows and columns. `None`, not 0, if no pair differs in both.
#[must_use]
pub fn goodman_kruskal(table: &[Vec<usize>]) -> Option<Association> {
    let (p, q, cells) = sums(table);
    if p + q <= 0.0 {
        return None;
    }
    let spread: f64 = cells
        .iter()
        .map(|&(n, alike, against)| n * (q * alike - p * against).powi(2))
        .sum();
    Some(Association {
        concordant: p / 2.0,
        discordant: q / 2.0,
        gamma: (p - q) / (p + q),
        standard_error: 4.0 / (p + q).powi(2) * spread.sqrt(),
    })
}

/// P = Σ n·C, Q = Σ n·D (each pair twice), and per cell (n, C, D).
fn sums(table: &[Vec<usize>]) -> (f64, f64, Vec<(f64, f64, f64)>) {
    let (mut p, mut q) = (0.0, 0.0);
    let mut cells = Vec::new();
    for (i, row) in table.iter().enumerate() {
        for (j, &n) in row.iter().enumerate() {
            let (mut alike, mut against) = (0usize, 0usize);
            for (k, other) in table.iter().enumerate() {
                for (l, &m) in other.iter().enumerate() {
                    if (k > i && l > j) || (k < i && l < j) {
                        alike += m;
                    } else if (k > i && l < j) || (k < i && l > j) {
                        against += m;
                    }
                }
            }
            let cell = (count(n), count(alike), count(against));
            p += cell.0 * cell.1;
            q += cell.0 * cell.2;
            cells.push(cell);
        }
    }
    (p, q, cells)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(table: &[Vec<usize>], c: f64, d: f64, gamma: f64) {
        let found = goodman_kruskal(table).unwrap();
        assert_eq!((found.concordant, found.discordant), (c, d));
        assert!((found.gamma - gamma).abs() < 1e-9);
    }

    /// Job satisfaction by income (Agresti, Introduction to Categorical Data
    /// Analysis; also R package vcdExtra, `JobSat`): C 1331, D 849, .221.
    #[test]
    fn job_satisfaction() {
        check(
            &[
                vec![1, 3, 10, 6],
                vec![2, 3, 10, 7],
                vec![1, 6, 14, 12],
                vec![0, 1, 9, 11],
            ],
            1331.0,
            849.0,
            0.221_100_917_4,
        );
    }

    /// The table of the scipy `somersd` docstring, gamma by pair counting.
    #[test]
    fn hotel_ratings() {
        check(
            &[
                vec![27, 25, 14, 7, 0],
                vec![7, 14, 18, 35, 12],
                vec![1, 3, 2, 7, 17],
            ],
            7982.0,
            1317.0,
            0.716_743_735_9,
        );
    }

    /// In two by two, gamma is Yule's Q.
    #[test]
    fn two_by_two_is_yules_q() {
        check(&[vec![20, 5], vec![10, 15]], 300.0, 50.0, 250.0 / 350.0);
        assert_eq!(goodman_kruskal(&[vec![3, 0], vec![4, 0]]), None);
        assert_eq!(goodman_kruskal(&[]), None);
    }

    /// Our own numbers: ratings 1122333444, right 0001011110.
    #[test]
    fn ten_answers() {
        check(&[vec![2, 1, 1, 1], vec![0, 1, 2, 2]], 16.0, 4.0, 0.6);
    }
}
