//! The commands on a teacher's desk, run as programs on a small sample class.

#![allow(clippy::unwrap_used, reason = "a test that cannot go on fails")]

use serde_json::Value;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use surefoot_store::desk::KeptKey;
use surefoot_store::{DeskStore, Durability};

/// A Friday.
const TODAY: &str = "2026-10-16";

fn surefoot(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_surefoot"))
        .args(arguments)
        .output()
        .unwrap()
}

fn words(output: &Output) -> String {
    assert!(
        output.status.success(),
        "{}",
        String::from_utf8_lossy(&output.stderr)
    );
    String::from_utf8(output.stdout.clone()).unwrap()
}

fn sample(folder: &Path) -> (PathBuf, Value) {
    let dir = folder.join("sample");
    let made = surefoot(&[
        "demo",
        "--dir",
        dir.to_str().unwrap(),
        "--students",
        "8",
        "--weeks",
        "4",
        "--today",
        TODAY,
        "--json",
    ]);
    let made: Value = serde_json::from_str(&words(&made)).unwrap();
    let desk = made["summary"]["desk"].as_str().unwrap().into();
    (desk, made)
}

#[test]
fn board_groups_and_talk_say_the_same_in_words_and_as_json() {
    let folder = tempfile::tempdir().unwrap();
    let (desk, made) = sample(folder.path());
    let run = |command: &str, more: &[&str]| {
        let mut arguments = vec![command, "--desk", desk.to_str().unwrap(), "--today", TODAY];
        arguments.extend(more);
        words(&surefoot(&arguments))
    };
    let json =
        |command: &str| -> Value { serde_json::from_str(&run(command, &["--json"])).unwrap() };

    let board = json("board");
    assert_eq!(board, made["board"]);
    assert_eq!(board["seats"], 8);
    assert_eq!(board["today"], TODAY);
    let rows = board["rows"].as_array().unwrap();
    let weakest = rows.iter().find(|row| row["rank"] == 1).unwrap();
    let [low, has_it, high] = ["low", "has_it", "high"].map(|key| weakest[key].as_f64().unwrap());
    assert!(low <= has_it && has_it <= high && (0.0..=1.0).contains(&has_it));
    assert!(weakest["reporters"].as_u64().unwrap() <= 8);
    let output = run("board", &[]);
    for row in rows {
        let title = row["concept"]["title"].as_str().unwrap();
        assert!(output.contains(title), "{title} in:\n{output}");
    }

    let groups = json("groups");
    assert_eq!(groups, made["groups"]);
    assert!(groups["faults"].as_array().unwrap().is_empty());
    assert!(groups["value"].as_u64().unwrap() <= groups["best_at_most"].as_u64().unwrap());
    let output = run("groups", &[]);
    for group in groups["groups"].as_array().unwrap() {
        assert!((2..=5).contains(&group["members"].as_array().unwrap().len()));
        assert!(output.contains(group["concept"]["title"].as_str().unwrap()));
    }

    let talk = json("talk");
    assert_eq!(talk["minutes"], 4);
    assert!(talk["minutes_used"].as_u64().unwrap() <= 4);
    let concepts = talk["concepts"].as_array().unwrap();
    let today: Vec<&Value> = rows
        .iter()
        .filter(|row| row["day"] == talk["day"])
        .collect();
    assert!(!concepts.is_empty());
    assert_eq!(
        concepts.len(),
        today.len(),
        "every concept of the day, no other"
    );
    let chosen = concepts.iter().filter(|c| c["chosen"] == true).count();
    assert!((1..=2).contains(&chosen), "{chosen} chosen");
    let missing = json("who-has-not");
    assert_eq!(missing["today"], TODAY);
    let output = run("who-has-not", &[]);
    let lines = missing["lacking"].as_array().unwrap();
    assert_eq!(output.lines().count(), lines.len().max(1));
    for line in lines {
        let name = line["name"].as_str().unwrap_or("-");
        assert!(output.contains(name), "{name} in:\n{output}");
    }
    let late = run("who-has-not", &["--school-days", "1", "--json"]);
    let late: Value = serde_json::from_str(&late).unwrap();
    assert!(late["lacking"].as_array().unwrap().len() >= lines.len());

    let output = run("talk", &[]);
    let marked = output
        .lines()
        .filter(|line| line.starts_with("talk "))
        .count();
    assert_eq!(marked, chosen, "{output}");
    // What goes before the class holds nobody's name and no seat.
    let talk = talk.to_string();
    assert!(!talk.contains("\"seat\"") && !talk.contains("\"members\""));
    let members = groups["groups"][0]["members"].as_array().unwrap();
    for member in members {
        let name = member["name"].as_str().unwrap();
        assert!(!talk.contains(&format!("\"{name}\"")), "{name}");
    }
}

