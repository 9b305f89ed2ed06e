//! The tree keeps the rules, and each rule catches a planted fault.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use std::collections::BTreeSet;
use std::path::Path;
use std::process::Command;
use surefoot_boundaries::{
    Circles, Member, RULES, SourceFile, architecture_faults, circles, dependencies_of, map_faults,
    members, source_files, without_reason,
};

fn file(path: &str, text: &str) -> SourceFile {
    SourceFile {
        path: path.to_owned(),
        text: text.to_owned(),
    }
}

/// The names of the rules that a file breaks.
fn broken(path: &str, text: &str) -> Vec<&'static str> {
    let file = file(path, text);
    let breaks = RULES.iter().filter(|(_, rule)| !rule(&file).is_empty());
    breaks.map(|(name, _)| *name).collect()
}

#[test]
fn the_tree_keeps_every_rule() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let files = source_files(&top).unwrap();
    for known in [
        "Cargo.toml",
        "src-tauri/Cargo.toml",
        "crates/catalogue/src/lib.rs",
        "LICENSE",
    ] {
        assert!(
            files.iter().any(|f| f.path == known),
            "{known} was not looked at"
        );
    }
    let mut faults = Vec::new();
    for file in &files {
        for (name, rule) in RULES {
            for words in rule(file) {
                faults.push(format!("{}: {name}: {words}", file.path));
            }
        }
    }
    assert!(faults.is_empty(), "\n{}", faults.join("\n"));
}

#[test]
fn a_second_crate_on_tauri_is_caught() {
    let rule = ["only src-tauri depends on tauri"];
    for text in [
        "[dependencies]\ntauri = \"2\"",
        "[target.'cfg(unix)'.dev-dependencies]\ntauri-plugin-fs = \"2\"",
        "[workspace.dependencies]\nshell = { package = \"tauri\", version = \"2\" }",
    ] {
        assert_eq!(broken("crates/app/Cargo.toml", text), rule, "{text}");
        assert!(broken("src-tauri/Cargo.toml", text).is_empty());
    }
    assert!(broken("crates/app/Cargo.toml", "[dependencies]\nserde = \"1\"").is_empty());
}

#[test]
fn a_screen_that_imports_tauri_is_caught() {
    let text = "import { invoke } from '@tauri-apps/api/core';";
    let rule = ["only ui/src/lib/backend imports @tauri-apps"];
    assert_eq!(broken("ui/src/Today.svelte", text), rule);
    assert_eq!(broken("ui/src/lib/dates.ts", text), rule);
    assert!(broken("ui/src/lib/backend/call.ts", text).is_empty());
}

#[test]
fn sql_outside_the_store_is_caught() {
    let text = "use rusqlite::Connection;";
    let rule = ["only crates/store names rusqlite"];
    assert_eq!(broken("crates/insight/src/lib.rs", text), rule);
    assert_eq!(broken("crates/app/tests/calls.rs", text), rule);
    assert!(broken("crates/store/src/desk.rs", text).is_empty());
}

#[test]
fn a_machines_path_or_a_registry_host_is_caught() {
    let rule = ["no registry hosts and no machine's paths"];
    for place in [
        concat!("/ho", "me/somebody/surefoot"),
        concat!("see `/ro", "ot/.cargo`"),
        concat!("https://registry.npm", "js.org/svelte"),
    ] {
        assert_eq!(broken("README.md", place), rule, "{place}");
    }
    assert!(broken("README.md", "pages/home/start, ~/a-class").is_empty());
}

#[test]
fn a_mirror_in_a_lock_file_is_caught() {
    let rule = ["locked packages come from the public registry"];
    let text = r#"{ "packages": { "node_modules/svelte": {
        "resolved": "https://mirror.example/svelte.tgz",
        "integrity": "sha512-x" } } }"#;
    assert_eq!(broken("ui/package-lock.json", text), rule);
    let text = r#"[[package]]
        name = "serde"
        source = "registry+https://mirror.example/index"
        checksum = "x""#;
    assert_eq!(broken("Cargo.lock", text), rule);
}

