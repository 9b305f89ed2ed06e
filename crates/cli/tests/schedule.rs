//! The commands around the practice schedule, run as programs.

#![allow(clippy::unwrap_used, reason = "a test that cannot go on fails")]

use serde_json::{Value, json};
use std::io::Write as _;
use std::process::{Command, Output, Stdio};

fn surefoot(arguments: &[&str], input: &str) -> Output {
    let mut program = Command::new(env!("CARGO_BIN_EXE_surefoot"))
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    program
        .stdin
        .take()
        .unwrap()
        .write_all(input.as_bytes())
        .unwrap();
    program.wait_with_output().unwrap()
}

const SMALL: [&str; 7] = [
    "simulate",
    "--classes",
    "2",
    "--students",
    "4",
    "--concepts",
    "10",
];

#[test]
fn simulate_prints_the_same_in_words_and_as_json() {
    let words = surefoot(&SMALL, "");
    assert!(words.status.success());
    let words = String::from_utf8(words.stdout).unwrap();
    let mut arguments = SMALL.to_vec();
    arguments.push("--json");
    let json: Value = serde_json::from_slice(&surefoot(&arguments, "").stdout).unwrap();
    assert_eq!(json["seeds"], json!([101, 102]));
    let models = json["models"].as_array().unwrap();
    assert_eq!(models.len(), 2);
    for model in models {
        assert!(words.contains(model["model"].as_str().unwrap()));
        let lines = model["lines"].as_array().unwrap();
        assert_eq!(lines.len(), 7);
        for line in lines {
            let (rule, class) = (
                line["rule"].as_str().unwrap(),
                line["class"].as_f64().unwrap(),
            );
            // Once in the table, once as a bar.
            let table = words
                .lines()
                .any(|l| l.starts_with(rule) && l.contains(&format!(" {class:.3} ")));
            let bar = words
                .lines()
                .any(|l| l.starts_with(rule) && l.ends_with(&format!("| {class:.3}")));
            assert!(table && bar, "{rule} {class} in:\n{words}");
        }
    }
    let refused = surefoot(&["simulate", "--minutes", "60"], "");
    assert!(!refused.status.success());
    assert!(
        String::from_utf8(refused.stderr)
            .unwrap()
            .contains("4 to 16")
    );
}

#[test]
fn a_rehearsal_answers_every_choice_and_names_a_bad_line() {
    let start = json!({
        "type": "start", "students": 2, "concepts": 3, "calendar": [0, 1, 2, 3], "taught": [0, 0, 3],
        "ready": [0, 1, 3], "class_slot": [0, 1, 2], "rotation": 3, "strand": [0, 0, 1],
        "prerequisites": [[], [0], []], "minutes": 8.0
    });
    let choose = |day: u32| json!({ "type": "choose", "school_day": day, "calendar_day": day, "students": [0, 1] });
    let done = |minutes: f64| json!({ "type": "result", "school_day": 1, "calendar_day": 1, "records": [[0, 0, 2, minutes]] });
    let class = json!({ "type": "class", "school_day": 0, "calendar_day": 0, "records": [[0, 0, 4, 1], [1, 0, 0, -1]] });
    let lines = [
        &start,
        &class,
        &choose(1),
        &done(8.0),
        &choose(1),
        &json!({ "type": "end" }),
    ];
    let text: String = lines.iter().map(|line| format!("{line}\n")).collect();
    let run = surefoot(&["rehearse"], &text);
    assert!(run.status.success());
    let said: Vec<Value> = String::from_utf8(run.stdout)
        .unwrap()
        .lines()
        .map(|line| serde_json::from_str(line).unwrap())
        .collect();
    assert_eq!(said[0], json!({ "ok": true }));
    for choice in said[1]["concepts"].as_array().unwrap() {
        assert!([0, 1].contains(&choice.as_i64().unwrap()), "{said:?}");
    }
    // The first student's minutes are used up; the other's are not.
    assert_eq!(said[2]["concepts"][0], -1);
    assert_ne!(said[2]["concepts"][1], -1);
    assert_eq!(said.len(), 3);

    let bad = surefoot(&["rehearse"], &format!("{start}\n{}\n", done(-1.0)));
    assert!(!bad.status.success());
    let words = String::from_utf8(bad.stderr).unwrap();
    assert!(
        words.contains("line 2") && words.contains("minutes"),
        "{words}"
    );
}

#[test]
fn a_fit_says_when_there_is_too_little() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("histories.json");
    let reviews = json!([{ "rating": 3, "elapsed_days": 0 }, { "rating": 1, "elapsed_days": 4 }]);
    let history =
        json!({ "id": "a", "parameter_set": "p", "desired_retention": 0.9, "reviews": reviews });
    let file = json!({ "parameter_sets": {}, "histories": [history] });
    std::fs::write(&path, file.to_string()).unwrap();
    let run = surefoot(
        &["memory", "--histories", path.to_str().unwrap(), "--fit"],
        "",
    );
    assert!(run.status.success());
    let said: Value = serde_json::from_slice(&run.stdout).unwrap();
    assert_eq!(
        said,
        json!({ "code": "not_enough", "found": 1, "needed": 3200 })
    );
}
