//! What a share-safe table holds. It holds no name, no seat and no count that
//! the rules withhold: whoever has it has nothing more than what is printed.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use surefoot_record::ConceptName;
use ts_rs::TS;

/// A table for the school that gives no student away.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ShareTable {
    /// The class.
    pub class_title: String,
    /// The date it is of.
    pub date: NaiveDate,
    /// How fine it is.
    pub step: ShareStep,
    /// Groups smaller than this are not shown.
    pub smallest_group: u32,
    /// Its rows.
    pub rows: Vec<ShareRow>,
    /// Totals of a table of counts: Not yet or With help, then the higher ratings.
    pub totals: Option<[u32; 2]>,
    /// What a reader could work out.
    pub audit: ShareAudit,
    /// Whether the rules let it be handed out now.
    pub standing: ShareStanding,
}

/// How fine a table is: the finest that shows at least four rows in five.
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
    /// The strand's id; nothing for the whole class.
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
    /// Counts; nothing for one that is withheld.
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
        /// Most of them; nothing for no end.
        most_reporters: Option<u32>,
    },
    /// Too few rated it, or too few counts would be possible.
    Withheld,
}

/// What a reader of the table could work out at best.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct ShareAudit {
    /// Rows, or cells of a table of counts, that are withheld.
    pub withheld: usize,
    /// Of these, cells that are not small themselves but would give small ones away.
    pub further: usize,
    /// How many counts must stay possible for a cell that is protected.
    pub least_possible: u64,
    /// How many stay possible for the cell best known, of those protected;
    /// nothing when none is.
    pub fewest_possible: Option<u64>,
    /// Bounds of every withheld cell of a table of counts.
    pub bounds: Vec<ShareBounds>,
    /// Whether every protected cell keeps at least that many.
    pub safe: bool,
}

/// What can be worked out about one withheld cell from all that is shown.
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

/// Whether a table may be handed out beside those handed out before.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ShareStanding {
    /// It may.
    Free {
        /// Tables of this class handed out before.
        earlier: usize,
    },
    /// The class differs from that of an earlier table by a few students, whose
    /// answers the two together could give away.
    NearlySameClass {
        /// The day of the earlier table.
        made_on: NaiveDate,
        /// Students in one class and not in the other.
        differing: usize,
        /// Smallest difference, other than none, that is taken.
        least: usize,
    },
    /// Nothing of it may be shown.
    Nothing,
}
