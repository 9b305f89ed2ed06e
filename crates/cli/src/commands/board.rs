//! `surefoot board`: the board of a desk.

use super::table::print_board;
use crate::out::put_line;
use serde_json::json;
use std::path::PathBuf;
use surefoot_app::{Clock, DeviceClock};
use surefoot_catalogue::Language;

/// Arguments of `surefoot board`.
#[derive(clap::Args)]
pub struct Args {
    /// The teacher's desk.
    #[arg(long)]
    desk: PathBuf,
    /// The class by its id or title; needed when the desk has several.
    #[arg(long)]
    class: Option<String>,
    /// The date to look from; today when not given.
    #[arg(long)]
    today: Option<chrono::NaiveDate>,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub fn run(args: &Args) -> crate::Outcome {
    let desk = super::desk_to_read(&args.desk)?;
    let class = super::class_of(&desk, args.class.as_deref())?;
    let today = args.today.unwrap_or_else(|| DeviceClock.today());
    let board =
        surefoot_desk::board(&desk, &class, Language::first(), today).map_err(|e| e.to_string())?;
    if args.json {
        put_line!("{}", json!(board));
    } else {
        print_board(&board, usize::MAX);
    }
    Ok(())
}
