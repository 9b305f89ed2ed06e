//! Stored cases, answered by a program of its own from the formulas of `docs/insight.md`.

use super::super::{fit, residuals, slopes, weighed};
use super::*;
use serde_json::Value;

/// The class of a stored case.
fn evidence(case: &Value) -> Evidence {
    let size = ["students", "concepts", "rotations"].map(|key| {
        let number = case[key].as_u64().unwrap();
        usize::try_from(number).unwrap()
    });
    let mark = |list: &str, (student, concept, pass): (usize, usize, usize)| {
        let row = case[list][student][concept].as_str().unwrap();
        row.as_bytes()[pass]
    };
    let mut class = class((size[0], size[1], size[2]), |student, concept, pass| {
        let place = (student, concept, pass);
        let mut said = Vec::new();
        if let rating @ b'0'..=b'3' = mark("ratings", place) {
            said.push(Said::Rating(rating - b'0'));
        }
        if let result @ b'0'..=b'1' = mark("results", place) {
            said.push(Said::Result(result == b'1'));
        }
        said
    });
    for row in case["practice"].as_array().unwrap() {
        let at = |nth: usize| u32::try_from(row[nth].as_u64().unwrap()).unwrap();
        let place = (at(0) as usize, at(1) as usize, at(2) as usize);
        report(&mut class, place, Said::Practice(at(4), at(5)));
    }
    class
}

fn close(name: &str, found: &[f64], expected: &Value) {
    let flat = |value: &Value| -> Vec<f64> {
        let list = value.as_array().map(Vec::as_slice);
        let parts = list.unwrap_or(std::slice::from_ref(value)).iter();
        parts
            .flat_map(|part| match part {
                Value::Array(row) => row.iter().map(|x| x.as_f64().unwrap()).collect(),
                one => vec![one.as_f64().unwrap()],
            })
            .collect()
    };
    let expected = flat(expected);
    assert_eq!(found.len(), expected.len(), "{name}");
    for (found, expected) in found.iter().zip(&expected) {
        assert!(
            (found - expected).abs() < 1e-6,
            "{name}: {found}, not {expected}"
        );
    }
}

#[test]
fn the_stored_cases() {
    let file: Value = serde_json::from_str(include_str!(
        "../../../../../shared/vectors/insight/class-estimate.json"
    ))
    .unwrap();
    let cases = file["cases"].as_array().unwrap();
    assert_eq!(cases.len(), 19);
    for case in cases {
        let id = case["id"].as_str().unwrap();
        let evidence = evidence(case);
        let last_pass = usize::try_from(case["upto"].as_u64().unwrap()).unwrap();
        answers_of(id, &evidence, last_pass, &case["expect"]);
        fit_of(id, &evidence, last_pass, &case["expect"]);
    }
}

fn answers_of(id: &str, evidence: &Evidence, last_pass: usize, expect: &Value) {
    let estimate = class_estimate(evidence, last_pass);
    assert_sound(evidence, &estimate);
    let concepts = |of: fn(&ConceptEstimate) -> f64| -> Vec<f64> {
        estimate.concepts.iter().map(of).collect()
    };
    let students = |of: fn(&StudentEstimate) -> f64| -> Vec<f64> {
        let places = (0..evidence.students())
            .flat_map(|student| (0..evidence.concepts()).map(move |concept| (student, concept)));
        let found = places.map(|(student, concept)| estimate.student(student, concept).unwrap());
        found.map(|found| of(&found)).collect()
    };
    for (key, found) in [
        ("q", concepts(|c| c.share)),
        ("sd", concepts(|c| c.sd)),
        ("lo", concepts(|c| c.low)),
        ("hi", concepts(|c| c.high)),
        ("key", concepts(|c| c.certain_need)),
        ("phat", students(StudentEstimate::mean)),
        ("M", students(|p| p.logit)),
        ("h", students(|p| p.sd)),
        ("need", students(|p| p.need(0.6))),
    ] {
        close(&format!("{id}: {key}"), &found, &expect[key]);
    }
    let reporters: Vec<usize> = estimate.concepts.iter().map(|c| c.reporters).collect();
    assert_eq!(Value::from(reporters), expect["raters"], "{id}");
    assert_eq!(Value::from(estimate.ranking), expect["rank"], "{id}");
}

/// What the fit finds on the way.
fn fit_of(id: &str, evidence: &Evidence, last_pass: usize, expect: &Value) {
    let weighed = weighed::weigh(evidence, last_pass);
    let (model, _) = fit::fit(evidence, &weighed);
    let mut residuals = residuals::of_reports(evidence, &model, &weighed);
    residuals::add_practice(&mut residuals, &model, &weighed);
    let slopes = slopes::slopes(&residuals, last_pass, model.variances.problem);
    let v = &model.variances;
    let met = |of: fn(&weighed::ConceptEvidence) -> f64| -> Vec<f64> {
        weighed.concepts.iter().map(of).collect()
    };
    let students = &model.effects.students;
    let typical = model.effects.concepts.iter().zip(&weighed.concepts);
    for (key, found) in [
        ("J", met(|c| c.occasions)),
        ("age", met(|c| c.age)),
        ("alpha", students.iter().map(|s| s.logit).collect()),
        ("shift", students.iter().map(|s| s.shift).collect()),
        (
            "beta",
            typical
                .map(|(effect, of)| effect.logit * v.ease / (v.ease + v.of_problems(of.occasions)))
                .collect(),
        ),
        ("trend", slopes.iter().map(|s| s.change).collect()),
        (
            "si",
            (0..students.len()).map(|s| model.scale.slope(s)).collect(),
        ),
        ("tau", model.scale.thresholds().to_vec()),
        ("problem_variance", vec![v.problem]),
    ] {
        close(&format!("{id}: {key}"), &found, &expect[key]);
    }
    for (key, found) in [
        ("a", v.ability),
        ("b", v.ease),
        ("g", v.own),
        ("s", v.student_shift),
        ("r", v.concept_shift),
    ] {
        close(
            &format!("{id}: variance {key}"),
            &[found],
            &expect["variances"][key],
        );
    }
}
