//! Checks that hold for every generator, level and seed. Each exercise is made once,
//! and a second time to compare, and goes through all checks.

use super::answer::BoxNumbers;
use super::model::FormNote;
use super::text::{block_text, blocks_text, entry_text};
use super::{
    Answer, Arg, Block, Entry, Item, Level, Response, Say, concepts_with_exercises, generate,
    has_misconception, mark, response_for,
};
use crate::messages::{Piece, attribute, pieces};
use crate::text::say;
use std::collections::BTreeSet;
use std::sync::Mutex;
use surefoot_catalogue::{Catalogue, Language, Locale};

const SEEDS: u64 = 60;

/// Seeds whose exercises also go through JSON.
const JSON_SEEDS: u64 = 5;

/// Concepts without exercises, because a program cannot mark what students say of them.
const WITHOUT_EXERCISES: [&str; 2] = ["g6-describe-measuring", "g6-choose-measure"];

#[test]
fn each_concept_has_one_generator() {
    let catalogue = Catalogue::built_in().unwrap();
    let concepts: BTreeSet<&str> = catalogue
        .concepts()
        .iter()
        .map(|concept| concept.id.as_str())
        .collect();
    let made: BTreeSet<&str> = concepts_with_exercises().chain(WITHOUT_EXERCISES).collect();
    assert_eq!(made, concepts);
    assert_eq!(
        concepts_with_exercises().count(),
        super::strand::all().count(),
        "a concept has two generators"
    );
}

#[test]
fn every_exercise_passes_every_check() {
    let concepts = Mutex::new(concepts_with_exercises());
    let codes = Mutex::new(BTreeSet::new());
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    std::thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(|| {
                while let Some(concept) = next(&concepts) {
                    let found = check_concept(concept);
                    codes.lock().unwrap().extend(found);
                }
            });
        }
    });
    for code in codes.into_inner().unwrap() {
        for &language in Language::all() {
            attribute(language.into(), &format!("misconception-{code}"), "name").unwrap();
        }
    }
}

/// Seeds tried until a task is met.
const TASK_SEEDS: u64 = 300;

#[test]
fn every_task_of_a_part_of_a_code_is_made() {
    for part in surefoot_catalogue::code_parts().unwrap() {
        let mut missing: BTreeSet<&str> = part.tasks.iter().map(String::as_str).collect();
        for seed in 0..TASK_SEEDS {
            for level in Level::ALL {
                let item = generate(part.concept.as_str(), level, seed).unwrap();
                if let Some(task) = item.statement["task"].as_str() {
                    missing.remove(task);
                }
            }
            if missing.is_empty() {
                break;
            }
        }
        assert!(
            missing.is_empty(),
            "{} {}: {missing:?}",
            part.code,
            part.concept
        );
    }
}

