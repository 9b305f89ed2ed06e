//! The Wilson score interval of a share.

use super::special::count;

/// The score interval of `hits` of `n` at the normal quantile `z` (1.96 for 95%). `None` if `n` is
/// 0. Wilson 1927 (from memory); compared by Newcombe 1998, Statistics in Medicine 17:857.
#[must_use]
pub fn wilson_interval(hits: usize, n: usize, z: f64) -> Option<(f64, f64)> {
    if n == 0 || hits > n {
        return None;
    }
    let size = count(n);
    let share = count(hits) / size;
    let square = z * z / size;
    let centre = (share + square / 2.0) / (1.0 + square);
    let half = z * (share * (1.0 - share) / size + square / (4.0 * size)).sqrt() / (1.0 + square);
    let low = if hits == 0 {
        0.0
    } else {
        (centre - half).max(0.0)
    };
    let high = if hits == n {
        1.0
    } else {
        (centre + half).min(1.0)
    };
    Some((low, high))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const Z95: f64 = 1.959_963_984_540_054;

    /// First four: Newcombe 1998, Table I (printed to four decimals); the
    /// rest computed with statsmodels `proportion_confint(method="wilson")`.
    #[test]
    fn published_intervals() {
        for (hits, n, low, high) in [
            (81, 263, 0.255_288_519_9, 0.366_209_577_0),
            (15, 148, 0.062_386_399_5, 0.160_487_241_7),
            (0, 20, 0.0, 0.161_125_158_1),
            (1, 29, 0.006_113_214_3, 0.171_755_218_8),
            (0, 10, 0.0, 0.277_532_799_9),
            (10, 10, 0.722_467_200_1, 1.0),
            (7, 10, 0.396_778_147_5, 0.892_208_732_6),
            (3, 4, 0.300_641_842_6, 0.954_412_739_2),
            (0, 1, 0.0, 0.793_450_685_6),
            (1, 1, 0.206_549_314_4, 1.0),
        ] {
            let (l, h) = wilson_interval(hits, n, Z95).unwrap();
            assert!(
                (l - low).abs() < 1e-9 && (h - high).abs() < 1e-9,
                "{hits}/{n}"
            );
        }
        assert_eq!(wilson_interval(0, 0, Z95), None);
        assert_eq!(wilson_interval(3, 2, Z95), None);
    }

    proptest! {
        #[test]
        fn the_interval_holds_the_share(n in 1usize..400, part in 0.0f64..=1.0) {
            #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "test")]
            let hits = (part * count(n)).floor() as usize;
            let (low, high) = wilson_interval(hits, n, Z95).unwrap();
            let share = count(hits) / count(n);
            prop_assert!(0.0 <= low && low <= share && share <= high && high <= 1.0);
        }
    }
}
