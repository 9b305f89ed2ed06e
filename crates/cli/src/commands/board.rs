//! `surefoot board`: the board of a class.

use super::class_args::ClassArgs;
use super::table::print_board;
use crate::out::{CommandResult, print_json};
use surefoot_catalogue::Language;

/// Arguments of `surefoot board`.
#[derive(clap::Args)]
pub struct Args {
    #[command(flatten)]
    at: ClassArgs,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let at = args.at.open_to_read()?;
    let board = surefoot_desk::board(&at.desk, &at.class, &[], Language::first(), at.today)
        .map_err(|e| e.to_string())?;
    if args.json {
        return print_json(&board);
    }
    print_board(&board, usize::MAX);
    Ok(())
}
