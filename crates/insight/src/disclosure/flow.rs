//! Maximum flow on the graph of the rows and columns of a table.

use crate::grid::Grid;
use std::collections::VecDeque;

/// A capacity that no table reaches.
const UNLIMITED: u64 = u64::MAX / 4;

/// The withheld cells of a table as a graph. The arc row → column raises a cell without limit; the
/// arc column → row lowers it to 0 at most.
pub(super) struct CellGraph {
    rows: usize,
    nodes: usize,
    /// From node (row) to node (column).
    capacity: Grid<u64>,
    neighbours: Vec<Vec<usize>>,
}

impl CellGraph {
    /// The graph of the withheld cells.
    pub fn new(table: &[Vec<u32>], withheld: &[Vec<bool>]) -> Self {
        let rows = table.len();
        let nodes = rows + table.first().map_or(0, Vec::len);
        let mut graph = Self {
            rows,
            nodes,
            capacity: Grid::filled(nodes, nodes, 0),
            neighbours: vec![Vec::new(); nodes],
        };
        for (i, (row, marks)) in table.iter().zip(withheld).enumerate() {
            for (j, (count, withheld)) in row.iter().zip(marks).enumerate() {
                if *withheld {
                    graph.add(i, j, *count);
                }
            }
        }
        graph
    }

    /// Adds a withheld cell.
    pub fn add(&mut self, row: usize, column: usize, count: u32) {
        let other = self.rows + column;
        self.capacity[(row, other)] = UNLIMITED;
        self.capacity[(other, row)] = u64::from(count);
        for (node, neighbour) in [(row, other), (other, row)] {
            if let Some(known) = self.neighbours.get_mut(node)
                && !known.contains(&neighbour)
            {
                known.push(neighbour);
            }
        }
    }

    /// Removes a withheld cell.
    pub fn remove(&mut self, row: usize, column: usize) {
        let other = self.rows + column;
        self.capacity[(row, other)] = 0;
        self.capacity[(other, row)] = 0;
        for (node, neighbour) in [(row, other), (other, row)] {
            if let Some(known) = self.neighbours.get_mut(node) {
                known.retain(|n| *n != neighbour);
            }
        }
    }

    /// How far a withheld cell of `count` can fall and rise, each computed up to `enough`.
    pub fn room(&self, row: usize, column: usize, count: u32, enough: u64) -> (u64, u64) {
        let other = self.rows + column;
        let fall = self.flow(row, other, (row, other), enough.min(u64::from(count)));
        let rise = self.flow(other, row, (row, other), enough);
        (fall, rise)
    }

    /// Maximum flow from `source` to `sink` without the arcs of one cell, up
    /// to `enough`; shortest augmenting paths (Edmonds & Karp 1972, from memory).
    fn flow(&self, source: usize, sink: usize, without: (usize, usize), enough: u64) -> u64 {
        let mut left = self.capacity.clone();
        left[without] = 0;
        left[(without.1, without.0)] = 0;
        let mut total = 0;
        while total < enough {
            let Some(path) = self.shortest_path(&left, source, sink) else {
                break;
            };
            let push = path
                .iter()
                .map(|arc| left[*arc])
                .fold(enough - total, u64::min);
            for (from, to) in path {
                left[(from, to)] -= push;
                left[(to, from)] += push;
            }
            total += push;
        }
        total
    }

    /// The arcs, last first, of a shortest path with capacity `left`.
    fn shortest_path(
        &self,
        left: &Grid<u64>,
        source: usize,
        sink: usize,
    ) -> Option<Vec<(usize, usize)>> {
        // The node before each node reached.
        let mut before: Vec<Option<usize>> = vec![None; self.nodes];
        *before.get_mut(source)? = Some(source);
        let mut queue = VecDeque::from([source]);
        while let Some(node) = queue.pop_front() {
            if node == sink {
                break;
            }
            for &next in self.neighbours.get(node)? {
                if let Some(reached @ None) = before.get_mut(next)
                    && left[(node, next)] > 0
                {
                    *reached = Some(node);
                    queue.push_back(next);
                }
            }
        }
        let mut path = Vec::new();
        let mut node = sink;
        while node != source {
            let previous = (*before.get(node)?)?;
            path.push((previous, node));
            node = previous;
        }
        Some(path)
    }
}

/// More than any flow reaches, because an augmenting path always lowers a cell.
pub(super) const NO_LIMIT: u64 = UNLIMITED;
