//! What a concept is: one thing a student can say "I can" about.

use crate::Text;
use serde::{Deserialize, Serialize};
use std::fmt;
use std::str::FromStr;
use ts_rs::TS;

/// A concept's name in files and code: lower-case words and digits joined by
/// single hyphens, at most 64 characters, such as `g4-fraction-add-like`.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, TS)]
#[serde(try_from = "String", into = "String")]
#[ts(type = "string")]
pub struct ConceptId(String);

/// Why a text is not a concept id.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error(
    "{text:?} is not a concept id: lower-case letters and digits joined by single hyphens, at most 64 characters"
)]
pub struct ConceptIdError {
    /// The text as it came, cut to 80 characters.
    pub text: String,
}

impl ConceptId {
    /// The longest id accepted, in characters.
    pub const LONGEST_CHARS: usize = 64;

    /// Checks the text and takes it as an id.
    pub fn new(text: impl Into<String>) -> Result<Self, ConceptIdError> {
        let text = text.into();
        let words_ok = text.split('-').all(|word| {
            !word.is_empty()
                && word
                    .bytes()
                    .all(|b| b.is_ascii_lowercase() || b.is_ascii_digit())
        });
        if words_ok && text.len() <= Self::LONGEST_CHARS {
            Ok(Self(text))
        } else {
            Err(ConceptIdError {
                text: text.chars().take(80).collect(),
            })
        }
    }

    /// The id as text.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl TryFrom<String> for ConceptId {
    type Error = ConceptIdError;
    fn try_from(text: String) -> Result<Self, Self::Error> {
        Self::new(text)
    }
}

impl FromStr for ConceptId {
    type Err = ConceptIdError;
    fn from_str(text: &str) -> Result<Self, Self::Err> {
        Self::new(text)
    }
}

impl From<ConceptId> for String {
    fn from(id: ConceptId) -> Self {
        id.0
    }
}

impl AsRef<str> for ConceptId {
    fn as_ref(&self) -> &str {
        &self.0
    }
}

impl std::borrow::Borrow<str> for ConceptId {
    fn borrow(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for ConceptId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// A branch of school mathematics; a day of the rotation mixes them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Strand {
    /// Place value, rounding, comparing whole numbers.
    PlaceValue,
    /// Adding and subtracting whole numbers.
    AdditionSubtraction,
    /// Multiplying and dividing whole numbers, factors, patterns.
    Multiplication,
    /// Fractions and mixed numbers.
    Fractions,
    /// Decimals.
    Decimals,
    /// Time, length, mass, capacity, money, area, perimeter, volume.
    Measurement,
    /// Shapes, angles, lines, the coordinate grid.
    Geometry,
    /// Graphs and plots.
    Data,
    /// Ratio, rate and percent.
    Ratio,
    /// Integers, rational numbers, division of fractions.
    NumberSystem,
    /// Expressions, equations and inequalities.
    Expressions,
    /// Middle, spread and shape of data.
    Statistics,
}

impl Strand {
    /// Every strand, in the order of the catalogue.
    pub const ALL: [Strand; 12] = [
        Strand::PlaceValue,
        Strand::AdditionSubtraction,
        Strand::Multiplication,
        Strand::Fractions,
        Strand::Decimals,
        Strand::Measurement,
        Strand::Geometry,
        Strand::Data,
        Strand::Ratio,
        Strand::NumberSystem,
        Strand::Expressions,
        Strand::Statistics,
    ];

    /// The name used in files.
    #[must_use]
    pub fn as_str(self) -> &'static str {
        match self {
            Strand::PlaceValue => "place-value",
            Strand::AdditionSubtraction => "addition-subtraction",
            Strand::Multiplication => "multiplication",
            Strand::Fractions => "fractions",
            Strand::Decimals => "decimals",
            Strand::Measurement => "measurement",
            Strand::Geometry => "geometry",
            Strand::Data => "data",
            Strand::Ratio => "ratio",
            Strand::NumberSystem => "number-system",
            Strand::Expressions => "expressions",
            Strand::Statistics => "statistics",
        }
    }
}

/// One thing to be able to do.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Concept {
    /// Its id, unique in a catalogue.
    pub id: ConceptId,
    /// Its strand.
    pub strand: Strand,
    /// The school grade it belongs to, 3 to 6 in the built-in catalogue.
    pub grade: u8,
    /// A short title.
    pub title: Text,
    /// The "I can" statement a student rates.
    pub i_can: Text,
    /// Concepts that come before it.
    pub prerequisites: Vec<ConceptId>,
    /// Codes of published standards it covers, such as `3.NF.A.1` or `en-ks2:4:tables to 12 x 12`.
    pub alignments: Vec<String>,
}

impl Concept {
    /// Whether one of its titles is `wanted`, which is in lower case.
    #[must_use]
    pub fn is_titled(&self, wanted: &str) -> bool {
        self.title
            .iter()
            .any(|(_, title)| title.to_lowercase() == wanted)
    }
}
