//! Withholds further cells until a reader can infer no small one.
//!
//! Rectangles give a first solution. Then a search looks for the fewest further cells. If a set of
//! withheld cells leaves a small cell too narrow, at least one cell outside the set must be withheld
//! too: this is a demand. The smallest choice that meets all demands so far either protects every
//! cell, and is proved to be the fewest, or gives a new demand (cutting planes as in Fischetti &
//! Salazar 2000; implicit hitting set; both from memory).

#[cfg(test)]
use super::audit;
use super::flow::CellGraph;
use super::{Mask, primary_cells};
use microlp::{ComparisonOp, LinearExpr, OptimizationDirection, Problem, SolveOptions, Variable};

/// Limits of the search for the fewest cells.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CompletionLimits {
    /// Width tests of single cells.
    pub tests: u64,
    /// Rounds of the choice; with 0, the rectangles give the solution.
    pub rounds: usize,
    /// Nodes of the solver for one choice.
    pub nodes: u64,
}

impl Default for CompletionLimits {
    fn default() -> Self {
        Self {
            tests: 150_000,
            rounds: 150,
            nodes: 2_000,
        }
    }
}

/// A completed table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Completion {
    /// Cells withheld: the small ones and the further ones.
    pub withheld: Mask,
    /// Further cells withheld.
    pub extra: usize,
    /// Whether every small cell keeps its width. If not, even a table without counts reveals one, and
    /// a coarser table is needed.
    pub safe: bool,
    /// Whether fewer further cells are proved to be too few.
    pub proved_fewest: bool,
}

/// Withholds further cells until every cell below `smallest_group` has a range of at least `width`.
#[must_use]
pub fn complete(
    table: &[Vec<u32>],
    smallest_group: u32,
    width: u32,
    limits: &CompletionLimits,
) -> Completion {
    let primary = primary_cells(table, smallest_group);
    let mut work = Work {
        table,
        primary: cells_of(&primary),
        width: u64::from(width),
        tests_left: limits.tests,
    };
    let all: Mask = table.iter().map(|row| vec![true; row.len()]).collect();
    if work.narrow(&all).is_some() {
        return Completion {
            extra: cells_of(&all).len() - work.primary.len(),
            withheld: all,
            safe: false,
            proved_fewest: false,
        };
    }
    let rectangles = work.by_rectangles(&primary);
    let (withheld, proved_fewest) = work.fewest(&primary, rectangles, limits);
    Completion {
        extra: cells_of(&withheld).len() - work.primary.len(),
        withheld,
        safe: true,
        proved_fewest,
    }
}

fn cells_of(mask: &[Vec<bool>]) -> Vec<(usize, usize)> {
    let mut cells = Vec::new();
    for (i, row) in mask.iter().enumerate() {
        for (j, marked) in row.iter().enumerate() {
            if *marked {
                cells.push((i, j));
            }
        }
    }
    cells
}

fn is_set(mask: &[Vec<bool>], (i, j): (usize, usize)) -> bool {
    mask.get(i)
        .and_then(|row| row.get(j))
        .is_some_and(|marked| *marked)
}

fn set(mask: &mut [Vec<bool>], (i, j): (usize, usize), marked: bool) {
    if let Some(cell) = mask.get_mut(i).and_then(|row| row.get_mut(j)) {
        *cell = marked;
    }
}

struct Work<'a> {
    table: &'a [Vec<u32>],
    primary: Vec<(usize, usize)>,
    width: u64,
    tests_left: u64,
}

