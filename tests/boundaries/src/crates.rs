//! The crates as the documents show them, compared with what Cargo knows.

use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// One crate of the workspace.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Member {
    /// Its name without `surefoot-`.
    pub name: String,
    /// Its folder from the top of the tree.
    pub folder: String,
    /// The workspace's crates that it depends on, tests left out; names without `surefoot-`.
    pub uses: BTreeSet<String>,
}

/// The crates in the output of `cargo metadata --no-deps`.
#[must_use]
pub fn members(metadata: &Value) -> Vec<Member> {
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    let own = |value: &Value| text(value).strip_prefix("surefoot-").map(str::to_owned);
    let list = |value: &Value| value.as_array().cloned().unwrap_or_default();
    let top = text(&metadata["workspace_root"]);
    let packages = list(&metadata["packages"]).into_iter();
    packages
        .filter_map(|package| {
            let manifest = text(&package["manifest_path"]);
            let folder = manifest
                .strip_prefix(&top)?
                .strip_suffix("/Cargo.toml")?
                .trim_start_matches('/');
            let dependencies = list(&package["dependencies"]).into_iter();
            let uses = dependencies
                .filter(|dependency| dependency["kind"].is_null())
                .filter_map(|dependency| own(&dependency["name"]))
                .collect();
            Some(Member {
                name: own(&package["name"])?,
                folder: folder.to_owned(),
                uses,
            })
        })
        .collect()
}

/// Where `docs/architecture.md` differs from the crates under `crates/`: their
/// folders, the table of what each uses, and the drawing of the floors, on which
/// a crate may use only crates below it.
#[must_use]
pub fn architecture_faults(members: &[Member], page: &str) -> Vec<String> {
    let program: Vec<&Member> = members
        .iter()
        .filter(|member| member.folder.starts_with("crates/"))
        .collect();
    let table = used(page);
    let floors = floors(page);
    let mut faults = Vec::new();
    for member in &program {
        let name = &member.name;
        if member.folder != format!("crates/{name}") {
            faults.push(format!("surefoot-{name} is in {}", member.folder));
        }
        match table.get(name) {
            None => faults.push(format!("{name} has no row in the table")),
            Some(uses) if *uses != member.uses => faults.push(format!(
                "{name}: the table says it uses {uses:?}, Cargo says {:?}",
                member.uses
            )),
            Some(_) => {}
        }
        let Some(floor) = floors.get(name) else {
            faults.push(format!("{name} is on no floor"));
            continue;
        };
        for used in &member.uses {
            if floors.get(used).is_some_and(|below| below <= floor) {
                faults.push(format!("{name} uses {used}, which is not on a lower floor"));
            }
        }
    }
    let known = |name: &String| program.iter().any(|member| member.name == *name);
    let unknown = table.keys().filter(|name| !known(name));
    faults.extend(unknown.map(|name| format!("the table has {name}, which is no crate")));
    faults
}

/// Crates of the workspace that the map in `DEVELOPERS.md` leaves out, and crates
/// in it that do not exist.
#[must_use]
pub fn map_faults(members: &[Member], page: &str) -> Vec<String> {
    let rows: Vec<_> = rows(page)
        .map(|mut cells| (quoted(cells.next()), quoted(cells.next())))
        .collect();
    let has = |folder: &str| match folder.strip_prefix("tests/") {
        None => rows.iter().any(|(folders, _)| folders.contains(folder)),
        Some(inner) => rows
            .iter()
            .any(|(folders, holds)| folders.contains("tests") && holds.contains(inner)),
    };
    let missing = members
        .iter()
        .filter(|member| !has(&member.folder))
        .map(|member| format!("the map leaves out {}", member.folder));
    let wrong = rows
        .iter()
        .flat_map(|(folders, _)| folders)
        .filter(|folder| folder.starts_with("crates/"))
        .filter(|folder| members.iter().all(|member| member.folder != **folder))
        .map(|folder| format!("the map has {folder}, which is no crate"));
    missing.chain(wrong).collect()
}

/// The table `| crate | holds | uses | … |`: what each crate uses.
fn used(page: &str) -> BTreeMap<String, BTreeSet<String>> {
    let (_, table) = page
        .split_once("| crate | holds | uses |")
        .unwrap_or_default();
    rows(table)
        .filter_map(|mut cells| Some((quoted(cells.next()).pop_first()?, quoted(cells.nth(1)))))
        .collect()
}

/// The drawing: a line names a floor and its crates, a line of `-` ends a floor.
/// Floors are counted from the top.
fn floors(page: &str) -> BTreeMap<String, usize> {
    let (_, drawing) = page
        .split_once("\n## The crates\n\n```\n")
        .unwrap_or_default();
    let mut floor = 0;
    let mut found = BTreeMap::new();
    for line in drawing.lines().take_while(|line| *line != "```") {
        if line.trim().chars().all(|c| c == '-') {
            floor += 1;
        }
        let crates = line.split_whitespace().skip(1);
        found.extend(crates.map(|name| (name.to_owned(), floor)));
    }
    found
}

/// The cells of each row of the first table.
fn rows(page: &str) -> impl Iterator<Item = impl Iterator<Item = &str>> {
    page.lines()
        .skip_while(|line| !line.starts_with("| `"))
        .take_while(|line| line.starts_with('|'))
        .map(|line| line.trim_matches('|').split('|'))
}

/// What a cell has between backticks.
fn quoted(cell: Option<&str>) -> BTreeSet<String> {
    let quoted = cell.unwrap_or_default().split('`').skip(1).step_by(2);
    quoted.map(str::to_owned).collect()
}
