//! Column work, tables and the balance.

use super::sketch::{Anchor, LABEL, Sketch};
use crate::font::Face;
use crate::mark::{Pen, Step, rectangle, rounded};
use crate::math::{MathBox, math, text_box};
use surefoot_catalogue::Locale;
use surefoot_exercises::Expr;
use surefoot_exercises::figure::{
    Balance, Cell, ColumnSign, ColumnWork, DataTable, RatioTable, Weight,
};
use surefoot_exercises::messages::MessageError;
use surefoot_exercises::text::say;

pub(super) fn balance(locale: Locale, of: &Balance) -> Result<Sketch, MessageError> {
    const SIZE: f32 = 40.0;
    let mut sketch = Sketch::new(locale, 540.0, 224.0);
    let all = |weights: &[Weight]| -> Vec<Expr> {
        weights
            .iter()
            .flat_map(|w| std::iter::repeat_n(w.label.clone(), w.count as usize))
            .collect()
    };
    // The beam comes first, because the foot covers it.
    for (weights, cx) in [(&of.left, 130.0), (&of.right, 410.0)] {
        let pieces = all(weights);
        let across = pieces.len().min(5) as f32;
        for (n, piece) in pieces.iter().enumerate() {
            let x = cx + ((n % 5) as f32 - across / 2.0) * (SIZE + 4.0);
            let y = 134.0 - SIZE - (n / 5) as f32 * (SIZE + 4.0);
            sketch.pale(rounded(x, y, SIZE, SIZE, 5.0));
            sketch.label(piece, (x + SIZE / 2.0, y + SIZE / 2.0), Anchor::Middle)?;
        }
        sketch.segment((cx - 118.0, 137.0), (cx + 118.0, 137.0));
        sketch.segment((cx, 137.0), (cx, 159.0));
    }
    sketch.segment((130.0, 159.0), (410.0, 159.0));
    sketch.part(vec![
        Step::Move(270.0, 162.0),
        Step::Line(304.0, 216.0),
        Step::Line(236.0, 216.0),
        Step::Close,
    ]);
    Ok(sketch)
}

/// Rows of boxes with lines around them; marked boxes are grey.
fn ruled(locale: Locale, rows: Vec<Vec<(MathBox, bool)>>) -> Sketch {
    const PAD: f32 = 12.0;
    let columns = rows.iter().map(Vec::len).max().unwrap_or(0);
    let widths: Vec<f32> = (0..columns)
        .map(|c| {
            rows.iter()
                .filter_map(|row| row.get(c))
                .map(|(set, _)| set.width)
                .fold(40.0, f32::max)
                + 2.0 * PAD
        })
        .collect();
    let mut sketch = Sketch::new(locale, widths.iter().sum::<f32>() + 4.0, 0.0);
    let mut y = 2.0;
    for row in &rows {
        let up = row.iter().map(|(s, _)| s.up).fold(14.0, f32::max);
        let down = row.iter().map(|(s, _)| s.down).fold(4.0, f32::max);
        let high = up + down + 18.0;
        let mut x = 2.0;
        for ((set, head), wide) in row.iter().zip(&widths) {
            let fill = if *head { 236 } else { 255 };
            sketch.shape(
                rectangle(x, y, *wide, high),
                Some(fill),
                Some(Pen::ink(1.6)),
            );
            let left = x + (wide - set.width) / 2.0;
            sketch
                .marks
                .extend(set.marks.iter().map(|m| m.moved(1.0, left, y + 9.0 + up)));
            x += wide;
        }
        y += high;
    }
    sketch.height = y + 2.0;
    sketch
}

pub(super) fn ratio_table(locale: Locale, of: &RatioTable) -> Result<Sketch, MessageError> {
    let mut rows = Vec::new();
    for row in &of.rows {
        let head = text_box(&say(locale, &row.label)?, LABEL, Face::Bold);
        let mut cells = vec![(head, true)];
        for cell in &row.cells {
            cells.push((math(locale, cell, LABEL, Face::Regular)?, false));
        }
        rows.push(cells);
    }
    Ok(ruled(locale, rows))
}

