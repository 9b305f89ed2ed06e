//! `surefoot share-table`: the share-safe table of a class, and its audit.

use super::class_args::ClassArgs;
use crate::out::{CommandResult, print_json, put_line};
use surefoot_catalogue::Language;
use surefoot_desk::{ShareRelease, ShareShown, ShareStep, ShareTable};

/// Arguments of `surefoot share-table`.
#[derive(clap::Args)]
pub struct Args {
    #[command(flatten)]
    at: ClassArgs,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// Runs the command. Records no release, because the table stays with the teacher.
pub fn run(args: &Args) -> CommandResult {
    let at = args.at.open_to_read()?;
    let table = surefoot_desk::share_table(&at.desk, &at.class, Language::first(), at.today)
        .map_err(|error| error.to_string())?;
    if args.json {
        return print_json(&table);
    }
    print(&table);
    Ok(())
}

fn print(table: &ShareTable) {
    let step = match table.step {
        ShareStep::ConceptCounts => "counts by concept",
        ShareStep::ConceptBands => "bands by concept",
        ShareStep::StrandBands => "bands by strand",
        ShareStep::ClassOnly => "one band for the class",
    };
    put_line!("{} on {}: {step}", table.class_title, table.date);
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
        "audit: {} withheld ({} of them only to protect others); {} counts stay possible for the narrowest, at least {} must: {}",
        audit.withheld,
        audit.further,
        audit
            .fewest_possible
            .map_or_else(|| "-".to_owned(), |counts| counts.to_string()),
        audit.least_possible,
        if audit.safe { "safe" } else { "not safe" }
    );
    match table.release {
        ShareRelease::Allowed { earlier, unchanged } => {
            put_line!(
                "may be released; {earlier} released before; {unchanged} rows withheld because too few ratings changed since"
            );
        }
        ShareRelease::TooFewChanged { unchanged, least } => put_line!(
            "may not be released: in each of {unchanged} rows, fewer than {least} ratings changed since an earlier table, or nearly all in the same way"
        ),
        ShareRelease::Nothing => put_line!("nothing of it may be released"),
    }
}
