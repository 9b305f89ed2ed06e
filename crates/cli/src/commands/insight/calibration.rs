//! The method calibration: each case holds one student's right and wrong answers by concept
//! and rating.
#![expect(
    clippy::indexing_slicing,
    reason = "a name that a JSON object lacks is added by its index, and never out of bounds"
)]

use super::instances::{parse, settings};
use serde::Deserialize;
use serde_json::{Value, json};
use surefoot_insight::calibration::{ConceptAnswers, Settings, Verdict, calibration};

#[derive(Deserialize)]
struct Case {
    #[serde(default)]
    right: Vec<[usize; 4]>,
    #[serde(default)]
    wrong: Vec<[usize; 4]>,
}

#[derive(Deserialize, Default)]
#[serde(default)]
struct Needs {
    bias_n: Option<usize>,
    gamma_right: Option<usize>,
    gamma_wrong: Option<usize>,
    gamma_ase: Option<f64>,
    brier_n: Option<usize>,
    brier_k: Option<usize>,
}

#[derive(Deserialize)]
struct File {
    claims: Option<[f64; 4]>,
    margin: Option<f64>,
    z: Option<f64>,
}

/// A student's calibration, without the numbers that have too few answers.
pub fn answer(case: &Value, file: &Value) -> Result<Value, String> {
    let needs: Needs = settings(file, "need")?;
    let file: File = parse(file)?;
    let d = Settings::default();
    let settings = Settings {
        claims: file.claims.unwrap_or(d.claims),
        margin: file.margin.unwrap_or(d.margin),
        z: file.z.unwrap_or(d.z),
        bias_answers: needs.bias_n.unwrap_or(d.bias_answers),
        gamma_right: needs.gamma_right.unwrap_or(d.gamma_right),
        gamma_wrong: needs.gamma_wrong.unwrap_or(d.gamma_wrong),
        gamma_error: needs.gamma_ase.unwrap_or(d.gamma_error),
        brier_answers: needs.brier_n.unwrap_or(d.brier_answers),
        brier_at_level: needs.brier_k.unwrap_or(d.brier_at_level),
        ..d
    };
    let case: Case = parse(case)?;
    let concepts: Vec<ConceptAnswers> = (0..case.right.len().max(case.wrong.len()))
        .map(|c| ConceptAnswers {
            right: case.right.get(c).copied().unwrap_or_default(),
            wrong: case.wrong.get(c).copied().unwrap_or_default(),
        })
        .collect();
    let found = calibration(&concepts, &settings);
    let mut answer = json!({ "n": found.answers, "say": word(found.verdict) });
    if let Some(bias) = found.bias {
        answer["bias"] = json!(bias.bias);
        answer["lo"] = json!(bias.low);
        answer["hi"] = json!(bias.high);
    }
    if let Some(gamma) = found.gamma {
        answer["gamma"] = json!(gamma.gamma);
        answer["ase"] = json!(gamma.standard_error);
    }
    if let Some(brier) = found.brier {
        answer["brier"] = json!(brier.brier);
        answer["rel"] = json!(brier.reliability);
        answer["res"] = json!(brier.resolution);
        answer["unc"] = json!(brier.uncertainty);
        answer["rel_c"] = json!(brier.reliability_corrected);
        answer["res_c"] = json!(brier.resolution_corrected);
        answer["unc_c"] = json!(brier.uncertainty_corrected);
    }
    Ok(answer)
}

fn word(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Over => "over",
        Verdict::Under => "under",
        Verdict::Near => "near",
        Verdict::Unclear => "unclear",
        Verdict::TooLittle => "too little",
    }
}
