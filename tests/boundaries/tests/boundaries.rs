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

/// The most hops of a rating's way.
const MOST_HOPS: usize = 25;

/// A row of the table under "A rating's way": what the rating passes in one room.
struct Row {
    /// A number for a hop, a letter where a person begins.
    label: String,
    /// The row that makes the call.
    from: String,
    room: String,
    passes: Vec<Place>,
}

impl Row {
    fn is_hop(&self) -> bool {
        self.label.parse::<usize>().is_ok()
    }
}

#[derive(PartialEq, Eq, PartialOrd, Ord)]
struct Place {
    file: String,
    /// Without one, the place is the component that the file holds.
    function: Option<String>,
}

impl Place {
    fn name(&self) -> &str {
        let file = self.file.rsplit('/').next().unwrap_or_default();
        let component = file.split('.').next().unwrap_or_default();
        self.function.as_deref().unwrap_or(component)
    }
}

fn rows(page: &str) -> Vec<Row> {
    page.lines()
        .filter_map(|line| {
            let cells: Vec<&str> = line.split('|').map(str::trim).collect();
            let ["", label, from, room, passes, _, ""] = cells[..] else {
                return None;
            };
            let folder = match room {
                "ui" | "src-tauri" => format!("{room}/src"),
                room => format!("crates/{room}/src"),
            };
            let places = passes.split(';').flat_map(|of_file| {
                let mut words = of_file.split('`').skip(1).step_by(2);
                let file = words.next().map(|file| format!("{folder}/{file}"));
                let mut functions: Vec<_> = words.map(|word| Some(word.to_owned())).collect();
                if functions.is_empty() {
                    functions.push(None);
                }
                functions.into_iter().filter_map(move |function| {
                    let file = file.clone()?;
                    Some(Place { file, function })
                })
            });
            let row = Row {
                label: label.to_owned(),
                from: from.to_owned(),
                room: room.to_owned(),
                passes: places.collect(),
            };
            let begins = matches!(label.as_bytes(), [letter] if letter.is_ascii_lowercase());
            (begins || row.is_hop()).then_some(row)
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

/// Whether code calls a function, hands it on as `Type::name`, or shows a component.
fn names(code: &str, name: &str) -> bool {
    mentions(code, name, |before, after| {
        let called = after.starts_with('(') || after.starts_with("::<");
        called || before.ends_with("::") || before.ends_with('<')
    })
}

/// Whether code of the screens makes a call of the table.
fn makes_call(code: &str, name: &str) -> bool {
    mentions(code, name, |before, after| {
        before.ends_with('\'') && after.starts_with('\'')
    })
}

/// Whether a line of code, not a comment, has the whole name between words that `fits` takes.
fn mentions(code: &str, name: &str, fits: impl Fn(&str, &str) -> bool) -> bool {
    let is_part = |sign: char| sign.is_alphanumeric() || sign == '_';
    (code.lines())
        .filter(|line| !line.trim_start().starts_with("//"))
        .any(|line| {
            line.match_indices(name).any(|(at, _)| {
                let (before, from) = line.split_at(at);
                let after = &from[name.len()..];
                let whole = !before.ends_with(is_part) && !after.starts_with(is_part);
                whole && fits(before, after)
            })
        })
}

/// What is wrong with the rows: a file or function that is not there, a function that neither one
/// before it in its row nor the row that the hop comes from names, or a hop within one room.
fn way_faults(rows: &[Row], text_of: impl Fn(&str) -> Option<String>) -> Vec<String> {
    let code_of = |place: &Place| -> Vec<String> {
        let Some(text) = text_of(&place.file) else {
            return Vec::new();
        };
        match &place.function {
            Some(function) => (bodies(&text, &place.file, function).into_iter())
                .map(str::to_owned)
                .collect(),
            None => vec![text],
        }
    };
    let mut faults = Vec::new();
    for (at, row) in rows.iter().enumerate() {
        let label = &row.label;
        // The row in which a person began, and the row that makes the call.
        let begun = rows[..=at].iter().rfind(|row| !row.is_hop());
        let from = rows[..at].iter().rfind(|before| before.label == row.from);
        if row.is_hop() && from.is_none_or(|from| from.room == row.room) {
            faults.push(format!("{label}: comes from no other room"));
        }
        let before: Vec<String> = from.map_or(Vec::new(), |from| {
            from.passes.iter().flat_map(code_of).collect()
        });
        let screens: Vec<String> = begun.map_or(Vec::new(), |row| {
            row.passes.iter().flat_map(code_of).collect()
        });
        let mut here: Vec<String> = Vec::new();
        for (nth, place) in row.passes.iter().enumerate() {
            let name = place.name();
            let code = code_of(place);
            if code.is_empty() {
                faults.push(format!("{label}: {} has no {name}", place.file));
            }
            let called = here.iter().chain(&before).any(|code| names(code, name));
            let by_name = row.is_hop() && screens.iter().any(|code| makes_call(code, name));
            let by_person = !row.is_hop() && nth == 0;
            if !(called || by_name || by_person) {
                faults.push(format!("{label}: nothing before it names {name}"));
            }
            here.extend(code);
        }
    }
    faults
}

#[test]
fn a_ratings_way_is_the_one_that_the_architecture_shows() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let page = page("docs/architecture.md");
    let rows = rows(&page);
    let hops: Vec<usize> = rows
        .iter()
        .filter_map(|row| row.label.parse().ok())
        .collect();
    assert_eq!(hops, (1..=hops.len()).collect::<Vec<_>>());
    assert!(hops.len() <= MOST_HOPS, "{}", hops.len());
    // Only the tap, the hand-in, the import and the board begin with a person.
    let begun: String = (rows.iter())
        .filter(|row| !row.is_hop())
        .map(|row| row.label.as_str())
        .collect();
    assert_eq!(begun, "abcd");
    let functions: BTreeSet<&Place> = rows.iter().flat_map(|row| &row.passes).collect();
    let counts = format!(
        "board in {} hops, through {} functions",
        hops.len(),
        functions.len()
    );
    assert!(page.contains(&counts), "{counts}");
    let faults = way_faults(&rows, |file| std::fs::read_to_string(top.join(file)).ok());
    assert_eq!(faults, Vec::<String>::new());
}

#[test]
fn a_hop_that_is_not_there_or_not_called_is_caught() {
    let tree = |file: &str| match file {
        "ui/src/Tap.svelte" => Some("<button onclick={() => call('rate')}>".to_owned()),
        "crates/a/src/b.rs" => {
            Some("fn make() {}\nfn rate(x: u8) -> u8 {\n    // keep(x)\n    store(x)\n}".to_owned())
        }
        "crates/c/src/d.rs" => {
            Some("fn keep();\nfn store<T>(x: T) { keep(x) }\nfn keep() {}".to_owned())
        }
        _ => None,
    };
    let faults = |text: &str| way_faults(&rows(text), tree);
    let tap = "| hop | from | room | passes | what |\n|---|---|---|---|---|\n\
               | | | **the tap** | | |\n| a | | ui | `Tap.svelte` | x |\n\
               | 1 | a | a | `b.rs`: `rate` | x |\n";
    let good = format!("{tap}| 2 | 1 | c | `d.rs`: `store`, `keep` | x |\n");
    assert_eq!(rows(&good).len(), 3);
    assert_eq!(rows(&good)[2].passes.len(), 2);
    assert_eq!(faults(&good), Vec::<String>::new());
    for (row, fault) in [
        (
            "| 2 | 1 | c | `d.rs`: `keep` | x |",
            "2: nothing before it names keep",
        ),
        (
            "| 2 | 1 | c | `d.rs`: `store`, `stores` | x |",
            "2: crates/c/src/d.rs has no stores; 2: nothing before it names stores",
        ),
        (
            "| 2 | 1 | c | `e.rs`: `store` | x |",
            "2: crates/c/src/e.rs has no store",
        ),
        (
            "| 2 | a | c | `d.rs`: `store` | x |",
            "2: nothing before it names store",
        ),
        (
            "| 2 | 3 | c | `d.rs`: `store` | x |",
            "2: comes from no other room; 2: nothing before it names store",
        ),
        (
            "| 2 | 1 | a | `b.rs`: `rate` | x |",
            "2: comes from no other room",
        ),
        (
            "| 2 | 1 | a | `b.rs`: `make` | x |",
            "2: comes from no other room; 2: nothing before it names make",
        ),
    ] {
        assert_eq!(faults(&format!("{tap}{row}\n")).join("; "), fault, "{row}");
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

/// Names of tests that are not there, attacks without a row, and rows without a test that do not
/// say "none".
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
