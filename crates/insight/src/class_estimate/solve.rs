//! The linear system of one round.
//!
//! Every cell links the pairs of the class, of its student and of its concept. Concepts are
//! not linked to one another, so each is eliminated as a block of two by two; what remains
//! are the pairs of the class and the students. The whole matrix is never formed: the cost
//! grows with the number of concepts, not with its cube.

use super::pair::{Block, Effects, Link, Pair};
use crate::grid::Grid;

/// The covariance of all effects.
#[derive(Debug)]
pub(super) struct Covariance {
    /// Of the pairs of the class (first two rows) and the students, as single numbers.
    rest: Grid<f64>,
    /// The pair of each student with itself.
    students: Vec<Block>,
    /// Each student's pair added to that of the class.
    sums: Vec<Block>,
    /// The pair of each concept with itself.
    concepts: Vec<Block>,
    /// For each concept, its links with the class and then with each student.
    links: Grid<Link>,
}

impl Covariance {
    /// Of the effects of a student alone.
    pub fn student(&self, student: usize) -> Block {
        self.students.get(student).copied().unwrap_or_default()
    }

    /// Of the effects of a concept alone.
    pub fn concept(&self, concept: usize) -> Block {
        self.concepts.get(concept).copied().unwrap_or_default()
    }

    /// Of the sum of the effects of class, student and concept.
    pub fn cell(&self, student: usize, concept: usize) -> Block {
        let sum = self.sums.get(student).copied().unwrap_or_default();
        sum + self.concept(concept)
            + self.links[(concept, 0)].both_ways()
            + self.links[(concept, student + 1)].both_ways()
    }

    /// Of that sum with the ease of the concept.
    pub fn cell_with_ease(&self, student: usize, concept: usize) -> Pair {
        let own = self.concept(concept);
        self.links[(concept, 0)].with_logit()
            + self.links[(concept, student + 1)].with_logit()
            + Pair {
                logit: own.logit,
                shift: own.cross,
            }
    }

    /// The variance of a weighted sum over the pairs of the class, of the students (in their
    /// order) and of one concept.
    pub fn of_sum(&self, class: Pair, students: &[Pair], concept: usize, ease: Pair) -> f64 {
        let weights: Vec<f64> = std::iter::once(&class)
            .chain(students)
            .flat_map(|pair| [pair.logit, pair.shift])
            .collect();
        let rest: f64 = self
            .rest
            .rows()
            .zip(&weights)
            .map(|(row, weight)| weight * dot(row, &weights))
            .sum();
        let pairs = std::iter::once(&class).chain(students);
        let links: f64 = self
            .links
            .rows()
            .nth(concept)
            .unwrap_or_default()
            .iter()
            .zip(pairs)
            .map(|(link, weight)| {
                weight.logit * link.logit.dot(ease) + weight.shift * link.shift.dot(ease)
            })
            .sum();
        rest + 2.0 * links + self.concept(concept).form(ease)
    }
}

/// The solution of a round.
pub(super) struct Solved {
    pub step: Effects,
    pub covariance: Covariance,
}

/// A concept after its elimination.
struct Eliminated {
    /// The inverse of its own block.
    inverse: Block,
    /// Its links with the rest times that inverse, one list for each of its two numbers.
    weights: [Vec<f64>; 2],
}

