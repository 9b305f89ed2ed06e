//! Tables that leave the class without giving a student away.
//!
//! Count tables: small cells are withheld, further cells are withheld so
//! that totals do not give the small ones back, and the result is audited.
//! Share rows: a band instead of a share. Releases are logged, because two
//! tables of nearly the same class subtract. Rules and sources:
//! `docs/insight.md`, "Share-safe tables".

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
pub use primary::{Merged, merge_small, primary_cells};
pub use releases::{ReleaseError, check_release};

/// Counts: rows of equal length.
pub type Table = Vec<Vec<u32>>;
/// Which cells are withheld: rows like those of the table.
pub type Mask = Vec<Vec<bool>>;

/// Smallest group reported (NCES 2011-603, Statistical Methods for Protecting
/// Personally Identifiable Information in Aggregate Reporting).
pub const SMALLEST_GROUP: u32 = 10;

/// How wide the range of a withheld cell must stay at a smallest group of
/// `smallest_group`: 5 at 10, 3 at 5 (our rule: half, rounded up).
#[must_use]
pub fn protection_width(smallest_group: u32) -> u32 {
    smallest_group.div_ceil(2)
}

#[cfg(test)]
mod tests;
