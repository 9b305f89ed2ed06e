//! Chooses the level of detail of a table for the school.

use super::completion::{CompletionLimits, complete};
use super::{SMALLEST_GROUP, band, protection_width};

/// Percentage of rows that a step must be able to publish.
const ENOUGH_PERCENT: usize = 80;

/// One concept's reports.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct RowCounts {
    /// Number of the concept's strand.
    pub strand: usize,
    /// Students who reported.
    pub reporters: u32,
    /// Those of them who are not confident.
    pub low: u32,
}

/// A step of the ladder, finest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Step {
    /// Counts per concept, small cells withheld.
    ConceptCounts,
    /// A band per concept.
    ConceptBands,
    /// A band per strand.
    StrandBands,
    /// One band for the class.
    ClassOnly,
}

/// The finest step that can publish at least four rows in five. The row of a strand is
/// the rounded mean of its concepts, so that its reporters are students and not reports.
#[must_use]
pub fn choose_step(rows: &[RowCounts], limits: &CompletionLimits) -> Step {
    let enough = |published: usize, of: usize| of > 0 && published * 100 >= ENOUGH_PERCENT * of;
    let table: Vec<Vec<u32>> = rows
        .iter()
        .map(|row| {
            vec![
                row.low.min(row.reporters),
                row.reporters.saturating_sub(row.low),
            ]
        })
        .collect();
    let counts = complete(
        &table,
        SMALLEST_GROUP,
        protection_width(SMALLEST_GROUP),
        limits,
    );
    let whole_rows = counts
        .withheld
        .iter()
        .filter(|row| row.iter().all(|withheld| !withheld))
        .count();
    if counts.safe && enough(whole_rows, rows.len()) {
        return Step::ConceptCounts;
    }
    let banded = |rows: &[RowCounts]| {
        let published = rows
            .iter()
            .filter(|row| band(row.low, row.reporters).is_some())
            .count();
        enough(published, rows.len())
    };
    if banded(rows) {
        return Step::ConceptBands;
    }
    if banded(&strand_rows(rows)) {
        return Step::StrandBands;
    }
    Step::ClassOnly
}

/// One row for each strand: the rounded mean of its concepts, with the reporters of the
/// concept that has most.
#[must_use]
pub fn strand_rows(rows: &[RowCounts]) -> Vec<RowCounts> {
    let mut sums: std::collections::BTreeMap<usize, (u64, u64, u32)> =
        std::collections::BTreeMap::new();
    for row in rows {
        let sum = sums.entry(row.strand).or_default();
        sum.0 += u64::from(row.reporters);
        sum.1 += u64::from(row.low);
        sum.2 = sum.2.max(row.reporters);
    }
    sums.into_iter()
        .map(|(strand, (reports, low, reporters))| RowCounts {
            strand,
            reporters,
            low: (low * u64::from(reporters) + reports / 2)
                .checked_div(reports)
                .and_then(|low| u32::try_from(low).ok())
                .unwrap_or(0),
        })
        .collect()
}
