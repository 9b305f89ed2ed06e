//! The trend of a concept over the year.
//!
//! The test uses only the order of each student's own ratings. So students who always rate high, and
//! absences, do not change a trend. Formulas
//! and sources: `docs/insight.md`, "Trend".

use super::evidence::Evidence;
use super::grid::Grid;
use super::stats::{Slope, benjamini_hochberg, mean, median, normal_two_sided, theil_sen};
use super::stats::{continuity_z, sign, tie_corrected_variance};

/// False discovery rate over the concepts of a class.
pub const FALSE_DISCOVERY_RATE: f64 = 0.10;
/// P-value below which a trend is "maybe" although the rate does not admit it.
const MAYBE_BELOW: f64 = 0.05;
/// Raters that a pass needs to count.
const RATERS_FOR_A_PASS: usize = 3;
/// Passes that a trend needs.
const FEWEST_PASSES: usize = 6;

/// The verdict on a trend.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// Rising, after the correction for many concepts.
    Rising,
    /// Falling, after the correction for many concepts.
    Falling,
    /// Rising by its own test, but not after the correction.
    MaybeRising,
    /// Falling by its own test, but not after the correction.
    MaybeFalling,
    /// No clear change.
    NoClearChange,
    /// Fewer than six passes with three raters.
    TooSoon,
}

/// The trend of one concept.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ConceptTrend {
    /// Rises minus falls over all pairs of passes of each student.
    pub s: f64,
    /// Variance of `s` for independent passes.
    pub variance: f64,
    /// Variance of `s` if a pass can change all ratings together.
    pub shared_variance: f64,
    /// Median change of the rating per pass, with its interval; `None` below two passes.
    pub slope: Option<Slope>,
    /// Passes with at least three raters.
    pub passes: usize,
    /// Normal score.
    pub z: f64,
    /// Two-sided probability.
    pub p: f64,
    /// The verdict.
    pub verdict: Verdict,
}

/// The trends of a class.
#[derive(Debug, Clone, PartialEq)]
pub struct Trends {
    /// Factor by which S varies more than for independent passes; at least 1.
    pub inflation: f64,
    /// Every concept, in concept order.
    pub concepts: Vec<ConceptTrend>,
}

/// Tests every concept for a trend over passes 0 to `last_pass`.
#[must_use]
pub fn trends(evidence: &Evidence, last_pass: usize, rate: f64) -> Trends {
    let passes = evidence.passes().min(last_pass.saturating_add(1));
    let mut concepts: Vec<ConceptTrend> = (0..evidence.concepts())
        .map(|concept| {
            let series: Vec<Vec<(usize, f64)>> = (0..evidence.students())
                .map(|student| {
                    (0..passes)
                        .filter_map(|pass| {
                            let rating = evidence.rating(student, concept, pass)?;
                            Some((pass, f64::from(u8::from(rating))))
                        })
                        .collect()
                })
                .collect();
            measure(&series, passes)
        })
        .collect();

    let ratios: Vec<f64> = concepts
        .iter()
        .filter(|c| c.variance > 0.0)
        .map(|c| c.shared_variance / c.variance)
        .collect();
    let inflation = median(&ratios).unwrap_or(1.0).max(1.0);
    for concept in &mut concepts {
        concept.z = continuity_z(concept.s, inflation * concept.variance);
        concept.p = normal_two_sided(concept.z);
    }
    let mut tested: Vec<&mut ConceptTrend> = concepts
        .iter_mut()
        .filter(|concept| concept.passes >= FEWEST_PASSES)
        .collect();
    let p_values: Vec<f64> = tested.iter().map(|concept| concept.p).collect();
    for (concept, clear) in tested.iter_mut().zip(benjamini_hochberg(&p_values, rate)) {
        concept.verdict = verdict(concept, clear);
    }
    Trends {
        inflation,
        concepts,
    }
}

fn verdict(concept: &ConceptTrend, clear: bool) -> Verdict {
    let rising = concept.s > 0.0;
    match (clear, concept.p < MAYBE_BELOW) {
        _ if concept.s == 0.0 => Verdict::NoClearChange,
        (true, _) if rising => Verdict::Rising,
        (true, _) => Verdict::Falling,
        (false, true) if rising => Verdict::MaybeRising,
        (false, true) => Verdict::MaybeFalling,
        (false, false) => Verdict::NoClearChange,
    }
}

