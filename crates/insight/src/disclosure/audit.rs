//! Computes what a reader can infer about withheld cells.

use super::flow::{CellGraph, NO_LIMIT};

/// The bounds that published cells and totals give for one withheld cell.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CellBounds {
    /// Row, from 0.
    pub row: usize,
    /// Column, from 0.
    pub column: usize,
    /// Least count possible.
    pub least: u64,
    /// Most count possible.
    pub most: u64,
}

impl CellBounds {
    /// most − least.
    #[must_use]
    pub fn width(&self) -> u64 {
        self.most - self.least
    }
}

/// The exact bounds of every withheld cell, row by row, from every other cell, all totals of rows and
/// columns, and counts of at least 0.
///
/// The possible tables form a transport polytope, so both bounds are whole numbers and equal maximum
/// flows between the cell's row and column (Gusfield 1988, from memory).
#[must_use]
pub fn audit(table: &[Vec<u32>], withheld: &[Vec<bool>]) -> Vec<CellBounds> {
    let graph = CellGraph::new(table, withheld);
    let mut bounds = Vec::new();
    for (row, (counts, marks)) in table.iter().zip(withheld).enumerate() {
        for (column, (count, withheld)) in counts.iter().zip(marks).enumerate() {
            if *withheld {
                let (fall, rise) = graph.room(row, column, *count, NO_LIMIT);
                bounds.push(CellBounds {
                    row,
                    column,
                    least: u64::from(*count) - fall,
                    most: u64::from(*count) + rise,
                });
            }
        }
    }
    bounds
}
