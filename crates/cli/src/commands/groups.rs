//! `surefoot groups`: small groups that would help most.

use super::table::print_groups;
use crate::out::put_line;
use serde_json::json;
use std::path::PathBuf;
use surefoot_app::{Clock, DeviceClock};
use surefoot_catalogue::Language;
use surefoot_desk::{self, GroupWishes};

/// Arguments of `surefoot groups`.
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
    /// Times at which groups can meet.
    #[arg(long, default_value_t = 2, value_parser = clap::value_parser!(u32).range(1..=6))]
    slots: u32,
    /// Groups at a time.
    #[arg(long, default_value_t = 3, value_parser = clap::value_parser!(u32).range(1..=10))]
    at_once: u32,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub fn run(args: &Args) -> crate::Outcome {
    let desk = super::desk_to_read(&args.desk)?;
    let class = super::class_of(&desk, args.class.as_deref())?;
    let today = args.today.unwrap_or_else(|| DeviceClock.today());
    let wishes = GroupWishes {
        slots: args.slots as usize,
        groups_at_once: args.at_once as usize,
        ..GroupWishes::default()
    };
    let groups = surefoot_desk::suggest_groups(&desk, &class, Language::first(), today, &wishes)
        .map_err(|e| e.to_string())?;
    if args.json {
        put_line!("{}", json!(groups));
    } else {
        print_groups(&groups);
    }
    Ok(())
}