impl Work<'_> {
    /// The count of a cell of the table; 0 outside it.
    fn count(&self, (i, j): (usize, usize)) -> u32 {
        let row = self.table.get(i);
        row.and_then(|row| row.get(j)).copied().unwrap_or(0)
    }

    fn is_narrow(&mut self, graph: &CellGraph, cell: (usize, usize)) -> bool {
        self.tests_left = self.tests_left.saturating_sub(1);
        let (fall, rise) = graph.room(cell.0, cell.1, self.count(cell), self.width);
        fall + rise < self.width
    }

    /// The first small cell that stays too narrow.
    fn narrow(&mut self, withheld: &[Vec<bool>]) -> Option<(usize, usize)> {
        let graph = CellGraph::new(self.table, withheld);
        let primary = self.primary.clone();
        primary
            .into_iter()
            .find(|cell| self.is_narrow(&graph, *cell))
    }

    /// Withholds the cheapest rectangle through a narrow cell until no cell is narrow. Then shows cells
    /// again that need not be withheld, largest first.
    fn by_rectangles(&mut self, primary: &[Vec<bool>]) -> Mask {
        let mut withheld = primary.to_vec();
        while let Some(cell) = self.narrow(&withheld) {
            match self.cheapest_rectangle(cell, &withheld) {
                Some(corners) => {
                    for corner in corners {
                        set(&mut withheld, corner, true);
                    }
                }
                // No rectangle adds a cell. Withholding everything is safe.
                None => withheld.iter_mut().flatten().for_each(|mark| *mark = true),
            }
        }
        self.show_needless(primary, withheld)
    }

    fn cheapest_rectangle(
        &self,
        (i, j): (usize, usize),
        withheld: &[Vec<bool>],
    ) -> Option<[(usize, usize); 3]> {
        let mut best: Option<(u64, [(usize, usize); 3])> = None;
        let at = |cell| u64::from(self.count(cell));
        let columns = self.table.get(i).map_or(0, Vec::len);
        for k in (0..self.table.len()).filter(|k| *k != i) {
            for l in (0..columns).filter(|l| *l != j) {
                let corners = [(i, l), (k, j), (k, l)];
                let fresh = corners.iter().filter(|cell| !is_set(withheld, **cell));
                let cost: u64 = fresh.clone().map(|cell| at(*cell) + 1).sum();
                if fresh.count() == 0 {
                    continue;
                }
                let gained = at(corners[0]).min(at(corners[1])) + at((i, j)).min(at(corners[2]));
                let cost = cost + 1000 * self.width.saturating_sub(gained);
                if best.is_none_or(|b| cost < b.0) {
                    best = Some((cost, corners));
                }
            }
        }
        best.map(|b| b.1)
    }

    fn show_needless(&mut self, primary: &[Vec<bool>], mut withheld: Mask) -> Mask {
        let mut further: Vec<(usize, usize)> = cells_of(&withheld)
            .into_iter()
            .filter(|cell| !is_set(primary, *cell))
            .collect();
        further.sort_by_key(|cell| std::cmp::Reverse(self.count(*cell)));
        for cell in further {
            set(&mut withheld, cell, false);
            if self.narrow(&withheld).is_some() {
                set(&mut withheld, cell, true);
            }
        }
        withheld
    }

    /// Searches for fewer cells than `known`. Returns true if the result is proved to be the fewest.
    fn fewest(
        &mut self,
        primary: &[Vec<bool>],
        known: Mask,
        limits: &CompletionLimits,
    ) -> (Mask, bool) {
        let extra = |mask: &Mask| cells_of(mask).len() - cells_of(primary).len();
        let mut best = known;
        if extra(&best) == 0 {
            return (best, true);
        }
        let mut demands: Vec<Vec<(usize, usize)>> = Vec::new();
        let mut trial = primary.to_vec();
        for _ in 0..limits.rounds {
            let found = self.demands_of(&trial);
            if found.is_empty() {
                // The smallest choice for all demands is safe, so it is the fewest.
                return (trial, true);
            }
            if self.tests_left == 0 {
                break;
            }
            demands.extend(found);
            let Some((choice, least)) = self.choose(&demands, limits.nodes) else {
                break;
            };
            if least >= extra(&best) {
                return (best, true);
            }
            trial = primary.to_vec();
            for cell in choice {
                set(&mut trial, cell, true);
            }
            // A choice, made safe by rectangles, is a candidate.
            let filled = self.by_rectangles_from(primary, trial.clone());
            if extra(&filled) < extra(&best) {
                best = filled;
            }
        }
        (best, false)
    }

    fn by_rectangles_from(&mut self, primary: &[Vec<bool>], from: Mask) -> Mask {
        let kept = self.by_rectangles(&from);
        self.show_needless(primary, kept)
    }

    /// For every narrow cell, a set of cells of which at least one must be withheld too. Small sets
    /// demand more, so the withheld set first grows as long as the cell stays narrow.
    fn demands_of(&mut self, withheld: &[Vec<bool>]) -> Vec<Vec<(usize, usize)>> {
        let mut shown: Vec<(usize, usize)> = Vec::new();
        for (i, row) in withheld.iter().enumerate() {
            for (j, marked) in row.iter().enumerate() {
                if !marked {
                    shown.push((i, j));
                }
            }
        }
        let mut graph = CellGraph::new(self.table, withheld);
        let mut demands: Vec<Vec<(usize, usize)>> = Vec::new();
        for cell in self.primary.clone() {
            if !self.is_narrow(&graph, cell) {
                continue;
            }
            for largest_first in [true, false] {
                let mut order = shown.clone();
                order.sort_by_key(|cell| (self.count(*cell), *cell));
                if largest_first {
                    order.reverse();
                }
                let mut grown = Vec::new();
                let mut demand = Vec::new();
                for (i, j) in order {
                    graph.add(i, j, self.count((i, j)));
                    if self.is_narrow(&graph, cell) {
                        grown.push((i, j));
                    } else {
                        graph.remove(i, j);
                        demand.push((i, j));
                    }
                }
                for (i, j) in grown {
                    graph.remove(i, j);
                }
                demand.sort_unstable();
                if !demands.contains(&demand) {
                    demands.push(demand);
                }
            }
        }
        demands
    }

    /// The fewest cells that meet every demand, with the smallest counts, and their number. `None` if the
    /// solver cannot prove it.
    fn choose(
        &self,
        demands: &[Vec<(usize, usize)>],
        nodes: u64,
    ) -> Option<(Vec<(usize, usize)>, usize)> {
        let total: f64 = self.table.iter().flatten().map(|c| f64::from(*c)).sum();
        let mut problem = Problem::new(OptimizationDirection::Minimize);
        let mut variables: std::collections::BTreeMap<(usize, usize), Variable> =
            std::collections::BTreeMap::new();
        for demand in demands {
            let mut sum = LinearExpr::empty();
            for cell in demand {
                let variable = *variables.entry(*cell).or_insert_with(|| {
                    // The sum of all small additions is below one cell.
                    let count = f64::from(self.count(*cell));
                    problem.add_binary_var(1.0 + 0.1 * count / total.max(1.0))
                });
                sum.add(variable, 1.0);
            }
            problem.add_constraint(sum, ComparisonOp::Ge, 1.0);
        }
        let mut options = SolveOptions::default();
        options.node_limit = Some(nodes);
        let solution = problem.solve_with(options).ok()?.into_solution().ok()?;
        if solution.status() != microlp::SolutionStatus::Optimal {
            return None;
        }
        let choice: Vec<(usize, usize)> = variables
            .into_iter()
            .filter(|(_, variable)| solution.var_value(*variable) > 0.5)
            .map(|(cell, _)| cell)
            .collect();
        let fewest = choice.len();
        Some((choice, fewest))
    }
}

/// Whether every cell below `smallest_group` keeps its width under `withheld`.
#[cfg(test)]
pub(super) fn is_safe(
    table: &[Vec<u32>],
    withheld: &[Vec<bool>],
    smallest_group: u32,
    width: u32,
) -> bool {
    audit(table, withheld)
        .into_iter()
        .filter(|b| table[b.row][b.column] < smallest_group)
        .all(|b| b.width() >= u64::from(width))
}
