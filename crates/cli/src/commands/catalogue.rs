//! `surefoot catalogue`: the concepts, and the codes of published standards they cover.

use crate::out::{CommandResult, print_json, put_line};
use std::collections::BTreeSet;
use surefoot_catalogue::{Catalogue, Concept, Language, Marking, code_parts, coverage};
use surefoot_exercises::{Level, generate, has_generator};

/// Arguments of `surefoot catalogue`.
#[derive(clap::Args)]
pub struct Args {
    /// Print JSON.
    #[arg(long)]
    json: bool,
    /// Print each code of the published standards with the concepts that cover it.
    #[arg(long)]
    coverage: bool,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    let catalogue = Catalogue::built_in().map_err(|error| error.to_string())?;
    if args.coverage {
        print_coverage(catalogue, args.json)
    } else {
        print_concepts(catalogue, args.json)
    }
}

#[derive(serde::Serialize)]
struct ConceptLine<'a> {
    #[serde(flatten)]
    concept: &'a Concept,
    exercises: bool,
}

fn print_concepts(catalogue: &Catalogue, json: bool) -> CommandResult {
    let lines: Vec<ConceptLine> = catalogue
        .concepts()
        .iter()
        .map(|concept| ConceptLine {
            concept,
            exercises: has_generator(concept.id.as_str()),
        })
        .collect();
    if json {
        return print_json(&lines);
    }
    put_line!(
        "{:<32} {:>5}  {:<20} {:<9}  Title",
        "Concept",
        "Grade",
        "Strand",
        "Exercises"
    );
    for line in &lines {
        let concept = line.concept;
        put_line!(
            "{:<32} {:>5}  {:<20} {:<9}  {}",
            concept.id.as_str(),
            concept.grade,
            concept.strand.as_str(),
            if line.exercises { "yes" } else { "-" },
            concept.title.get(Language::first())
        );
    }
    put_line!(
        "{} concepts, {} with exercises",
        lines.len(),
        lines.iter().filter(|line| line.exercises).count()
    );
    Ok(())
}

fn print_coverage(catalogue: &Catalogue, json: bool) -> CommandResult {
    let rows = coverage(catalogue, |id| has_generator(id.as_str()))?;
    if json {
        return print_json(&rows);
    }
    for row in &rows {
        let marking = match row.standard.marking {
            Marking::Auto => "auto",
            Marking::Partial => "partial",
            Marking::Human => "human",
        };
        let concepts: Vec<String> = row
            .concepts
            .iter()
            .map(|id| {
                if row.with_exercises.contains(id) {
                    id.to_string()
                } else {
                    format!("({id})")
                }
            })
            .collect();
        put_line!(
            "{:<13} {:<8} {}",
            row.standard.code,
            marking,
            concepts.join(" ")
        );
    }
    put_line!("(a concept in parentheses has no exercises)");
    print_parts()?;
    for (name, wanted) in [("Common Core", false), ("England key stage 2", true)] {
        let of: Vec<_> = rows
            .iter()
            .filter(|row| row.standard.code.starts_with("KS2") == wanted)
            .collect();
        put_line!(
            "{name}: {} of {} codes have a concept, {} have exercises",
            of.iter().filter(|row| !row.concepts.is_empty()).count(),
            of.len(),
            of.iter()
                .filter(|row| !row.with_exercises.is_empty())
                .count()
        );
    }
    put_line!(
        "{} concepts, {} with exercises",
        catalogue.concepts().len(),
        catalogue
            .concepts()
            .iter()
            .filter(|concept| has_generator(concept.id.as_str()))
            .count()
    );
    Ok(())
}

/// Seeds tried for the kinds of question of a part.
const SEEDS: u64 = 40;

/// Prints the parts of codes, each with the ways in which its exercises are answered.
fn print_parts() -> CommandResult {
    put_line!("Parts of codes, with their kinds of question");
    let parts = code_parts()?;
    for part in &parts {
        let mut kinds = BTreeSet::new();
        for level in Level::ALL {
            for seed in 0..SEEDS {
                let item = generate(part.concept.as_str(), level, seed)
                    .map_err(|error| error.to_string())?;
                let task = item.statement.get("task").and_then(|task| task.as_str());
                if task.is_some_and(|task| part.tasks.iter().any(|own| own == task)) {
                    let entry = serde_json::to_value(&item.entry).map_err(|e| e.to_string())?;
                    kinds.extend(
                        entry
                            .get("kind")
                            .and_then(|k| k.as_str())
                            .map(str::to_owned),
                    );
                }
            }
        }
        let kinds: Vec<String> = kinds.into_iter().collect();
        put_line!(
            "{:<13} {:<52} {:<26} {}",
            part.code,
            part.wording,
            part.concept.as_str(),
            match &part.reason {
                Some(reason) => format!("none: {reason}"),
                None => kinds.join(", "),
            }
        );
    }
    put_line!(
        "{} parts, {} with exercises",
        parts.len(),
        parts.iter().filter(|part| !part.tasks.is_empty()).count()
    );
    Ok(())
}
