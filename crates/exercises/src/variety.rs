//! How varied the exercises of a concept are: structures, sentences, distinct prompts. What a
//! concept falls short of has its reason in `variety.txt`.

use crate::text::{block_text, blocks_text, entry_text};
use crate::{Block, Item, Level, concepts_with_exercises, generate};
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::Locale;

/// Seeds read at each level.
const SEEDS: u64 = 100;

/// Fewest different prompts among them, structures and sentences of a concept.
const PROMPTS: usize = 60;
const STRUCTURES: usize = 4;
const SENTENCES: usize = 6;

/// A line for each concept that falls short: its id, a colon, what it has fewer of, a colon,
/// the reason. A test compares it with the exercises.
const REASONS: &str = include_str!("variety.txt");

/// What a concept's exercises have.
struct Variety {
    /// Different prompts at each level.
    prompts: [usize; 3],
    structures: usize,
    sentences: usize,
}

impl Variety {
    fn of(concept: &str) -> Self {
        let (mut structures, mut sentences) = (BTreeSet::new(), BTreeSet::new());
        let prompts = Level::ALL.map(|level| {
            let mut seen = BTreeSet::new();
            for seed in 0..SEEDS {
                let item = generate(concept, level, seed).unwrap();
                structures.insert(structure(&item));
                sentences.insert(sentence(&item));
                seen.insert(prompt(&item));
            }
            seen.len()
        });
        Self {
            prompts,
            structures: structures.len(),
            sentences: sentences.len(),
        }
    }

    /// The names of what there is too little of.
    fn short_of(&self) -> String {
        let short = [
            ("prompts", self.prompts.iter().any(|n| *n < PROMPTS)),
            ("structures", self.structures < STRUCTURES),
            ("sentences", self.sentences < SENTENCES),
        ];
        let names: Vec<&str> = short
            .iter()
            .filter(|(_, is_short)| *is_short)
            .map(|(name, _)| *name)
            .collect();
        names.join(", ")
    }
}

/// The task and the kind of answer: what the student has to do.
fn structure(item: &Item) -> String {
    let entry = serde_json::to_value(&item.entry).unwrap();
    format!("{} {}", item.statement["task"], entry["kind"])
}

/// The messages and the mathematics of the prompt, without numbers.
fn sentence(item: &Item) -> String {
    let one = |block: &Block| match block {
        Block::Say { say } => say.id.to_string(),
        Block::Math { .. } => block_text(Locale::default(), block)
            .unwrap()
            .replace(|c: char| c.is_ascii_digit(), ""),
        Block::Figure { figure } => figure.alt.id.to_string(),
    };
    let all: Vec<String> = item.prompt.iter().map(one).collect();
    all.join(" ")
}

/// The prompt and the entry in words. A drawing counts too, where its words leave out what is
/// to be read from it.
fn prompt(item: &Item) -> String {
    let drawn: Vec<&Block> = item
        .prompt
        .iter()
        .filter(|block| matches!(block, Block::Figure { .. }))
        .collect();
    format!(
        "{}\n{}\n{}",
        blocks_text(Locale::default(), &item.prompt).unwrap(),
        entry_text(Locale::default(), &item.entry).unwrap(),
        serde_json::to_string(&drawn).unwrap()
    )
}

#[test]
fn a_concept_is_varied_or_its_reason_is_listed() {
    let mut wrong = Vec::new();
    let mut listed: BTreeMap<&str, &str> = REASONS
        .lines()
        .map(|line| {
            let mut fields = line.splitn(3, ": ");
            let (concept, short) = (fields.next().unwrap(), fields.next().unwrap());
            assert!(fields.next().unwrap().len() > 20, "{line}");
            (concept, short)
        })
        .collect();
    for concept in concepts_with_exercises() {
        let variety = Variety::of(concept);
        let short = variety.short_of();
        let known = listed.remove(concept).unwrap_or_default();
        if short != known {
            wrong.push(format!(
                "{concept}: falls short of {short:?}, listed {known:?}: prompts {:?}, {} structures, {} sentences",
                variety.prompts, variety.structures, variety.sentences
            ));
        }
    }
    wrong.extend(listed.keys().map(|concept| format!("no concept {concept}")));
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
#[ignore = "prints a table"]
fn table_of_variety() {
    println!("{:34} prompts 1 2 3  structures  sentences", "concept");
    for concept in concepts_with_exercises() {
        let Variety {
            prompts: [one, two, three],
            structures,
            sentences,
        } = Variety::of(concept);
        let reason = REASONS
            .lines()
            .find_map(|line| line.strip_prefix(concept)?.strip_prefix(": "))
            .unwrap_or_default();
        println!("{concept:34} {one:5} {two:4} {three:4} {structures:9} {sentences:10}  {reason}");
    }
}
