//! The command `surefoot`: the use-cases of the desk, the reports, the sample class and the
//! measurements from a terminal, without a window.
//!
//! Each command is a file of `commands`: it reads its arguments, opens what they name, calls
//! the crates below and prints a table, JSON or a file. `out` is the only place that prints.
//!
//! Must never know a rule of its own: what is computed or decided here would be missing
//! from the window.

#![cfg_attr(not(test), warn(clippy::print_stdout))]
#![cfg_attr(not(test), deny(clippy::indexing_slicing))]

mod commands;
mod out;

use clap::{Parser, Subcommand};
use std::process::ExitCode;

#[derive(Parser)]
#[command(
    name = "surefoot",
    version,
    about = "Self-ratings, practice at home and the board of a class, without a window."
)]
struct Cli {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Exercises of the teacher's own: check files, mark answers, take files in.
    Bank(commands::bank::Args),
    /// The board of a class.
    Board(commands::board::Args),
    /// The concepts, and which codes of published standards they cover.
    Catalogue(commands::catalogue::Args),
    /// The sample class, with real stores and real files.
    Demo(commands::demo::Args),
    /// Exercises with answers, hints, steps and misconceptions, one JSON object a line.
    Exercises(commands::exercises::Args),
    /// Small groups that would help most.
    Groups(commands::groups::Args),
    /// Import hand-ins into a desk, with a line for every file.
    Import(commands::import::Args),
    /// Weak spots, trends, calibration, groups, talk plan and share-safe tables for an instance file.
    Insight(commands::insight::Args),
    /// The state of memory after each review of each history in a file.
    Memory(commands::memory::Args),
    /// Let another program sit the practice schedule, one JSON object a line.
    Rehearse(commands::rehearse::Args),
    /// A report as a PDF, or a table as CSV or XLSX.
    Report(commands::report::Args),
    /// What the school may see of a class: withheld cells and the audit.
    ShareTable(commands::share_table::Args),
    /// A practice sheet with its answer key, as a PDF.
    Sheet(commands::sheet::Args),
    /// A simulated school year under our schedule and simple rivals.
    Simulate(commands::simulate::Args),
    /// Which concepts of the day deserve the few minutes of talk, and why.
    Talk(commands::talk::Args),
}

/// What a command gives back: the words for the terminal's error stream when it failed.
pub type Outcome = Result<(), String>;

fn main() -> ExitCode {
    let outcome = match Cli::parse().command {
        Command::Bank(args) => commands::bank::run(&args),
        Command::Board(args) => commands::board::run(&args),
        Command::Catalogue(args) => commands::catalogue::run(&args),
        Command::Demo(args) => commands::demo::run(&args),
        Command::Exercises(args) => commands::exercises::run(&args),
        Command::Groups(args) => commands::groups::run(&args),
        Command::Import(args) => commands::import::run(&args),
        Command::Insight(args) => commands::insight::run(&args),
        Command::Memory(args) => commands::memory::run(&args),
        Command::Rehearse(args) => commands::rehearse::run(&args),
        Command::Report(args) => commands::report::run(&args),
        Command::ShareTable(args) => commands::share_table::run(&args),
        Command::Sheet(args) => commands::sheet::run(&args),
        Command::Simulate(args) => commands::simulate::run(&args),
        Command::Talk(args) => commands::talk::run(&args),
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(words) => {
            out::put_error(&words);
            ExitCode::FAILURE
        }
    }
}
