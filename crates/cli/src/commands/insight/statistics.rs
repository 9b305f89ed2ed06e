//! The method statistics: single statistics, so that other programs can check them.

use super::instances::parse;
use serde::Deserialize;
use serde_json::{Value, json};
use surefoot_insight::stats;

#[derive(Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
enum Case {
    Wilson {
        hits: usize,
        n: usize,
        z: f64,
    },
    Kappa {
        table: Vec<Vec<usize>>,
        weights: String,
    },
    Gamma {
        table: Vec<Vec<usize>>,
    },
    Brier {
        forecasts: Vec<f64>,
        outcomes: Vec<bool>,
    },
    MannKendall {
        values: Vec<f64>,
    },
    TheilSen {
        points: Vec<(f64, f64)>,
    },
    BenjaminiHochberg {
        p: Vec<f64>,
        rate: f64,
    },
    BetaMoments {
        shares: Vec<f64>,
    },
    Normal {
        z: f64,
    },
}

/// The value of a statistic; null where it is undefined.
pub fn answer(case: &Value) -> Result<Value, String> {
    Ok(match parse(case)? {
        Case::Wilson { hits, n, z } => json!(stats::wilson_interval(hits, n, z)),
        Case::Kappa { table, weights } => {
            let weights = match weights.as_str() {
                "equal" => stats::KappaWeights::Equal,
                "linear" => stats::KappaWeights::Linear,
                "quadratic" => stats::KappaWeights::Quadratic,
                other => return Err(format!("no weights \"{other}\"")),
            };
            json!(stats::weighted_kappa(&table, weights).map(|k| [k.kappa, k.standard_error]))
        }
        Case::Gamma { table } => json!(stats::goodman_kruskal(&table).map(|g| [
            g.concordant,
            g.discordant,
            g.gamma,
            g.standard_error
        ])),
        Case::Brier {
            forecasts,
            outcomes,
        } => json!(stats::brier_score(&forecasts, &outcomes)),
        Case::MannKendall { values } => {
            let t = stats::mann_kendall(&values);
            json!([t.s, t.variance, t.z, t.p])
        }
        Case::TheilSen { points } => {
            json!(stats::theil_sen(&points).map(|slope| [slope.median, slope.low, slope.high]))
        }
        Case::BenjaminiHochberg { p, rate } => json!(stats::benjamini_hochberg(&p, rate)),
        Case::BetaMoments { shares } => {
            json!(stats::beta_by_moments(&shares).map(|b| [b.alpha, b.beta]))
        }
        Case::Normal { z } => json!([stats::normal_cdf(z), stats::normal_two_sided(z)]),
    })
}
