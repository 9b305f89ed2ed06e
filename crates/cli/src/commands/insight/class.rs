//! Whole classes: the methods weakspots, detection and trends.

use super::instances::{parse, settings};
use serde::Deserialize;
use serde_json::{Value, json};
use surefoot_catalogue::rating::Confidence;
use surefoot_insight::trend::{FALSE_DISCOVERY_RATE, Verdict};
use surefoot_insight::weak_spot::{ClassEstimate, Settings, class_estimate};
use surefoot_insight::{Evidence, PracticeCount, trend};

/// One string for each student and concept, one character for each pass.
pub type Rows = Vec<Vec<String>>;

/// `[student, concept, rotation, rating before, right, wrong]`.
#[derive(Deserialize)]
struct Practice(usize, usize, usize, Option<Confidence>, u32, u32);

#[derive(Deserialize)]
struct ClassCase {
    students: Option<usize>,
    concepts: Option<usize>,
    rotations: Option<usize>,
    upto: Option<usize>,
    ratings: Rows,
    #[serde(default)]
    results: Rows,
    #[serde(default)]
    practice: Vec<Practice>,
    dates: Option<Vec<Date>>,
    #[serde(default)]
    truth: Vec<Date>,
}

#[derive(Deserialize, Clone, Copy)]
#[serde(untagged)]
enum Date {
    Number(usize),
    Upto { upto: usize },
}

impl Date {
    fn last_rotation(self) -> usize {
        match self {
            Self::Number(upto) | Self::Upto { upto } => upto,
        }
    }
}

/// The settings of the file, under the short names used there.
#[derive(Deserialize, Default)]
#[serde(default)]
#[expect(non_snake_case, reason = "key names of the file")]
struct Parameters {
    half: Option<f64>,
    wR: Option<f64>,
    wY: Option<f64>,
    rho: Option<f64>,
    anchors: Option<[f64; 4]>,
    K0: Option<f64>,
    K1: Option<f64>,
    n0: Option<f64>,
    lam_c: Option<f64>,
    lam_s: Option<f64>,
    kappa: Option<f64>,
    zi: Option<f64>,
    iters: Option<usize>,
    k0: Option<f64>,
    Kk: Option<f64>,
    tau: Option<f64>,
}

impl Parameters {
    fn settings(&self) -> Settings {
        let d = Settings::default();
        Settings {
            half_life_passes: self.half.unwrap_or(d.half_life_passes),
            rating_weight: self.wR.unwrap_or(d.rating_weight),
            result_weight: self.wY.unwrap_or(d.result_weight),
            practice_likeness: self.rho.unwrap_or(d.practice_likeness),
            level_anchors: self.anchors.unwrap_or(d.level_anchors),
            anchor_weight: self.K0.unwrap_or(d.anchor_weight),
            shift_shrinkage: self.K1.unwrap_or(d.shift_shrinkage),
            half_vote_weight: self.n0.unwrap_or(d.half_vote_weight),
            concept_shrinkage: self.lam_c.unwrap_or(d.concept_shrinkage),
            student_shrinkage: self.lam_s.unwrap_or(d.student_shrinkage),
            class_weight: self.kappa.unwrap_or(d.class_weight),
            interval_z: self.zi.unwrap_or(d.interval_z),
            sweeps: self.iters.unwrap_or(d.sweeps),
            stretch_prior: self.k0.unwrap_or(d.stretch_prior),
            stretch_prior_weight: self.Kk.unwrap_or(d.stretch_prior_weight),
            floor_sd: self.tau.unwrap_or(d.floor_sd),
            ..d
        }
    }
}

/// All numbers of the weak-spot estimate.
pub fn weakspots(case: &Value, file: &Value) -> Result<Value, String> {
    let case: ClassCase = parse(case)?;
    let settings = settings::<Parameters>(file, "parameters")?.settings();
    let evidence = case.evidence()?;
    let last = case.upto.unwrap_or(evidence.passes().saturating_sub(1));
    let estimate = class_estimate(&evidence, last, &settings);
    let c = &estimate.concepts;
    let by_student = |f: fn(&surefoot_insight::weak_spot::ProbabilityEstimate) -> f64| {
        matrix(&estimate, evidence.students(), f)
    };
    Ok(json!({
        "level_value": estimate.level_value,
        "student_shift": estimate.student_shift,
        "stretch": estimate.stretch,
        "q": c.iter().map(|c| c.share).collect::<Vec<_>>(),
        "sd": c.iter().map(|c| c.sd).collect::<Vec<_>>(),
        "lo": c.iter().map(|c| c.low).collect::<Vec<_>>(),
        "hi": c.iter().map(|c| c.high).collect::<Vec<_>>(),
        "raters": c.iter().map(|c| c.raters).collect::<Vec<_>>(),
        "key": c.iter().map(|c| c.sure_need).collect::<Vec<_>>(),
        "rank": estimate.ranking,
        "phat": by_student(|p| p.mean()),
        "A": by_student(|p| p.success),
        "B": by_student(|p| p.failure),
    }))
}

