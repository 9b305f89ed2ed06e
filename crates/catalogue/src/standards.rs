//! Codes of published standards, and which concepts cover them.

use super::concept::ConceptId;
use super::load::Catalogue;
use serde::{Deserialize, Serialize};

/// Whether a machine can make and mark items for a code.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Marking {
    /// Yes.
    Auto,
    /// A proxy; part of it needs hands, drawing or explaining.
    Partial,
    /// It needs a person.
    Human,
}

/// One code of a published standard.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Standard {
    /// Its code, as `3.NF.A.1` or `KS2.Y4.4`.
    pub code: String,
    /// Its school grade (England: year).
    pub grade: u8,
    /// Whether a machine can mark it.
    pub marking: Marking,
    /// What it asks, in our own words.
    pub wording: String,
}

#[derive(Deserialize)]
struct StandardsFile {
    standard: Vec<Standard>,
}

/// The codes we align to.
///
/// # Errors
/// Only if the built-in file is faulty, which a test rules out.
pub fn standards() -> Result<Vec<Standard>, String> {
    toml::from_str::<StandardsFile>(include_str!("../../../shared/catalogue/standards.toml"))
        .map(|file| file.standard)
        .map_err(|error| error.to_string())
}

/// Which concepts cover a code.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct CodeCoverage {
    /// The code.
    pub standard: Standard,
    /// Concepts aligned to it, in the order of the catalogue.
    pub concepts: Vec<ConceptId>,
    /// Those of them that have exercises.
    pub with_exercises: Vec<ConceptId>,
}

/// The coverage of every code; `has_exercises` says which concepts have a generator.
///
/// # Errors
/// Only if the built-in list of codes is faulty.
pub fn coverage(
    catalogue: &Catalogue,
    has_exercises: impl Fn(&ConceptId) -> bool,
) -> Result<Vec<CodeCoverage>, String> {
    Ok(standards()?
        .into_iter()
        .map(|standard| {
            let concepts: Vec<ConceptId> = catalogue
                .concepts()
                .iter()
                .filter(|concept| concept.alignments.contains(&standard.code))
                .map(|concept| concept.id.clone())
                .collect();
            let with_exercises = concepts
                .iter()
                .filter(|id| has_exercises(id))
                .cloned()
                .collect();
            CodeCoverage {
                standard,
                concepts,
                with_exercises,
            }
        })
        .collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn every_common_core_code_has_a_concept_and_every_alignment_a_code() {
        let catalogue = Catalogue::built_in().unwrap();
        let all = coverage(catalogue, |_| false).unwrap();
        let common_core: Vec<_> = all
            .iter()
            .filter(|c| !c.standard.code.starts_with("KS2"))
            .collect();
        assert_eq!(common_core.len(), 161);
        for code in common_core {
            assert!(!code.concepts.is_empty(), "{}", code.standard.code);
        }
        let known: BTreeSet<_> = all.iter().map(|c| c.standard.code.as_str()).collect();
        assert_eq!(known.len(), all.len(), "a code stands twice");
        for concept in catalogue.concepts() {
            for code in &concept.alignments {
                assert!(known.contains(code.as_str()), "{}: {code}", concept.id);
            }
        }
    }
}
