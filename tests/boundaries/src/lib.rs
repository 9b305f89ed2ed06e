//! Test only: what may name what in the source tree. Each rule takes a file's
//! path from the top of the tree and its text, and returns the faults.

use std::collections::BTreeSet;

mod circles;
mod crates;
mod tree;

pub use circles::{Circles, circles};
pub use crates::{Member, architecture_faults, map_faults, members};
pub use tree::{SourceFile, source_files};

/// A rule: returns the faults of one file, each in words for the person who reads
/// the failed test.
pub type Rule = fn(&SourceFile) -> Vec<String>;

/// All rules, by name.
pub const RULES: &[(&str, Rule)] = &[
    (
        "only src-tauri depends on tauri",
        only_the_shell_depends_on_tauri,
    ),
    (
        "only ui/src/lib/backend imports @tauri-apps",
        only_the_backend_imports_tauri,
    ),
    (
        "only crates/store names rusqlite",
        only_the_store_names_rusqlite,
    ),
    (
        "no registry hosts and no machine's paths",
        no_hosts_and_no_machine_paths,
    ),
    (
        "locked packages come from the public registry",
        locks_name_the_public_registry,
    ),
    (
        "every locked package has its checksum",
        locked_packages_have_checksums,
    ),
    ("words that belong to other programs", no_borrowed_words),
];

/// A crate that depends on tauri cannot be tested without a window.
pub fn only_the_shell_depends_on_tauri(file: &SourceFile) -> Vec<String> {
    if file.name() != "Cargo.toml" || file.path == "src-tauri/Cargo.toml" {
        return Vec::new();
    }
    match file.text.parse::<toml::Table>() {
        Ok(manifest) => dependencies(&manifest)
            .into_iter()
            .filter(|name| name == "tauri" || name.starts_with("tauri-"))
            .collect(),
        Err(error) => vec![format!("cannot be read: {error}")],
    }
}

/// Names under every `…dependencies` table, at any depth, renames resolved.
fn dependencies(table: &toml::Table) -> Vec<String> {
    let mut found = Vec::new();
    for (key, value) in table {
        let Some(inner) = value.as_table() else {
            continue;
        };
        if key.ends_with("dependencies") {
            for (name, dependency) in inner {
                let package = dependency.get("package").and_then(toml::Value::as_str);
                found.push(package.unwrap_or(name).to_owned());
            }
        } else {
            found.extend(dependencies(inner));
        }
    }
    found
}

/// What the workspace, the screens and the oracles depend on: every name once,
/// by the manifests among `files`. Crates of our own are left out.
pub fn dependencies_of(files: &[SourceFile]) -> Result<BTreeSet<String>, String> {
    let mut found = BTreeSet::new();
    for file in files {
        match file.name() {
            "Cargo.toml" => {
                let manifest = file
                    .text
                    .parse::<toml::Table>()
                    .map_err(|error| format!("{}: {error}", file.path))?;
                found.extend(dependencies(&manifest));
            }
            "package.json" => {
                let manifest = serde_json::from_str::<serde_json::Value>(&file.text)
                    .map_err(|error| format!("{}: {error}", file.path))?;
                for kind in ["dependencies", "devDependencies"] {
                    let names = manifest.get(kind).and_then(serde_json::Value::as_object);
                    found.extend(names.into_iter().flat_map(|names| names.keys().cloned()));
                }
            }
            "requirements.txt" => found.extend(
                file.text
                    .lines()
                    .map(|line| {
                        line.split(['=', '<', '>', '#', '['])
                            .next()
                            .unwrap_or_default()
                    })
                    .map(|name| name.trim().to_owned())
                    .filter(|name| !name.is_empty()),
            ),
            _ => {}
        }
    }
    found.retain(|name| !name.starts_with("surefoot"));
    Ok(found)
}

/// Those of `names` that no table row of `page` gives a reason for: a row is
/// `| name, name | reason |`.
#[must_use]
pub fn without_reason(names: &BTreeSet<String>, page: &str) -> Vec<String> {
    let reasoned: BTreeSet<&str> = page
        .lines()
        .filter_map(|line| line.strip_prefix('|')?.split_once('|'))
        .filter(|(_, reason)| reason.trim_matches([' ', '|', '-']).len() > 1)
        .flat_map(|(cell, _)| cell.split([',', ' ', '(', ')', '`']))
        .collect();
    let missing = names
        .iter()
        .filter(|name| !reasoned.contains(name.as_str()));
    missing.cloned().collect()
}

/// The screens must run in a browser for tests.
pub fn only_the_backend_imports_tauri(file: &SourceFile) -> Vec<String> {
    let is_screen =
        file.path.starts_with("ui/") && ["ts", "js", "mjs", "svelte"].contains(&file.extension());
    // The linter's settings forbid the same by name.
    let may = file.path.starts_with("ui/src/lib/backend/") || file.path == "ui/eslint.config.js";
    if !is_screen || may {
        return Vec::new();
    }
    lines_with(&file.text, |line| line.contains("@tauri-apps"))
}

