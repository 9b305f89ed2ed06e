//! The cells that are too small to show.

use super::Mask;

/// Cells below `smallest_group`. Zeros are among them, because "nobody" reveals as much as a small
/// count.
#[must_use]
pub fn primary_cells(table: &[Vec<u32>], smallest_group: u32) -> Mask {
    table
        .iter()
        .map(|row| row.iter().map(|count| *count < smallest_group).collect())
        .collect()
}