/// Solves curvature × step = gradient. The curvature is that of the cells and, beside it, the
/// inverse prior variances.
pub(super) fn solve(curvature: &Grid<Block>, priors: &Effects, gradient: &Effects) -> Solved {
    let students = priors.students.len();
    let mut class = Block::diagonal(priors.class);
    let mut own: Vec<Block> = priors
        .students
        .iter()
        .map(|prior| Block::diagonal(*prior))
        .collect();
    let mut links = vec![Block::default(); students];
    let mut concepts: Vec<Block> = vec![Block::default(); priors.concepts.len()];
    for ((row, own), link) in curvature.rows().zip(&mut own).zip(&mut links) {
        for (cell, concept) in row.iter().zip(&mut concepts) {
            *own += *cell;
            *link += *cell;
            class += *cell;
            *concept += *cell;
        }
    }
    let mut matrix = lower_rows(class, &links, &own);
    let mut right: Vec<f64> = std::iter::once(&gradient.class)
        .chain(&gradient.students)
        .flat_map(|pair| [pair.logit, pair.shift])
        .collect();

    let mut eliminated = Vec::with_capacity(concepts.len());
    for (at, ((concept, prior), gradient)) in concepts
        .iter()
        .zip(&priors.concepts)
        .zip(&gradient.concepts)
        .enumerate()
    {
        let inverse = (*concept + Block::diagonal(*prior)).inverse();
        let cells = std::iter::once(concept).chain(column(curvature, at));
        let (mut by_logit, mut by_shift) = (Vec::new(), Vec::new());
        for cell in cells {
            by_logit.extend([cell.logit, cell.cross]);
            by_shift.extend([cell.cross, cell.shift]);
        }
        let weights = [
            combined(&by_logit, inverse.logit, &by_shift, inverse.cross),
            combined(&by_logit, inverse.cross, &by_shift, inverse.shift),
        ];
        let [first, second] = &weights;
        for (((row, right), w1), w2) in matrix.iter_mut().zip(&mut right).zip(first).zip(second) {
            for ((cell, x1), x2) in row.iter_mut().zip(&by_logit).zip(&by_shift) {
                *cell -= w1 * x1 + w2 * x2;
            }
            *right -= w1 * gradient.logit + w2 * gradient.shift;
        }
        eliminated.push(Eliminated { inverse, weights });
    }

    let rest = inverse(cholesky(matrix));
    let step: Vec<f64> = rest.rows().map(|row| dot(row, &right)).collect();
    back(rest, &step, eliminated, gradient)
}

/// The step and the covariance of the concepts, from those of the rest.
fn back(rest: Grid<f64>, step: &[f64], concepts: Vec<Eliminated>, gradient: &Effects) -> Solved {
    let mut steps = pairs(step);
    let class = steps.next().unwrap_or_default();
    let students: Vec<Pair> = steps.collect();
    let mut found = Effects {
        class,
        students,
        concepts: Vec::with_capacity(concepts.len()),
    };
    let mut own = Vec::with_capacity(concepts.len());
    let mut links = Vec::with_capacity(concepts.len() * (found.students.len() + 1));
    for (Eliminated { inverse, weights }, gradient) in concepts.into_iter().zip(&gradient.concepts)
    {
        let [first, second] = &weights;
        let plain = inverse.times(*gradient);
        found.concepts.push(Pair {
            logit: plain.logit - dot(first, step),
            shift: plain.shift - dot(second, step),
        });
        let linked: Vec<Pair> = rest
            .rows()
            .map(|row| Pair {
                logit: -dot(row, first),
                shift: -dot(row, second),
            })
            .collect();
        let mut block = inverse;
        for ((link, w1), w2) in linked.iter().zip(first).zip(second) {
            block.logit -= w1 * link.logit;
            block.cross -= w1 * link.shift;
            block.shift -= w2 * link.shift;
        }
        own.push(block);
        let of_pairs = linked.as_chunks::<2>().0.iter();
        links.extend(of_pairs.map(|[logit, shift]| Link {
            logit: *logit,
            shift: *shift,
        }));
    }
    let students = found.students.len();
    let class = block_at(&rest, 0, 0);
    let own_students: Vec<Block> = (0..students)
        .map(|at| block_at(&rest, at + 1, at + 1))
        .collect();
    let sums = own_students
        .iter()
        .enumerate()
        .map(|(at, own)| class + *own + link_at(&rest, 0, at + 1).both_ways())
        .collect();
    Solved {
        step: found,
        covariance: Covariance {
            rest,
            students: own_students,
            sums,
            concepts: own,
            links: Grid::of(students + 1, links),
        },
    }
}

