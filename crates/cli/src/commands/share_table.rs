//! `surefoot share-table`: what the school may see of a class, and its audit.

use crate::out::put_line;
use std::path::PathBuf;
use surefoot_app::{Clock, DeviceClock};
use surefoot_catalogue::Language;
use surefoot_desk::{ShareShown, ShareStanding, ShareTable};

/// Arguments of `surefoot share-table`.
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

/// Runs the command. Looking hands nothing out, so nothing is noted.
pub fn run(args: &Args) -> crate::Outcome {
    let desk = super::existing_desk(&args.desk)?;
    let class = super::class_of(&desk, args.class.as_deref())?;
    let today = args.today.unwrap_or_else(|| DeviceClock.today());
    let table = surefoot_desk::share_table(&desk, &class, Language::first(), today)
        .map_err(|error| error.to_string())?;
    if args.json {
        return super::print_json(&table);
    }
    print(&table);
    Ok(())
}

fn print(table: &ShareTable) {
    put_line!("{} on {}: {:?}", table.class_title, table.date, table.step);
    for row in &table.rows {
        let name = match (&row.concept, &row.strand) {
            (Some(concept), _) => concept.title.as_str(),
            (None, Some(strand)) => strand.as_str(),
            (None, None) => "whole class",
        };
        let count = |cell: Option<u32>| cell.map_or("withheld".to_owned(), |n| n.to_string());
        let shown = match row.shown {
            ShareShown::Withheld => "withheld".to_owned(),
            ShareShown::Counts {
                low,
                high,
                reporters,
            } => format!("{} low, {} high, of {reporters}", count(low), count(high)),
            ShareShown::Band {
                from_percent,
                to_percent,
                ..
            } => format!("{from_percent} to {to_percent}%"),
        };
        put_line!("  {name:<44} {shown}");
    }
    let audit = &table.audit;
    put_line!(
        "audit: {} withheld ({} further), fewest values possible {:?}, at least {} asked for: {}",
        audit.withheld,
        audit.further,
        audit.fewest_possible,
        audit.least_possible,
        if audit.safe { "safe" } else { "not safe" }
    );
    match table.standing {
        ShareStanding::Free { earlier } => {
            put_line!("may be handed out; {earlier} handed out before");
        }
        ShareStanding::NearlySameClass {
            made_on,
            differing,
            least,
        } => put_line!(
            "may not be handed out: {differing} students differ from the table of {made_on}, at least {least} or none must"
        ),
        ShareStanding::Nothing => put_line!("nothing of it may be handed out"),
    }
}
