//! The content of a share-safe table. It has no name, no seat and no withheld count, so it may be
//! passed on.

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
    /// The audit.
    pub audit: ShareAudit,
    /// Whether it may be released now.
    pub release: ShareRelease,
}

/// The level of detail. The table has the finest one that shows at least four rows of five.
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
    /// The concept, if rows are concepts.
    pub concept: Option<ConceptName>,
    /// What is shown.
    pub shown: ShareShown,
}

/// What a row shows of the last ratings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ShareShown {
    /// Counts; none for a withheld cell.
    Counts {
        /// Students whose last rating was Not yet or With help.
        low: Option<u32>,
        /// Students whose last rating was higher.
        high: Option<u32>,
        /// Students who rated it.
        reporters: u32,
    },
    /// A band for the share of students with Not yet or With help.
    Band {
        /// Lowest percentage.
        from_percent: u32,
        /// Upper end of the band in percent.
        to_percent: u32,
        /// Whether the band includes `to_percent`.
        to_included: bool,
        /// Least number of students who rated it.
        fewest_reporters: u32,
        /// Largest number of students who rated it; none without an upper end.
        most_reporters: Option<u32>,
    },
    /// Too few students rated it, the band would leave too few counts possible, or too few ratings
    /// changed since an earlier table.
    Withheld,
}

/// The audit: what a reader of the table could infer.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ShareAudit {
    /// Rows, or cells of a table of counts, that are withheld.
    pub withheld: usize,
    /// How many of them are not small but would reveal small ones.
    pub further: usize,
    /// How many counts must stay possible for a protected cell.
    pub least_possible: u64,
    /// How many counts stay possible for the protected cell with the narrowest range; none if no cell
    /// is protected.
    pub fewest_possible: Option<u64>,
    /// Bounds of every withheld cell of a table of counts.
    pub bounds: Vec<ShareBounds>,
    /// Whether that is enough.
    pub safe: bool,
}

/// What the shown cells reveal of one withheld cell.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ShareBounds {
    /// Its row, from 0.
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
pub enum ShareRelease {
    /// It may be released.
    Allowed {
        /// How many tables of this class were released before.
        earlier: usize,
        /// Rows that are withheld because too few ratings changed since an earlier table, or nearly
        /// all in the same way: with that table, the row could reveal what a few students answered.
        unchanged: usize,
    },
    /// Every row that could be shown is withheld for this reason.
    TooFewChanged {
        /// How many rows.
        unchanged: usize,
        /// The smallest number of ratings that must change.
        least: u32,
    },
    /// No row may be shown.
    Nothing,
}
