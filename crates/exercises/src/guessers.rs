//! Guessers that understand nothing score at most five points above chance. Where a concept by
//! its nature gives one more, `guessers.txt` has its points and the reason.

use crate::text::block_text;
use crate::{Answer, Arg, Block, Entry, Expr, Item, Level, concepts_with_exercises, generate};
use std::collections::BTreeMap;
use std::sync::Mutex;
use surefoot_catalogue::Locale;

/// How much better than chance a guesser may be. Chance is one of the choices; two of five for a
/// sign, because "=" is right in a fifth. For a typed answer it is how often two exercises of
/// the concept, drawn at random, have the same answer: one in N for N answers that come equally
/// often.
const POINTS: f64 = 0.05;

/// A line for each guesser that is better: concept, guesser, points, reason.
const LISTED: &str = include_str!("guessers.txt");

/// The points that are listed for a guesser of a concept.
fn listed(concept: &str, guesser: &str) -> Option<f64> {
    LISTED.lines().find_map(|line| {
        let rest = line.strip_prefix(concept)?.strip_prefix(": ")?;
        let rest = rest.strip_prefix(guesser)?.strip_prefix(": ")?;
        let (points, reason) = rest.split_once(": ").unwrap();
        assert!(reason.len() > 20, "{line}");
        Some(points.parse::<f64>().unwrap() / 100.0)
    })
}

/// Fewest answers of a concept that are judged.
const FEWEST: f64 = 60.0;

const SAME: &str = "always the same";
const LARGEST: &str = "largest number";

/// Answers of one guesser over a concept's exercises.
#[derive(Default)]
struct Score {
    right: f64,
    chance: f64,
    count: f64,
}

impl Score {
    fn add(&mut self, right: bool, chance: f64) {
        self.right += f64::from(u8::from(right));
        self.chance += chance;
        self.count += 1.0;
    }

    /// Points above chance, less three times the spread that luck gives a small sample.
    fn above(&self) -> f64 {
        let n = self.count.max(1.0);
        let chance = self.chance / n;
        let spread = (chance.max(0.01) * (1.0 - chance) / n).sqrt();
        self.right / n - chance - 3.0 * spread
    }
}

/// The largest number that the prompt shows, as text.
fn largest_number(item: &Item) -> Option<f64> {
    fn expr(found: &mut Vec<f64>, of: &Expr) {
        let json = serde_json::to_value(of).unwrap();
        walk(found, &json);
    }
    fn walk(found: &mut Vec<f64>, value: &serde_json::Value) {
        match value {
            serde_json::Value::Object(fields) => {
                if let Some(text) = fields.get("text").and_then(|text| text.as_str()) {
                    found.extend(text.parse::<f64>());
                }
                fields.values().for_each(|inner| walk(found, inner));
            }
            serde_json::Value::Array(items) => items.iter().for_each(|inner| walk(found, inner)),
            _ => {}
        }
    }
    let mut found = Vec::new();
    for block in &item.prompt {
        match block {
            Block::Math { expr: of } => expr(&mut found, of),
            Block::Say { say } => {
                for arg in say.args.values() {
                    match arg {
                        Arg::Count { value } => found.push(*value as f64),
                        Arg::Number { text } => found.extend(text.parse::<f64>()),
                        Arg::Math { expr: of } => expr(&mut found, of),
                        _ => {}
                    }
                }
            }
            Block::Figure { .. } => {}
        }
    }
    found.into_iter().reduce(f64::max)
}

fn choice_texts(entry: &Entry) -> Vec<String> {
    match entry {
        Entry::OneChoice { choices } => choices
            .iter()
            .map(|choice| block_text(Locale::default(), &choice.shows).unwrap())
            .collect(),
        _ => Vec::new(),
    }
}

/// The key as text, for the guesser that always gives the same answer. The places of choices
/// are texts, since their order is random; names are the same name.
fn key_text(item: &Item) -> String {
    part_text(item, &item.entry, &item.answer)
}

/// The second part of the entry, or the entry.
fn second_entry(item: &Item) -> Entry {
    match &item.entry {
        Entry::TwoParts { second, .. } => (**second).clone(),
        whole => whole.clone(),
    }
}

