//! `surefoot demo`: the sample class, with real stores and real files.

use super::class_args::or_today;
use super::table::{percent, print_board, print_groups};
use crate::out::{CommandResult, print_json, put_line};
use chrono::NaiveDate;
use indicatif::{ProgressBar, ProgressStyle};
use serde_json::json;
use std::path::PathBuf;
use std::time::Duration;
use surefoot_app::demo::{self, DemoPlan};
use surefoot_app::{Progress, latest_weekday};
use surefoot_catalogue::Language;
use surefoot_store::{DeskStore, Durability};

/// Arguments of `surefoot demo`.
#[derive(clap::Args)]
pub struct Args {
    /// The folder for the class; empty or missing.
    #[arg(long)]
    dir: PathBuf,
    /// The number of students.
    #[arg(long, default_value_t = DemoPlan::STUDENTS, value_parser = clap::value_parser!(u32).range(1..=60))]
    students: u32,
    /// School weeks that have passed.
    #[arg(long, default_value_t = DemoPlan::WEEKS, value_parser = clap::value_parser!(u32).range(1..=35))]
    weeks: u32,
    /// The seed; the same seed makes the same class.
    #[arg(long, default_value_t = 1)]
    seed: u64,
    /// The date of the class; the latest weekday if left out.
    #[arg(long)]
    today: Option<NaiveDate>,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let today = latest_weekday(or_today(args.today));
    let plan = DemoPlan {
        students: args.students as usize,
        weeks: args.weeks as usize,
        seed: args.seed,
        today,
        leave_last_hand_ins: false,
    };
    let progress = Progress::default();
    let made = std::thread::scope(|scope| {
        let worker = scope.spawn(|| demo::make(&args.dir, &plan, &progress));
        let bar = ProgressBar::new(1);
        if let Ok(style) =
            ProgressStyle::with_template("{msg} [{bar:30}] {pos}/{len} student weeks, {eta} left")
        {
            bar.set_style(style);
        }
        bar.set_message("Simulating the weeks");
        while !worker.is_finished() {
            let (done, total) = progress.state();
            bar.set_length(u64::from(total.max(1)));
            bar.set_position(u64::from(done));
            std::thread::sleep(Duration::from_millis(100));
        }
        bar.finish_and_clear();
        worker.join()
    });
    let summary = match made {
        Ok(Ok(summary)) => summary,
        Ok(Err(error)) => {
            return Err(format!(
                "{error}; {} holds what was made until then",
                args.dir.display()
            ));
        }
        Err(_) => return Err("the sample class could not be made".into()),
    };
    let desk = DeskStore::open(&summary.desk, Durability::Full).map_err(|e| e.to_string())?;
    let class = surefoot_desk::open_class(&desk, &summary.class).map_err(|e| e.to_string())?;
    let board = surefoot_desk::board(&desk, &class, &[], Language::first(), today)
        .map_err(|e| e.to_string())?;
    let groups = surefoot_desk::suggest_groups(
        &desk,
        &class,
        Language::first(),
        today,
        &surefoot_desk::GroupWishes::default(),
    )
    .map_err(|e| e.to_string())?;
    if args.json {
        return print_json(&json!({ "summary": summary, "board": board, "groups": groups }));
    }
    put_line!(
        "{}: {} students, {} school days up to {}.",
        summary.title,
        summary.students,
        summary.school_days,
        summary.today
    );
    put_line!(
        "{} check-ins, {} exercises, {} hand-ins made in {:.1} s; {} imported, {} refused in {:.1} s.",
        summary.check_ins,
        summary.answers,
        summary.hand_ins,
        summary.seconds_students,
        summary.imported,
        summary.refused,
        summary.seconds_import
    );
    let among_top = board
        .rows
        .iter()
        .take(2 * summary.planted_weak.len())
        .filter(|row| summary.planted_weak.contains(&row.concept.id))
        .count();
    put_line!(
        "{} of the {} concepts that are hard on purpose are among the first {} of the board ({}).\n",
        among_top,
        summary.planted_weak.len(),
        2 * summary.planted_weak.len(),
        percent(Some(
            among_top as f64 / summary.planted_weak.len().max(1) as f64
        ))
    );
    print_board(&board, 12);
    put_line!();
    print_groups(&groups);
    put_line!("\nWhat is where:");
    for (what, path) in [
        ("the teacher's desk", &summary.desk),
        ("a store for each student", &summary.student_stores),
        ("the hand-ins", &summary.shared_folder),
        ("the class packs", &summary.class_packs),
    ] {
        put_line!("  {what:<26} {}", path.display());
    }
    Ok(())
}
