//! `surefoot report`: a report or the join slips as a PDF, or a table for other programs.

use super::sheet::PaperName;
use std::path::PathBuf;
use surefoot_app::{Clock, DeviceClock, ReportWanted, report_page};
use surefoot_catalogue::Language;
use surefoot_catalogue::Locale;
use surefoot_report::grid::{board_grid, summary_grid, to_csv, to_xlsx};
use surefoot_report::page::print;
use surefoot_report::slips::slip_pages;
use surefoot_report::{Density, Look, Paper};

/// Arguments of `surefoot report`.
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
    /// Which.
    #[arg(long, value_enum)]
    of: What,
    /// The student's seat, for a family or conference page.
    #[arg(long, required_if_eq_any([("of", "family"), ("of", "conference")]))]
    seat: Option<u32>,
    /// Minutes for the talk plan.
    #[arg(long, default_value_t = 5)]
    minutes: u32,
    /// The paper; without it, the usual one of the language.
    #[arg(long, value_enum)]
    paper: Option<PaperName>,
    /// The language, by its tag.
    #[arg(long, default_value_t)]
    language: Language,
    /// Join slips without the names of the roster.
    #[arg(long)]
    no_names: bool,
    /// Where the file goes.
    #[arg(long)]
    out: PathBuf,
}

/// What can be made.
#[derive(Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
enum What {
    /// One page for a family.
    Family,
    /// A page for a talk with a student.
    Conference,
    /// The class, for its teachers.
    ClassSummary,
    /// The class, for the school; noted as handed out.
    ShareSafe,
    /// Today's talk.
    Talk,
    /// Concept by pass, as CSV.
    BoardCsv,
    /// Concept by concept, as CSV.
    SummaryCsv,
    /// Both, as XLSX.
    Workbook,
    /// The join slips of every seat, to cut apart.
    Slips,
}

/// Runs the command.
///
/// # Errors
/// Words for the terminal.
pub fn run(args: &Args) -> crate::Outcome {
    if args.no_names && args.of != What::Slips {
        return Err("--no-names is for join slips".into());
    }
    let desk = super::existing_desk(&args.desk)?;
    let class = super::class_of(&desk, args.class.as_deref())?;
    let today = args.today.unwrap_or_else(|| DeviceClock.today());
    let language = args.language;
    let locale = Locale::from(language);
    let words = |error: surefoot_report::ReportError| error.to_string();
    let board = || surefoot_desk::board(&desk, &class, language, today).map_err(|e| e.to_string());
    let seat = args.seat.unwrap_or_default();
    let look = Look {
        locale,
        paper: args.paper.map_or(language.paper(), Paper::from),
        density: Density::Roomy,
    };
    let report = match args.of {
        What::Family => ReportWanted::Family { seat },
        What::Conference => ReportWanted::Conference { seat },
        What::ClassSummary => ReportWanted::ClassSummary,
        What::ShareSafe => ReportWanted::ShareSafe,
        What::Talk => ReportWanted::Talk {
            minutes: args.minutes,
        },
        What::BoardCsv => {
            let grid = board_grid(&board()?, locale).map_err(words)?;
            return write(args, &to_csv(&grid).map_err(words)?);
        }
        What::SummaryCsv => {
            let grid = summary_grid(&board()?, locale).map_err(words)?;
            return write(args, &to_csv(&grid).map_err(words)?);
        }
        What::Slips => {
            let slips = surefoot_desk::join_slips(&class).map_err(|e| e.to_string())?;
            let pages = slip_pages(&slips, !args.no_names, &look).map_err(words)?;
            return write(args, &pages);
        }
        What::Workbook => {
            let board = board()?;
            let grids = [
                board_grid(&board, locale).map_err(words)?,
                summary_grid(&board, locale).map_err(words)?,
            ];
            return write(args, &to_xlsx(&grids).map_err(words)?);
        }
    };
    let page =
        report_page(&desk, &class, &report, language, today, true).map_err(|e| format!("{e:?}"))?;
    let share = match args.of {
        What::ShareSafe => {
            let table = surefoot_desk::share_table(&desk, &class, language, today)
                .map_err(|error| error.to_string())?;
            surefoot_desk::check_share_table(&desk, &class, &table).map_err(|e| e.to_string())?;
            Some(table)
        }
        _ => None,
    };
    let one_page = matches!(args.of, What::Family | What::Conference | What::ShareSafe);
    write(args, &print(&page, &look, one_page).map_err(words)?)?;
    if let Some(table) = share {
        surefoot_desk::release_share_table(&desk, &class, &table).map_err(|e| e.to_string())?;
    }
    Ok(())
}

fn write(args: &Args, bytes: &[u8]) -> crate::Outcome {
    surefoot_app::write_atomic(&args.out, bytes)
        .map_err(|error| format!("{}: {error}", args.out.display()))
}