pub(super) fn data_table(locale: Locale, of: &DataTable) -> Result<Sketch, MessageError> {
    let mut head = Vec::new();
    for words in &of.header {
        head.push((text_box(&say(locale, words)?, LABEL, Face::Bold), true));
    }
    let mut rows = vec![head];
    for row in &of.rows {
        let mut cells = Vec::new();
        for cell in row {
            let set = match cell {
                Cell::Say { say: words } => text_box(&say(locale, words)?, LABEL, Face::Regular),
                Cell::Math { expr } => math(locale, expr, LABEL, Face::Regular)?,
            };
            cells.push((set, false));
        }
        rows.push(cells);
    }
    Ok(ruled(locale, rows))
}

pub(super) fn column_work(locale: Locale, of: &ColumnWork) -> Sketch {
    const STEP: f32 = 30.0;
    const LINE: f32 = 42.0;
    const DIGIT: f32 = 27.0;
    let parts = |text: &str| -> (Vec<char>, Vec<char>, bool) {
        let text = text.replace('-', "−");
        let (whole, part) = text.split_once('.').unwrap_or((&text, ""));
        (
            whole.chars().collect(),
            part.chars().collect(),
            text.contains('.'),
        )
    };
    let all: Vec<_> = of
        .numbers
        .iter()
        .chain(&of.result)
        .map(|t| parts(t))
        .collect();
    let before = all
        .iter()
        .map(|p| p.0.len())
        .max()
        .unwrap_or(1)
        .max(of.carries.len());
    let after = all.iter().map(|p| p.1.len()).max().unwrap_or(0);
    let point = if all.iter().any(|p| p.2) { 14.0 } else { 0.0 };
    // Columns count from the decimal point: -1 for ones, 0 for tenths.
    let x = |column: isize| {
        44.0 + (before as f32 + column as f32 + 0.5) * STEP + if column >= 0 { point } else { 0.0 }
    };
    let carried = of.carries.iter().any(|c| !c.trim().is_empty());
    let top = if carried { 34.0 } else { 6.0 };
    let y = |line: usize| top + (line as f32 + 0.5) * LINE;
    let width = 52.0 + (before + after) as f32 * STEP + point;
    let rule = top + of.numbers.len() as f32 * LINE;
    let mut sketch = Sketch::new(locale, width, rule + LINE + 10.0);
    for (n, carry) in of.carries.iter().enumerate() {
        let column = n as isize - of.carries.len() as isize + after as isize;
        sketch.text(carry, (x(column), 18.0), 16.0, Anchor::Middle);
    }
    let number = |sketch: &mut Sketch, text: &str, line: usize| {
        let (whole, part, dotted) = parts(text);
        for (n, digit) in whole.iter().enumerate() {
            let column = n as isize - whole.len() as isize;
            let at = (x(column), y(line));
            sketch.text(&digit.to_string(), at, DIGIT, Anchor::Middle);
        }
        if dotted {
            let at = (44.0 + before as f32 * STEP + point / 2.0, y(line));
            sketch.text(locale.decimal_sign(), at, DIGIT, Anchor::Middle);
        }
        for (n, digit) in part.iter().enumerate() {
            let at = (x(n as isize), y(line));
            sketch.text(&digit.to_string(), at, DIGIT, Anchor::Middle);
        }
    };
    for (line, text) in of.numbers.iter().enumerate() {
        number(&mut sketch, text, line);
    }
    let sign = match of.sign {
        ColumnSign::Plus => "+",
        ColumnSign::Minus => "−",
        ColumnSign::Times => "×",
    };
    let last = of.numbers.len().saturating_sub(1);
    sketch.text(sign, (22.0, y(last)), DIGIT, Anchor::Middle);
    sketch.segment((6.0, rule), (width - 4.0, rule));
    match &of.result {
        Some(result) => number(&mut sketch, result, of.numbers.len()),
        None => sketch.shape(
            rounded(40.0, rule + 7.0, width - 48.0, LINE - 6.0, 4.0),
            Some(255),
            Some(Pen::ink(1.4)),
        ),
    }
    sketch
}
