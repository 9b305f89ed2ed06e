//! `surefoot report`: any entry of the table of reports, as a file.

use super::class_args::ClassArgs;
use super::sheet::PaperName;
use crate::out::CommandResult;
use chrono::NaiveDate;
use std::path::PathBuf;
use surefoot_app::reports::{self, REPORTS, Report, ReportSource};
use surefoot_app::{ReportField, ReportValues, write_atomic};
use surefoot_catalogue::{Language, Locale};
use surefoot_exercises::Level;
use surefoot_report::{Density, Paper, PrintOptions};

/// Minutes of the talk if left out.
const USUAL_MINUTES: u32 = 4;

/// Arguments of `surefoot report`.
#[derive(clap::Args)]
pub struct Args {
    #[command(flatten)]
    at: ClassArgs,
    /// Which report.
    #[arg(long, value_parser = named)]
    of: &'static Report,
    /// The student's seat.
    #[arg(long)]
    seat: Option<u32>,
    /// The concept of a small group.
    #[arg(long)]
    concept: Option<String>,
    /// The seats of a small group, separated by commas.
    #[arg(long, value_delimiter = ',')]
    seats: Option<Vec<u32>>,
    /// The minutes of the talk; 4 if left out.
    #[arg(long)]
    minutes: Option<u32>,
    /// The concepts of a sheet, separated by commas.
    #[arg(long, value_delimiter = ',')]
    concepts: Option<Vec<String>>,
    /// How far the exercises of a sheet reach: 1 entry, 2 expected, 3 stretch.
    #[arg(long)]
    level: Option<u8>,
    /// Exercises of each concept.
    #[arg(long)]
    count: Option<u32>,
    /// A sheet without its answer key.
    #[arg(long)]
    no_key: bool,
    /// The seed of fresh numbers.
    #[arg(long)]
    seed: Option<u32>,
    /// Join slips without the names of the roster.
    #[arg(long)]
    no_names: bool,
    /// The school day of a warm-up, a class chart or a substitute's page; today or the next one if left out.
    #[arg(long)]
    date: Option<NaiveDate>,
    /// A warm-up as whole sheets.
    #[arg(long)]
    whole: bool,
    /// The paper; without it, the usual one of the language.
    #[arg(long, value_enum)]
    paper: Option<PaperName>,
    /// Without space to work or write in.
    #[arg(long)]
    compact: bool,
    /// The language, by its tag.
    #[arg(long = "lang", value_name = "TAG", default_value_t)]
    language: Language,
    /// The file to write.
    #[arg(long)]
    out: PathBuf,
}

/// Finds a report by its name with hyphens.
fn named(name: &str) -> Result<&'static Report, String> {
    reports::named(&name.replace('-', "_")).map_err(|_| {
        let names: Vec<_> = (REPORTS.iter().map(|report| report.name.replace('_', "-"))).collect();
        format!("there are: {}", names.join(", "))
    })
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let at = args.at.open()?;
    let asks_minutes = args.of.fields.contains(&ReportField::Minutes);
    let values = ReportValues {
        seat: args.seat,
        concept: args.concept.clone(),
        seats: args.seats.clone(),
        minutes: args.minutes.or(asks_minutes.then_some(USUAL_MINUTES)),
        concepts: args.concepts.clone(),
        level: args.level.map(Level::try_from).transpose()?,
        count: args.count,
        with_key: args.no_key.then_some(false),
        with_names: args.no_names.then_some(false),
        seed: args.seed,
        date: args.date,
        halves: args.whole.then_some(false),
    };
    let made = args
        .of
        .make(&ReportSource {
            desk: &at.desk,
            class: &at.class,
            values: &values,
            options: PrintOptions {
                locale: Locale::from(args.language),
                paper: args.paper.map_or(args.language.paper(), Paper::from),
                density: match args.compact {
                    true => Density::Compact,
                    false => Density::Roomy,
                },
            },
            today: at.today,
            with_names: !args.no_names,
            seed: args.seed.unwrap_or(1).into(),
        })
        .map_err(|error| error.to_string())?;
    write_atomic(&args.out, &made.bytes)
        .map_err(|error| format!("{}: {error}", args.out.display()))?;
    made.saved(&at.desk, &at.class)
        .map_err(|error| error.to_string())
}
