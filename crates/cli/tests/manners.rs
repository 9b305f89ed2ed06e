//! How the command behaves towards the shell that runs it.
#![allow(clippy::unwrap_used)]

use std::io::Read as _;
use std::process::{Command, Output, Stdio};

fn surefoot(arguments: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_surefoot"));
    command.args(arguments);
    command
}

/// That the command failed with one line of words that say `what`.
fn fails_saying(output: &Output, what: &str) {
    let words = String::from_utf8_lossy(&output.stderr);
    assert!(!output.status.success());
    assert!(output.stdout.is_empty());
    assert!(
        words.starts_with("surefoot: ") && words.contains(what),
        "{words}"
    );
    assert_eq!(words.lines().count(), 1, "{words}");
}

#[test]
fn a_reader_who_has_seen_enough_ends_it_quietly() {
    for arguments in [
        &["catalogue", "--json"][..],
        &["catalogue", "--coverage"],
        &["exercises", "--concept", "all", "--count", "20"],
    ] {
        let mut child = surefoot(arguments)
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        // One byte, then the pipe is closed.
        child.stdout.take().unwrap().read_exact(&mut [0]).unwrap();
        let output = child.wait_with_output().unwrap();
        let words = String::from_utf8_lossy(&output.stderr);
        assert!(output.status.success() && words.is_empty(), "{words}");
    }
}

#[test]
fn what_is_not_there_is_named() {
    let concept = surefoot(&["exercises", "--concept", "g9-nothing"]).output();
    fails_saying(&concept.unwrap(), "there is no concept g9-nothing");
    let human = surefoot(&["exercises", "--concept", "g6-choose-measure"]).output();
    fails_saying(&human.unwrap(), "g6-choose-measure has no exercises");

    let folder = tempfile::tempdir().unwrap();
    let desk = folder.path().join("none.sqlite");
    for command in ["board", "groups", "talk", "who-has-not"] {
        let output = surefoot(&[command, "--desk", desk.to_str().unwrap()]).output();
        fails_saying(&output.unwrap(), "there is no desk here");
    }
    assert!(!desk.exists(), "asking must not make a desk");
}