#[test]
fn a_class_that_is_not_there_and_minutes_beyond_reason_are_refused() {
    let folder = tempfile::tempdir().unwrap();
    let (desk, _) = sample(folder.path());
    let desk = desk.to_str().unwrap();
    for command in ["board", "groups", "talk", "who-has-not"] {
        let refused = surefoot(&[command, "--desk", desk, "--class", "Room 99"]);
        let said = String::from_utf8(refused.stderr).unwrap();
        assert!(!refused.status.success() && refused.stdout.is_empty());
        assert!(
            said.contains("name a class with --class; there are: "),
            "{said}"
        );
    }
    let refused = surefoot(&["talk", "--desk", desk, "--minutes", "90"]);
    assert!(!refused.status.success());
    assert!(
        String::from_utf8(refused.stderr)
            .unwrap()
            .contains("1..=20")
    );
}

#[test]
fn the_detection_table_sets_three_simpler_ways_beside_ours() {
    let file = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../../shared/vectors/insight/detection.json"
    );
    let asked = ["insight", "detection", "--instances", file, "--table"];
    let output = words(&surefoot(&asked));
    let mut as_json = asked.to_vec();
    as_json.push("--json");
    let json: Value = serde_json::from_str(&words(&surefoot(&as_json))).unwrap();
    assert_eq!((&json["classes"], &json["dates"]), (&2.into(), &8.into()));
    let ways = json["ways"].as_array().unwrap();
    assert_eq!(ways.len(), 4);
    for way in ways {
        let [auc, first] = ["auc", "first_five"].map(|key| way[key].as_f64().unwrap());
        let name = way["way"].as_str().unwrap();
        let line = format!("{name:<36} {auc:>6.3} {first:>11.3}");
        assert!(output.lines().any(|l| l == line), "{line} in:\n{output}");
        assert!(name == "Surefoot" || auc < ways[0]["auc"].as_f64().unwrap());
    }
    let without = surefoot(&["insight", "talk-plan", "--instances", file, "--table"]);
    assert!(!without.status.success());
}

#[test]
fn the_name_of_a_file_steers_no_terminal() {
    let folder = tempfile::tempdir().unwrap();
    let (desk, _) = sample(folder.path());
    let name = "a\u{1b}[2J\u{9b}1m\u{202e}x.sfhandin";
    let file = folder.path().join(name);
    std::fs::write(&file, b"no hand-in").unwrap();
    let (desk, file) = (desk.to_str().unwrap(), file.to_str().unwrap());
    for more in [&[][..], &["--json"]] {
        let output = words(&surefoot(
            &[&["import", "--desk", desk, file], more].concat(),
        ));
        let steers = |c: char| (c.is_control() && c != '\n') || c == '\u{202e}';
        assert!(!output.contains(steers), "{output:?}");
        assert!(output.contains("u001b[2J"), "{output}");
    }
    let failed = surefoot(&["exercises", "--concept", "\u{9b}2J"]);
    let words = String::from_utf8(failed.stderr).unwrap();
    assert!(words.contains("\\u009b2J"), "{words}");
}

#[test]
fn a_locked_desk_opens_only_with_its_passphrase() {
    let folder = tempfile::tempdir().unwrap();
    let (open, made) = sample(folder.path());
    let locked = folder.path().join("locked.sqlite");
    std::fs::write(&locked, "").unwrap();
    let kept = KeptKey::locked("seven quiet rivers", None).unwrap();
    let desk = DeskStore::open(&open, Durability::Full).unwrap();
    desk.resealed(&kept, true)
        .unwrap()
        .write_anew(&locked)
        .unwrap();
    let file = |words: &str| {
        let path = folder.path().join("words");
        std::fs::write(&path, words).unwrap();
        path
    };
    let run = |command: &[&str], words: Option<PathBuf>| {
        let mut run = Command::new(env!("CARGO_BIN_EXE_surefoot"));
        run.args(command).arg("--desk").arg(&locked);
        if let Some(words) = words {
            run.arg("--passphrase-file").arg(words);
        }
        run.stdin(std::process::Stdio::null()).output().unwrap()
    };
    let slips = folder.path().join("slips.pdf");
    let commands: [Vec<&str>; 6] = [
        vec!["board", "--today", TODAY, "--json"],
        vec!["talk", "--today", TODAY],
        vec!["groups", "--today", TODAY],
        vec!["share-table", "--today", TODAY],
        vec!["report", "--of", "slips", "--out", slips.to_str().unwrap()],
        vec!["import", folder.path().to_str().unwrap()],
    ];
    for command in &commands {
        let refused = run(command, None);
        assert_eq!(refused.status.code(), Some(1), "{command:?}");
        let why = String::from_utf8_lossy(&refused.stderr).into_owned();
        assert!(why.contains("--passphrase-file"), "{why}");
        assert!(refused.stdout.is_empty());
        words(&run(command, Some(file("seven quiet rivers\r\n"))));
    }
    let wrong = run(&commands[0], Some(file("seven quiet river")));
    assert_eq!(wrong.status.code(), Some(1));
    assert!(String::from_utf8_lossy(&wrong.stderr).contains("does not open the desk"));
    let missing = run(&commands[0], Some(folder.path().join("no such file")));
    assert_eq!(missing.status.code(), Some(1));
    let board = run(&commands[0], Some(file("seven quiet rivers")));
    let board: Value = serde_json::from_str(&words(&board)).unwrap();
    assert_eq!(board, made["board"]);
}
