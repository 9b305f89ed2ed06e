//! Every public instance, against its reference answer.

use super::instances::{parse, read};
use super::*;
use serde_json::json;
use std::path::Path;

fn vectors(name: &str) -> Value {
    read(
        &Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("../../shared/vectors/insight")
            .join(name),
    )
    .unwrap()
}

/// Every key of `expected` is in `found`: numbers within `tolerance`,
/// anything else equal.
fn same(found: &Value, expected: &Value, tolerance: f64, at: &str) {
    match (found, expected) {
        (Value::Object(found), Value::Object(expected)) => {
            for (key, value) in expected {
                let found = found.get(key).unwrap_or(&Value::Null);
                same(found, value, tolerance, &format!("{at}.{key}"));
            }
        }
        (Value::Array(a), Value::Array(b)) => {
            assert_eq!(a.len(), b.len(), "{at}");
            for (place, (a, b)) in a.iter().zip(b).enumerate() {
                same(a, b, tolerance, &format!("{at}[{place}]"));
            }
        }
        (Value::Number(a), Value::Number(b)) => {
            let difference = (a.as_f64().unwrap() - b.as_f64().unwrap()).abs();
            assert!(difference <= tolerance, "{at}: {a} is not {b}");
        }
        _ => assert_eq!(found, expected, "{at}"),
    }
}

/// (case, answer) for every case of a file.
fn answered(method: Method, name: &str, list: &str) -> Vec<(Value, Value)> {
    let file = vectors(name);
    let answers = answer(method, &file, 4.0).unwrap();
    let cases = file[list].as_array().unwrap();
    let answers = answers[list].as_array().unwrap();
    assert_eq!(cases.len(), answers.len());
    let pairs = cases.iter().cloned().zip(answers.iter().cloned());
    pairs
        .map(|(case, answer)| {
            if let Some(id) = case.get("id") {
                assert_eq!(id, &answer["id"]);
            }
            (case, answer["answer"].clone())
        })
        .collect()
}

fn as_expected(method: Method, name: &str, list: &str, tolerance: f64, cases: usize) {
    let pairs = answered(method, name, list);
    assert_eq!(pairs.len(), cases);
    for (case, answer) in pairs {
        same(&answer, &case["expect"], tolerance, &case["id"].to_string());
    }
}

#[test]
fn class_estimates() {
    // The file also holds what the fit finds on the way; the crate checks that.
    let pairs = answered(Method::ClassEstimate, "class-estimate.json", "cases");
    assert_eq!(pairs.len(), 19);
    for (case, answer) in pairs {
        let keys = [
            "q",
            "sd",
            "lo",
            "hi",
            "key",
            "rank",
            "raters",
            "phat",
            "M",
            "h",
            "need",
            "problem_variance",
        ];
        for key in keys {
            let at = format!("{} {key}", case["id"]);
            same(&answer[key], &case["expect"][key], 1e-6, &at);
        }
    }
}

#[test]
fn trends() {
    as_expected(Method::Trends, "trends.json", "cases", 1e-9, 2);
}

#[test]
fn calibration_and_what_must_not_be_shown() {
    for (case, answer) in answered(Method::Calibration, "calibration.json", "cases") {
        same(&answer, &case["expect"], 1e-6, &case["id"].to_string());
        let keys = |v: &Value| v.as_object().unwrap().keys().cloned().collect::<Vec<_>>();
        assert_eq!(keys(&answer), keys(&case["expect"]), "{}", case["id"]);
    }
}

#[test]
fn talk_plans() {
    as_expected(Method::TalkPlan, "talk-plan.json", "cases", 0.0, 12);
}

#[test]
fn bands() {
    as_expected(Method::ShareSafe, "share-safe.json", "bands", 0.0, 8);
}

#[test]
fn share_safe_tables_with_the_fewest_further_cells() {
    for (case, answer) in answered(Method::ShareSafe, "share-safe.json", "cases") {
        for key in ["bounds_primary_only", "recoverable"] {
            assert_eq!(answer[key], case[key], "{}", case["id"]);
        }
        assert_eq!(answer["extra"], case["fewest_extra"], "{}", case["id"]);
        assert_eq!(answer["safe"], true);
        // The reference's own best mask keeps the bounds it names.
        let table: Vec<Vec<u32>> = parse(&case["table"]).unwrap();
        let best: Vec<Vec<u8>> = parse(&case["one_best"]).unwrap();
        let best: Vec<Vec<bool>> = best
            .iter()
            .map(|row| row.iter().map(|m| *m == 1).collect())
            .collect();
        let bounds: Vec<Value> = surefoot_insight::disclosure::audit(&table, &best)
            .iter()
            .map(|b| json!([b.row, b.column, b.least, b.most]))
            .collect();
        assert_eq!(Value::from(bounds), case["bounds_best"], "{}", case["id"]);
    }
}