#[test]
fn a_locked_package_without_a_checksum_is_caught() {
    let rule = ["every locked package has its checksum"];
    let npm = |more: &str| {
        let text = format!(
            r#"{{ "packages": {{ "": {{}},
                "node_modules/svelte": {{ "version": "5.0.0"{more} }} }} }}"#
        );
        broken("ui/package-lock.json", &text)
    };
    assert_eq!(npm(""), rule);
    assert_eq!(npm(r#", "integrity": "sha1-x""#), rule);
    assert!(npm(r#", "integrity": "sha512-x""#).is_empty());
    let cargo = |more: &str| {
        let source = "registry+https://github.com/rust-lang/crates.io-index";
        let text = format!(
            "[[package]]\nname = \"own\"\n[[package]]\nname = \"serde\"\nsource = \"{source}\"\n{more}"
        );
        broken("Cargo.lock", &text)
    };
    assert_eq!(cargo(""), rule);
    assert!(cargo("checksum = \"x\"").is_empty());
    assert_eq!(broken("ui/package-lock.json", "{}"), rule);
}

#[test]
fn a_borrowed_word_is_caught_where_people_read_it() {
    let rule = ["words that belong to other programs"];
    assert_eq!(broken("shared/messages/en/x.ftl", "x = A new badge!"), rule);
    assert_eq!(broken("shared/messages/en/x.ftl", "x = Level up"), rule);
    assert!(broken("shared/messages/en/x.ftl", "x = Decked out").is_empty());
}

#[test]
fn every_dependency_has_its_reason() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let files = source_files(&top).unwrap();
    let names = dependencies_of(&files).unwrap();
    for known in ["serde", "tauri", "svelte", "sympy"] {
        assert!(names.contains(known), "{known} was not looked at");
    }
    let page = files
        .iter()
        .find(|f| f.path == "docs/dependencies.md")
        .unwrap();
    assert_eq!(without_reason(&names, &page.text), Vec::<String>::new());
}

#[test]
fn a_dependency_without_a_reason_is_caught() {
    let files = [file(
        "crates/exercises/Cargo.toml",
        "[dependencies]\nserde = \"1\"\nrand = \"1\"",
    )];
    let names = dependencies_of(&files).unwrap();
    let page = "| crate | why |\n|---|---|\n| serde | values |\n| rand | |";
    assert_eq!(without_reason(&names, page), ["rand"]);
}

/// Cargo's own list of the workspace's crates.
fn workspace() -> Vec<Member> {
    let output = Command::new(env!("CARGO"))
        .args([
            "metadata",
            "--no-deps",
            "--offline",
            "--format-version",
            "1",
        ])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .unwrap();
    assert!(
        output.status.success(),
        "{}",
        String::from_utf8_lossy(&output.stderr)
    );
    members(&serde_json::from_slice(&output.stdout).unwrap())
}

fn page(path: &str) -> String {
    std::fs::read_to_string(
        Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("../..")
            .join(path),
    )
    .unwrap()
}

#[test]
fn the_documents_show_the_crates_that_are_there() {
    let workspace = workspace();
    assert!(workspace.iter().any(|member| member.name == "catalogue"));
    let architecture = architecture_faults(&workspace, &page("docs/architecture.md"));
    let map = map_faults(&workspace, &page("DEVELOPERS.md"));
    assert_eq!([architecture, map].concat(), Vec::<String>::new());
}

const CRATES: &str = "
## The crates

```
  calls    app
           -----------
  values   record  b-side
           -----------
  words    catalogue
```

| crate | holds | uses | must never know |
|---|---|---|---|
| `catalogue` | concepts | | students |
| `record` | a `check-in` | `catalogue` | stores |
| `b-side` | more | `catalogue` | stores |
| `app` | calls | `catalogue`, `record` | the window |
";

fn member(name: &str, folder: &str, uses: &[&str]) -> Member {
    Member {
        name: name.to_owned(),
        folder: folder.to_owned(),
        uses: uses.iter().map(|&used| used.to_owned()).collect(),
    }
}

#[test]
fn a_crate_that_the_architecture_shows_wrongly_is_caught() {
    let good = [
        member("catalogue", "crates/catalogue", &[]),
        member("record", "crates/record", &["catalogue"]),
        member("b-side", "crates/b-side", &["catalogue"]),
        member("app", "crates/app", &["catalogue", "record"]),
        member("bridge", "tests/bridge", &["app"]),
    ];
    assert_eq!(architecture_faults(&good, CRATES), Vec::<String>::new());
    let with = |at: usize, other: Member| {
        let mut members = good.to_vec();
        members[at] = other;
        architecture_faults(&members, CRATES)
    };
    for (faults, expected) in [
        (
            architecture_faults(&good[..3], CRATES),
            vec!["the table has app, which is no crate"],
        ),
        (
            with(4, member("report", "crates/report", &[])),
            vec!["report has no row in the table", "report is on no floor"],
        ),
        (
            with(1, member("record", "crates/entries", &["catalogue"])),
            vec!["surefoot-record is in crates/entries"],
        ),
        (
            with(1, member("record", "crates/record", &[])),
            vec![r#"record: the table says it uses {"catalogue"}, Cargo says {}"#],
        ),
    ] {
        assert_eq!(faults, expected);
    }
    // Upward, and to the same floor, even if the table agrees.
    for (used, table) in [("app", "| `app` |"), ("b-side", "| `b-side` |")] {
        let page = CRATES.replace("| a `check-in` | `catalogue` |", &format!("| x {table}"));
        let mut members = good.to_vec();
        members[1] = member("record", "crates/record", &[used]);
        let expected = format!("record uses {used}, which is not on a lower floor");
        assert_eq!(architecture_faults(&members, &page), [expected]);
    }
}

#[test]
fn a_crate_that_the_map_leaves_out_is_caught() {
    let map = "| folder | holds |\n|---|---|\n| `crates/student`, `crates/desk` | both |\n\
               | `src-tauri` | the window |\n| `tests` | `bridge`, `oracle` |\n\nWords.\n\n\
               | `crates/late` | no map |\n";
    let student = member("student", "crates/student", &[]);
    let desk = member("desk", "crates/desk", &[]);
    let window = member("desktop", "src-tauri", &[]);
    let bridge = member("bridge", "tests/bridge", &[]);
    let good = [student, desk, window, bridge];
    assert_eq!(map_faults(&good, map), Vec::<String>::new());
    assert_eq!(
        map_faults(&good[1..], map),
        ["the map has crates/student, which is no crate"]
    );
    for folder in ["crates/late", "tests/bench"] {
        let mut members = good.to_vec();
        members.push(member("late", folder, &[]));
        assert_eq!(
            map_faults(&members, map),
            [format!("the map leaves out {folder}")]
        );
    }
}

#[test]
fn files_and_folders_form_no_circles() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let files = source_files(&top).unwrap();
    let crates: BTreeSet<&str> = files
        .iter()
        .filter_map(|file| file.path.strip_prefix("crates/")?.split_once("/src/"))
        .map(|(name, _)| name)
        .collect();
    assert!(crates.contains("cli") && crates.contains("desk"));
    for name in crates {
        for which in [Circles::BetweenFiles, Circles::OfFolders] {
            assert_eq!(circles(&files, name, which), Vec::<String>::new(), "{name}");
        }
    }
}

#[test]
fn no_crate_indexes_or_slices_outside_its_tests() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let files = source_files(&top).unwrap();
    let roots: Vec<_> = files
        .iter()
        .filter(|file| {
            let mut parts = file.path.split('/');
            let of_crate = parts.next() == Some("crates") && parts.next().is_some();
            let root = matches!(parts.collect::<Vec<_>>()[..], ["src", "lib.rs" | "main.rs"]);
            of_crate && root || file.path == "src-tauri/src/lib.rs"
        })
        .collect();
    assert!(roots.len() > 12, "{}", roots.len());
    for root in roots {
        assert!(
            root.text
                .contains("#![cfg_attr(not(test), deny(clippy::indexing_slicing))]"),
            "{} does not deny indexing_slicing",
            root.path
        );
    }
}

#[test]
fn a_circle_is_caught() {
    let crate_of = |line: &str, other: &str| {
        [
            file(
                "crates/x/src/lib.rs",
                "mod draw;\npub mod model;\npub use draw::Line;",
            ),
            file("crates/x/src/draw/mod.rs", "mod line;\npub use line::*;"),
            file("crates/x/src/draw/line.rs", line),
            file("crates/x/src/model.rs", other),
        ]
    };
    let found =
        |line: &str, other: &str| circles(&crate_of(line, other), "x", Circles::BetweenFiles);
    let circle = ["draw/line.rs -> model.rs -> draw/line.rs"];
    let uses_model = "use crate::model::Block;\npub struct Line;";
    for uses_line in [
        "use crate::Line;",
        "use super::{draw::{Line as L}, other};",
        "fn f() { let line = crate::draw::Line; }",
        "fn f(line: super::draw::line::Line) {}",
    ] {
        assert_eq!(found(uses_model, uses_line), circle, "{uses_line}");
        assert!(
            found("pub struct Line;", uses_line).is_empty(),
            "{uses_line}"
        );
    }
    for uses_nothing in [
        "// use crate::Line;",
        "#[cfg(test)]\nmod tests {\n    use crate::Line;\n}",
        "use other::Line;",
    ] {
        assert!(found(uses_model, uses_nothing).is_empty(), "{uses_nothing}");
    }
}

#[test]
fn a_circle_of_folders_is_caught_without_one_of_files() {
    let files = |of_c: &str| {
        [
            file("crates/x/src/lib.rs", "mod a;\nmod c;\nmod error;"),
            file("crates/x/src/error.rs", "use crate::a::d::D;"),
            file("crates/x/src/a/mod.rs", "mod b;\npub mod d;"),
            file(
                "crates/x/src/a/b.rs",
                "use crate::c::e::E;\nuse crate::error::F;",
            ),
            file("crates/x/src/a/d.rs", ""),
            file("crates/x/src/c/mod.rs", "pub mod e;"),
            file("crates/x/src/c/e.rs", of_c),
        ]
    };
    let circle = files("use crate::a::d::D;");
    assert!(circles(&circle, "x", Circles::BetweenFiles).is_empty());
    assert_eq!(
        circles(&circle, "x", Circles::OfFolders),
        ["a/mod.rs -> c/mod.rs -> a/mod.rs"]
    );
    assert!(circles(&files(""), "x", Circles::OfFolders).is_empty());
}

/// A row of the table under "A rating's way".
struct Hop {
    number: usize,
    file: String,
    /// Without one, the hop is the component that the file holds.
    function: Option<String>,
    /// The hop whose function calls this one.
    called_in: Option<usize>,
}

impl Hop {
    fn name(&self) -> &str {
        let file = self.file.rsplit('/').next().unwrap_or_default();
        let component = file.split('.').next().unwrap_or_default();
        self.function.as_deref().unwrap_or(component)
    }
}

fn hops(page: &str) -> Vec<Hop> {
    page.lines()
        .filter_map(|line| {
            let mut cells = line.strip_prefix("| ")?.split(" | ");
            let number = cells.next()?.parse().ok()?;
            let mut place = cells.next()?.split('`').skip(1).step_by(2);
            Some(Hop {
                number,
                file: place.next()?.to_owned(),
                function: place.next().map(str::to_owned),
                called_in: cells.next()?.trim().parse().ok(),
            })
        })
        .collect()
}

/// The part of `text` after its first `open`, up to the `close` that belongs to it.
fn enclosed(text: &str, [open, close]: [char; 2]) -> Option<(&str, &str)> {
    let (_, inner) = text.split_once(open)?;
    let mut depth = 1;
    for (at, sign) in inner.char_indices() {
        depth += i32::from(sign == open) - i32::from(sign == close);
        if depth == 0 {
            return Some(inner.split_at(at));
        }
    }
    None
}

/// The bodies of the functions of this name in a Rust, TypeScript or Svelte file.
fn bodies<'t>(text: &'t str, file: &str, name: &str) -> Vec<&'t str> {
    let begins = |before: &str| match file.ends_with(".rs") {
        true => before.ends_with("fn"),
        false => matches!(before, "" | "async") || before.ends_with("function"),
    };
    text.match_indices(name)
        .filter_map(|(at, _)| {
            let (before, from) = text.split_at(at);
            let line = before.rsplit('\n').next()?;
            let after = from.strip_prefix(name)?;
            if !begins(line.trim()) || !after.starts_with(['(', '<']) {
                return None;
            }
            let (_, after) = enclosed(after, ['(', ')'])?;
            // What is only declared, or called, has no body.
            if after.split('{').next()?.contains(';') {
                return None;
            }
            Some(enclosed(after, ['{', '}'])?.0)
        })
        .collect()
}

