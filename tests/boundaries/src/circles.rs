//! Circles of `use` between the files of one crate.
//!
//! A file uses another when its code, tests aside, names something that the other
//! defines. A `pub use` only passes a name on: whoever names it uses the file that
//! defines it.

use crate::SourceFile;
use std::collections::{BTreeMap, BTreeSet, VecDeque};

/// A name as its segments: `crate::draw::Line` is `["crate", "draw", "Line"]`.
type Name = Vec<String>;

/// One file of a crate, as a module.
struct Module {
    /// Its path below `src`.
    file: String,
    /// Names that its code uses.
    uses: Vec<Name>,
    /// Names that it passes on, by the name it gives them; `*` for a glob.
    passes_on: Vec<(String, Name)>,
}

/// The modules of one crate by their names below the crate's root.
struct Crate(BTreeMap<Name, Module>);

/// Which circles count.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Circles {
    /// Those between files.
    BetweenFiles,
    /// Those of whole folders: files of one use another, whose files use the first again.
    /// The crate's `src` itself does not count as a folder.
    OfFolders,
}

/// The circles of a crate, each as its files in order, with the first again at the end.
#[must_use]
pub fn circles(files: &[SourceFile], crate_name: &str, which: Circles) -> Vec<String> {
    let modules = Crate::read(files, crate_name);
    let mut graph = modules.graph();
    if which == Circles::OfFolders {
        graph = modules.of_folders(&graph);
    }
    let mut found = BTreeSet::new();
    for (from, targets) in &graph {
        for to in targets {
            if let Some(way) = shortest_way(&graph, to, from) {
                // The way ends where it began; each circle once, from its first file on.
                let mut files: Vec<&str> = way.iter().map(|name| modules.file(name)).collect();
                let first = files.iter().min().copied();
                let at = files.iter().position(|file| Some(*file) == first);
                files.rotate_left(at.unwrap_or(0));
                files.extend(files.first().copied());
                found.insert(files.join(" -> "));
            }
        }
    }
    found.into_iter().collect()
}

/// The modules on the shortest way, with both ends.
fn shortest_way(
    graph: &BTreeMap<Name, BTreeSet<Name>>,
    from: &Name,
    to: &Name,
) -> Option<Vec<Name>> {
    let mut seen = BTreeSet::from([from.clone()]);
    let mut waiting = VecDeque::from([vec![from.clone()]]);
    while let Some(way) = waiting.pop_front() {
        let last = way.last()?;
        if last == to {
            return Some(way);
        }
        for next in graph.get(last).into_iter().flatten() {
            if seen.insert(next.clone()) {
                waiting.push_back([way.clone(), vec![next.clone()]].concat());
            }
        }
    }
    None
}

impl Crate {
    fn read(files: &[SourceFile], crate_name: &str) -> Self {
        let folder = format!("crates/{crate_name}/src/");
        let sources: BTreeMap<Name, (&str, &str)> = files
            .iter()
            .filter_map(|file| Some((file.path.strip_prefix(&folder)?, file.text.as_str())))
            .filter_map(|(file, text)| Some((module_name(file)?, (file, text))))
            .collect();
        // A module that its parent declares for tests only, or that lies below one.
        let for_tests = |name: &Name| {
            (0..name.len()).any(|depth| {
                let (parent, below) = name.split_at(depth);
                let declared = format!("#[cfg(test)]\nmod {};", below[0]);
                sources
                    .get(parent)
                    .is_some_and(|(_, text)| text.contains(&declared))
            })
        };
        let modules = sources
            .iter()
            .filter(|(name, _)| !for_tests(name))
            .map(|(name, (file, text))| (name.clone(), Module::read(file, text)))
            .collect();
        Self(modules)
    }

    /// The path of a module's file.
    fn file(&self, name: &Name) -> &str {
        self.0.get(name).map_or("", |module| &module.file)
    }

    /// The folder of a module, as the name of the module that declares its files.
    fn folder<'a>(&self, name: &'a Name) -> &'a [String] {
        let declares_others = self
            .0
            .keys()
            .any(|other| other.len() > name.len() && other.starts_with(name));
        match name.split_last() {
            Some((_, parent)) if !declares_others => parent,
            _ => name,
        }
    }

    /// Which module uses which others.
    fn graph(&self) -> BTreeMap<Name, BTreeSet<Name>> {
        self.0
            .iter()
            .map(|(name, module)| {
                let targets = module
                    .uses
                    .iter()
                    .filter_map(|used| self.definer(name, used, 0));
                (
                    name.clone(),
                    targets.filter(|target| target != name).collect(),
                )
            })
            .collect()
    }

    /// Which folder uses which others.
    fn of_folders(&self, graph: &BTreeMap<Name, BTreeSet<Name>>) -> BTreeMap<Name, BTreeSet<Name>> {
        let mut folders: BTreeMap<Name, BTreeSet<Name>> = BTreeMap::new();
        for (from, targets) in graph {
            let from = self.folder(from);
            for to in targets.iter().map(|to| self.folder(to)) {
                if from != to && !from.is_empty() && !to.is_empty() {
                    folders
                        .entry(from.to_vec())
                        .or_default()
                        .insert(to.to_vec());
                }
            }
        }
        folders
    }

    /// The module that defines what `used` names in module `from`; `None` for a name
    /// from another crate.
    fn definer(&self, from: &Name, used: &[String], depth: usize) -> Option<Name> {
        const MOST_PASSED_ON: usize = 8;
        let (first, rest) = used.split_first()?;
        let mut place = from.clone();
        match first.as_str() {
            "crate" => place.clear(),
            "self" => {}
            "super" => {
                place.pop();
            }
            child => {
                place.push(child.to_owned());
                self.0.get(&place)?;
            }
        }
        for (at, segment) in rest.iter().enumerate() {
            if segment == "super" {
                place.pop();
                continue;
            }
            let child = [place.as_slice(), std::slice::from_ref(segment)].concat();
            if self.0.contains_key(&child) {
                place = child;
                continue;
            }
            let module = self.0.get(&place)?;
            let passed_on = module
                .passes_on
                .iter()
                .filter(|(name, _)| name == segment || name == "*")
                .filter(|_| depth < MOST_PASSED_ON)
                .find_map(|(name, target)| {
                    let end = if name == "*" { at } else { at + 1 };
                    let whole = [target.as_slice(), &rest[end..]].concat();
                    self.definer(&place, &whole, depth + 1)
                });
            if passed_on.is_some() {
                return passed_on;
            }
            break;
        }
        self.0.contains_key(&place).then_some(place)
    }
}

