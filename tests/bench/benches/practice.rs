//! What the schedule costs: a state update against the bare crate, an evening's
//! queue, a class's year.
//!
//! `cargo bench -p surefoot-bench`

#![allow(
    missing_docs,
    clippy::unwrap_used,
    reason = "a benchmark that cannot go on stops"
)]

#[path = "support/processor_time.rs"]
mod processor_time;

use chrono::{Days, NaiveDate};
use criterion::{Criterion, SamplingMode, criterion_group, criterion_main};
use fsrs::{FSRS, MemoryState};
use processor_time::ProcessorTime;
use std::hint::black_box;
use std::time::Duration;
use surefoot_catalogue::rating::AnswerResult;
use surefoot_practice::estimate::Tuning;
use surefoot_practice::memory::{Grade, Memory, MemoryState as OurState};
use surefoot_practice::simulate::knowledge::Kind;
use surefoot_practice::simulate::plan::YearPlan;
use surefoot_practice::simulate::rules::RuleName;
use surefoot_practice::simulate::sim_student::Constants;
use surefoot_practice::simulate::year;
use surefoot_practice::{ConceptFacts, Evening, Event, EventKind, StudentMemory};

/// Ten updates of one state, as evidence comes in.
const GAPS: [u32; 10] = [1, 2, 4, 0, 7, 14, 30, 3, 60, 14];

fn state_update(criterion: &mut Criterion<ProcessorTime>) {
    let mut group = criterion.benchmark_group("ten state updates");
    // Processor time moves by ticks of the system, so samples must be much longer than one.
    group
        .sampling_mode(SamplingMode::Flat)
        .sample_size(30)
        .measurement_time(Duration::from_secs(15));
    let bare = FSRS::new(&[]).unwrap();
    group.bench_function("bare crate", |bencher| {
        bencher.iter(|| {
            let mut state: Option<MemoryState> = None;
            for gap in black_box(GAPS) {
                state = Some(bare.next_states(state, 0.9, gap).unwrap().good.memory);
            }
            state
        });
    });
    let ours = Memory::new().unwrap();
    group.bench_function("ours", |bencher| {
        bencher.iter(|| {
            let mut state: Option<OurState> = None;
            for gap in black_box(GAPS) {
                state = Some(ours.after(state, gap).unwrap().with(Grade::Alone));
            }
            state
        });
    });
    group.finish();
}

fn day(number: u64) -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 9, 1).unwrap() + Days::new(number)
}

/// A student late in the year: 160 concepts, eight answers to each.
fn student() -> StudentMemory {
    let facts = (0..160_u64).map(|c| ConceptFacts {
        key: format!("c{c:03}"),
        prerequisites: (c >= 5)
            .then(|| format!("c{:03}", c - 5))
            .into_iter()
            .collect(),
        open_from: Some(day(c)),
        has_exercises: true,
        meetings: (0..19).map(|pass| day(c % 14 + pass * 14)).collect(),
    });
    let mut memory = StudentMemory::new(facts);
    for turn in 0..8_u64 {
        for c in 0..160_u64 {
            let result = [
                AnswerResult::Alone,
                AnswerResult::WithHelp,
                AnswerResult::Wrong,
            ][usize::try_from((c + turn) % 3).unwrap()];
            let kind = EventKind::Answer {
                level: 2,
                result,
                minutes: 1.2,
            };
            let event = Event {
                date: day(160 + turn * 10),
                sequence: u32::try_from(turn * 160 + c).unwrap(),
                concept: format!("c{c:03}"),
                kind,
            };
            memory.apply(&event);
        }
    }
    memory
}

fn queue(criterion: &mut Criterion<ProcessorTime>) {
    let memory = student();
    let evening = Evening {
        today: day(250),
        minutes: 8.0,
        most_minutes: 16.0,
        exercises: None,
        evenings_a_week: 5,
        focus: vec!["c010".into(), "c020".into(), "c030".into()],
        assigned: Vec::new(),
        goal: Some(day(277)),
    };
    criterion.bench_function("queue of 160 concepts", |bencher| {
        bencher.iter(|| memory.plan(black_box(&evening), 6));
    });
}

fn class_year(criterion: &mut Criterion<ProcessorTime>) {
    let plan = YearPlan::invented(101, 60, 8.0);
    let mut group = criterion.benchmark_group("year of 30 students, 60 concepts");
    group.sample_size(10);
    for rule in [RuleName::Random, RuleName::Surefoot] {
        group.bench_function(rule.words(), |bencher| {
            bencher.iter(|| {
                year::run(
                    Kind::Pools,
                    &plan,
                    Constants::default(),
                    30,
                    101,
                    rule,
                    Tuning::USED,
                )
                .unwrap()
            });
        });
    }
    group.finish();
}

criterion_group! {
    name = benches;
    config = Criterion::default().with_measurement(ProcessorTime);
    targets = state_update, queue, class_year
}
criterion_main!(benches);