/// Whether code calls a function, hands it on as `Type::name`, makes a call of the table by its
/// name, or shows a component.
fn names(code: &str, name: &str) -> bool {
    let is_part = |sign: char| sign.is_alphanumeric() || sign == '_';
    (code.lines())
        .filter(|line| !line.trim_start().starts_with("//"))
        .any(|line| {
            line.match_indices(name).any(|(at, _)| {
                let (before, from) = line.split_at(at);
                let after = &from[name.len()..];
                let whole = !before.ends_with(is_part) && !after.starts_with(is_part);
                let called = after.starts_with('(') || after.starts_with("::<");
                let quoted = before.ends_with('\'') && after.starts_with('\'');
                whole && (called || quoted || before.ends_with("::") || before.ends_with('<'))
            })
        })
}

/// What is wrong with the hops: a file or function that is not there, or one that the hop that it
/// is called in does not name.
fn hop_faults(hops: &[Hop], text_of: impl Fn(&str) -> Option<String>) -> Vec<String> {
    let code_of = |hop: &Hop| -> Option<Vec<String>> {
        let text = text_of(&hop.file)?;
        let Some(function) = &hop.function else {
            return Some(vec![text]);
        };
        let found = bodies(&text, &hop.file, function);
        (!found.is_empty()).then(|| found.into_iter().map(str::to_owned).collect())
    };
    let mut faults = Vec::new();
    for hop in hops {
        let (number, name) = (hop.number, hop.name());
        if code_of(hop).is_none() {
            faults.push(format!("{number}: {} has no {name}", hop.file));
        }
        let Some(called_in) = hop.called_in else {
            continue;
        };
        let caller = hops[..number - 1]
            .iter()
            .find(|hop| hop.number == called_in);
        let code = caller.and_then(code_of).unwrap_or_default();
        if !code.iter().any(|code| names(code, name)) {
            faults.push(format!("{number}: hop {called_in} does not name {name}"));
        }
    }
    faults
}

