//! `surefoot insight`: the class insight of an instance file, case by case.
//!
//! Reads simulated classes in the format of `shared/vectors/insight` and
//! answers with the same core functions the screens use. Answers that are
//! in the file are not read.

mod calibration;
mod class;
mod detection_table;
mod groups;
mod plan;
mod sharesafe;
mod statistics;

use crate::out::put_line;
use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use std::path::{Path, PathBuf};

/// The largest instance file read.
const MOST_BYTES: u64 = 256 * 1024 * 1024;

/// Arguments of `surefoot insight`.
#[derive(clap::Args)]
pub struct Args {
    /// What to compute.
    #[arg(value_enum)]
    method: Method,
    /// Instance file (JSON).
    #[arg(long, value_name = "FILE")]
    instances: PathBuf,
    /// For groups: seconds a case may take.
    #[arg(long, value_name = "SECONDS", default_value_t = 3.0)]
    seconds: f64,
    /// For detection: print how well the weak concepts were found, beside simpler ways on the
    /// same classes; needs the truth in the file.
    #[arg(long)]
    table: bool,
    /// With --table: print JSON.
    #[arg(long, requires = "table")]
    json: bool,
}

#[derive(Clone, Copy, clap::ValueEnum)]
enum Method {
    /// Weak concepts of a class and each student's chances.
    Weakspots,
    /// Weak-spot order and chances at several dates of a year.
    Detection,
    /// Which concepts rise or fall.
    Trends,
    /// How far a student's ratings can be believed.
    Calibration,
    /// Tutoring groups.
    Groups,
    /// Today's talk.
    Plan,
    /// Tables without small cells.
    Sharesafe,
    /// Single statistics, for checks by outside programs.
    Statistics,
}

/// Runs the command.
pub fn run(args: &Args) -> crate::Outcome {
    let file = read(&args.instances)?;
    if args.table {
        return match args.method {
            Method::Detection => detection_table::print(&file, args.json)
                .map_err(|words| format!("{}: {words}", args.instances.display())),
            _ => Err("--table is there for detection alone".into()),
        };
    }
    let answers = answer(args.method, &file, args.seconds)
        .map_err(|words| format!("{}: {words}", args.instances.display()))?;
    let text = serde_json::to_string(&answers).map_err(|e| e.to_string())?;
    put_line!("{text}");
    Ok(())
}

fn read(path: &Path) -> Result<Value, String> {
    let at = |e: &dyn std::fmt::Display| format!("{}: {e}", path.display());
    let size = std::fs::metadata(path).map_err(|e| at(&e))?.len();
    if size > MOST_BYTES {
        return Err(at(&format!(
            "{size} bytes are too many (at most {MOST_BYTES})"
        )));
    }
    let bytes = std::fs::read(path).map_err(|e| at(&e))?;
    serde_json::from_slice(&bytes).map_err(|e| at(&format!("not JSON: {e}")))
}

fn answer(method: Method, file: &Value, seconds: f64) -> Result<Value, String> {
    match method {
        Method::Weakspots => each(file, "cases", |case| class::weakspots(case, file)),
        Method::Detection => each(file, "cases", |case| class::detection(case, file)),
        Method::Trends => each(file, "cases", |case| class::trends(case, file)),
        Method::Calibration => each(file, "cases", |case| calibration::answer(case, file)),
        Method::Groups => each(file, "cases", |case| groups::answer(case, file, seconds)),
        Method::Plan => each(file, "cases", |case| plan::answer(case, file)),
        Method::Sharesafe => sharesafe::answer(file),
        Method::Statistics => each(file, "cases", statistics::answer),
    }
}

/// Answers every case of a list; a case without an id is called by its place.
fn each(
    file: &Value,
    list: &str,
    answer: impl Fn(&Value) -> Result<Value, String>,
) -> Result<Value, String> {
    let cases = file
        .get(list)
        .and_then(Value::as_array)
        .ok_or_else(|| format!("no list \"{list}\""))?;
    let mut answers = Vec::new();
    for (place, case) in cases.iter().enumerate() {
        let id = case.get("id").cloned().unwrap_or_else(|| json!(place));
        let answer = answer(case).map_err(|words| format!("{list} {id}: {words}"))?;
        answers.push(json!({ "id": id, "answer": answer }));
    }
    Ok(json!({ list: answers }))
}

/// Reads a case, or the settings beside the cases.
fn parse<T: DeserializeOwned>(value: &Value) -> Result<T, String> {
    T::deserialize(value).map_err(|e| e.to_string())
}

/// Reads an optional object of settings; absent or null gives the defaults.
fn settings<T: DeserializeOwned + Default>(file: &Value, key: &str) -> Result<T, String> {
    match file.get(key) {
        None | Some(Value::Null) => Ok(T::default()),
        Some(value) => parse(value).map_err(|words| format!("{key}: {words}")),
    }
}

#[cfg(test)]
mod tests;