fn next(concepts: &Mutex<impl Iterator<Item = &'static str>>) -> Option<&'static str> {
    concepts.lock().unwrap().next()
}

/// Checks all exercises of a concept, and returns the codes of their misconceptions.
fn check_concept(concept: &'static str) -> BTreeSet<String> {
    let mut codes = BTreeSet::new();
    for level in Level::ALL {
        let mut questions = BTreeSet::new();
        for seed in 0..SEEDS {
            let item = generate(concept, level, seed).unwrap();
            let name = format!("{concept} level {level:?} seed {seed}");
            assert_eq!(item, generate(concept, level, seed).unwrap(), "{name}");
            has_all_parts(&item, &name);
            the_key_is_right(&item, &name);
            every_misconception_is_noticed(&item, &name);
            for &language in Language::all() {
                every_word_is_there(&item, language.into(), &name);
            }
            if seed < JSON_SEEDS {
                let text = serde_json::to_string(&item).unwrap();
                assert_eq!(item, serde_json::from_str(&text).unwrap(), "{name}");
            }
            for misconception in &item.misconceptions {
                let code = misconception.code.to_string();
                assert!(
                    has_misconception(concept, &code),
                    "{name}: {code} is not listed"
                );
                codes.insert(code);
            }
            questions.insert(item.statement.to_string());
        }
        assert!(
            questions.len() >= 6,
            "{concept} {level:?}: only {} questions",
            questions.len()
        );
    }
    assert!(codes.len() >= 2, "{concept}: {codes:?}");
    codes
}

fn has_all_parts(item: &Item, name: &str) {
    assert!(item.hints.len() >= 2, "{name}: hints");
    assert!(item.steps.len() >= 2, "{name}: steps");
    assert!(!item.misconceptions.is_empty(), "{name}: misconceptions");
    assert!(item.statement["task"].is_string(), "{name}: statement");
}

fn the_key_is_right(item: &Item, name: &str) {
    let marked = mark(item, &response_for(&item.answer)).unwrap();
    assert!(marked.right, "{name}: own key is wrong");
    assert_eq!(marked.form_note, None, "{name}: own key's form");
}

fn every_misconception_is_noticed(item: &Item, name: &str) {
    for misconception in &item.misconceptions {
        let code = &misconception.code;
        let marked = mark(item, &response_for(&misconception.answer))
            .unwrap_or_else(|error| panic!("{name} {code}: {error}"));
        assert!(!marked.right, "{name} {code}");
        let noticed = marked.noticed.map(|noticed| noticed.code);
        assert_eq!(noticed.as_ref(), Some(code), "{name}");
    }
}

fn every_word_is_there(item: &Item, locale: Locale, name: &str) {
    let there = |text: Result<String, _>| -> String {
        text.unwrap_or_else(|error| panic!("{name}: {error}"))
    };
    let helps = item.hints.iter().chain(&item.steps).flatten();
    for block in helps.chain(&item.prompt) {
        let text = there(block_text(locale, block));
        assert!(!text.contains('{'), "{name}: {text}");
        match block {
            Block::Say { say } => shows_its_mathematics(say, locale, name),
            Block::Math { .. } => {}
            Block::Figure { figure } => {
                let drawing = serde_json::to_value(&figure.drawing).unwrap();
                for words in says_of(&drawing) {
                    there(say(locale, &words));
                }
            }
        }
    }
    there(entry_text(locale, &item.entry));
    let worked = item.worked();
    assert!(!worked.answer.is_empty(), "{name}");
    there(blocks_text(locale, &worked.answer));
    for misconception in &item.misconceptions {
        there(say(locale, &misconception.say));
    }
}

fn shows_its_mathematics(words: &Say, locale: Locale, name: &str) {
    let math: Vec<_> = words
        .args
        .iter()
        .filter(|(_, arg)| matches!(arg, Arg::Math { .. }))
        .collect();
    if math.is_empty() {
        return;
    }
    let pieces = pieces(locale, words).unwrap();
    for (arg, _) in math {
        assert!(
            pieces.contains(&Piece::Math(arg.to_string())),
            "{name}: {} does not show {arg}",
            words.id
        );
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
fn boxes_take_every_filling_that_is_true_and_each_card_once() {
    let (mut tried, mut right) = (0, 0);
    for seed in 0..1_000 {
        let item = generate("g3-facts-multiply", Level::Expected, seed).unwrap();
        let Entry::Boxes {
            numbers: BoxNumbers::Cards { cards },
            ..
        } = &item.entry
        else {
            continue;
        };
        let sentence = item.statement["sentence"].as_str().unwrap();
        let product: i64 = sentence.strip_prefix("_ * _ = ").unwrap().parse().unwrap();
        for (i, one) in cards.iter().enumerate() {
            for (k, two) in cards.iter().enumerate() {
                let texts = vec![one.clone(), two.clone()];
                let marked = mark(&item, &Response::Boxes { texts }).unwrap();
                let makes: i64 = one.parse::<i64>().unwrap() * two.parse::<i64>().unwrap();
                assert_eq!(
                    marked.right,
                    makes == product && i != k,
                    "{sentence} {one} {two}"
                );
                let twice = makes == product && i == k;
                assert_eq!(marked.form_note, twice.then_some(FormNote::OtherNumbers));
                tried += 1;
                right += usize::from(marked.right);
            }
        }
    }
    assert!(tried > 200 && right > 40, "{right} of {tried}");
}

#[test]
fn the_second_part_counts_only_with_the_first() {
    let mut seen = 0;
    for seed in 0..200 {
        let item = generate("g4-add-large", Level::Expected, seed).unwrap();
        let (Answer::TwoParts { first, second }, Entry::TwoParts { .. }) =
            (&item.answer, &item.entry)
        else {
            continue;
        };
        seen += 1;
        let given = |first: Response, second: Response| {
            let both = Response::TwoParts {
                first: Box::new(first),
                second: Box::new(second),
            };
            mark(&item, &both).unwrap()
        };
        let other = Response::WholeNumber { text: "7".into() };
        let only_first = given(response_for(first), other.clone());
        assert!(!only_first.right);
        assert_eq!(only_first.form_note, Some(FormNote::FirstPartOnly));
        let wrong_first = match response_for(first) {
            Response::OneChoice { index } => Response::OneChoice {
                index: u32::from(index == 0),
            },
            other => panic!("{other:?}"),
        };
        // The misconception is that of the first part, whatever the second says.
        for second in [response_for(second), other] {
            let marked = given(wrong_first.clone(), second);
            assert!(!marked.right && marked.form_note.is_none());
            assert!(marked.noticed.is_some());
        }
        let alone = mark(&item, &response_for(first));
        assert!(alone.is_err(), "one part is no answer: {alone:?}");
    }
    assert!(seen > 10, "{seen}");
}
