//! `surefoot import`: imports hand-ins into a desk, and prints the import report.

use super::class_args::{DeskArgs, or_today};
use crate::out::{CommandResult, print_json, put_line};
use std::path::PathBuf;
use surefoot_app::{FileKind, Progress, file_at, files_in, import_files};
use surefoot_desk::{Verdict, import_lines};

/// Arguments of `surefoot import`.
#[derive(clap::Args)]
pub struct Args {
    #[command(flatten)]
    desk: DeskArgs,
    /// Hand-ins, or folders of them.
    #[arg(required = true)]
    paths: Vec<PathBuf>,
    /// The date of the import; today if left out.
    #[arg(long)]
    today: Option<chrono::NaiveDate>,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let desk = args.desk.open()?;
    let mut sources = Vec::new();
    for path in &args.paths {
        if path.is_dir() {
            sources.extend(
                files_in(path, FileKind::HandIn).map_err(|e| format!("{}: {e}", path.display()))?,
            );
        } else {
            sources.push(file_at(path));
        }
    }
    let mut report = import_files(&desk, sources, or_today(args.today), &Progress::default())
        .map_err(|e| e.to_string())?;
    while report.files.len() < report.tally.files() as usize {
        let more = import_lines(&desk, report.import, report.files.len());
        report.files.extend(more.map_err(|e| e.to_string())?);
    }
    if args.json {
        return print_json(&report);
    }
    for file in &report.files {
        let verdict = match &file.verdict {
            Verdict::New => "new".to_owned(),
            Verdict::Updated => "updated".to_owned(),
            Verdict::Known => "known already".to_owned(),
            Verdict::Older => "older than the one at the desk".to_owned(),
            Verdict::Quarantined => "quarantined: another device of the seat".to_owned(),
            Verdict::Refused { refusal } => format!("refused: {refusal}"),
        };
        let flags = if file.flags.is_empty() {
            ""
        } else {
            " (look at its dates or concepts)"
        };
        put_line!(
            "{:<40} seat {:<4} {:>5} new entries  {verdict}{flags}",
            file.file_name,
            file.seat
                .map_or_else(|| "-".to_owned(), |seat| seat.to_string()),
            file.new_entries
        );
    }
    put_line!(
        "{} files; none of them was changed or moved.",
        report.files.len()
    );
    Ok(())
}