/// The weak-spot keys and the probabilities at each date asked for.
pub fn detection(case: &Value, file: &Value) -> Result<Value, String> {
    let case: ClassCase = parse(case)?;
    let settings = settings::<Parameters>(file, "parameters")?.settings();
    let evidence = case.evidence()?;
    let mut dates = case.dates.clone().unwrap_or_else(|| case.truth.clone());
    if dates.is_empty() {
        dates.push(Date::Number(evidence.passes().saturating_sub(1)));
    }
    let dates: Vec<Value> = dates
        .into_iter()
        .map(|date| {
            let last = date.last_rotation();
            let estimate = class_estimate(&evidence, last, &settings);
            json!({
                "upto": last,
                "key": estimate.concepts.iter().map(|c| c.sure_need).collect::<Vec<_>>(),
                "phat": matrix(&estimate, evidence.students(), |p| p.mean()),
            })
        })
        .collect();
    Ok(json!({ "dates": dates }))
}

/// The trend of every concept. In these cases the rows are by concept, then by student.
pub fn trends(case: &Value, file: &Value) -> Result<Value, String> {
    #[derive(Deserialize)]
    struct Case {
        rotations: Option<usize>,
        upto: Option<usize>,
        ratings: Rows,
    }
    let case: Case = parse(case)?;
    let rate = match file.get("fdr") {
        None | Some(Value::Null) => FALSE_DISCOVERY_RATE,
        Some(value) => parse(value).map_err(|words| format!("fdr: {words}"))?,
    };
    let students = longest(&case.ratings);
    let passes = case
        .rotations
        .unwrap_or_else(|| longest_text(&case.ratings));
    let mut evidence =
        Evidence::new(students, case.ratings.len(), passes).map_err(|e| e.to_string())?;
    for (concept, rows) in case.ratings.iter().enumerate() {
        for (student, row) in rows.iter().enumerate() {
            for (pass, rating) in marks(row, 3)? {
                let rating = Confidence::try_from(rating)?;
                evidence
                    .rate(student, concept, pass, rating)
                    .map_err(|e| e.to_string())?;
            }
        }
    }
    let last = case.upto.unwrap_or(passes.saturating_sub(1));
    let found = trend::trends(&evidence, last, rate);
    let concepts: Vec<Value> = found
        .concepts
        .iter()
        .map(|c| {
            json!({
                "S": c.s, "V": c.variance, "VP": c.shared_variance, "slope": c.slope.map(|slope| slope.median),
                "rotations": c.passes, "z": c.z, "p": c.p, "say": word(c.verdict),
            })
        })
        .collect();
    Ok(json!({ "phi": found.inflation, "concepts": concepts }))
}

fn word(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Rising => "rising",
        Verdict::Falling => "falling",
        Verdict::MaybeRising => "maybe rising",
        Verdict::MaybeFalling => "maybe falling",
        Verdict::NoClearChange => "no clear change",
        Verdict::TooSoon => "too soon",
    }
}

fn matrix(
    estimate: &ClassEstimate,
    students: usize,
    number: fn(&surefoot_insight::weak_spot::ProbabilityEstimate) -> f64,
) -> Vec<Vec<f64>> {
    (0..students)
        .map(|student| {
            (0..estimate.concepts.len())
                .filter_map(|concept| estimate.probability(student, concept))
                .map(|probability| number(&probability))
                .collect()
        })
        .collect()
}

impl ClassCase {
    fn evidence(&self) -> Result<Evidence, String> {
        let students = self.students.unwrap_or(self.ratings.len());
        let concepts = self.concepts.unwrap_or_else(|| longest(&self.ratings));
        let rotations = self
            .rotations
            .unwrap_or_else(|| longest_text(&self.ratings));
        let mut evidence =
            Evidence::new(students, concepts, rotations).map_err(|e| e.to_string())?;
        for (student, rows) in self.ratings.iter().enumerate() {
            for (concept, row) in rows.iter().enumerate() {
                for (pass, rating) in marks(row, 3)? {
                    let rating = Confidence::try_from(rating)?;
                    evidence
                        .rate(student, concept, pass, rating)
                        .map_err(|e| e.to_string())?;
                }
            }
        }
        for (student, rows) in self.results.iter().enumerate() {
            for (concept, row) in rows.iter().enumerate() {
                for (pass, right) in marks(row, 1)? {
                    evidence
                        .mark(student, concept, pass, right == 1)
                        .map_err(|e| e.to_string())?;
                }
            }
        }
        for &Practice(student, concept, pass, rating_before, right, wrong) in &self.practice {
            evidence
                .practise(PracticeCount {
                    student,
                    concept,
                    pass,
                    rating_before,
                    right,
                    wrong,
                })
                .map_err(|e| format!("practice: {e}"))?;
        }
        Ok(evidence)
    }
}

/// The digits 0 to `most` of a row with their indices; `.` is a missing one.
fn marks(row: &str, most: u8) -> Result<Vec<(usize, u8)>, String> {
    let mut marks = Vec::new();
    for (place, letter) in row.chars().enumerate() {
        if letter == '.' {
            continue;
        }
        match letter.to_digit(10).and_then(|d| u8::try_from(d).ok()) {
            Some(digit) if digit <= most => marks.push((place, digit)),
            _ => {
                return Err(format!(
                    "{letter:?} in \"{row}\" is neither \".\" nor 0 to {most}"
                ));
            }
        }
    }
    Ok(marks)
}

fn longest(rows: &Rows) -> usize {
    rows.iter().map(Vec::len).max().unwrap_or(0)
}

fn longest_text(rows: &Rows) -> usize {
    let lengths = rows.iter().flatten().map(|row| row.chars().count());
    lengths.max().unwrap_or(0)
}
