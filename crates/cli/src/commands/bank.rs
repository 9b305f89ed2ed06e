//! `surefoot bank`: question banks and own catalogues from files.

use super::class_args::ClassArgs;
use crate::out::{CommandResult, print_json, put_line};
use serde_json::{Value, json};
use std::collections::BTreeMap;
use std::io::BufRead as _;
use std::path::PathBuf;
use surefoot_app::{bank_files, file_at};
use surefoot_catalogue::catalogue_file::{CatalogueFormat, CatalogueReading, read_catalogue};
use surefoot_catalogue::{Language, missing_in};
use surefoot_exercises::bank::{BankFile, BankReading, OwnExercise, plain_text};
use surefoot_exercises::{Response, mark};

/// Arguments of `surefoot bank`.
#[derive(clap::Args)]
pub struct Args {
    #[command(subcommand)]
    action: Action,
}

#[derive(clap::Subcommand)]
enum Action {
    /// Check files line by line and store nothing. Fails if a line is refused.
    Check(CheckArgs),
    /// Mark answers to the exercises of files, one JSON object a line.
    Mark(MarkArgs),
    /// Import files into a class; prints each refused line and stores the others.
    Import(ImportArgs),
    /// Check a file of own concepts (CSV or CASE) and store nothing.
    Concepts(ConceptsArgs),
}

#[derive(clap::Args)]
struct Files {
    /// CSV files, QTI 3 items, or zips of either.
    #[arg(required = true)]
    files: Vec<PathBuf>,
    /// The concept for lines and items that name no concept.
    #[arg(long)]
    concept: Option<String>,
    /// The language, by its tag, of columns and items that name no language.
    #[arg(long = "lang", value_name = "TAG", default_value_t)]
    language: Language,
}

