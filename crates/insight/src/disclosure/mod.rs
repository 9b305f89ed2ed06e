//! Disclosure control: tables that reveal no student.
//!
//! Tables of counts withhold small cells, and further cells so that totals do not reveal the small
//! ones; an audit checks the result. Other tables show a band instead of a share. Releases are
//! logged, because tables that are added and subtracted can reveal a few students.
//! Rules and sources: `docs/insight.md`, "Share-safe tables".

mod audit;
mod bands;
mod completion;
mod flow;
mod ladder;
mod primary;
mod releases;

pub use audit::{CellBounds, audit};
pub use bands::{Band, FEWEST_COUNTS, band};
pub use completion::{Completion, CompletionLimits, complete};
pub use ladder::{RowCounts, Step, choose_step, strand_rows};
pub use primary::primary_cells;
pub use releases::{CountedRating, RatingKey, ReleasedRow, RowFault, check_row};

/// Counts: rows of equal length.
pub type Table = Vec<Vec<u32>>;
/// Which cells are withheld: rows like those of the table.
pub type Mask = Vec<Vec<bool>>;

/// Smallest group that a table shows (NCES 2011-603, Statistical Methods for Protecting
/// Personally Identifiable Information in Aggregate Reporting).
pub const SMALLEST_GROUP: u32 = 10;

/// The width that the range of a withheld cell must have: half of `smallest_group`, rounded up (our
/// rule).
#[must_use]
pub fn protection_width(smallest_group: u32) -> u32 {
    smallest_group.div_ceil(2)
}

#[cfg(test)]
mod release_tests;
#[cfg(test)]
mod tests;
