//! Which misconceptions the exercises of a concept have.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::OnceLock;

/// A line for each concept: its id, a colon, the codes. A test compares it with the exercises.
const LISTED: &str = include_str!("misconceptions.txt");

type Codes = BTreeMap<&'static str, BTreeSet<&'static str>>;

fn listed() -> &'static Codes {
    static CODES: OnceLock<Codes> = OnceLock::new();
    CODES.get_or_init(|| {
        let lines = LISTED.lines().filter_map(|line| line.split_once(": "));
        lines
            .map(|(concept, codes)| (concept, codes.split(' ').collect()))
            .collect()
    })
}

/// Whether an exercise of the concept can have the misconception with this code.
#[must_use]
pub fn has_misconception(concept: &str, code: &str) -> bool {
    (listed().get(concept)).is_some_and(|codes| codes.contains(code))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Level, concepts_with_exercises, generate};

    /// Writes the list where `WRITE_MISCONCEPTIONS` is set.
    #[test]
    #[ignore = "makes 250,000 exercises"]
    #[expect(clippy::disallowed_methods, reason = "writes the list where asked")]
    fn each_concept_has_the_misconceptions_of_its_exercises() {
        let mut found = String::new();
        for concept in concepts_with_exercises() {
            let mut codes = BTreeSet::new();
            for level in Level::ALL {
                for seed in 0..500 {
                    let item = generate(concept, level, seed).unwrap();
                    codes.extend(item.misconceptions.into_iter().map(|m| m.code));
                }
            }
            let codes: Vec<_> = codes.iter().map(AsRef::as_ref).collect();
            found += &format!("{concept}: {}\n", codes.join(" "));
        }
        if std::env::var_os("WRITE_MISCONCEPTIONS").is_some() {
            let list = concat!(env!("CARGO_MANIFEST_DIR"), "/src/misconceptions.txt");
            std::fs::write(list, &found).unwrap();
        }
        assert_eq!(found, LISTED, "write the list anew, see docs/exercises.md");
    }

    #[test]
    fn a_misconception_belongs_to_its_concepts() {
        assert_eq!(listed().len(), concepts_with_exercises().count());
        assert!(has_misconception("g4-add-large", "carry-forgotten"));
        assert!(!has_misconception("g4-add-large", "added-tops-and-bottoms"));
        assert!(!has_misconception("no-such-concept", "carry-forgotten"));
    }
}