#[derive(clap::Args)]
struct CheckArgs {
    #[command(flatten)]
    files: Files,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

#[derive(clap::Args)]
struct MarkArgs {
    #[command(flatten)]
    files: Files,
    /// A file of responses, one object a line: `{"id": "…", "response": {"kind": "whole_number", "text": "7"}}`.
    #[arg(long)]
    responses: PathBuf,
}

#[derive(clap::Args)]
struct ImportArgs {
    #[command(flatten)]
    at: ClassArgs,
    #[command(flatten)]
    files: Files,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

#[derive(clap::Args)]
struct ConceptsArgs {
    /// A CSV file or a CFPackage in JSON.
    file: PathBuf,
    /// The language, by its tag, of columns and items that name no language.
    #[arg(long = "lang", value_name = "TAG", default_value_t)]
    language: Language,
    /// Print JSON.
    #[arg(long)]
    json: bool,
}

/// Runs the command.
pub fn run(args: &Args) -> CommandResult {
    match &args.action {
        Action::Check(args) => check(args),
        Action::Mark(args) => mark_answers(args),
        Action::Import(args) => import(args),
        Action::Concepts(args) => concepts(args),
    }
}

fn picked(paths: &[PathBuf]) -> Result<Vec<BankFile>, String> {
    bank_files(paths.iter().map(|path| file_at(path)).collect()).map_err(|e| e.to_string())
}

fn read(files: &Files) -> Result<Vec<BankReading>, String> {
    let picked = picked(&files.files)?;
    surefoot_desk::check_exercises(&picked, files.concept.as_deref(), files.language)
        .map_err(|e| e.to_string())
}

fn as_json(reading: &[BankReading]) -> Value {
    reading
        .iter()
        .map(|file| {
            json!({
                "file": file.file,
                "taken": file.taken.iter().map(|line| json!({
                    "line": line.line,
                    "id": line.own.id().to_string(),
                    "exercise": line.own,
                    "left_out": line.left_out,
                })).collect::<Vec<_>>(),
                "refused": file.refused.iter().map(|line| json!({
                    "line": line.line,
                    "fault": line.fault,
                    "words": line.fault.to_string(),
                })).collect::<Vec<_>>(),
            })
        })
        .collect()
}

/// Prints what was left out and refused; returns how many lines were taken and refused.
fn print(reading: &[BankReading]) -> (usize, usize) {
    let (mut taken, mut refused) = (0, 0);
    for file in reading {
        for line in &file.refused {
            put_line!("{}, line {}: {}", file.file, line.line, line.fault);
        }
        for line in file.taken.iter().filter(|line| !line.left_out.is_empty()) {
            put_line!(
                "{}, line {}: imported without {}",
                file.file,
                line.line,
                line.left_out.join(", ")
            );
        }
        for line in &file.taken {
            let missing: Vec<&str> = missing_in(line.own.texts())
                .into_iter()
                .map(Language::name)
                .collect();
            if !missing.is_empty() {
                let missing = missing.join(", ");
                put_line!("{}, line {}: no text in {missing}", file.file, line.line);
            }
        }
        taken += file.taken.len();
        refused += file.refused.len();
    }
    (taken, refused)
}

fn check(args: &CheckArgs) -> CommandResult {
    let reading = read(&args.files)?;
    if args.json {
        return print_json(&as_json(&reading));
    }
    for line in reading.iter().flat_map(|file| &file.taken) {
        put_line!(
            "{}  {}  {} = {}",
            line.own.id(),
            line.own.concept,
            plain_text(line.own.question.get(args.files.language)).replace('\n', " / "),
            plain_text(&line.own.key_in_words())
        );
    }
    let (taken, refused) = print(&reading);
    put_line!("{taken} exercises can be imported, {refused} lines cannot.");
    if refused > 0 {
        return Err(format!("{refused} lines cannot be imported"));
    }
    Ok(())
}

fn mark_answers(args: &MarkArgs) -> CommandResult {
    let reading = read(&args.files)?;
    let all: BTreeMap<String, &OwnExercise> = reading
        .iter()
        .flat_map(|file| &file.taken)
        .map(|line| (line.own.id().to_string(), &line.own))
        .collect();
    let file = std::fs::File::open(&args.responses)
        .map_err(|e| format!("{}: {e}", args.responses.display()))?;
    for (number, line) in std::io::BufReader::new(file).lines().enumerate() {
        let line = line.map_err(|e| e.to_string())?;
        if line.trim().is_empty() {
            continue;
        }
        let at = |e: String| format!("{}, line {}: {e}", args.responses.display(), number + 1);
        let asked: Value = serde_json::from_str(&line).map_err(|e| at(e.to_string()))?;
        let id = asked.get("id").and_then(Value::as_str).unwrap_or_default();
        let own = all.get(id).ok_or_else(|| at(format!("no exercise {id}")))?;
        let response = asked.get("response").cloned().unwrap_or_default();
        let response: Response = serde_json::from_value(response).map_err(|e| at(e.to_string()))?;
        let item = own.item().map_err(|e| at(e.to_string()))?;
        let marked = match mark(&item, &response) {
            Ok(marked) => json!({
                "id": id,
                "right": marked.right,
                "form_note": marked.form_note,
                "noticed": marked.noticed.is_some(),
            }),
            Err(error) => json!({"id": id, "unreadable": error.to_string()}),
        };
        put_line!("{marked}");
    }
    Ok(())
}

fn import(args: &ImportArgs) -> CommandResult {
    let at = args.at.open()?;
    let class = &at.class.row;
    let files = picked(&args.files.files)?;
    let concept = args.files.concept.as_deref();
    let language = args.files.language;
    let reading = surefoot_desk::read_for_class(&at.desk, &class.id, &files, concept, language)
        .map_err(|e| e.to_string())?;
    surefoot_desk::import_exercises(&at.desk, &class.id, &files, concept, language, at.today)
        .map_err(|e| e.to_string())?;
    if args.json {
        return print_json(&as_json(&reading));
    }
    let (taken, refused) = print(&reading);
    put_line!(
        "{taken} exercises were imported into {}, {refused} lines were not. They go into the next class pack.",
        class.title
    );
    Ok(())
}

fn concepts(args: &ConceptsArgs) -> CommandResult {
    let bytes = std::fs::read(&args.file).map_err(|e| format!("{}: {e}", args.file.display()))?;
    let name = args.file.file_name().unwrap_or_default().to_string_lossy();
    let reading: CatalogueReading = read_catalogue(&name, &bytes, args.language);
    if args.json {
        return print_json(&reading);
    }
    for draft in &reading.drafts {
        put_line!(
            "{}  {}  {}",
            draft.id,
            draft.codes.join(" "),
            draft.title.get(args.language)
        );
    }
    for refused in &reading.refused {
        let place = if refused.at.is_empty() {
            format!("line {}", refused.line)
        } else {
            refused.at.clone()
        };
        put_line!("{}, {place}: {}", reading.file, refused.fault);
    }
    let kind = match reading.format {
        CatalogueFormat::Csv => "lines",
        CatalogueFormat::Case => "items",
    };
    put_line!(
        "{} {kind} can become concepts, {} cannot.",
        reading.drafts.len(),
        reading.refused.len()
    );
    if reading.refused.is_empty() {
        Ok(())
    } else {
        Err(format!(
            "{} {kind} cannot become concepts",
            reading.refused.len()
        ))
    }
}
