//! `surefoot groups`: the small groups that help most.

use super::class_args::ClassArgs;
use super::table::print_groups;
use crate::out::{CommandResult, print_json};
use surefoot_catalogue::Language;
use surefoot_desk::GroupWishes;

/// Arguments of `surefoot groups`.
#[derive(clap::Args)]
pub struct Args {
    #[command(flatten)]
    at: ClassArgs,
    /// Times at which groups can meet.
    #[arg(long, default_value_t = 2, value_parser = clap::value_parser!(u32).range(1..=6))]
    slots: u32,
    /// Groups at the same time.
    #[arg(long, default_value_t = 3, value_parser = clap::value_parser!(u32).range(1..=10))]
    at_once: u32,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let at = args.at.open_to_read()?;
    let wishes = GroupWishes {
        slots: args.slots as usize,
        groups_at_once: args.at_once as usize,
        ..GroupWishes::default()
    };
    let groups =
        surefoot_desk::suggest_groups(&at.desk, &at.class, Language::first(), at.today, &wishes)
            .map_err(|e| e.to_string())?;
    if args.json {
        return print_json(&groups);
    }
    print_groups(&groups);
    Ok(())
}
