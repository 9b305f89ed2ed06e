//! What the class estimate costs, beside its floor: the logistic functions that its rounds
//! cannot do without, four for the answers and ratings of each cell and four for the scale of
//! the ratings.
//!
//! `cargo bench -p surefoot-bench --bench estimate`; with `-- --test`, each once.

#![allow(
    missing_docs,
    clippy::unwrap_used,
    reason = "a benchmark that cannot go on stops"
)]

#[path = "support/processor_time.rs"]
mod processor_time;

use criterion::{Criterion, criterion_group, criterion_main};
use processor_time::ProcessorTime;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use std::hint::black_box;
use surefoot_catalogue::rating::Confidence;
use surefoot_insight::class_estimate::class_estimate;
use surefoot_insight::stats::logistic;
use surefoot_insight::{Evidence, PracticeCount};

const STUDENTS: usize = 35;
const PASSES: usize = 18;
/// A class's year, and a class with every concept there is.
const CONCEPTS: [usize; 2] = [60, 160];
/// Of the fit, and logistic functions of a cell in each.
const ROUNDS: usize = 25;
const LOGISTICS: usize = 8;

/// A full year: nearly everything rated and marked, and practice on a quarter of the cells.
fn year(concepts: usize) -> Evidence {
    let mut chance = ChaCha8Rng::seed_from_u64(3);
    let mut class = Evidence::new(STUDENTS, concepts, PASSES).unwrap();
    for student in 0..STUDENTS {
        for concept in 0..concepts {
            for pass in 0..PASSES {
                if chance.random_bool(0.1) {
                    continue;
                }
                let rating = Confidence::try_from(chance.random_range(0..4_u8)).unwrap();
                class.rate(student, concept, pass, rating).unwrap();
                let right = chance.random_bool(0.6);
                class.mark(student, concept, pass, right).unwrap();
                if chance.random_bool(0.25) {
                    class
                        .practise(PracticeCount {
                            student,
                            concept,
                            pass,
                            right: chance.random_range(0..3),
                            wrong: chance.random_range(0..3),
                        })
                        .unwrap();
                }
            }
        }
    }
    class
}

fn floor(concepts: usize) -> f64 {
    let mut sum = 0.0;
    for _ in 0..ROUNDS {
        let mut at = -4.0;
        for _ in 0..STUDENTS * concepts * LOGISTICS {
            sum += logistic(black_box(at));
            at += 1e-3;
        }
    }
    sum
}

fn estimate(criterion: &mut Criterion<ProcessorTime>) {
    for concepts in CONCEPTS {
        let class = year(concepts);
        let name = format!("class estimate, {STUDENTS} × {concepts} × {PASSES}");
        let mut group = criterion.benchmark_group(name);
        group.bench_function("floor", |bencher| bencher.iter(|| floor(concepts)));
        group.bench_function("estimate", |bencher| {
            bencher.iter(|| class_estimate(&class, PASSES - 1));
        });
        group.finish();
    }
}

criterion_group! {
    name = processor_time_of;
    config = Criterion::default().with_measurement(ProcessorTime);
    targets = estimate
}
criterion_main!(processor_time_of);
