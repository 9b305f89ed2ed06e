//! Values by row and column.

use std::ops::{Index, IndexMut};

/// Rows of equal length.
#[derive(Debug, Clone)]
pub(crate) struct Grid<T> {
    columns: usize,
    cells: Vec<T>,
}

impl<T: Clone> Grid<T> {
    /// A grid with the same value in every cell.
    pub fn filled(rows: usize, columns: usize, value: T) -> Self {
        Self {
            columns,
            cells: vec![value; rows * columns],
        }
    }
}

impl<T> Grid<T> {
    /// All rows in order; none if there are no columns.
    pub fn rows(&self) -> impl Iterator<Item = &[T]> {
        self.cells.chunks_exact(self.columns.max(1))
    }

    /// All cells, row by row.
    pub fn cells(&self) -> &[T] {
        &self.cells
    }

    /// All cells, row by row.
    pub fn into_cells(self) -> Vec<T> {
        self.cells
    }

    /// A grid of the same size, with each cell computed from the cell here.
    pub fn map<U>(&self, of: impl FnMut(&T) -> U) -> Grid<U> {
        Grid {
            columns: self.columns,
            cells: self.cells.iter().map(of).collect(),
        }
    }

    /// The index of a cell. Panics outside the grid, because a wrong index could read another row.
    fn place(&self, row: usize, column: usize) -> usize {
        assert!(column < self.columns, "column {column} of {}", self.columns);
        row * self.columns + column
    }
}

impl<T> Index<(usize, usize)> for Grid<T> {
    type Output = T;

    #[expect(
        clippy::indexing_slicing,
        reason = "callers count rows and columns by the sizes that they made the grid with"
    )]
    fn index(&self, (row, column): (usize, usize)) -> &T {
        &self.cells[self.place(row, column)]
    }
}

impl<T> IndexMut<(usize, usize)> for Grid<T> {
    #[expect(
        clippy::indexing_slicing,
        reason = "callers count rows and columns by the sizes that they made the grid with"
    )]
    fn index_mut(&mut self, (row, column): (usize, usize)) -> &mut T {
        let place = self.place(row, column);
        &mut self.cells[place]
    }
}
