//! `surefoot sheet`: a practice sheet with its answer key as a PDF.

use crate::out::CommandResult;
use std::collections::BTreeSet;
use std::path::PathBuf;
use surefoot_catalogue::Locale;
use surefoot_catalogue::{Catalogue, Language};
use surefoot_exercises::{Entry, Level, TakenNames, concepts_with_exercises, generate};
use surefoot_report::sheet::{SheetPart, SheetWish, practice_sheet};
use surefoot_report::{Density, Paper, PrintOptions};

/// Arguments of `surefoot sheet`.
#[derive(clap::Args)]
pub struct Args {
    /// The concept's id; repeat the option for several concepts, or `all` for every one.
    #[arg(long, required = true)]
    concept: Vec<String>,
    /// One exercise of each kind of question instead, from every level.
    #[arg(long, conflicts_with_all = ["level", "count"])]
    kinds: bool,
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

/// Seeds of each level in which kinds of question are looked for.
const KIND_SEEDS: u64 = 60;

/// The level and seed of one exercise of each kind: of each way to answer, and of each task
/// that is answered in two parts.
fn one_of_each_kind(concept: &str, first: u64) -> Result<Vec<(Level, u64)>, String> {
    let (mut seen, mut found) = (BTreeSet::new(), Vec::new());
    for level in Level::ALL {
        for seed in first..first.saturating_add(KIND_SEEDS) {
            let item = generate(concept, level, seed).map_err(|error| error.to_string())?;
            let kind = match &item.entry {
                Entry::TwoParts { .. } => item.statement.get("task").cloned(),
                entry => serde_json::to_value(entry)
                    .map_err(|error| error.to_string())?
                    .get("kind")
                    .cloned(),
            };
            if seen.insert(kind.map(|kind| kind.to_string())) {
                found.push((level, seed));
            }
        }
    }
    Ok(found)
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
    let ids: Vec<&str> = if args.concept.iter().any(|id| id == "all") {
        concepts_with_exercises().collect()
    } else {
        args.concept.iter().map(String::as_str).collect()
    };
    let mut parts = Vec::new();
    for id in ids {
        let concept = catalogue
            .get(id)
            .ok_or_else(|| format!("there is no concept {id}"))?;
        let part = |level: Level, count: usize, seed: u64| SheetPart {
            concept: concept.clone(),
            level,
            count,
            seed,
            own: Vec::new(),
            taken: TakenNames::NONE,
        };
        if args.kinds {
            let kinds = one_of_each_kind(id, args.seed)?;
            parts.extend(kinds.into_iter().map(|(level, seed)| part(level, 1, seed)));
        } else {
            parts.push(part(level, args.count, args.seed));
        }
    }
    let wish = SheetWish {
        parts,
        ..SheetWish::default()
    };
    let bytes = practice_sheet(&wish, &options).map_err(|error| error.to_string())?;
    surefoot_app::write_atomic(&args.out, &bytes)
        .map_err(|error| format!("{}: {error}", args.out.display()))
}
