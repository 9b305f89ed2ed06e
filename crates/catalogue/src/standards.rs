//! Codes of published standards, and which concepts cover them.

use crate::{Catalogue, ConceptId};
use serde::{Deserialize, Serialize};

/// Whether the program can make and mark exercises for a code.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Marking {
    /// It can.
    Auto,
    /// It can in part; the rest needs hands, drawing or explaining.
    Partial,
    /// It cannot; a person has to.
    Human,
}

/// One code of a published standard.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Standard {
    /// The code, such as `3.NF.A.1` or `KS2.Y4.4`.
    pub code: String,
    /// Its school grade (England: year).
    pub grade: u8,
    /// Whether the program can mark it.
    pub marking: Marking,
    /// What it asks for, in our own words.
    pub wording: String,
}

#[derive(Deserialize)]
struct StandardsFile {
    standard: Vec<Standard>,
}

/// Returns the codes that concepts are aligned to.
///
/// # Errors
/// Fails only if the built-in file is faulty, which a test rules out.
pub fn standards() -> Result<Vec<Standard>, String> {
    toml::from_str::<StandardsFile>(include_str!("../../../shared/catalogue/standards.toml"))
        .map(|file| file.standard)
        .map_err(|error| error.to_string())
}

/// A part of a code that asks for several things.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CodePart {
    /// The code.
    pub code: String,
    /// What this part asks for, in our own words.
    pub wording: String,
    /// The concept whose exercises it is in.
    pub concept: ConceptId,
    /// The tasks of these exercises; none if there are no exercises for this part.
    pub tasks: Vec<String>,
    /// Why there are no exercises for this part.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reason: Option<String>,
}

#[derive(Deserialize)]
struct PartsFile {
    part: Vec<CodePart>,
}

/// Returns the parts of codes, in the order of the codes.
///
/// # Errors
/// Fails only if the built-in file is faulty, which a test rules out.
pub fn code_parts() -> Result<Vec<CodePart>, String> {
    toml::from_str::<PartsFile>(include_str!("../../../shared/catalogue/parts.toml"))
        .map(|file| file.part)
        .map_err(|error| error.to_string())
}

/// A code with the concepts that cover it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct CodeCoverage {
    /// The code.
    pub standard: Standard,
    /// Concepts aligned to it, in the order of the catalogue.
    pub concepts: Vec<ConceptId>,
    /// Those of `concepts` that have exercises.
    pub with_exercises: Vec<ConceptId>,
}

/// Returns the coverage of every code.
///
/// # Errors
/// As [`standards`].
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
    fn every_part_names_a_code_and_a_concept_aligned_to_it() {
        let catalogue = Catalogue::built_in().unwrap();
        let known: BTreeSet<String> = standards().unwrap().into_iter().map(|s| s.code).collect();
        let parts = code_parts().unwrap();
        assert!(parts.len() > 80);
        for part in parts {
            assert!(known.contains(&part.code), "{}", part.code);
            assert_eq!(part.tasks.is_empty(), part.reason.is_some(), "{part:?}");
            let concept = catalogue.get(part.concept.as_str()).unwrap();
            assert!(
                concept.alignments.contains(&part.code),
                "{} {}",
                part.concept,
                part.code
            );
        }
    }

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
        assert_eq!(known.len(), all.len(), "a code is there twice");
        for concept in catalogue.concepts() {
            for code in &concept.alignments {
                assert!(known.contains(code.as_str()), "{}: {code}", concept.id);
            }
        }
    }
}