/// `draw/line.rs` is `["draw", "line"]`; `lib.rs` is `[]`.
fn module_name(file: &str) -> Option<Name> {
    let mut name: Name = file
        .strip_suffix(".rs")?
        .split('/')
        .map(str::to_owned)
        .collect();
    if ["mod", "lib", "main"].contains(&name.last()?.as_str()) {
        name.pop();
    }
    Some(name)
}

impl Module {
    fn read(file: &str, text: &str) -> Self {
        // Tests are at the end of a file.
        let code = text
            .split("#[cfg(test)]\nmod tests {")
            .next()
            .unwrap_or_default();
        let code: Vec<&str> = code
            .lines()
            .filter_map(|line| line.split("//").next())
            .collect();
        let code = code.join("\n");
        let words = words(&code);
        let mut module = Self {
            file: file.to_owned(),
            uses: Vec::new(),
            passes_on: Vec::new(),
        };
        let mut at = 0;
        while let Some(&word) = words.get(at) {
            let before = at.checked_sub(1).and_then(|before| words.get(before));
            let mut names = Vec::new();
            let mut end = at + 1;
            if word == "use" {
                end = read_tree(&words, at + 1, &[], &mut names);
            } else if words.get(at + 1) == Some(&"::") && !matches!(before, Some(&("::" | "in"))) {
                end = read_path(&words, at, &mut names);
            }
            // `pub use` and `pub(crate) use`.
            if word == "use" && matches!(before, Some(&("pub" | ")"))) {
                module.passes_on.extend(names);
            } else {
                module.uses.extend(names.into_iter().map(|(_, name)| name));
            }
            at = end;
        }
        module
    }
}

/// The identifiers and signs of Rust code; `::` is one sign.
fn words(code: &str) -> Vec<&str> {
    let mut found = Vec::new();
    let mut rest = code.trim_start();
    while let Some(first) = rest.chars().next() {
        let is_part = |c: char| c.is_alphanumeric() || c == '_';
        let length = if is_part(first) {
            rest.find(|c| !is_part(c)).unwrap_or(rest.len())
        } else if rest.starts_with("::") {
            2
        } else {
            first.len_utf8()
        };
        let (word, after) = rest.split_at(length);
        found.push(word);
        rest = after.trim_start();
    }
    found
}

/// Reads `a::b::c` from `at`, and returns where it ends.
fn read_path(words: &[&str], at: usize, names: &mut Vec<(String, Name)>) -> usize {
    let mut name = vec![words[at].to_owned()];
    let mut end = at + 1;
    while let ["::", next, ..] = words[end..] {
        name.push(next.to_owned());
        end += 2;
    }
    names.push((name[name.len() - 1].clone(), name));
    end
}

/// Reads what follows `use`, such as `a::{b, c as d, e::*}`, from `at`, and returns
/// where it ends.
fn read_tree(
    words: &[&str],
    at: usize,
    prefix: &[String],
    names: &mut Vec<(String, Name)>,
) -> usize {
    let mut name = prefix.to_vec();
    let mut end = at;
    loop {
        match words[end..] {
            ["{", ..] => {
                end += 1;
                while let Some(&word) = words.get(end) {
                    end += 1;
                    match word {
                        // A `;` ends what only looks like a list, such as words in a text.
                        "}" | ";" => return end,
                        "," => {}
                        _ => end = read_tree(words, end - 1, &name, names),
                    }
                }
                return end;
            }
            ["::", ..] => end += 1,
            ["*", ..] => {
                names.push(("*".to_owned(), name));
                return end + 1;
            }
            ["as", renamed, ..] => {
                names.push((renamed.to_owned(), name));
                return end + 2;
            }
            [segment, ..] if ![",", "}", ";"].contains(&segment) => {
                name.push(segment.to_owned());
                end += 1;
            }
            _ => {
                // `a::{self}` names `a`.
                if name.len() > 1 && name.last().is_some_and(|last| last == "self") {
                    name.pop();
                }
                names.push((name.last().cloned().unwrap_or_default(), name));
                return end;
            }
        }
    }
}