#[test]
fn a_ratings_way_is_the_one_that_the_architecture_shows() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let page = page("docs/architecture.md");
    let hops = hops(&page);
    let numbers: Vec<usize> = hops.iter().map(|hop| hop.number).collect();
    assert_eq!(numbers, (1..=hops.len()).collect::<Vec<_>>());
    assert!(page.contains(&format!("board in {} hops", hops.len())));
    // Only the tap, the hand-in, the import and the board begin with a person.
    let begun = hops.iter().filter(|hop| hop.called_in.is_none()).count();
    assert_eq!(begun, 4);
    let faults = hop_faults(&hops, |file| std::fs::read_to_string(top.join(file)).ok());
    assert_eq!(faults, Vec::<String>::new());
}

#[test]
fn a_hop_that_is_not_there_or_not_called_is_caught() {
    let tree = |file: &str| match file {
        "ui/Tap.svelte" => Some("<button onclick={() => call('rate')}>".to_owned()),
        "a/b.rs" => Some("fn rate(x: u8) -> u8 {\n    // keep(x)\n    store(x)\n}".to_owned()),
        "a/c.rs" => Some("fn keep();\nfn store<T>(x: T) { keep(x) }\nfn keep() {}".to_owned()),
        _ => None,
    };
    let faults = |rows: &str| hop_faults(&hops(rows), tree);
    let tap = "| 1 | `ui/Tap.svelte` |  | x |\n| 2 | `a/b.rs`: `rate` | 1 | x |\n";
    let good = format!("{tap}| | **b** | | |\n| 3 | `a/c.rs`: `store` | 2 | x |\n");
    assert_eq!(hops(&good).len(), 3);
    assert_eq!(faults(&good), Vec::<String>::new());
    for (row, fault) in [
        (
            "| 3 | `a/c.rs`: `keep` | 2 | x |",
            "3: hop 2 does not name keep",
        ),
        (
            "| 3 | `a/c.rs`: `store` | 1 | x |",
            "3: hop 1 does not name store",
        ),
        (
            "| 3 | `a/d.rs`: `store` | 2 | x |",
            "3: a/d.rs has no store",
        ),
        (
            "| 3 | `a/b.rs`: `store` | 2 | x |",
            "3: a/b.rs has no store",
        ),
    ] {
        assert_eq!(faults(&format!("{tap}{row}")), [fault]);
    }
}

