//! The cells that are too small to show.

use super::{Mask, Table};

/// Cells below `smallest_group`. Zeros are among them, because "nobody" reveals as much as a small
/// count.
#[must_use]
pub fn primary_cells(table: &[Vec<u32>], smallest_group: u32) -> Mask {
    table
        .iter()
        .map(|row| row.iter().map(|count| *count < smallest_group).collect())
        .collect()
}

/// A table whose rows and columns with small totals are merged.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Merged {
    /// The smaller table.
    pub table: Table,
    /// For each new row, the rows in it.
    pub rows: Vec<Vec<usize>>,
    /// For each new column, the columns in it.
    pub columns: Vec<Vec<usize>>,
}

/// Merges every row with a total below `smallest_group` into the next one (the last into the one
/// before), then every column, until no total is small or one row or column is left. The order stays
/// the same.
#[must_use]
pub fn merge_small(table: &[Vec<u32>], smallest_group: u32) -> Merged {
    let width = table.first().map_or(0, Vec::len);
    let totals = |rows: &[Vec<u32>]| -> Vec<u64> {
        rows.iter()
            .map(|row| row.iter().copied().map(u64::from).sum())
            .collect()
    };
    let rows = merge_line(&totals(table), smallest_group);
    let by_row: Table = rows
        .iter()
        .map(|group| sum_rows(table, group, width))
        .collect();
    let flipped = transpose(&by_row, width);
    let columns = merge_line(&totals(&flipped), smallest_group);
    let by_column: Table = columns
        .iter()
        .map(|group| sum_rows(&flipped, group, by_row.len()))
        .collect();
    Merged {
        table: transpose(&by_column, by_row.len()),
        rows,
        columns,
    }
}

fn merge_line(totals: &[u64], smallest_group: u32) -> Vec<Vec<usize>> {
    let mut groups: Vec<(Vec<usize>, u64)> = Vec::new();
    for (place, total) in totals.iter().enumerate() {
        match groups.last_mut() {
            Some(last) if last.1 < u64::from(smallest_group) => {
                last.0.push(place);
                last.1 += total;
            }
            _ => groups.push((vec![place], *total)),
        }
    }
    // A small group at the end joins the one before it.
    if groups.len() > 1
        && groups
            .last()
            .is_some_and(|last| last.1 < u64::from(smallest_group))
        && let Some(last) = groups.pop()
        && let Some(before) = groups.last_mut()
    {
        before.0.extend(last.0);
    }
    groups.into_iter().map(|(places, _)| places).collect()
}

fn sum_rows(table: &[Vec<u32>], rows: &[usize], width: usize) -> Vec<u32> {
    (0..width)
        .map(|column| {
            let cells = rows.iter().filter_map(|row| table.get(*row)?.get(column));
            cells.sum()
        })
        .collect()
}

fn transpose(table: &[Vec<u32>], width: usize) -> Table {
    (0..width)
        .map(|column| {
            let cells = table.iter().filter_map(|row| row.get(column));
            cells.copied().collect()
        })
        .collect()
}
