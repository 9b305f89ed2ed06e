//! `surefoot exercises`: exercises with answers, hints, steps and misconceptions, one JSON
//! object a line.

use crate::out::CommandResult;
use std::collections::BTreeMap;
use std::io::Write;
use surefoot_catalogue::Locale;
use surefoot_catalogue::{Catalogue, Language};
use surefoot_exercises::text::{blocks_text, entry_text, say};
use surefoot_exercises::{Block, Item, Level, concepts_with_exercises, generate};

/// Arguments of `surefoot exercises`.
#[derive(clap::Args)]
pub struct Args {
    /// The concept's id; `all` for every concept that has exercises.
    #[arg(long)]
    concept: String,
    /// 1 entry, 2 expected, 3 stretch; all three if left out.
    #[arg(long, value_parser = clap::value_parser!(u8).range(1..=3))]
    level: Option<u8>,
    /// The first seed.
    #[arg(long, default_value_t = 1)]
    seed: u64,
    /// Exercises for each concept and level, with seeds from the first one on.
    #[arg(long, default_value_t = 1)]
    count: u64,
    /// Print plain text instead of JSON.
    #[arg(long)]
    text: bool,
    /// Print the words of this language only, by its tag; of all languages if left out.
    #[arg(long)]
    lang: Option<String>,
}

/// What a person reads, in one language.
#[derive(serde::Serialize)]
pub(super) struct Words {
    prompt: String,
    entry: String,
    answer: String,
    hints: Vec<String>,
    steps: Vec<String>,
    misconceptions: Vec<String>,
}

#[derive(serde::Serialize)]
pub(super) struct Line<'a> {
    #[serde(flatten)]
    pub item: &'a Item,
    /// What a person reads, by language.
    pub words: BTreeMap<Language, Words>,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let concepts: Vec<&str> = if args.concept == "all" {
        concepts_with_exercises().collect()
    } else {
        let catalogue = Catalogue::built_in().map_err(|error| error.to_string())?;
        if catalogue.get(&args.concept).is_none() {
            return Err(format!(
                "there is no concept {}; `surefoot catalogue` lists them",
                args.concept
            ));
        }
        vec![&args.concept]
    };
    let levels: Vec<Level> = match args.level {
        Some(level) => vec![Level::try_from(level)?],
        None => Level::ALL.to_vec(),
    };
    let languages: Vec<Language> = match &args.lang {
        Some(tag) => vec![Language::tagged(tag).map_err(|error| error.to_string())?],
        None => Language::all().to_vec(),
    };
    let mut out = std::io::BufWriter::new(std::io::stdout().lock());
    for concept in concepts {
        for level in &levels {
            for seed in args.seed..args.seed.saturating_add(args.count) {
                let item = generate(concept, *level, seed).map_err(|error| error.to_string())?;
                let words = languages
                    .iter()
                    .map(|language| Ok((*language, words(&item, *language)?)))
                    .collect::<Result<_, String>>()?;
                let written = if args.text {
                    write_text(&mut out, &item, &words)
                } else {
                    serde_json::to_writer(&mut out, &Line { item: &item, words })
                        .map_err(std::io::Error::from)
                        .and_then(|()| writeln!(out))
                };
                match written {
                    Ok(()) => {}
                    // Nobody reads any more.
                    Err(error) if error.kind() == std::io::ErrorKind::BrokenPipe => return Ok(()),
                    Err(error) => return Err(error.to_string()),
                }
            }
        }
    }
    out.flush().map_err(|error| error.to_string())
}

pub(super) fn words(item: &Item, language: Language) -> Result<Words, String> {
    let locale = Locale::from(language);
    let text = |blocks: &[Block]| blocks_text(locale, blocks).map_err(|error| error.to_string());
    Ok(Words {
        prompt: text(&item.prompt)?,
        entry: entry_text(locale, &item.entry).map_err(|error| error.to_string())?,
        answer: text(&item.worked().answer)?,
        hints: item
            .hints
            .iter()
            .map(|hint| text(hint))
            .collect::<Result<_, _>>()?,
        steps: item
            .steps
            .iter()
            .map(|step| text(step))
            .collect::<Result<_, _>>()?,
        misconceptions: item
            .misconceptions
            .iter()
            .map(|misconception| say(locale, &misconception.say).map_err(|error| error.to_string()))
            .collect::<Result<_, _>>()?,
    })
}

fn write_text(
    out: &mut impl Write,
    item: &Item,
    words: &BTreeMap<Language, Words>,
) -> std::io::Result<()> {
    writeln!(
        out,
        "== {} level {} seed {}",
        item.concept,
        u8::from(item.level),
        item.seed
    )?;
    for words in words.values() {
        writeln!(out, "{}", words.prompt)?;
        if !words.entry.is_empty() {
            writeln!(out, "  ( {} )", words.entry.replace('\n', " | "))?;
        }
        writeln!(out, "  = {}", words.answer.replace('\n', " | "))?;
        for hint in &words.hints {
            writeln!(out, "  hint: {}", hint.replace('\n', " / "))?;
        }
        for step in &words.steps {
            writeln!(out, "  step: {}", step.replace('\n', " / "))?;
        }
        for (misconception, told) in item.misconceptions.iter().zip(&words.misconceptions) {
            writeln!(
                out,
                "  {}: {:?}: {told}",
                misconception.code, misconception.answer
            )?;
        }
    }
    writeln!(out)
}