/// The rows of the threat model's tables of attacks: first and last cell.
fn attack_rows(page: &str) -> Vec<(&str, &str)> {
    let section = page.split("\n## ").find(|s| s.starts_with("Attacks\n"));
    (section.into_iter().flat_map(str::lines))
        .filter_map(|line| line.strip_prefix("| ")?.strip_suffix(" |"))
        .filter_map(|row| Some((row.split(" | ").next()?, row.rsplit(" | ").next()?)))
        .filter(|(attack, _)| *attack != "attack")
        .collect()
}

/// Names of tests that are not there, attacks that no row names, and rows without a test that do
/// not say "none".
fn attack_faults(page: &str, files: &[SourceFile]) -> Vec<String> {
    let tries: Vec<&str> = files
        .iter()
        .filter_map(|file| file.path.strip_prefix("tests/attacks/tries/"))
        .filter_map(|name| name.strip_suffix(".py"))
        .filter(|name| *name != "__init__")
        .collect();
    let is_there = |name: &str| {
        let function = format!("fn {name}(");
        tries.contains(&name)
            || files.iter().any(|file| {
                file.path == name || file.path.ends_with(".rs") && file.text.contains(&function)
            })
    };
    let mut faults = Vec::new();
    let mut named = BTreeSet::new();
    for (attack, tests) in attack_rows(page) {
        let names: Vec<&str> = tests.split('`').skip(1).step_by(2).collect();
        if names.is_empty() && !tests.starts_with("none: ") {
            faults.push(format!("{attack}: no test"));
        }
        faults.extend(
            (names.iter().filter(|name| !is_there(name)))
                .map(|name| format!("{attack}: there is no {name}")),
        );
        named.extend(names);
    }
    let unnamed = tries.iter().filter(|name| !named.contains(*name));
    faults.extend(unnamed.map(|name| format!("{name} has no row")));
    faults
}

#[test]
fn every_attack_has_its_row_and_every_row_its_test() {
    let page = page("docs/threat-model.md");
    let files = source_files(&Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")).unwrap();
    assert!(attack_rows(&page).len() > 40);
    let faults = attack_faults(&page, &files);
    assert!(faults.is_empty(), "\n{}", faults.join("\n"));
}

#[test]
fn an_attack_without_a_row_and_a_row_without_a_test_are_caught() {
    let files = [
        file("tests/attacks/tries/__init__.py", ""),
        file("tests/attacks/tries/tried.py", ""),
        file("tests/attacks/tries/forgotten.py", ""),
        file("crates/a/src/b.rs", "#[test]\nfn holds() {}"),
    ];
    let page = "\n## Attacks\n| attack | what | tests |\n|---|---|---|\n\
                | a | b | `tried`, `holds` |\n| c | d | none: a reason |\n\
                | e | f | `gone` |\n| g | h |  |\n## Next\n| i | j | `else` |\n";
    assert_eq!(
        attack_faults(page, &files),
        ["e: there is no gone", "g: no test", "forgotten has no row"]
    );
}
