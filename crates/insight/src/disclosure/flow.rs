//! Maximum flow on the small graph of a table's rows and columns.

use std::collections::VecDeque;

/// A capacity no table reaches.
const UNLIMITED: u64 = u64::MAX / 4;

/// The withheld cells of a table as a graph: a row raises a cell without
/// limit (row → column) and lowers it at most to 0 (column → row).
pub(super) struct CellGraph {
    rows: usize,
    nodes: usize,
    capacity: Vec<u64>,
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
            capacity: vec![0; nodes * nodes],
            neighbours: vec![Vec::new(); nodes],
        };
        for (i, row) in table.iter().enumerate() {
            for (j, count) in row.iter().enumerate() {
                if withheld[i][j] {
                    graph.add(i, j, *count);
                }
            }
        }
        graph
    }

    /// Adds a withheld cell.
    pub fn add(&mut self, row: usize, column: usize, count: u32) {
        let other = self.rows + column;
        self.capacity[row * self.nodes + other] = UNLIMITED;
        self.capacity[other * self.nodes + row] = u64::from(count);
        if !self.neighbours[row].contains(&other) {
            self.neighbours[row].push(other);
            self.neighbours[other].push(row);
        }
    }

    /// Takes a withheld cell out again.
    pub fn remove(&mut self, row: usize, column: usize) {
        let other = self.rows + column;
        self.capacity[row * self.nodes + other] = 0;
        self.capacity[other * self.nodes + row] = 0;
        self.neighbours[row].retain(|n| *n != other);
        self.neighbours[other].retain(|n| *n != row);
    }

    /// How far a withheld cell of `count` can fall and rise, each looked for
    /// up to `enough`.
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
        left[without.0 * self.nodes + without.1] = 0;
        left[without.1 * self.nodes + without.0] = 0;
        let mut total = 0;
        while total < enough {
            let mut before = vec![usize::MAX; self.nodes];
            before[source] = source;
            let mut queue = VecDeque::from([source]);
            while let Some(node) = queue.pop_front() {
                if node == sink {
                    break;
                }
                for &next in &self.neighbours[node] {
                    if before[next] == usize::MAX && left[node * self.nodes + next] > 0 {
                        before[next] = node;
                        queue.push_back(next);
                    }
                }
            }
            if before[sink] == usize::MAX {
                break;
            }
            let mut push = enough - total;
            let mut node = sink;
            while node != source {
                push = push.min(left[before[node] * self.nodes + node]);
                node = before[node];
            }
            let mut node = sink;
            while node != source {
                left[before[node] * self.nodes + node] -= push;
                left[node * self.nodes + before[node]] += push;
                node = before[node];
            }
            total += push;
        }
        total
    }
}

/// Never reached by a flow: an augmenting path always lowers a cell.
pub(super) const NO_LIMIT: u64 = UNLIMITED;