fn part_text(item: &Item, entry: &Entry, key: &Answer) -> String {
    match (entry, key) {
        (_, Answer::OneChoice { index }) => {
            let task = &item.statement["task"];
            if task == "who_is_right"
                || task == "two_ways"
                || (task == "who_then_answer" && *entry != second_entry(item))
            {
                return format!("person {index}");
            }
            choice_texts(entry)[*index as usize].clone()
        }
        (
            Entry::TwoParts { first, second, .. },
            Answer::TwoParts {
                first: first_key,
                second: second_key,
            },
        ) => format!(
            "{}; {}",
            part_text(item, first, first_key),
            part_text(item, second, second_key)
        ),
        (_, other) => crate::often::text_of(other).unwrap_or_else(|| format!("{other:?}")),
    }
}

/// `typed` is the chance of a typed answer.
fn chance_of(entry: &Entry, typed: f64) -> f64 {
    match entry {
        Entry::TwoParts { first, second, .. } if first.is_tapped() && second.is_tapped() => {
            chance_of(first, typed) * chance_of(second, typed)
        }
        Entry::OneChoice { choices } => 1.0 / choices.len() as f64,
        Entry::Comparison => 2.0 / 5.0,
        Entry::SeveralChoices { choices } => {
            typed.max(1.0 / (2f64.powi(choices.len() as i32) - 1.0))
        }
        Entry::Ordering { things, .. } => {
            let orders: f64 = (1..=things.len()).map(|n| n as f64).product();
            typed.max(1.0 / orders)
        }
        _ => typed,
    }
}

/// What guessers score in a concept's exercises, and the most frequent typed answers with
/// their counts.
struct Guessed {
    scores: BTreeMap<&'static str, Score>,
    typed: Vec<(String, usize)>,
}

fn guess(concept: &'static str, seeds: u64) -> Guessed {
    let mut scores: BTreeMap<&'static str, Score> = BTreeMap::new();
    let items: Vec<Item> = Level::ALL
        .into_iter()
        .flat_map(|level| (0..seeds).map(move |seed| generate(concept, level, seed).unwrap()))
        .collect();
    // The commonest answer of the taps, and of the others.
    let commonest = |taps: bool| {
        let mut keys: BTreeMap<String, usize> = BTreeMap::new();
        for item in items.iter().filter(|item| item.is_tapped() == taps) {
            *keys.entry(key_text(item)).or_default() += 1;
        }
        keys.into_iter()
            .max_by_key(|(_, count)| *count)
            .map(|(key, _)| key)
            .unwrap_or_default()
    };
    let (usual_tap, usual) = (commonest(true), commonest(false));
    let mut typed: BTreeMap<String, usize> = BTreeMap::new();
    for item in items.iter().filter(|item| !item.is_tapped()) {
        *typed.entry(key_text(item)).or_default() += 1;
    }
    let all: usize = typed.values().sum();
    let share = |count: &usize| *count as f64 / all.max(1) as f64;
    let chance_typed: f64 = typed.values().map(|count| share(count).powi(2)).sum();
    for (nth, item) in items.iter().enumerate() {
        let chance = chance_of(&item.entry, chance_typed);
        let mut add = |name: &'static str, right: bool| {
            scores.entry(name).or_default().add(right, chance);
        };
        let tapped = item.is_tapped();
        add(
            if tapped { "always the same tap" } else { SAME },
            key_text(item)
                == if tapped {
                    usual_tap.as_str()
                } else {
                    usual.as_str()
                },
        );
        match (&item.entry, &item.answer) {
            (Entry::OneChoice { choices }, Answer::OneChoice { index }) => {
                add("first choice", *index == 0);
                add("last choice", *index as usize + 1 == choices.len());
                add("blind", *index as usize == nth % choices.len());
                let numbers: Option<Vec<f64>> = choice_texts(&item.entry)
                    .iter()
                    .map(|text| text.replace(',', "").parse().ok())
                    .collect();
                if let Some(numbers) = numbers {
                    let largest = numbers.iter().copied().reduce(f64::max);
                    add(
                        "largest choice",
                        largest == numbers.get(*index as usize).copied(),
                    );
                }
                let longest = choice_texts(&item.entry).iter().map(String::len).max();
                let texts = choice_texts(&item.entry);
                let only = texts.iter().filter(|t| Some(t.len()) == longest).count() == 1;
                if only {
                    add(
                        "longest choice",
                        Some(texts[*index as usize].len()) == longest,
                    );
                }
            }
            (Entry::Comparison, Answer::Comparison { sign }) => {
                add("first choice", *sign == crate::expr::Sign::Less);
                add("always =", *sign == crate::expr::Sign::Equal);
                add("always >", *sign == crate::expr::Sign::Greater);
            }
            (_, Answer::WholeNumber { value }) => {
                add(LARGEST, largest_number(item) == Some(*value as f64));
            }
            (
                Entry::TwoParts { first, second, .. },
                Answer::TwoParts {
                    first: first_key,
                    second: second_key,
                },
            ) => {
                let at = |key: &Answer| match key {
                    Answer::OneChoice { index } => Some(*index as usize),
                    Answer::Comparison { sign } => Some(*sign as usize),
                    _ => None,
                };
                let count = |entry: &Entry| match entry {
                    Entry::OneChoice { choices } => choices.len(),
                    _ => 3,
                };
                if let (Some(one), Some(two)) = (at(first_key), at(second_key)) {
                    add("first choices of two parts", (one, two) == (0, 0));
                    let last = (count(first) - 1, count(second) - 1);
                    add("last choices of two parts", (one, two) == last);
                }
            }
            _ => {}
        }
    }
    let mut typed: Vec<(String, usize)> = typed.into_iter().collect();
    typed.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
    Guessed { scores, typed }
}

