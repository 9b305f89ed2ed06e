//! The command `surefoot`: use-cases of the desk, reports, the sample class and measurements
//! from a terminal.
//!
//! Each command is a file of `commands`: it reads its arguments, opens what they name, calls
//! the crates below, and prints a table or JSON or writes a file.
//!
//! This crate must not know rules of its own, because the window would lack them.

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
    about = "Surefoot without a window: the board of a class, reports, and measurements."
)]
struct Cli {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Check or import files of own exercises and concepts.
    Bank(commands::bank::Args),
    /// Print the board of a class.
    Board(commands::board::Args),
    /// List the concepts of the catalogue, or the codes of published standards they cover.
    Catalogue(commands::catalogue::Args),
    /// Make the sample class, with real stores and files.
    Demo(commands::demo::Args),
    /// Print exercises with answers, hints, steps and misconceptions, one JSON object a line.
    Exercises(commands::exercises::Args),
    /// Suggest small groups.
    Groups(commands::groups::Args),
    /// Import hand-ins into a desk, and print one line for each file.
    Import(commands::import::Args),
    /// Compute the cases of an instance file: weak concepts, trends, calibration, groups, talk plan, share-safe tables.
    Insight(commands::insight::Args),
    /// Print the state of memory after each review of each history in a file.
    Memory(commands::memory::Args),
    /// Let another program practise by our schedule, one JSON object a line.
    Rehearse(commands::rehearse::Args),
    /// Write a report as PDF, or a table as CSV or XLSX.
    Report(commands::report::Args),
    /// Print the share-safe table of a class and its audit.
    ShareTable(commands::share_table::Args),
    /// Write a practice sheet with its answer key as PDF.
    Sheet(commands::sheet::Args),
    /// Simulate a school year under our schedule and simpler ones.
    Simulate(commands::simulate::Args),
    /// Print the talk plan of a date, or of the next school day if the date has no school.
    Talk(commands::talk::Args),
    /// Print the exercises of a day's warm-up, one JSON object a line.
    WarmUp(commands::warm_up::Args),
    /// List what is missing in a class: hand-ins, class packs, decisions, files that could not be read.
    WhoHasNot(commands::who_has_not::Args),
}

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
        Command::WarmUp(args) => commands::warm_up::run(&args),
        Command::WhoHasNot(args) => commands::who_has_not::run(&args),
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(words) => {
            out::put_error(&words);
            ExitCode::FAILURE
        }
    }
}
