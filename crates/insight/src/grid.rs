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
    /// A grid with each cell computed from its row and column.
    pub fn build(rows: usize, columns: usize, mut of: impl FnMut(usize, usize) -> T) -> Self {
        let mut cells = Vec::with_capacity(rows * columns);
        for row in 0..rows {
            cells.extend((0..columns).map(|column| of(row, column)));
        }
        Self { columns, cells }
    }

    /// A grid of cells that are there already, row by row.
    pub fn of(columns: usize, cells: Vec<T>) -> Self {
        Self { columns, cells }
    }

    /// All rows in order; none if there are no columns.
    pub fn rows(&self) -> impl Iterator<Item = &[T]> {
        self.cells.chunks_exact(self.columns.max(1))
    }

    /// The places of all cells, row by row: their rows and columns.
    pub fn places(&self) -> impl Iterator<Item = (usize, usize)> + use<T> {
        let columns = self.columns;
        (0..self.cells.len()).map(move |at| (at / columns, at % columns))
    }

    /// All cells, row by row.
    pub fn cells(&self) -> &[T] {
        &self.cells
    }

    /// All cells, row by row.
    pub fn into_cells(self) -> Vec<T> {
        self.cells
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