/// Mean AUC of the twelve weakest and share of the first five among them, in the same run
/// beside simpler ways, whose values must be those an independent reading found.
#[test]
fn detection_finds_the_weak_concepts_better_than_simpler_ways() {
    let file = vectors("detection.json");
    let (classes, found) = detection_table::measure(&file).unwrap();
    let truths: Vec<&Value> = file["cases"]
        .as_array()
        .unwrap()
        .iter()
        .flat_map(|case| case["truth"].as_array().unwrap())
        .collect();
    assert_eq!((classes, found.len()), (2, truths.len()));
    let mut mean = [[0.0; 2]; detection_table::WAYS.len()];
    for (ways, truth) in found.iter().zip(truths) {
        for (nth, name) in detection_table::WAYS.iter().enumerate() {
            let stored = &truth[if nth == 0 { "reference" } else { name }];
            for (which, key) in ["auc", "top5"].into_iter().enumerate() {
                let difference = ways[nth][which] - stored[key].as_f64().unwrap();
                assert!(difference.abs() < 1e-4, "{name} {key}: {difference}");
                mean[nth][which] += ways[nth][which] / found.len() as f64;
            }
        }
    }
    println!("{mean:?}");
    assert!(mean[0][0] >= 0.960 && mean[0][1] >= 0.93, "{mean:?}");
    assert!(mean[1..].iter().all(|way| way[0] < mean[0][0]), "{mean:?}");
}

/// At least 99% of the proved optimum each and 99.8% on average, no rule
/// broken (checked here from the case alone, not with the core's checker).
#[test]
fn groups_are_valid_and_close_to_the_optimum() {
    let mut shares = Vec::new();
    for (case, answer) in answered(Method::Groups, "groups.json", "cases") {
        let value = worth_if_valid(&case, &answer["plan"]);
        assert_eq!(answer["value"], value, "{}", case["id"]);
        let best = case["best"].as_u64().unwrap();
        assert!(value <= best, "{}", case["id"]);
        let gap = answer["proven_gap"].as_f64().unwrap();
        #[expect(clippy::cast_precision_loss, reason = "test")]
        let share = if best == 0 {
            1.0
        } else {
            value as f64 / best as f64
        };
        println!("{} {share:.5} proven gap {gap:.5}", case["id"]);
        assert!(share >= 0.99, "{}: {share}", case["id"]);
        assert!(share >= 1.0 - gap - 1e-9, "{}: {share} {gap}", case["id"]);
        shares.push(share);
    }
    let number = f64::from(u32::try_from(shares.len()).unwrap());
    assert!(shares.iter().sum::<f64>() / number >= 0.998);
}

fn worth_if_valid(case: &Value, plan: &Value) -> u64 {
    type Pairs = Vec<(usize, usize)>;
    let weight: Vec<Vec<u64>> = parse(&case["weight"]).unwrap();
    let [apart, join, absent] =
        ["apart", "join", "absent"].map(|key| parse::<Pairs>(&case[key]).unwrap());
    let number = |key: &str| usize::try_from(case[key].as_u64().unwrap()).unwrap();
    let plan: Vec<(usize, usize, Vec<usize>)> = plan
        .as_array()
        .unwrap()
        .iter()
        .map(|g| {
            (
                parse(&g["slot"]).unwrap(),
                parse(&g["concept"]).unwrap(),
                parse(&g["members"]).unwrap(),
            )
        })
        .collect();
    let mut worth = 0;
    let mut placed = vec![false; weight.len()];
    for (at, (slot, concept, members)) in plan.iter().enumerate() {
        assert!(*slot < number("slots"));
        assert!((number("size_min")..=number("size_max")).contains(&members.len()));
        let in_slot = plan.iter().filter(|g| g.0 == *slot).count();
        assert!(in_slot <= number("groups_per_slot"));
        let alike = plan
            .iter()
            .filter(|g| g.0 == *slot && g.1 == *concept)
            .count();
        assert!(alike <= number("copies"));
        for student in members {
            assert!(weight[*student][*concept] > 0 && !absent.contains(&(*student, *slot)));
            assert_eq!(members.iter().filter(|m| *m == student).count(), 1);
            for other in &plan[at + 1..] {
                assert!(!(other.2.contains(student) && (other.0 == *slot || other.1 == *concept)));
            }
            worth += weight[*student][*concept];
            placed[*student] = true;
        }
        for (a, b) in &apart {
            assert!(!(members.contains(a) && members.contains(b)));
        }
        for (a, b) in &join {
            if !absent.contains(&(*a, *slot)) && !absent.contains(&(*b, *slot)) {
                assert_eq!(members.contains(a), members.contains(b));
            }
        }
    }
    let covered = placed.iter().filter(|p| **p).count() as u64;
    worth + covered * case["coverage"].as_u64().unwrap()
}

/// The rule for weights gives the weights of the file, up to the rounding of
/// needs to three digits there.
#[test]
fn weights_come_out_of_needs() {
    use surefoot_insight::groups::{WeightRule, weights};
    for case in vectors("groups.json")["cases"].as_array().unwrap() {
        let need: Vec<Vec<f64>> = parse(&case["need"]).unwrap();
        let prerequisites: Vec<(usize, usize)> = parse(&case["prereq"]).unwrap();
        let expected: Vec<Vec<u32>> = parse(&case["weight"]).unwrap();
        let found = weights(&need, &prerequisites, &WeightRule::default());
        for (found, expected) in found.iter().flatten().zip(expected.iter().flatten()) {
            assert!(found.abs_diff(*expected) <= 1, "{found} {expected}");
        }
    }
}

