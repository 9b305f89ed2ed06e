//! Whole classes: the methods class-estimate, detection and trends.

use super::instances::parse;
use serde::Deserialize;
use serde_json::{Value, json};
use surefoot_catalogue::rating::Confidence;
use surefoot_insight::class_estimate::{
    ClassEstimate, ConceptEstimate, StudentEstimate, class_estimate,
};
use surefoot_insight::trend::{FALSE_DISCOVERY_RATE, Verdict};
use surefoot_insight::{Evidence, PracticeCount, trend};

/// One string for each student and concept, one character for each pass.
pub type Rows = Vec<Vec<String>>;

/// `[student, concept, rotation, rating before, right, wrong]`. The rating before may be
/// missing (null); the estimate takes ratings from check-ins alone.
#[derive(Deserialize)]
struct Practice(
    usize,
    usize,
    usize,
    #[expect(dead_code, reason = "read and checked, and not used")] Option<Confidence>,
    u32,
    u32,
);

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

/// A student needs a concept below this probability of success.
const PASS_PROBABILITY: f64 = 0.6;

/// The full numbers of the class estimate.
pub fn estimate(case: &Value) -> Result<Value, String> {
    let case: ClassCase = parse(case)?;
    let evidence = case.evidence()?;
    let last = case.upto.unwrap_or(evidence.passes().saturating_sub(1));
    let estimate = class_estimate(&evidence, last);
    let concepts =
        |of: fn(&ConceptEstimate) -> f64| estimate.concepts.iter().map(of).collect::<Vec<_>>();
    let students = |of: fn(&StudentEstimate) -> f64| matrix(&estimate, evidence.students(), of);
    Ok(json!({
        "q": concepts(|c| c.share),
        "sd": concepts(|c| c.sd),
        "lo": concepts(|c| c.low),
        "hi": concepts(|c| c.high),
        "raters": estimate.concepts.iter().map(|c| c.reporters).collect::<Vec<_>>(),
        "key": concepts(|c| c.certain_need),
        "rank": estimate.ranking,
        "sure_and_wrong": estimate.concepts.iter().map(|c| c.sure_and_wrong).collect::<Vec<_>>(),
        "level_known": estimate.level_known,
        "problem_variance": estimate.problem_variance,
        "phat": students(StudentEstimate::mean),
        "M": students(|p| p.logit),
        "h": students(|p| p.sd),
        "need": students(|p| p.need(PASS_PROBABILITY)),
    }))
}

/// The order of weak concepts and the students' probabilities at each date asked for.
pub fn detection(case: &Value) -> Result<Value, String> {
    let case: ClassCase = parse(case)?;
    let evidence = case.evidence()?;
    let mut dates = case.dates.clone().unwrap_or_else(|| case.truth.clone());
    if dates.is_empty() {
        dates.push(Date::Number(evidence.passes().saturating_sub(1)));
    }
    let dates: Vec<Value> = dates
        .into_iter()
        .map(|date| {
            let last = date.last_rotation();
            let estimate = class_estimate(&evidence, last);
            json!({
                "upto": last,
                "key": estimate.concepts.iter().map(|c| c.certain_need).collect::<Vec<_>>(),
                "phat": matrix(&estimate, evidence.students(), StudentEstimate::mean),
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
    number: fn(&StudentEstimate) -> f64,
) -> Vec<Vec<f64>> {
    (0..students)
        .map(|student| {
            (0..estimate.concepts.len())
                .filter_map(|concept| estimate.student(student, concept))
                .map(|found| number(&found))
                .collect()
        })
        .collect()
}

/// The reports of a case in some passes alone.
pub fn evidence_of(
    case: &Value,
    passes: std::ops::RangeInclusive<usize>,
) -> Result<Evidence, String> {
    let mut case: ClassCase = parse(case)?;
    case.rotations
        .get_or_insert(longest_text(&case.ratings).max(longest_text(&case.results)));
    case.students.get_or_insert(case.ratings.len());
    case.concepts.get_or_insert(longest(&case.ratings));
    for row in case.ratings.iter_mut().chain(&mut case.results).flatten() {
        let kept = row.chars().enumerate();
        *row = kept
            .map(|(pass, mark)| if passes.contains(&pass) { mark } else { '.' })
            .collect();
    }
    case.practice
        .retain(|practice| passes.contains(&practice.2));
    case.evidence()
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
        for &Practice(student, concept, pass, _, right, wrong) in &self.practice {
            evidence
                .practise(PracticeCount {
                    student,
                    concept,
                    pass,
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
