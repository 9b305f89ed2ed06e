//! The memory model against histories on which three implementations agree
//! (the crate fsrs 6.6.2, the Python package fsrs 6.3.2, the npm package
//! ts-fsrs 5.4.2); see the file's `about` and `rules`.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test that cannot go on fails"
)]

use serde_json::Value;
use std::collections::BTreeMap;
use surefoot_practice::memory::{Memory, MemoryError, MemoryState, Review};

const FILE: &str = include_str!("../../../shared/vectors/fsrs-histories.json");

fn close(found: f64, expected: f64, relative: f64) -> bool {
    (found - expected).abs() <= relative * expected.abs()
}

#[test]
fn histories_agree_within_the_stated_tolerances() {
    let file: Value = serde_json::from_str(FILE).unwrap();
    let tolerance = |name: &str| file["tolerance"][name].as_f64().unwrap();
    let models: BTreeMap<&str, Memory> = file["parameter_sets"]
        .as_object()
        .unwrap()
        .iter()
        .map(|(name, numbers)| {
            let numbers: Vec<f32> = serde_json::from_value(numbers.clone()).unwrap();
            (name.as_str(), Memory::with_parameters(&numbers).unwrap())
        })
        .collect();
    let mut reviews_seen = 0;
    let mut recalls_seen = 0;
    for history in file["histories"].as_array().unwrap() {
        let id = history["id"].as_str().unwrap();
        let model = &models[history["parameter_set"].as_str().unwrap()];
        let reviews: Vec<Review> = serde_json::from_value(history["reviews"].clone()).unwrap();
        #[expect(clippy::cast_possible_truncation, reason = "the crate counts in f32")]
        let retention = history["desired_retention"].as_f64().unwrap() as f32;
        let after = model.replay(&reviews, retention).unwrap();
        let expected = history["expected"]["after_each_review"].as_array().unwrap();
        assert_eq!(after.len(), expected.len(), "{id}");
        for (step, (found, expected)) in after.iter().zip(expected).enumerate() {
            reviews_seen += 1;
            for (name, value) in [
                ("stability", found.stability),
                ("difficulty", found.difficulty),
                ("interval", found.interval),
            ] {
                let wanted = expected[name].as_f64().unwrap();
                assert!(
                    close(f64::from(value), wanted, tolerance(&format!("{name}_rel"))),
                    "{id} review {step}: {name} {value}, expected {wanted}"
                );
            }
            assert_eq!(
                u64::from(found.whole_days),
                expected["whole_days"].as_u64().unwrap(),
                "{id} review {step}"
            );
        }
        let last = after.last().unwrap();
        let state = MemoryState {
            stability_days: last.stability,
            difficulty: last.difficulty,
        };
        for pair in history["expected"]["retrievability_after_days"]
            .as_array()
            .unwrap()
        {
            recalls_seen += 1;
            #[expect(clippy::cast_possible_truncation, reason = "whole days")]
            let days = pair[0].as_f64().unwrap() as f32;
            let found = f64::from(model.recall(state, days));
            let wanted = pair[1].as_f64().unwrap();
            assert!(
                (found - wanted).abs() <= tolerance("retrievability_abs"),
                "{id} after {days} days: {found}, expected {wanted}"
            );
        }
    }
    assert_eq!(file["histories"].as_array().unwrap().len(), 100);
    assert!(reviews_seen > 500 && recalls_seen >= 100);
}

#[test]
fn what_the_crate_would_take_and_should_not_is_refused() {
    let memory = Memory::new().unwrap();
    let review = |rating| Review {
        rating,
        elapsed_days: 0,
    };
    for found in [0, 5] {
        assert_eq!(
            memory.replay(&[review(found)], 0.9),
            Err(MemoryError::Rating { found })
        );
    }
    for retention in [0.0, 0.69, 0.98, 1.5, f32::INFINITY] {
        assert_eq!(
            memory.replay(&[review(3)], retention),
            Err(MemoryError::Retention { found: retention })
        );
    }
    assert!(memory.replay(&[review(3)], f32::NAN).is_err());
    assert_eq!(memory.replay(&[], 0.9).unwrap(), Vec::new());
    for count in [0, 17, 19, 20, 22] {
        assert!(matches!(
            Memory::with_parameters(&vec![0.5; count]),
            Err(MemoryError::Parameters { found }) if found == count
        ));
    }
    assert!(Memory::with_parameters(&[f32::NAN; 21]).is_err());
}
