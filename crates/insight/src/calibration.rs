//! Calibration: how one student's ratings agree with the results.
//!
//! Each rating claims a share of right answers. The bias is the claimed share minus the observed
//! one. A measure with too few answers is left out. Formulas, thresholds and sources:
//! `docs/insight.md`, "Calibration".

use super::stats::{Association, BrierParts, LevelCount, brier_parts, count, goodman_kruskal};
use surefoot_catalogue::rating::Confidence;

/// Answers of a student on one concept, by the rating before them.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct ConceptAnswers {
    /// Right answers at each rating.
    pub right: [usize; 4],
    /// Wrong answers at each rating.
    pub wrong: [usize; 4],
}

impl ConceptAnswers {
    /// The answers at each rating, with the share that the rating claims.
    fn levels(&self, settings: &Settings) -> [LevelCount; 4] {
        Confidence::ALL.map(|rating| {
            let (right, wrong) = (*rating.pick(&self.right), *rating.pick(&self.wrong));
            LevelCount {
                forecast: *rating.pick(&settings.claims),
                n: right + wrong,
                right,
            }
        })
    }
}

/// The settings: how many answers a measure needs, and the bounds of the verdicts.
#[derive(Debug, Clone, PartialEq)]
pub struct Settings {
    /// The share of right answers that each rating claims. Our convention; the teacher sees it.
    pub claims: [f64; 4],
    /// A student is over- or underconfident if the whole interval is beyond this bias.
    pub margin: f64,
    /// A student is near if the whole interval is within this bias.
    pub near: f64,
    /// Quantile of the normal distribution for the interval.
    pub z: f64,
    /// Answers for the bias, at least.
    pub bias_answers: usize,
    /// Right answers for gamma, at least.
    pub gamma_right: usize,
    /// Wrong answers for gamma, at least.
    pub gamma_wrong: usize,
    /// Standard error of gamma at most.
    pub gamma_error: f64,
    /// Answers for the Brier parts, at least.
    pub brier_answers: usize,
    /// Answers at each of two ratings for the Brier parts, at least.
    pub brier_at_level: usize,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            claims: [0.10, 0.40, 0.80, 0.95],
            margin: 0.10,
            near: 0.25,
            z: 1.96,
            bias_answers: 20,
            gamma_right: 10,
            gamma_wrong: 10,
            gamma_error: 0.25,
            brier_answers: 60,
            brier_at_level: 5,
        }
    }
}

/// The verdict on a student's ratings.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// The ratings claim clearly more than is observed.
    Over,
    /// The ratings claim clearly less than is observed.
    Under,
    /// The ratings claim about what is observed.
    Near,
    /// The interval is too wide for a verdict.
    Unclear,
    /// Fewer answers than needed.
    TooLittle,
}

/// Claimed minus observed share of right answers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bias {
    /// The difference; above 0 is overconfident.
    pub bias: f64,
    /// Its standard error. With concepts as clusters, if that is larger.
    pub standard_error: f64,
    /// Low end of the 95% interval.
    pub low: f64,
    /// High end of the 95% interval.
    pub high: f64,
}

/// A student's calibration. A measure with too few answers is `None`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Calibration {
    /// Answers with a rating before them.
    pub answers: usize,
    /// The verdict on the bias.
    pub verdict: Verdict,
    /// The bias, from 20 answers on.
    pub bias: Option<Bias>,
    /// Whether surer answers were more often right.
    pub gamma: Option<Association>,
    /// The Brier score and its parts.
    pub brier: Option<BrierParts>,
}

/// Measures one student over all concepts.
#[must_use]
pub fn calibration(concepts: &[ConceptAnswers], settings: &Settings) -> Calibration {
    let mut all = ConceptAnswers::default();
    for concept in concepts {
        for (sum, n) in all.right.iter_mut().zip(concept.right) {
            *sum += n;
        }
        for (sum, n) in all.wrong.iter_mut().zip(concept.wrong) {
            *sum += n;
        }
    }
    let n_right: usize = all.right.iter().sum();
    let n_wrong: usize = all.wrong.iter().sum();
    let answers = n_right + n_wrong;

    let bias =
        (answers > 0 && answers >= settings.bias_answers).then(|| bias(concepts, &all, settings));
    let gamma = (n_right >= settings.gamma_right && n_wrong >= settings.gamma_wrong)
        .then(|| goodman_kruskal(&[all.wrong.to_vec(), all.right.to_vec()]))
        .flatten()
        .filter(|g| g.standard_error <= settings.gamma_error);
    let levels = all.levels(settings);
    let filled = levels
        .iter()
        .filter(|level| level.n >= settings.brier_at_level)
        .count();
    let brier = (answers >= settings.brier_answers && filled >= 2)
        .then(|| brier_parts(&levels))
        .flatten();
    Calibration {
        answers,
        verdict: bias.map_or(Verdict::TooLittle, |b| verdict(&b, settings)),
        bias,
        gamma,
        brier,
    }
}

