//! `surefoot talk`: which concepts of the day deserve the few minutes, and why.

use super::table::print_talk;
use crate::out::put_line;
use serde_json::json;
use std::path::PathBuf;
use surefoot_app::{Clock, DeviceClock};
use surefoot_catalogue::Language;

/// Arguments of `surefoot talk`.
#[derive(clap::Args)]
pub struct Args {
    /// The teacher's desk.
    #[arg(long)]
    desk: PathBuf,
    /// The class by its id or title; needed when the desk has several.
    #[arg(long)]
    class: Option<String>,
    /// The date to look from; today when not given. Without school that day, the next school day is planned.
    #[arg(long)]
    today: Option<chrono::NaiveDate>,
    /// Minutes there are for talk.
    #[arg(long, default_value_t = 4, value_parser = clap::value_parser!(u32).range(1..=i64::from(surefoot_desk::MOST_TALK_MINUTES)))]
    minutes: u32,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub fn run(args: &Args) -> crate::Outcome {
    let desk = super::desk_to_read(&args.desk)?;
    let class = super::class_of(&desk, args.class.as_deref())?;
    let today = args.today.unwrap_or_else(|| DeviceClock.today());
    let talk = surefoot_desk::talk(&desk, &class, Language::first(), today, args.minutes)
        .map_err(|e| e.to_string())?;
    if args.json {
        put_line!("{}", json!(talk));
    } else {
        print_talk(&talk);
    }
    Ok(())
}
