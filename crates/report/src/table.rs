//! Tables with lines between rows.

use crate::inline::{Align, Inline, Style, natural_width, paragraph, widest_word};
use crate::mark::{Mark, Pen, Step, rectangle};
use crate::slab::{Part, Role, Sense, Slab};

/// One cell.
#[derive(Clone, Debug, PartialEq)]
pub enum Cell {
    /// Words and mathematics.
    Inlines(Vec<Inline>),
    /// Laid-out content.
    Slab(Slab),
}

impl From<Vec<Inline>> for Cell {
    fn from(inlines: Vec<Inline>) -> Self {
        Cell::Inlines(inlines)
    }
}

/// One column.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Column {
    /// Its share of the width that is left, or its width in points.
    pub width: Width,
    /// The alignment of its cells.
    pub align: Align,
}

/// The width of a column.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Width {
    /// In points.
    Points(f32),
    /// A share of what the others leave.
    Share(f32),
}

/// A table to print.
#[derive(Clone, Debug, PartialEq)]
pub struct Table {
    /// What it is about, for screen readers.
    pub summary: String,
    /// Its columns.
    pub columns: Vec<Column>,
    /// Names of the columns.
    pub head: Vec<Cell>,
    /// Its rows.
    pub rows: Vec<Vec<Cell>>,
    /// Whether the first cell of each row names the row.
    pub row_heads: bool,
    /// Size of the text in points.
    pub size: f32,
    /// Least height of a row in points.
    pub row_height: f32,
    /// Space above and below the content of a cell in points.
    pub pad: f32,
}

/// Space beside the content of a cell in points.
const BESIDE: f32 = 4.0;

/// The smallest text of a head in points.
const LEAST_HEAD: f32 = 6.0;

impl Table {
    /// Lays out the head and the rows as slabs of this width.
    #[must_use]
    pub fn laid_out(&self, width: f32) -> (Option<Slab>, Vec<Slab>) {
        let widths = self.widths(width);
        let head = (!self.head.is_empty()).then(|| self.row(&self.head, &widths, true));
        let rows = self
            .rows
            .iter()
            .map(|row| self.row(row, &widths, false))
            .collect();
        (head, rows)
    }

    fn widths(&self, width: f32) -> Vec<f32> {
        let fixed: f32 = self
            .columns
            .iter()
            .map(|c| match c.width {
                Width::Points(points) => points,
                Width::Share(_) => 0.0,
            })
            .sum();
        let shares: f32 = self
            .columns
            .iter()
            .map(|c| match c.width {
                Width::Points(_) => 0.0,
                Width::Share(share) => share,
            })
            .sum();
        let left = (width - fixed).max(0.0);
        let wanted: Vec<f32> = self
            .columns
            .iter()
            .map(|c| match c.width {
                Width::Points(points) => points,
                Width::Share(share) => left * share / shares.max(0.01),
            })
            .collect();
        // Columns in points shrink in proportion if they do not fit.
        let all: f32 = wanted.iter().sum();
        let scale = if all > width { width / all } else { 1.0 };
        self.with_whole_words(wanted.into_iter().map(|w| w * scale).collect())
    }

    /// The same widths, but columns too narrow for a word take from those with space to spare.
    fn with_whole_words(&self, mut widths: Vec<f32>) -> Vec<f32> {
        let least: Vec<f32> = (0..widths.len())
            .map(|place| {
                let cells = [&self.head].into_iter().chain(&self.rows);
                let words = cells.map(|row| word(row.get(place), self.size));
                words.fold(0.0, f32::max) + 2.0 * BESIDE + 0.5
            })
            .collect();
        let pairs = || widths.iter().zip(&least);
        let lacking: f32 = pairs().map(|(has, least)| (least - has).max(0.0)).sum();
        let spare: f32 = pairs().map(|(has, least)| (has - least).max(0.0)).sum();
        let given = lacking.min(spare);
        if given > 0.0 {
            for (has, least) in widths.iter_mut().zip(&least) {
                *has += match least - *has {
                    lacks if lacks > 0.0 => lacks * given / lacking,
                    spares => spares * given / spare,
                };
            }
        }
        widths
    }

    /// The size of the head: that of the table, or smaller so that no word of it breaks.
    fn head_size(&self, widths: &[f32]) -> f32 {
        let sizes = widths.iter().enumerate().map(|(place, wide)| {
            let word = word(self.head.get(place), self.size);
            self.size * (wide - 2.0 * BESIDE) / word.max(0.01)
        });
        sizes.fold(self.size, f32::min).max(LEAST_HEAD)
    }

    fn align(&self, place: usize) -> Align {
        self.columns.get(place).map_or(Align::Left, |c| c.align)
    }