fn verdict(bias: &Bias, settings: &Settings) -> Verdict {
    if bias.low > settings.margin {
        Verdict::Over
    } else if bias.high < -settings.margin {
        Verdict::Under
    } else if bias.low >= -settings.near && bias.high <= settings.near {
        Verdict::Near
    } else {
        Verdict::Unclear
    }
}

fn bias(concepts: &[ConceptAnswers], all: &ConceptAnswers, settings: &Settings) -> Bias {
    let (mut n, mut claimed, mut found, mut binomial) = (0.0, 0.0, 0.0, 0.0);
    for level in all.levels(settings) {
        let here = count(level.n);
        n += here;
        claimed += here * level.forecast;
        found += count(level.right);
        let share = (count(level.right) + 1.0) / (here + 2.0);
        binomial += here * share * (1.0 - share);
    }
    let bias = (claimed - found) / n;

    // Answers on one concept are similar, so each concept is a cluster (cluster-robust variance
    // of a mean, which is common practice).
    let (mut clusters, mut squares) = (0.0, 0.0);
    for concept in concepts {
        let (mut n_c, mut surplus) = (0.0, 0.0);
        for level in concept.levels(settings) {
            let here = count(level.n);
            n_c += here;
            surplus += here * level.forecast - count(level.right);
        }
        if n_c > 0.0 {
            clusters += 1.0;
            squares += (surplus - n_c * bias).powi(2);
        }
    }
    let clustered = if clusters > 1.0 {
        clusters / (clusters - 1.0) * squares / (n * n)
    } else {
        0.0
    };
    let standard_error = (binomial / (n * n)).max(clustered).sqrt();
    Bias {
        bias,
        standard_error,
        low: bias - settings.z * standard_error,
        high: bias + settings.z * standard_error,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn one(right: [usize; 4], wrong: [usize; 4]) -> Calibration {
        calibration(&[ConceptAnswers { right, wrong }], &Settings::default())
    }

    #[test]
    fn nothing_is_said_of_nothing() {
        let found = calibration(&[], &Settings::default());
        assert_eq!(found.answers, 0);
        assert_eq!(found.verdict, Verdict::TooLittle);
        assert!(found.bias.is_none() && found.gamma.is_none() && found.brier.is_none());
        assert_eq!(one([0, 0, 0, 19], [0; 4]).verdict, Verdict::TooLittle);
    }

    /// 40 of 40 right at "could teach it": bias .95 − 1 = −.05.
    #[test]
    fn all_right_is_near() {
        let found = one([0, 0, 0, 40], [0; 4]);
        assert_eq!(found.verdict, Verdict::Near);
        assert!((found.bias.unwrap().bias + 0.05).abs() < 1e-12);
        assert_eq!(one([0; 4], [0, 0, 0, 40]).verdict, Verdict::Over);
        assert_eq!(one([40, 0, 0, 0], [0; 4]).verdict, Verdict::Under);
    }

    proptest! {
        #[test]
        fn the_interval_holds_the_bias_and_concept_order_is_no_matter(
            cells in prop::collection::vec((prop::array::uniform4(0usize..6), prop::array::uniform4(0usize..6)), 0..12),
        ) {
            let mut concepts: Vec<ConceptAnswers> =
                cells.into_iter().map(|(right, wrong)| ConceptAnswers { right, wrong }).collect();
            let found = calibration(&concepts, &Settings::default());
            concepts.reverse();
            let other = calibration(&concepts, &Settings::default());
            prop_assert_eq!(found.verdict, other.verdict);
            prop_assert_eq!(found.bias.is_some(), found.answers >= 20);
            if let (Some(a), Some(b)) = (found.bias, other.bias) {
                prop_assert!(a.low <= a.bias && a.bias <= a.high);
                prop_assert!((a.bias - b.bias).abs() < 1e-12 && (a.low - b.low).abs() < 1e-9);
            }
            if let Some(gamma) = found.gamma {
                prop_assert!(gamma.gamma.abs() <= 1.0 && gamma.standard_error <= 0.25);
            }
        }
    }
}
