//! `surefoot simulate`: a school year under our schedule and simpler rules.

use crate::out::{CommandResult, print_json, put_line};
use indicatif::{ProgressBar, ProgressStyle};
use serde_json::json;
use surefoot_practice::simulate::knowledge::Kind;
use surefoot_practice::simulate::rules::RuleName;
use surefoot_practice::simulate::sim_student::Constants;
use surefoot_practice::simulate::table::{Line, ModelTable, Setup, compare};

/// Arguments of `surefoot simulate`.
#[derive(clap::Args)]
pub struct Args {
    /// First seed; each seed is a class.
    #[arg(long, default_value_t = 101)]
    seed: u64,
    /// Classes.
    #[arg(long, default_value_t = 8, value_parser = clap::value_parser!(u64).range(1..=1000))]
    classes: u64,
    /// Students a class.
    #[arg(long, default_value_t = 30, value_parser = clap::value_parser!(u16).range(1..=200))]
    students: u16,
    /// Concepts a year.
    #[arg(long, default_value_t = 60, value_parser = clap::value_parser!(u16).range(1..=300))]
    concepts: u16,
    /// Minutes an evening, 4 to 16.
    #[arg(long, default_value_t = 8.0)]
    minutes: f64,
    /// Print JSON instead of a table.
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    if !(4.0..=16.0).contains(&args.minutes) {
        return Err(format!("minutes must be 4 to 16, not {}", args.minutes));
    }
    let setup = Setup {
        seeds: (args.seed..args.seed.saturating_add(args.classes)).collect(),
        students: usize::from(args.students),
        concepts: usize::from(args.concepts),
        minutes: args.minutes,
        constants: Constants::default(),
    };
    let bar = ProgressBar::new(args.classes * (RuleName::ALL.len() * Kind::ALL.len()) as u64);
    if let Ok(style) = ProgressStyle::with_template("{pos}/{len} class-years {bar:30} {eta}") {
        bar.set_style(style);
    }
    let mut tables = Vec::new();
    for kind in Kind::ALL {
        tables.push(compare(kind, &setup, || bar.inc(1)).map_err(|e| e.to_string())?);
    }
    bar.finish_and_clear();
    if args.json {
        let seeds = [setup.seeds.first(), setup.seeds.last()];
        return print_json(
            &json!({ "seeds": seeds, "students": setup.students, "concepts": setup.concepts,
                     "minutes": setup.minutes, "models": tables }),
        );
    }
    for table in &tables {
        print(table);
    }
    put_line!(
        "Seeds {} to {}, {} students and {} concepts a class, {} minutes an evening.",
        args.seed,
        args.seed.saturating_add(args.classes - 1),
        args.students,
        args.concepts,
        args.minutes
    );
    put_line!(
        "Edge: (rule - random) / (oracle - random). Slowest: the quarter of the concepts that takes longest."
    );
    put_line!("Simulated students, no real children.");
    Ok(())
}

fn print(table: &ModelTable) {
    put_line!("Model: {}", table.model);
    put_line!(
        "{:<14} {:>6} {:>7} {:>16} {:>7} {:>7} {:>16} {:>7} {:>6} {:>7} {:>8} {:>8}",
        "rule",
        "class",
        "-random",
        "95%",
        "bottom",
        "-random",
        "95%",
        "oracle%",
        "edge",
        "bottom",
        "slowest",
        "minutes"
    );
    for l in &table.lines {
        put_line!(
            "{:<14} {:>6.3} {:>+7.3} {:>16} {:>7.3} {:>+7.3} {:>16} {:>7.2} {:>6.2} {:>7.2} {:>8.3} {:>8.0}",
            l.rule,
            l.class,
            l.class_minus_random,
            interval(l.class_interval),
            l.bottom,
            l.bottom_minus_random,
            interval(l.bottom_interval),
            l.share_of_oracle,
            l.class_edge,
            l.bottom_edge,
            l.slowest,
            l.minutes
        );
    }
    put_line!();
    plot(&table.lines);
    put_line!();
}

fn interval([low, high]: [f64; 2]) -> String {
    format!("[{low:+.3}, {high:+.3}]")
}

/// Bars for the share of concepts known: `#` for the class, `=` for its bottom quarter.
fn plot(lines: &[Line]) {
    for line in lines {
        for (sign, value, name) in [("#", line.class, line.rule), ("=", line.bottom, "")] {
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "a share of 60 characters"
            )]
            let length = (value.clamp(0.0, 1.0) * 60.0).round() as usize;
            put_line!("{name:<14} |{:<60}| {value:.3}", sign.repeat(length));
        }
    }
}