/// Measures one concept; `series` holds the (pass, rating) pairs of each student.
fn measure(series: &[Vec<(usize, f64)>], passes: usize) -> ConceptTrend {
    let mut s = 0.0;
    let mut variance = 0.0;
    let mut raters = vec![0usize; passes];
    // For every pair of passes, the sum over students of sign(later − earlier).
    let mut moves = Grid::filled(passes, passes, 0.0);
    for own in series {
        for (place, &(later, high)) in own.iter().enumerate() {
            if let Some(raters) = raters.get_mut(later) {
                *raters += 1;
            }
            for &(earlier, low) in own.iter().take(place) {
                let step = sign(high - low);
                s += step;
                moves[(earlier, later)] += step;
                moves[(later, earlier)] -= step;
            }
        }
        let values: Vec<f64> = own.iter().map(|(_, rating)| *rating).collect();
        variance += tie_corrected_variance(&values);
    }
    let mut squares = 0.0;
    let mut row_squares = 0.0;
    for row in moves.rows() {
        squares += row.iter().map(|d| d * d).sum::<f64>();
        row_squares += row.iter().sum::<f64>().powi(2);
    }
    // The square holds every pair twice.
    let squares = squares / 2.0;
    ConceptTrend {
        s,
        variance,
        shared_variance: squares + (row_squares - 2.0 * squares) / 3.0,
        slope: slope(series, passes),
        passes: raters.iter().filter(|n| **n >= RATERS_FOR_A_PASS).count(),
        z: 0.0,
        p: 1.0,
        verdict: Verdict::TooSoon,
    }
}

/// The median slope, per pass, of the mean deviation of ratings from each student's own mean. Passes
/// with fewer than three raters are left out.
fn slope(series: &[Vec<(usize, f64)>], passes: usize) -> Option<Slope> {
    let mut deviations = vec![Vec::new(); passes];
    for own in series.iter().filter(|own| own.len() >= 2) {
        let values: Vec<f64> = own.iter().map(|(_, rating)| *rating).collect();
        let middle = mean(&values)?;
        for (pass, rating) in own {
            deviations.get_mut(*pass)?.push(rating - middle);
        }
    }
    let points: Vec<(f64, f64)> = deviations
        .iter()
        .enumerate()
        .filter(|(_, list)| list.len() >= RATERS_FOR_A_PASS)
        .filter_map(|(pass, list)| Some((f64::from(u32::try_from(pass).ok()?), mean(list)?)))
        .collect();
    theil_sen(&points)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use surefoot_catalogue::rating::Confidence;

    fn class(rows: &[&str]) -> Evidence {
        let passes = rows.iter().map(|r| r.len()).max().unwrap_or(0);
        let mut evidence = Evidence::new(rows.len(), 1, passes).unwrap();
        for (student, row) in rows.iter().enumerate() {
            for (pass, letter) in row.bytes().enumerate() {
                if letter != b'.' {
                    let rating = Confidence::try_from(letter - b'0').unwrap();
                    evidence.rate(student, 0, pass, rating).unwrap();
                }
            }
        }
        evidence
    }

    #[test]
    fn five_passes_are_too_soon() {
        let found = trends(
            &class(&["01233", "01223", "00123"]),
            4,
            FALSE_DISCOVERY_RATE,
        );
        assert_eq!(found.concepts[0].verdict, Verdict::TooSoon);
        assert_eq!(trends(&class(&[]), 4, 0.1).concepts[0].slope, None);
    }

    #[test]
    fn a_class_that_learns_is_rising() {
        let found = trends(
            &class(&["00112233", "01122233", "00.12233", "0111223."]),
            7,
            FALSE_DISCOVERY_RATE,
        );
        assert_eq!(found.concepts[0].verdict, Verdict::Rising);
        assert!(found.concepts[0].slope.unwrap().median > 0.3);
    }

    /// The shared variance is that of S over all 4! = 24 orders of the passes.
    #[test]
    fn shared_variance_is_that_of_all_orders_of_the_passes() {
        let rows = ["0213", "1122", "3201"];
        let mut all = Vec::new();
        for a in 0..4 {
            for b in 0..4 {
                for c in 0..4 {
                    for d in 0..4 {
                        let order = [a, b, c, d];
                        if (0..4).all(|t| order.contains(&t)) {
                            let turned: Vec<String> = rows
                                .iter()
                                .map(|r| {
                                    order.iter().map(|t| char::from(r.as_bytes()[*t])).collect()
                                })
                                .collect();
                            let turned: Vec<&str> = turned.iter().map(String::as_str).collect();
                            all.push(trends(&class(&turned), 3, 0.1).concepts[0].s);
                        }
                    }
                }
            }
        }
        assert_eq!(all.len(), 24);
        let variance = all.iter().map(|s| s * s).sum::<f64>() / 24.0;
        let found = trends(&class(&rows), 3, 0.1).concepts[0].shared_variance;
        assert!((variance - found).abs() < 1e-9, "{variance} {found}");
    }

    proptest! {
        #[test]
        fn turning_time_round_turns_the_trend(
            rows in prop::collection::vec("[0-3.]{8}", 1..8),
        ) {
            let rows: Vec<&str> = rows.iter().map(String::as_str).collect();
            let back: Vec<String> = rows.iter().map(|r| r.chars().rev().collect()).collect();
            let back: Vec<&str> = back.iter().map(String::as_str).collect();
            let a = trends(&class(&rows), 7, 0.1).concepts[0];
            let b = trends(&class(&back), 7, 0.1).concepts[0];
            prop_assert_eq!(a.s, -b.s);
            prop_assert!((a.variance - b.variance).abs() < 1e-9);
            prop_assert!((a.shared_variance - b.shared_variance).abs() < 1e-9);
            prop_assert!((0.0..=1.0).contains(&a.p));
        }
    }
}