/// The guessers of a concept that are too good, with their points; with `stale` also those that
/// are listed for more than they score.
fn too_good(concept: &'static str, seeds: u64, stale: bool) -> Vec<String> {
    guess(concept, seeds)
        .scores
        .into_iter()
        .filter(|(name, score)| {
            let points = listed(concept, name);
            let hides = stale
                && points
                    .is_some_and(|most| score.above() <= POINTS || score.above() < most - 0.02);
            score.count >= FEWEST && (score.above() > points.unwrap_or(POINTS) || hides)
        })
        .map(|(name, score)| format!("{concept}: {name} by {:.1} points", score.above() * 100.0))
        .collect()
}

/// What `of` finds in each concept, on all cores.
fn in_each_concept<T: Send>(of: impl Fn(&'static str) -> Vec<T> + Sync) -> Vec<T> {
    let concepts = Mutex::new(concepts_with_exercises());
    let found = Mutex::new(Vec::new());
    let next = || concepts.lock().unwrap().next();
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    std::thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(|| {
                while let Some(concept) = next() {
                    let more = of(concept);
                    found.lock().unwrap().extend(more);
                }
            });
        }
    });
    found.into_inner().unwrap()
}

fn no_guesser_is_too_good(seeds: u64, stale: bool) {
    let mut found = in_each_concept(|concept| too_good(concept, seeds, stale));
    found.sort();
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn guessers_score_no_better_than_chance() {
    no_guesser_is_too_good(120, false);
}

#[test]
#[ignore = "long: 2,000 seeds of every concept and level"]
fn guessers_score_no_better_than_chance_over_2000_seeds() {
    no_guesser_is_too_good(2_000, true);
}

#[test]
#[ignore = "prints a table"]
fn table_of_guessers() {
    let seeds = 2_000;
    let mut lines = in_each_concept(|concept| {
        let Guessed { scores, typed } = guess(concept, seeds);
        let all: usize = typed.iter().map(|(_, count)| count).sum();
        let points: Vec<String> = scores
            .iter()
            .filter(|(_, score)| score.count >= FEWEST && score.above() > POINTS - 0.01)
            .map(|(name, score)| format!("{name} {:.1}", score.above() * 100.0))
            .collect();
        let often: Vec<String> = typed
            .iter()
            .take_while(|(_, count)| count * 25 > all)
            .map(|(key, count)| format!("{key} {:.1}", *count as f64 * 100.0 / all as f64))
            .collect();
        vec![format!(
            "{concept}: {} answers; {}; {}",
            typed.len(),
            points.join(", "),
            often.join(" | ")
        )]
    });
    lines.sort();
    println!("{}", lines.join("\n"));
}

#[test]
fn equal_is_right_in_about_a_fifth_of_the_comparisons() {
    let (mut equal, mut all) = (0, 0);
    for concept in concepts_with_exercises() {
        for level in Level::ALL {
            for seed in 0..60 {
                let item = generate(concept, level, seed).unwrap();
                if let Answer::Comparison { sign } = item.answer {
                    all += 1;
                    equal += usize::from(sign == crate::expr::Sign::Equal);
                }
            }
        }
    }
    let share = f64::from(equal as u32) / f64::from(all);
    assert!((0.14..0.27).contains(&share), "{equal} of {all}");
}