/// The lower triangle of the curvature of class and students, row by row.
fn lower_rows(class: Block, links: &[Block], own: &[Block]) -> Vec<Vec<f64>> {
    let mut rows = vec![vec![class.logit], vec![class.cross, class.shift]];
    for (at, (link, own)) in links.iter().zip(own).enumerate() {
        let mut first = vec![link.logit, link.cross];
        first.resize(2 * at + 2, 0.0);
        let mut second = vec![link.cross, link.shift];
        second.resize(2 * at + 2, 0.0);
        first.push(own.logit);
        second.extend([own.cross, own.shift]);
        rows.extend([first, second]);
    }
    rows
}

fn column<T>(grid: &Grid<T>, at: usize) -> impl Iterator<Item = &T> {
    grid.rows().filter_map(move |row| row.get(at))
}

fn combined(a: &[f64], by_a: f64, b: &[f64], by_b: f64) -> Vec<f64> {
    a.iter().zip(b).map(|(a, b)| a * by_a + b * by_b).collect()
}

fn pairs(numbers: &[f64]) -> impl Iterator<Item = Pair> {
    numbers
        .as_chunks::<2>()
        .0
        .iter()
        .map(|[logit, shift]| Pair {
            logit: *logit,
            shift: *shift,
        })
}

/// The covariance of two pairs of a matrix of single numbers.
fn link_at(matrix: &Grid<f64>, row: usize, column: usize) -> Link {
    let of = |nth: usize| Pair {
        logit: matrix[(2 * row + nth, 2 * column)],
        shift: matrix[(2 * row + nth, 2 * column + 1)],
    };
    Link {
        logit: of(0),
        shift: of(1),
    }
}

fn block_at(matrix: &Grid<f64>, row: usize, column: usize) -> Block {
    let link = link_at(matrix, row, column);
    Block {
        logit: link.logit.logit,
        cross: link.logit.shift,
        shift: link.shift.shift,
    }
}

/// The lower factor L of L·Lᵀ, from the lower triangle of a positive matrix.
fn cholesky(rows: Vec<Vec<f64>>) -> Vec<Vec<f64>> {
    let mut factor: Vec<Vec<f64>> = Vec::with_capacity(rows.len());
    for mut row in rows {
        for (at, above) in factor.iter().enumerate() {
            let (before, rest) = row.split_at_mut(at);
            if let (Some(cell), Some((pivot, above))) = (rest.first_mut(), above.split_last()) {
                *cell = (*cell - dot(before, above)) / pivot;
            }
        }
        if let Some((pivot, before)) = row.split_last_mut() {
            *pivot = (*pivot - dot(before, before)).sqrt();
        }
        factor.push(row);
    }
    factor
}

/// The inverse of L·Lᵀ.
fn inverse(factor: Vec<Vec<f64>>) -> Grid<f64> {
    // The columns of the inverse of L, each from its diagonal on.
    let mut columns: Vec<Vec<f64>> = Vec::with_capacity(factor.len());
    for at in 0..factor.len() {
        let mut column: Vec<f64> = Vec::with_capacity(factor.len() - at);
        for row in factor.iter().skip(at) {
            let Some((pivot, before)) = row.split_last() else {
                continue;
            };
            let unit = if column.is_empty() { 1.0 } else { 0.0 };
            let known = before.get(at..).unwrap_or_default();
            column.push((unit - dot(known, &column)) / pivot);
        }
        columns.push(column);
    }
    let mut found = Grid::filled(factor.len(), factor.len(), 0.0);
    for (row, below) in columns.iter().enumerate() {
        for (column, whole) in columns.iter().enumerate().take(row + 1) {
            let same = whole.get(row - column..).unwrap_or_default();
            let value = dot(below, same);
            found[(row, column)] = value;
            found[(column, row)] = value;
        }
    }
    found
}

/// The sum of products, in eight sums that the processor can add side by side.
fn dot(a: &[f64], b: &[f64]) -> f64 {
    let (a, a_rest) = a.as_chunks::<8>();
    let (b, b_rest) = b.as_chunks::<8>();
    let mut sums = [0.0; 8];
    for (a, b) in a.iter().zip(b) {
        for ((sum, a), b) in sums.iter_mut().zip(a).zip(b) {
            *sum += a * b;
        }
    }
    let rest: f64 = a_rest.iter().zip(b_rest).map(|(a, b)| a * b).sum();
    sums.iter().sum::<f64>() + rest
}
