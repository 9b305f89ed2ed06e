//! Tables with lines between rows.

use crate::inline::{Align, Inline, Style, natural_width, paragraph};
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
}

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
        wanted.into_iter().map(|w| w * scale).collect()
    }

    fn align(&self, place: usize) -> Align {
        self.columns.get(place).map_or(Align::Left, |c| c.align)
    }

    fn row(&self, cells: &[Cell], widths: &[f32], head: bool) -> Slab {
        const PAD: f32 = 4.0;
        let set: Vec<Slab> = widths
            .iter()
            .enumerate()
            .map(|(place, wide)| {
                let inner = (wide - 2.0 * PAD).max(4.0);
                match cells.get(place) {
                    Some(Cell::Inlines(inlines)) => {
                        let style = Style {
                            align: self.align(place),
                            ..Style::of(self.size)
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
            .map(|s| s.height + 2.0 * PAD)
            .fold(self.row_height, f32::max);
        let mut row = Slab::space(widths.iter().sum(), height);
        let mut x = 0.0;
        let mut groups = Vec::new();
        for (place, (cell, wide)) in set.iter().zip(widths).enumerate() {
            let mut placed = Slab::default();
            let slack = match (cells.get(place), self.align(place)) {
                (Some(Cell::Slab(_)), Align::Middle) => (wide - 2.0 * PAD - cell.width) / 2.0,
                _ => 0.0,
            };
            placed.put(cell, x + PAD + slack.max(0.0), (height - cell.height) / 2.0);
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
