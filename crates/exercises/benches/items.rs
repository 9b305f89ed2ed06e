//! How fast exercises are made: every generator and level in turn, on one core.
//!
//! `cargo bench --bench items`. It fails below 100,000 items a second, and where an item of any
//! concept takes ten times as long. Other programs on the machine do not count: a long run is
//! timed on the processor, and a single item by the fastest of its runs.

#![allow(
    clippy::unwrap_used,
    clippy::disallowed_methods,
    reason = "a benchmark measures time, and fails when it cannot go on"
)]

use std::hint::black_box;
use std::process::ExitCode;
use std::sync::OnceLock;
use std::time::{Duration, Instant};
use surefoot_exercises::{Level, concepts_with_exercises, generate, mark, response_for};

const SEEDS: u64 = 40;
const RUNS: usize = 15;
/// How often all answers are marked in a run, because the system counts in milliseconds.
const ROUNDS: usize = 200;
const WANTED_A_SECOND: f64 = 100_000.0;
/// The longest time an item of any concept may take.
const LONGEST: Duration = Duration::from_micros(100);

/// How long this thread has run, as Linux counts it; elsewhere the time on the wall.
fn ran() -> Duration {
    static BEGAN: OnceLock<Instant> = OnceLock::new();
    std::fs::read_to_string("/proc/thread-self/schedstat")
        .ok()
        .and_then(|text| text.split(' ').next()?.parse().ok())
        .map_or_else(
            || BEGAN.get_or_init(Instant::now).elapsed(),
            Duration::from_nanos,
        )
}

/// Times `work`, which does `count` things, some runs over: things a second in
/// the middle run, the slowest and the fastest.
fn a_second(count: usize, mut work: impl FnMut()) -> (f64, f64, f64) {
    work();
    let mut rates: Vec<f64> = (0..RUNS)
        .map(|_| {
            let start = ran();
            work();
            count as f64 / (ran() - start).as_secs_f64()
        })
        .collect();
    rates.sort_by(f64::total_cmp);
    (rates[RUNS / 2], rates[0], rates[RUNS - 1])
}

fn main() -> ExitCode {
    let jobs: Vec<(&str, Level)> = concepts_with_exercises()
        .flat_map(|concept| Level::ALL.map(|level| (concept, level)))
        .collect();
    let all = jobs.len() * SEEDS as usize;
    let (made, low, high) = a_second(all, || {
        for (concept, level) in &jobs {
            for seed in 0..SEEDS {
                black_box(generate(concept, *level, seed).unwrap());
            }
        }
    });
    println!("made: {made:.0} items a second (from {low:.0} to {high:.0} in {RUNS} runs of {all})");

    let items: Vec<_> = jobs
        .iter()
        .map(|(concept, level)| generate(concept, *level, 1).unwrap())
        .collect();
    let (marked, low, high) = a_second(items.len() * ROUNDS, || {
        for item in (0..ROUNDS).flat_map(|_| &items) {
            black_box(mark(item, &response_for(&item.answer)).unwrap());
        }
    });
    println!("marked: {marked:.0} answers a second (from {low:.0} to {high:.0})");

    let mut times: Vec<(Duration, &str, Level)> = jobs
        .iter()
        .map(|(concept, level)| {
            let once = |seed| {
                let start = Instant::now();
                black_box(generate(concept, *level, seed).unwrap());
                start.elapsed()
            };
            let fastest = |seed| (0..RUNS).map(|_| once(seed)).min().unwrap();
            let time: Duration = (0..SEEDS).map(fastest).sum();
            (time / SEEDS as u32, *concept, *level)
        })
        .collect();
    times.sort_by_key(|(time, ..)| std::cmp::Reverse(*time));
    for (time, concept, level) in times.iter().take(8) {
        println!("slow: {concept} {level:?} {time:?} an item");
    }
    let slow = times.first().is_some_and(|(time, ..)| *time > LONGEST);
    if made < WANTED_A_SECOND || slow {
        println!("wanted: {WANTED_A_SECOND:.0} items a second, and {LONGEST:?} for the slowest");
        return ExitCode::FAILURE;
    }
    ExitCode::SUCCESS
}
