//! `surefoot catalogue`: the concepts, and the codes of published standards they cover.

use crate::out::{CommandResult, print_json, put_line};
use surefoot_catalogue::{Catalogue, Concept, Language, Marking, coverage};
use surefoot_exercises::has_generator;

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
    put_line!("(a concept in brackets has no exercises)");
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
