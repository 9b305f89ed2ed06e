//! `surefoot insight`: computes the cases of an instance file in the format of
//! `shared/vectors/insight`, with the functions that the screens use. It does not read the
//! answers in the file.

mod calibration;
mod class;
mod detection_table;
mod groups;
mod instances;
mod share_safe;
mod statistics;
mod talk_plan;
mod taught_again;

use crate::out::{CommandResult, put_line};
use instances::{each, read};
use serde_json::Value;
use std::path::PathBuf;

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
    /// For detection: print how well the weak concepts were found, compared with three simpler
    /// orders of the same concepts; needs the truth in the file.
    #[arg(long)]
    table: bool,
    /// With --table: print JSON.
    #[arg(long, requires = "table")]
    json: bool,
}

#[derive(Clone, Copy, clap::ValueEnum)]
enum Method {
    /// Weak concepts of a class and each student's probabilities.
    ClassEstimate,
    /// The same at several dates of a year.
    Detection,
    /// Which concepts rise or fall.
    Trends,
    /// Whether teaching a concept again helped.
    TaughtAgain,
    /// How well a student's ratings agree with the results.
    Calibration,
    /// Small groups.
    Groups,
    /// The talk plan.
    TalkPlan,
    /// Share-safe tables.
    ShareSafe,
    /// Single statistics, for checks by other programs.
    Statistics,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let file = read(&args.instances)?;
    if args.table {
        return match args.method {
            Method::Detection => detection_table::print(&file, args.json)
                .map_err(|words| format!("{}: {words}", args.instances.display())),
            _ => Err("--table works only with detection".into()),
        };
    }
    let answers = answer(args.method, &file, args.seconds)
        .map_err(|words| format!("{}: {words}", args.instances.display()))?;
    let text = serde_json::to_string(&answers).map_err(|e| e.to_string())?;
    put_line!("{text}");
    Ok(())
}

fn answer(method: Method, file: &Value, seconds: f64) -> Result<Value, String> {
    match method {
        Method::ClassEstimate => each(file, "cases", class::estimate),
        Method::Detection => each(file, "cases", class::detection),
        Method::Trends => each(file, "cases", |case| class::trends(case, file)),
        Method::TaughtAgain => each(file, "cases", taught_again::answer),
        Method::Calibration => each(file, "cases", |case| calibration::answer(case, file)),
        Method::Groups => each(file, "cases", |case| groups::answer(case, file, seconds)),
        Method::TalkPlan => each(file, "cases", |case| talk_plan::answer(case, file)),
        Method::ShareSafe => share_safe::answer(file),
        Method::Statistics => each(file, "cases", statistics::answer),
    }
}

#[cfg(test)]
mod tests;