    fn row(&self, cells: &[Cell], widths: &[f32], head: bool) -> Slab {
        let size = match head {
            true => self.head_size(widths),
            false => self.size,
        };
        let set: Vec<Slab> = widths
            .iter()
            .enumerate()
            .map(|(place, wide)| {
                let inner = (wide - 2.0 * BESIDE).max(4.0);
                match cells.get(place) {
                    Some(Cell::Inlines(inlines)) => {
                        let style = Style {
                            align: self.align(place),
                            ..Style::of(size)
                        };
                        paragraph(inlines, inner, style)
                    }
                    Some(Cell::Slab(slab)) => slab.clone().within(inner, f32::MAX),
                    None => Slab::space(inner, 0.0),
                }
            })
            .collect();
        let height = set
            .iter()
            .map(|s| s.height + 2.0 * self.pad)
            .fold(self.row_height, f32::max);
        let mut row = Slab::space(widths.iter().sum(), height);
        let mut x = 0.0;
        let mut groups = Vec::new();
        for (place, (cell, wide)) in set.iter().zip(widths).enumerate() {
            let mut placed = Slab::default();
            let slack = match (cells.get(place), self.align(place)) {
                (Some(Cell::Slab(_)), Align::Middle) => (wide - 2.0 * BESIDE - cell.width) / 2.0,
                _ => 0.0,
            };
            placed.put(
                cell,
                x + BESIDE + slack.max(0.0),
                (height - cell.height) / 2.0,
            );
            let role = match (head, place) {
                (true, _) => Role::ColumnHead,
                (false, 0) if self.row_heads => Role::RowHead,
                _ => Role::Cell,
            };
            groups.push(Part::Group(role, placed.parts));
            x += wide;
        }
        row.parts
            .push(Part::Content(Sense::Ornament, ruled(widths, height, head)));
        row.parts.push(Part::Group(Role::Row, groups));
        row
    }
}

/// The width of the widest word of a cell.
fn word(cell: Option<&Cell>, size: f32) -> f32 {
    match cell {
        Some(Cell::Inlines(inlines)) => widest_word(inlines, size),
        Some(Cell::Slab(_)) | None => 0.0,
    }
}

fn ruled(widths: &[f32], height: f32, head: bool) -> Vec<Mark> {
    let total: f32 = widths.iter().sum();
    let mut path = rectangle(0.0, 0.0, total, height);
    let mut x = 0.0;
    for wide in widths.iter().take(widths.len().saturating_sub(1)) {
        x += wide;
        path.push(Step::Move(x, 0.0));
        path.push(Step::Line(x, height));
    }
    let mut marks = Vec::new();
    if head {
        marks.push(Mark::Shape {
            path: rectangle(0.0, 0.0, total, height),
            fill: Some(232),
            pen: None,
        });
    }
    marks.push(Mark::Shape {
        path,
        fill: None,
        pen: Some(Pen::grey(0.6, 90)),
    });
    marks
}

/// The width of a column that just fits its words, at most `most`.
#[must_use]
pub fn fitted(cells: &[&[Inline]], size: f32, most: f32) -> Width {
    let widest = cells
        .iter()
        .map(|c| natural_width(c, size))
        .fold(0.0, f32::max);
    Width::Points((widest + 10.0).min(most))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::inline::bold;

    /// The words of a row as they are printed, each with its size.
    fn printed(slab: &Slab) -> Vec<(String, f32)> {
        fn texts(parts: &[Part], all: &mut Vec<(String, f32)>) {
            for part in parts {
                match part {
                    Part::Group(_, parts) => texts(parts, all),
                    Part::Content(_, marks) => {
                        all.extend(marks.iter().filter_map(|mark| match mark {
                            Mark::Text { text, size, .. } => Some((text.clone(), *size)),
                            Mark::Shape { .. } => None,
                        }))
                    }
                }
            }
        }
        let mut all = Vec::new();
        texts(&slab.parts, &mut all);
        all
    }

    #[test]
    fn no_word_of_a_head_breaks_in_narrow_columns() {
        let heads = [
            "Concepto",
            "Podría enseñarlo",
            "Todavía no",
            "Sin ayuda / con ayuda / incorrectas",
        ];
        let table = |columns: usize| Table {
            summary: String::new(),
            columns: (0..columns)
                .map(|place| Column {
                    width: Width::Share(if place == 0 { 30.0 } else { 5.0 }),
                    align: Align::Middle,
                })
                .collect(),
            head: heads
                .iter()
                .cycle()
                .take(columns)
                .map(|head| Cell::from(bold(*head)))
                .collect(),
            rows: vec![vec![Cell::from(bold("Multiplicación y división"))]],
            row_heads: true,
            size: 9.5,
            row_height: 18.0,
            pad: 4.0,
        };
        for columns in [4, 8, 10] {
            let (head, rows) = table(columns).laid_out(495.0);
            for slab in rows.iter().chain(&head) {
                let there = printed(slab);
                assert!(there.iter().all(|(_, size)| *size >= LEAST_HEAD));
                let words: Vec<&str> = there
                    .iter()
                    .flat_map(|(text, _)| text.split_whitespace())
                    .collect();
                let whole = heads.iter().chain(&["Multiplicación y división"]);
                let whole: Vec<&str> = whole.flat_map(|text| text.split_whitespace()).collect();
                for word in words {
                    assert!(whole.contains(&word), "{word:?} with {columns} columns");
                }
            }
        }
        let widths = table(8).widths(495.0);
        assert!((widths.iter().sum::<f32>() - 495.0).abs() < 0.1);
    }
}
