//! How fast exercises are made: every generator and level in turn, on one core.
//!
//! `cargo bench --bench items`. Wanted are 100,000 items a second. Other programs may use the
//! core too, so time is processor time where the system tells it, and what is compared is a
//! ratio: reading and writing a small JSON text, done in turn with the items, is the floor.
//! Fails where an item costs more than its share of the floor, or a concept ten times as much.

#![allow(
    clippy::unwrap_used,
    clippy::disallowed_methods,
    reason = "a benchmark measures time, and fails when it cannot go on"
)]

use std::hint::black_box;
use std::process::ExitCode;
use std::time::{Duration, Instant};
use surefoot_exercises::{Level, concepts_with_exercises, generate, mark, response_for};

const SEEDS: u64 = 40;
const RUNS: usize = 15;

/// The floor: texts read and written in a run, and how many of them one item may cost. On the
/// machine that the figure was taken on, a text takes 2.5 µs and so an item 10 µs at most.
const TEXTS: usize = 20_000;
const MOST_TEXTS_AN_ITEM: f64 = 4.0;

/// A concept may take as many times the share of an item.
const MOST_OF_A_CONCEPT: f64 = 10.0;

const TEXT: &str = r#"{"task":"floor","numbers":[12,345,6789,0,1,2,3],
 "words":{"one":"a short text","two":"another one","three":["x","y","z",{"deep":{"n":1.25}}]},
 "list":["add","subtract","multiply","divide",17,18,19,20,null,false,true]}"#;

/// The processor time of this thread; elsewhere than on Linux, the time of the clock.
fn now(start: Instant) -> Duration {
    std::fs::read_to_string("/proc/thread-self/schedstat")
        .ok()
        .and_then(|text| text.split_whitespace().next()?.parse().ok())
        .map_or_else(|| start.elapsed(), Duration::from_nanos)
}

/// The time that work takes.
fn timed(start: Instant, work: impl FnOnce()) -> f64 {
    let before = now(start);
    work();
    (now(start) - before).as_secs_f64()
}

fn middle(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values[values.len() / 2]
}

fn floor() {
    for _ in 0..TEXTS {
        let value: serde_json::Value = serde_json::from_str(black_box(TEXT)).unwrap();
        black_box(value.to_string());
    }
}

fn main() -> ExitCode {
    let start = Instant::now();
    let jobs: Vec<(&str, Level)> = concepts_with_exercises()
        .flat_map(|concept| Level::ALL.map(|level| (concept, level)))
        .collect();
    let all = jobs.len() * SEEDS as usize;
    let make = || {
        for (concept, level) in &jobs {
            for seed in 0..SEEDS {
                black_box(generate(concept, *level, seed).unwrap());
            }
        }
    };
    make();
    floor();
    let (mut items, mut texts) = (Vec::new(), Vec::new());
    for _ in 0..RUNS {
        items.push(timed(start, make) / all as f64);
        texts.push(timed(start, floor) / TEXTS as f64);
    }
    let ratios = items.iter().zip(&texts).map(|(item, text)| item / text);
    let ratio = middle(ratios.collect());
    let (item, text) = (middle(items), middle(texts));
    println!(
        "made: {:.0} items a second, {:.2} µs an item; floor: {:.2} µs a text",
        1.0 / item,
        item * 1e6,
        text * 1e6
    );
    println!("an item costs {ratio:.2} texts of the floor, {MOST_TEXTS_AN_ITEM} at most");

    let answered: Vec<_> = jobs
        .iter()
        .map(|(concept, level)| generate(concept, *level, 1).unwrap())
        .collect();
    let marks = || {
        for item in &answered {
            black_box(mark(item, &response_for(&item.answer)).unwrap());
        }
    };
    marks();
    let marking: Vec<f64> = (0..RUNS).map(|_| timed(start, marks)).collect();
    println!(
        "marked: {:.0} answers a second",
        answered.len() as f64 / middle(marking)
    );

    let mut concepts: Vec<(f64, &str)> = concepts_with_exercises()
        .map(|concept| {
            let make = || {
                for level in Level::ALL {
                    for seed in 0..SEEDS {
                        black_box(generate(concept, level, seed).unwrap());
                    }
                }
            };
            let runs = (0..3).map(|_| timed(start, make)).collect();
            (
                middle(runs) / (Level::ALL.len() as f64 * SEEDS as f64),
                concept,
            )
        })
        .collect();
    concepts.sort_by(|(one, _), (two, _)| two.total_cmp(one));
    for (time, concept) in concepts.iter().take(8) {
        println!("slow: {concept} {:.1} µs an item", time * 1e6);
    }
    let most = MOST_TEXTS_AN_ITEM * MOST_OF_A_CONCEPT * text;
    let slow = concepts.iter().filter(|(time, _)| *time > most).count();
    if ratio > MOST_TEXTS_AN_ITEM || slow > 0 {
        println!("too slow: {slow} concepts, or all of them together");
        return ExitCode::FAILURE;
    }
    ExitCode::SUCCESS
}
