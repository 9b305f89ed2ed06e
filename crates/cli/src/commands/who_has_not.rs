//! `surefoot who-has-not`: what is missing in a class, and of whom.

use super::class_args::ClassArgs;
use crate::out::{CommandResult, print_json, put_line};
use surefoot_desk::{LackingKind, USUAL_LATE_SCHOOL_DAYS, who_has_not};

/// Arguments of `surefoot who-has-not`.
#[derive(clap::Args)]
pub struct Args {
    #[command(flatten)]
    at: ClassArgs,
    /// School days without a hand-in until a seat is listed.
    #[arg(long, default_value_t = USUAL_LATE_SCHOOL_DAYS)]
    school_days: usize,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let at = args.at.open_to_read()?;
    let list =
        who_has_not(&at.desk, &at.class, args.school_days, at.today).map_err(|e| e.to_string())?;
    if args.json {
        return print_json(&list);
    }
    if list.lacking.is_empty() && list.not_joined.is_empty() {
        put_line!("Nothing is missing.");
    }
    for one in &list.lacking {
        let seat = one
            .seat
            .map_or_else(|| "-".to_owned(), |seat| seat.to_string());
        let name = one.name.as_deref().unwrap_or("-");
        put_line!("{seat:>4}  {name:<24} {}", words(&one.what));
    }
    for one in &list.not_joined {
        let name = one.name.as_deref().unwrap_or("-");
        put_line!(
            "{:>4}  {name:<24} has never handed in; print the slip",
            one.seat
        );
    }
    Ok(())
}

fn words(what: &LackingKind) -> String {
    match what {
        LackingKind::Quarantined {
            fingerprint,
            first_seen_on,
            ..
        } => format!("device {fingerprint} of {first_seen_on} waits for a decision"),
        LackingKind::Damaged {
            file_name,
            read_on,
            refusal,
        } => format!("{file_name} of {read_on}: {refusal}; ask for a new hand-in"),
        LackingKind::DamagedOfNobody {
            files,
            file_name,
            read_on,
        } => format!("{files} files of nobody knows whom, the last {file_name} of {read_on}"),
        LackingKind::Late {
            last_on,
            school_days,
        } => format!("handed in last on {last_on}, {school_days} school days ago"),
        LackingKind::OldPack {
            version,
            newest,
            other_days,
            ..
        } => format!(
            "has class pack {version} of {newest}{}; give out the newest",
            if *other_days { ", with other days" } else { "" }
        ),
        LackingKind::PackWithNobody { newest, devices } => {
            format!("class pack {newest} is on none of {devices} devices yet; give it out")
        }
    }
}
