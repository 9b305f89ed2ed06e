//! `surefoot sheet`: a practice sheet with its answer key as a PDF.

use crate::out::CommandResult;
use std::path::PathBuf;
use surefoot_catalogue::Locale;
use surefoot_catalogue::{Catalogue, Language};
use surefoot_exercises::{Level, TakenNames};
use surefoot_report::sheet::{SheetPart, SheetWish, practice_sheet};
use surefoot_report::{Density, Paper, PrintOptions};

/// Arguments of `surefoot sheet`.
#[derive(clap::Args)]
pub struct Args {
    /// The concept's id; repeat the option for several concepts.
    #[arg(long, required = true)]
    concept: Vec<String>,
    /// 1 entry, 2 expected, 3 stretch.
    #[arg(long, default_value_t = 2, value_parser = clap::value_parser!(u8).range(1..=3))]
    level: u8,
    /// The seed; the same seed prints the same sheet.
    #[arg(long, default_value_t = 1)]
    seed: u64,
    /// Exercises of each concept.
    #[arg(long, default_value_t = 10)]
    count: usize,
    /// The paper; without it, the usual one of the language.
    #[arg(long, value_enum)]
    paper: Option<PaperName>,
    /// Two columns, or one with space to work in.
    #[arg(long, value_enum, default_value_t = DensityName::Roomy)]
    density: DensityName,
    /// The language, by its tag.
    #[arg(long = "lang", value_name = "TAG", default_value_t)]
    language: Language,
    /// The file to write.
    #[arg(long)]
    out: PathBuf,
}

/// The paper.
#[derive(Clone, Copy, clap::ValueEnum)]
pub enum PaperName {
    /// 210 mm × 297 mm.
    A4,
    /// 8.5 in × 11 in.
    Letter,
}

#[derive(Clone, Copy, clap::ValueEnum)]
enum DensityName {
    Compact,
    Roomy,
}

impl From<PaperName> for Paper {
    fn from(name: PaperName) -> Self {
        match name {
            PaperName::A4 => Self::A4,
            PaperName::Letter => Self::Letter,
        }
    }
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let level = Level::try_from(args.level)?;
    let options = PrintOptions {
        locale: Locale::from(args.language),
        paper: args.paper.map_or(args.language.paper(), Paper::from),
        density: match args.density {
            DensityName::Compact => Density::Compact,
            DensityName::Roomy => Density::Roomy,
        },
    };
    let catalogue = Catalogue::built_in().map_err(|error| error.to_string())?;
    let parts = args
        .concept
        .iter()
        .map(|id| {
            let concept = catalogue
                .get(id)
                .ok_or_else(|| format!("there is no concept {id}"))?;
            Ok(SheetPart {
                concept: concept.clone(),
                level,
                count: args.count,
                seed: args.seed,
                own: Vec::new(),
                taken: TakenNames::NONE,
            })
        })
        .collect::<Result<_, String>>()?;
    let wish = SheetWish {
        parts,
        ..SheetWish::default()
    };
    let bytes = practice_sheet(&wish, &options).map_err(|error| error.to_string())?;
    surefoot_app::write_atomic(&args.out, &bytes)
        .map_err(|error| format!("{}: {error}", args.out.display()))
}
