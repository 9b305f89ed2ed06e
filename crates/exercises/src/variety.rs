//! How varied the exercises of a concept are: structures, sentences, distinct prompts.

use crate::text::{blocks_text, entry_text};
use crate::{Block, Item, Level, concepts_with_exercises, generate};
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;
use surefoot_catalogue::Locale;

const SEEDS: u64 = 100;

/// The task and the kind of answer: what the student has to do.
fn structure(item: &Item) -> String {
    let entry = serde_json::to_value(&item.entry).unwrap();
    format!("{} {}", item.statement["task"].as_str().unwrap(), entry["kind"].as_str().unwrap())
}

/// The messages and the shape of the sentence, without numbers.
fn sentence(item: &Item) -> String {
    let mut text = String::new();
    for block in &item.prompt {
        match block {
            Block::Say { say } => write!(text, "{} ", say.id).unwrap(),
            Block::Math { expr } => {
                let line: String = crate::text::expr_text(Locale::default(), expr)
                    .unwrap()
                    .chars()
                    .filter(|c| !c.is_ascii_digit())
                    .collect();
                write!(text, "{line} ").unwrap();
            }
            Block::Figure { figure } => write!(text, "{} ", figure.alt.id).unwrap(),
        }
    }
    text
}

#[test]
#[ignore = "prints a table"]
fn variety_of_each_concept() {
    let show = std::env::var("SHOW_TASK").unwrap_or_default();
    let mut shown: BTreeMap<String, u32> = BTreeMap::new();
    for concept in concepts_with_exercises() {
        let mut structures: BTreeMap<String, u32> = BTreeMap::new();
        let mut sentences = BTreeSet::new();
        let mut prompts = Vec::new();
        for level in Level::ALL {
            let mut distinct = BTreeSet::new();
            for seed in 0..SEEDS {
                let item = generate(concept, level, seed).unwrap();
                *structures.entry(structure(&item)).or_default() += 1;
                sentences.insert(sentence(&item));
                let text = blocks_text(Locale::default(), &item.prompt).unwrap()
                    + "\n" + &entry_text(Locale::default(), &item.entry).unwrap();
                if !show.is_empty() && structure(&item).starts_with(&show) {
                    let n = shown.entry(concept.to_string()).or_default();
                    *n += 1;
                    if *n <= 2 {
                        let worked = item.worked();
                        println!("--- {concept} {level:?} {seed}\n{text}\n= {}\n! {}\n> {}",
                            blocks_text(Locale::default(), &worked.answer).unwrap(),
                            item.misconceptions.iter().map(|m| format!("{} {:?}", m.code, crate::response_for(&m.answer))).collect::<Vec<_>>().join("; "),
                            item.steps.iter().map(|s| blocks_text(Locale::default(), s).unwrap()).collect::<Vec<_>>().join(" / "));
                    }
                }
                distinct.insert(text);
            }
            prompts.push(distinct.len());
        }
        if show.is_empty() {
            println!("{concept:34} prompts {prompts:?} structures {} sentences {} {structures:?}", structures.len(), sentences.len());
        }
    }
}
