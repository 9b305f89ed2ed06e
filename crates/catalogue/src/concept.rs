//! Concepts and strands.

use crate::text_id::is_hyphenated;
use crate::{Text, text_id};
use serde::{Deserialize, Serialize};
use std::ops::RangeInclusive;
use ts_rs::TS;

/// The school grades that a concept can have.
pub const GRADES: RangeInclusive<u8> = 1..=12;

text_id!(
    /// The name of a concept in files and code: lower-case letters and digits joined by
    /// single hyphens, at most 64 characters, such as `g4-fraction-add-like`.
    ConceptId,
    "concept id",
    "lower-case letters and digits joined by single hyphens, at most 64 characters",
    is_hyphenated
);

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

/// A group of concepts. A day of the rotation mixes strands.
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
    /// All strands, in the order of the catalogue.
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

    /// Its name in files.
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

    /// The strand with this name in files.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|strand| strand.as_str() == name)
    }
}

/// One thing to learn.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Concept {
    /// Its id, unique in a catalogue.
    pub id: ConceptId,
    /// Its strand.
    pub strand: Strand,
    /// Its school grade, one of [`GRADES`]; 3 to 6 in the built-in catalogue.
    pub grade: u8,
    /// A short title.
    pub title: Text,
    /// The "I can" statement a student rates.
    pub i_can: Text,
    /// The concepts that it builds on.
    pub prerequisites: Vec<ConceptId>,
    /// Codes of published standards that it covers, such as `3.NF.A.1` or `KS2.Y4.4`.
    pub alignments: Vec<String>,
}

impl Concept {
    /// Whether one of its titles is `wanted`. Ignores the case of the titles; `wanted` is
    /// in lower case.
    #[must_use]
    pub fn is_titled(&self, wanted: &str) -> bool {
        self.title
            .iter()
            .any(|(_, title)| title.to_lowercase() == wanted)
    }
}
