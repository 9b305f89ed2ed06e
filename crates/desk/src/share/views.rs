//! The content of a share-safe table. It has no name, no seat and no count that
//! the rules withhold, so the table itself may be passed on.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_record::ConceptName;
use ts_rs::TS;

/// A table for the school that reveals no student.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ShareTable {
    /// The class.
    pub class_title: String,
    /// Its date.
    pub date: NaiveDate,
    /// Its level of detail.
    pub step: ShareStep,
    /// Groups smaller than this are not shown.
    pub smallest_group: u32,
    /// Its rows.
    pub rows: Vec<ShareRow>,
    /// Totals of a table of counts: Not yet or With help, then the higher ratings.
    pub totals: Option<[u32; 2]>,
    /// What a reader could infer.
    pub audit: ShareAudit,
    /// Whether the rules allow to release it now.
    pub standing: ShareStanding,
}

/// The level of detail: the finest that shows at least four rows in five.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum ShareStep {
    /// Counts per concept.
    ConceptCounts,
    /// A band per concept.
    ConceptBands,
    /// A band per strand.
    StrandBands,
    /// One band for the class.
    ClassOnly,
}

/// A row.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ShareRow {
    /// The strand's id; none for the whole class.
    pub strand: Option<String>,
    /// The concept, where rows are concepts.
    pub concept: Option<ConceptName>,
    /// What is shown.
    pub shown: ShareShown,
}

/// What a row shows of the last ratings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ShareShown {
    /// Counts; none for a withheld one.
    Counts {
        /// Students whose last rating was Not yet or With help.
        low: Option<u32>,
        /// Students whose last rating was higher.
        high: Option<u32>,
        /// Students who rated it.
        reporters: u32,
    },
    /// A band of the share with Not yet or With help.
    Band {
        /// Lowest percentage.
        from_percent: u32,
        /// Percentage below which the band ends, or with `to_included` at which.
        to_percent: u32,
        /// Whether `to_percent` belongs to the band.
        to_included: bool,
        /// Fewest students who rated it.
        fewest_reporters: u32,
        /// Most students who rated it; none without an upper end.
        most_reporters: Option<u32>,
    },
    /// Too few rated it, or too few counts would be possible.
    Withheld,
}

/// What a reader of the table could infer at most.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ShareAudit {
    /// Rows, or cells of a table of counts, that are withheld.
    pub withheld: usize,
    /// Of these, cells that are not small but would reveal small ones.
    pub further: usize,
    /// Fewest counts that must stay possible for a protected cell.
    pub least_possible: u64,
    /// Counts that stay possible for the protected cell with the narrowest range;
    /// none if no cell is protected.
    pub fewest_possible: Option<u64>,
    /// Bounds of every withheld cell of a table of counts.
    pub bounds: Vec<ShareBounds>,
    /// Whether every protected cell keeps at least that many.
    pub safe: bool,
}

/// What the shown cells reveal of one withheld cell.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ShareBounds {
    /// Its row in the table, from 0.
    pub row: usize,
    /// 0 for Not yet or With help, 1 for the higher ratings.
    pub column: usize,
    /// Least count possible.
    #[ts(type = "number")]
    pub least: u64,
    /// Most count possible.
    #[ts(type = "number")]
    pub most: u64,
}

/// Whether a table may be released after those released before.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ShareStanding {
    /// It may be released.
    Free {
        /// Tables of this class released before.
        earlier: usize,
    },
    /// The class differs from that of an earlier table by a few students. The two
    /// tables together could reveal their answers.
    NearlySameClass {
        /// The day of the earlier table.
        made_on: NaiveDate,
        /// Students in one class and not in the other.
        differing: usize,
        /// Smallest difference allowed, other than none.
        least: usize,
    },
    /// No row may be shown.
    Nothing,
}
