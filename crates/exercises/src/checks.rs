//! Checks that hold for every generator, level and seed.

use super::text::{block_text, blocks_text, entry_text};
use super::{Arg, Block, Item, Level, Say, concepts_with_exercises, generate, mark, response_for};
use crate::messages::{attribute, say};
use std::collections::{BTreeMap, BTreeSet};
use surefoot_catalogue::Locale;
use surefoot_catalogue::{Catalogue, Language};

const SEEDS: u64 = 60;

fn each_item(mut check: impl FnMut(&Item)) {
    for concept in concepts_with_exercises() {
        for level in Level::ALL {
            for seed in 0..SEEDS {
                let item = generate(concept, level, seed).unwrap();
                check(&item);
            }
        }
    }
}

fn name(item: &Item) -> String {
    format!("{} level {:?} seed {}", item.concept, item.level, item.seed)
}

#[test]
fn every_generator_belongs_to_a_concept_and_stands_once() {
    let catalogue = Catalogue::built_in().unwrap();
    for concept in concepts_with_exercises() {
        assert!(catalogue.get(concept).is_some(), "{concept}");
    }
    assert_eq!(
        concepts_with_exercises().count(),
        super::strand::all().count(),
        "a concept has two generators"
    );
}

#[test]
fn items_are_the_same_from_the_same_seed() {
    each_item(|item| {
        let again = generate(item.concept.as_str(), item.level, item.seed).unwrap();
        assert_eq!(*item, again, "{}", name(item));
    });
}

#[test]
fn the_key_is_right_and_every_mistake_is_noticed() {
    each_item(|item| {
        let marked = mark(item, &response_for(&item.answer)).unwrap();
        assert!(marked.right, "{}: own key is wrong", name(item));
        assert_eq!(marked.form_note, None, "{}: own key's form", name(item));
        for mistake in &item.mistakes {
            let marked = mark(item, &response_for(&mistake.answer))
                .unwrap_or_else(|error| panic!("{} {}: {error}", name(item), mistake.code));
            assert!(!marked.right, "{} {}", name(item), mistake.code);
            assert_eq!(
                marked.noticed.map(|noticed| noticed.code),
                Some(mistake.code.clone()),
                "{}",
                name(item)
            );
        }
    });
}

#[test]
fn items_have_hints_steps_mistakes_and_variety() {
    let mut codes: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let mut prompts: BTreeMap<(String, Level), BTreeSet<String>> = BTreeMap::new();
    each_item(|item| {
        let name = name(item);
        assert!(item.hints.len() >= 2, "{name}: hints");
        assert!(item.steps.len() >= 2, "{name}: steps");
        assert!(!item.mistakes.is_empty(), "{name}: mistakes");
        assert!(item.statement["task"].is_string(), "{name}: statement");
        codes
            .entry(item.concept.to_string())
            .or_default()
            .extend(item.mistakes.iter().map(|m| m.code.to_string()));
        prompts
            .entry((item.concept.to_string(), item.level))
            .or_default()
            .insert(item.statement.to_string());
    });
    for (concept, codes) in codes {
        assert!(codes.len() >= 2, "{concept}: {codes:?}");
    }
    let few: Vec<String> = prompts
        .iter()
        .filter(|(_, prompts)| prompts.len() < 6)
        .map(|((concept, level), prompts)| {
            format!("{concept} {level:?}: only {} questions", prompts.len())
        })
        .collect();
    assert!(few.is_empty(), "{few:#?}");
}

#[test]
fn every_word_is_there_in_both_languages() {
    let mut codes = BTreeSet::new();
    each_item(|item| {
        for &language in Language::all() {
            let locale = Locale::from(language);
            let all = item
                .hints
                .iter()
                .chain(&item.steps)
                .flatten()
                .chain(&item.prompt);
            for block in all {
                let text = block_text(locale, block)
                    .unwrap_or_else(|error| panic!("{}: {error}", name(item)));
                assert!(!text.contains("{"), "{text}");
                if let Block::Figure { figure } = block {
                    for words in says_of(&serde_json::to_value(&figure.drawing).unwrap()) {
                        say(locale, &words)
                            .unwrap_or_else(|error| panic!("{}: {error}", name(item)));
                    }
                }
            }
            entry_text(locale, &item.entry)
                .unwrap_or_else(|error| panic!("{}: {error}", name(item)));
            let worked = item.worked();
            assert!(!worked.answer.is_empty(), "{}", name(item));
            blocks_text(locale, &worked.answer)
                .unwrap_or_else(|error| panic!("{}: {error}", name(item)));
            for mistake in &item.mistakes {
                say(locale, &mistake.say).unwrap_or_else(|error| panic!("{}: {error}", name(item)));
                codes.insert(mistake.code.to_string());
            }
        }
    });
    for code in codes {
        for &language in Language::all() {
            attribute(language.into(), &format!("mistake-{code}"), "name").unwrap();
        }
    }
}

/// Sentences anywhere inside a drawing.
fn says_of(value: &serde_json::Value) -> Vec<Say> {
    let mut found = Vec::new();
    match value {
        serde_json::Value::Object(fields) => {
            if fields.contains_key("id") && fields.contains_key("args") {
                found.push(serde_json::from_value(value.clone()).unwrap());
            }
            found.extend(fields.values().flat_map(says_of));
        }
        serde_json::Value::Array(items) => found.extend(items.iter().flat_map(says_of)),
        _ => {}
    }
    found
}

#[test]
fn items_survive_json() {
    each_item(|item| {
        if item.seed < 5 {
            let text = serde_json::to_string(item).unwrap();
            let back: Item = serde_json::from_str(&text).unwrap();
            assert_eq!(*item, back);
        }
    });
}

#[test]
fn math_arguments_stand_in_their_sentence() {
    each_item(|item| {
        let all = item.hints.iter().chain(&item.steps).flatten();
        for block in all.chain(&item.prompt) {
            let Block::Say { say: words } = block else {
                continue;
            };
            for (arg_name, arg) in &words.args {
                if matches!(arg, Arg::Math { .. }) {
                    for &language in Language::all() {
                        let pieces = crate::messages::pieces(language.into(), words).unwrap();
                        assert!(
                            pieces
                                .iter()
                                .any(|p| *p == crate::messages::Piece::Math(arg_name.to_string())),
                            "{}: {} does not show {arg_name}",
                            name(item),
                            words.id
                        );
                    }
                }
            }
        }
    });
}