/// Code elsewhere that touched the stores would have to know their rules.
pub fn only_the_store_names_rusqlite(file: &SourceFile) -> Vec<String> {
    let may = file.path.starts_with("crates/store/")
        || file.path.starts_with("tests/support/")
        || file.path.starts_with("tests/boundaries/")
        || file.path == "Cargo.toml";
    let is_source = file.extension() == "rs" || file.name() == "Cargo.toml";
    if may || !is_source {
        return Vec::new();
    }
    lines_with(&file.text, |line| line.contains("rusqlite"))
}

/// What is written for people must hold on every machine.
pub fn no_hosts_and_no_machine_paths(file: &SourceFile) -> Vec<String> {
    const NEEDLES: &[&str] = &[
        concat!("registry.npm", "js.org"),
        concat!("index.crates", ".io"),
        concat!("static.crates", ".io"),
        concat!("files.python", "hosted.org"),
        concat!("pypi", ".org/simple"),
        concat!("proxy.golang", ".org"),
        concat!("deb.debian", ".org"),
        concat!("/ro", "ot/"),
        concat!("/ho", "me/"),
        concat!("/wo", "rk/"),
        concat!("/Use", "rs/"),
    ];
    if file.is_lock() {
        return Vec::new();
    }
    lines_with(&file.text, |line| {
        NEEDLES.iter().any(|needle| names_place(line, needle))
    })
}

/// Whether the needle is where a host or an absolute path begins, not in
/// the middle of a longer path.
fn names_place(line: &str, needle: &str) -> bool {
    line.match_indices(needle).any(|(at, _)| {
        let before = line[..at].chars().next_back();
        let inside_a_path = before.is_some_and(|c| c.is_alphanumeric() || "._-}*)~".contains(c));
        !(needle.starts_with('/') && inside_a_path)
    })
}

/// A lock file that names a mirror works on one network only.
pub fn locks_name_the_public_registry(file: &SourceFile) -> Vec<String> {
    let public = match file.name() {
        "package-lock.json" => concat!("https://registry.npm", "js.org/"),
        "Cargo.lock" => "registry+https://github.com/rust-lang/crates.io-index",
        _ => return Vec::new(),
    };
    lines_with(&file.text, |line| {
        let line = line.trim_start();
        let names = line.starts_with("\"resolved\":") || line.starts_with("source =");
        names && !line.contains(public)
    })
}

/// A package without a checksum could be exchanged on its way.
pub fn locked_packages_have_checksums(file: &SourceFile) -> Vec<String> {
    match file.name() {
        "package-lock.json" => unsummed_npm(&file.text),
        "Cargo.lock" => unsummed_cargo(&file.text),
        _ => Vec::new(),
    }
}

fn unsummed_npm(text: &str) -> Vec<String> {
    let lock: serde_json::Value = match serde_json::from_str(text) {
        Ok(lock) => lock,
        Err(error) => return vec![format!("cannot be read: {error}")],
    };
    let Some(packages) = lock["packages"].as_object() else {
        return vec!["lists no packages".to_owned()];
    };
    // The entry without a path is the screens themselves.
    let locked = packages.iter().filter(|(path, _)| !path.is_empty());
    locked
        .filter(|(_, package)| {
            let sum = package["integrity"].as_str();
            !sum.is_some_and(|sum| sum.starts_with("sha512-"))
        })
        .map(|(path, _)| path.clone())
        .collect()
}

fn unsummed_cargo(text: &str) -> Vec<String> {
    let lock: toml::Table = match text.parse() {
        Ok(lock) => lock,
        Err(error) => return vec![format!("cannot be read: {error}")],
    };
    let Some(packages) = lock.get("package").and_then(toml::Value::as_array) else {
        return vec!["lists no packages".to_owned()];
    };
    packages
        .iter()
        .filter(|package| package.get("source").is_some() && package.get("checksum").is_none())
        .map(|package| package["name"].to_string())
        .collect()
}

/// The words that people read are those of mathematics teaching and of this program.
pub fn no_borrowed_words(file: &SourceFile) -> Vec<String> {
    const WORDS: &[&str] = &[
        "deck",
        "decks",
        "flashcard",
        "flashcards",
        "streak",
        "streaks",
        "gem",
        "gems",
        "badge",
        "badges",
        "leaderboard",
        "leaderboards",
        "smiley",
        "smileys",
        "racha",
        "insignia",
    ];
    const PHRASES: &[&str] = &["level up", "traffic light"];
    if !file.path.starts_with("shared/messages/") {
        return Vec::new();
    }
    lines_with(&file.text, |line| {
        let line = line.to_lowercase();
        let mut words = line.split(|c: char| !c.is_alphanumeric());
        words.any(|word| WORDS.contains(&word)) || PHRASES.iter().any(|p| line.contains(p))
    })
}

fn lines_with(text: &str, breaks: impl Fn(&str) -> bool) -> Vec<String> {
    text.lines()
        .enumerate()
        .filter(|(_, line)| breaks(line))
        .map(|(at, line)| format!("line {}: {}", at + 1, line.trim()))
        .collect()
}
