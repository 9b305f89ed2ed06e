//! `surefoot talk`: the talk plan of a day.

use super::class_args::ClassArgs;
use super::table::print_talk;
use crate::out::{CommandResult, print_json};
use surefoot_catalogue::Language;

/// Arguments of `surefoot talk`.
#[derive(clap::Args)]
pub struct Args {
    #[command(flatten)]
    at: ClassArgs,
    /// Minutes for talk.
    #[arg(long, default_value_t = 4, value_parser = clap::value_parser!(u32).range(1..=i64::from(surefoot_desk::MOST_TALK_MINUTES)))]
    minutes: u32,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let at = args.at.open_to_read()?;
    let talk = surefoot_desk::talk(
        &at.desk,
        &at.class,
        Language::first(),
        at.today,
        args.minutes,
    )
    .map_err(|e| e.to_string())?;
    if args.json {
        return print_json(&talk);
    }
    print_talk(&talk);
    Ok(())
}