/// Answers in the file change nothing.
#[test]
fn answers_in_the_file_are_not_read() {
    for (method, name) in [
        (Method::ClassEstimate, "class-estimate.json"),
        (Method::Trends, "trends.json"),
        (Method::Calibration, "calibration.json"),
        (Method::TalkPlan, "talk-plan.json"),
        (Method::ShareSafe, "share-safe.json"),
    ] {
        let file = vectors(name);
        let mut bare = file.clone();
        for case in bare["cases"].as_array_mut().unwrap() {
            let case = case.as_object_mut().unwrap();
            for key in [
                "expect",
                "primary",
                "bounds_primary_only",
                "recoverable",
                "one_best",
                "bounds_best",
                "true_slope",
                "fewest_extra",
                "reference_heuristic_extra",
            ] {
                case.remove(key);
            }
        }
        assert_eq!(
            answer(method, &file, 1.0).unwrap(),
            answer(method, &bare, 1.0).unwrap(),
            "{name}"
        );
    }
}

#[test]
fn missing_optional_keys_and_empty_classes_are_no_trouble() {
    for (method, text) in [
        (
            Method::ClassEstimate,
            r#"{"cases": [{"ratings": []}, {"ratings": [["0.3"], []]}]}"#,
        ),
        (
            Method::Detection,
            r#"{"cases": [{"ratings": [["01"]]}, {"ratings": [["01"]], "dates": [0, 9]}]}"#,
        ),
        (
            Method::Trends,
            r#"{"cases": [{"ratings": []}, {"ratings": [[], ["..0"]]}]}"#,
        ),
        (
            Method::Calibration,
            r#"{"cases": [{"right": [], "wrong": []}, {}]}"#,
        ),
        (
            Method::Groups,
            r#"{"cases": [{"weight": [], "groups_per_slot": 2, "size_min": 2, "size_max": 3},
            {"need": [[0.9], [0.9]], "groups_per_slot": 0, "size_min": 2, "size_max": 3}]}"#,
        ),
        (
            Method::TalkPlan,
            r#"{"cases": [{"minutes": 4, "today": []}]}"#,
        ),
        (
            Method::ShareSafe,
            r#"{"cases": [{"table": []}, {"table": [[]]}, {"table": [[3]]}], "bands": [{"students": 4, "low": 1}]}"#,
        ),
        (Method::ShareSafe, r#"{"cases": []}"#),
    ] {
        let file: Value = serde_json::from_str(text).unwrap();
        let answers = answer(method, &file, 1.0).unwrap();
        let cases = file["cases"].as_array().unwrap().len();
        assert_eq!(answers["cases"].as_array().unwrap().len(), cases);
    }
}

#[test]
fn bad_cases_are_named() {
    for (method, text, words) in [
        (
            Method::ClassEstimate,
            r#"{"cases": [{"id": "k", "ratings": [["4"]]}]}"#,
            "\"k\"",
        ),
        (
            Method::ClassEstimate,
            r#"{"cases": [{"ratings": [["1"]], "practice": [[1,0,0,2,1,0]]}]}"#,
            "student 1",
        ),
        (Method::Detection, r#"{"students": 3}"#, "no list \"cases\""),
        (
            Method::TalkPlan,
            r#"{"cases": [{"minutes": -1, "today": []}]}"#,
            "-1",
        ),
        (
            Method::Groups,
            r#"{"cases": [{"weight": [[1]], "groups_per_slot": 2, "size_min": 3, "size_max": 2}]}"#,
            "3 to 2",
        ),
        (
            Method::Groups,
            r#"{"cases": [{"groups_per_slot": 2, "size_min": 1, "size_max": 2}]}"#,
            "weight",
        ),
        (
            Method::ShareSafe,
            r#"{"cases": [{"table": [[1, 2], [3]]}]}"#,
            "length",
        ),
        (
            Method::ShareSafe,
            r#"{"bands": [{"students": 4, "low": 5}]}"#,
            "5 of 4",
        ),
    ] {
        let file: Value = serde_json::from_str(text).unwrap();
        let error = answer(method, &file, 1.0).unwrap_err();
        assert!(error.contains(words), "{error}");
    }
    assert!(read(Path::new("no such file.json")).is_err());
}

#[test]
fn a_number_whose_sums_would_overflow_is_refused_by_name() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("cases.json");
    let with = |number: u64| {
        std::fs::write(&file, json!({ "cases": [{ "upto": number }] }).to_string()).unwrap();
        read(&file)
    };
    assert!(with(u32::MAX.into()).is_ok());
    let words = with(u64::MAX).unwrap_err();
    assert!(
        words.contains("18446744073709551615 is too large"),
        "{words}"
    );
}
