//! `surefoot warm-up`: the exercises of a warm-up, as `surefoot exercises` prints them.

use super::class_args::ClassArgs;
use super::exercises::{Line, words};
use crate::out::{CommandResult, put_line};
use chrono::NaiveDate;
use surefoot_catalogue::Language;

/// Arguments of `surefoot warm-up`.
#[derive(clap::Args)]
pub struct Args {
    #[command(flatten)]
    at: ClassArgs,
    /// The school day; today or the next one if left out.
    #[arg(long)]
    date: Option<NaiveDate>,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let at = args.at.open_to_read()?;
    let first = Language::first();
    let paper = surefoot_desk::warm_up_paper(&at.desk, &at.class, first, at.today, args.date)
        .map_err(|error| error.to_string())?;
    for one in paper.iter().flat_map(|paper| &paper.exercises) {
        let words = (Language::all().iter())
            .map(|language| Ok((*language, words(&one.item, *language)?)))
            .collect::<Result<_, String>>()?;
        let item = &one.item;
        let line = serde_json::to_string(&Line { item, words });
        put_line!("{}", line.map_err(|error| error.to_string())?);
    }
    Ok(())
}
