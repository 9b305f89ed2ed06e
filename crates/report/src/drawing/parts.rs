//! Wholes and parts: strips, area models, blocks, arrays, groups, coins.

use super::sketch::{Anchor, SMALL, Sketch, around};
use crate::mark::{Pen, Step, arc, ellipse, rectangle, rounded};
use surefoot_catalogue::Locale;
use surefoot_exercises::figure::{
    AreaModel, Array, BaseTenBlocks, Coins, EqualGroups, FractionGrid, FractionStrips, PartShape,
};
use surefoot_exercises::messages::MessageError;

pub(crate) fn strips(locale: Locale, of: &FractionStrips) -> Result<Sketch, MessageError> {
    const R: f32 = 58.0;
    const HIGH: f32 = 48.0;
    const GAP: f32 = 16.0;
    let circles = of.shape == PartShape::Circle;
    let most = of.strips.iter().map(|s| s.wholes).max().unwrap_or(1).max(1) as f32;
    let whole = if circles {
        2.0 * R
    } else {
        (480.0 - (most - 1.0) * GAP) / most
    };
    let line = (if circles { 2.0 * R } else { HIGH }) + GAP;
    let left = if of.strips.iter().any(|s| s.label.is_some()) {
        84.0
    } else {
        4.0
    };
    let mut sketch = Sketch::new(
        locale,
        left + most * (whole + GAP),
        of.strips.len() as f32 * line,
    );
    for (nth, strip) in of.strips.iter().enumerate() {
        let y = 4.0 + nth as f32 * line;
        if let Some(label) = &strip.label {
            sketch.label(label, (38.0, y + (line - GAP) / 2.0), Anchor::Middle)?;
        }
        for part in 0..strip.wholes * strip.parts {
            let x = left + (part / strip.parts) as f32 * (whole + GAP);
            let at = (part % strip.parts) as f32;
            let parts = strip.parts as f32;
            let path = if circles {
                sector((x + R, y + R), R - 1.0, at, parts)
            } else {
                rectangle(x + at * whole / parts, y, whole / parts, HIGH)
            };
            if part < strip.shaded {
                sketch.part(path);
            } else {
                sketch.empty(path);
            }
        }
    }
    Ok(sketch)
}

/// A sector of a circle cut into `parts`, counted clockwise from the top.
fn sector(centre: (f32, f32), r: f32, at: f32, parts: f32) -> Vec<Step> {
    if parts <= 1.0 {
        return ellipse(centre.0, centre.1, r, r);
    }
    let (from, to) = (90.0 - at * 360.0 / parts, 90.0 - (at + 1.0) * 360.0 / parts);
    let start = around(centre, r, from);
    let mut path = vec![Step::Move(centre.0, centre.1), Step::Line(start.0, start.1)];
    path.extend(arc(centre.0, centre.1, r, from, to));
    path.push(Step::Close);
    path
}

pub(super) fn area_model(locale: Locale, of: &AreaModel) -> Result<Sketch, MessageError> {
    const WIDE: f32 = 132.0;
    const HIGH: f32 = 78.0;
    const LEFT: f32 = 84.0;
    const TOP: f32 = 44.0;
    let mut sketch = Sketch::new(
        locale,
        LEFT + of.columns.len() as f32 * WIDE + 4.0,
        TOP + of.rows.len() as f32 * HIGH + 4.0,
    );
    for (c, column) in of.columns.iter().enumerate() {
        sketch.label(
            column,
            (LEFT + (c as f32 + 0.5) * WIDE, 22.0),
            Anchor::Middle,
        )?;
    }
    for (r, row) in of.rows.iter().enumerate() {
        let y = TOP + r as f32 * HIGH;
        sketch.label(row, (LEFT - 12.0, y + HIGH / 2.0), Anchor::End)?;
        for c in 0..of.columns.len() {
            let x = LEFT + c as f32 * WIDE;
            let path = rectangle(x, y, WIDE, HIGH);
            if (r + c) % 2 == 0 {
                sketch.pale(path);
            } else {
                sketch.empty(path);
            }
            if let Some(Some(cell)) = of.cells.get(r).and_then(|row| row.get(c)) {
                sketch.label(cell, (x + WIDE / 2.0, y + HIGH / 2.0), Anchor::Middle)?;
            }
        }
    }
    Ok(sketch)
}

pub(super) fn fraction_grid(locale: Locale, of: &FractionGrid) -> Sketch {
    const SIDE: f32 = 220.0;
    let (w, h) = (
        SIDE / of.columns.max(1) as f32,
        SIDE / of.rows.max(1) as f32,
    );
    let mut sketch = Sketch::new(locale, SIDE + 8.0, SIDE + 8.0);
    for r in 0..of.rows {
        for c in 0..of.columns {
            let path = rectangle(4.0 + c as f32 * w, 4.0 + r as f32 * h, w, h);
            if c < of.shaded_columns {
                sketch.part(path);
            } else {
                sketch.empty(path);
            }
        }
    }
    // Slanted lines over the rows, from edge to edge.
    let deep = of.shaded_rows as f32 * h;
    let mut at = 9.0;
    let mut hatch = Vec::new();
    while at < SIDE + deep {
        let (x0, y0) = if at <= deep {
            (0.0, at)
        } else {
            (at - deep, deep)
        };
        let (x1, y1) = if at <= SIDE {
            (at, 0.0)
        } else {
            (SIDE, at - SIDE)
        };
        hatch.push(Step::Move(4.0 + x0, 4.0 + y0));
        hatch.push(Step::Line(4.0 + x1, 4.0 + y1));
        at += 9.0;
    }
    if !hatch.is_empty() && deep > 0.0 {
        sketch.shape(hatch, None, Some(Pen::ink(1.4)));
    }
    sketch
}

pub(super) fn blocks(locale: Locale, of: &BaseTenBlocks) -> Sketch {
    const U: f32 = 9.0;
    const GAP: f32 = 14.0;
    #[derive(Clone, Copy, PartialEq)]
    enum Kind {
        Large,
        Flat,
        Rod,
        Cube,
    }
    let mut sketch = Sketch::new(locale, 0.0, 0.0);
    let (mut x, mut y, mut high, mut wide) = (4.0f32, 4.0f32, 0.0f32, 0.0f32);
    let pieces = [
        (Kind::Large, of.large_cubes, 14.0 * U, 14.0 * U),
        (Kind::Flat, of.flats, 10.0 * U, 10.0 * U),
        (Kind::Rod, of.rods, 1.3 * U, 10.0 * U),
        (Kind::Cube, of.cubes, 1.5 * U, 1.5 * U),
    ];
    for (kind, count, w, h) in pieces {
        for _ in 0..count {
            if x > 4.0 && x + w > 560.0 {
                x = 4.0;
                y += high + GAP;
                high = 0.0;
            }
            match kind {
                Kind::Large => {
                    let (s, d) = (10.0 * U, 4.0 * U);
                    sketch.pale(vec![
                        Step::Move(x, y + d),
                        Step::Line(x + d, y),
                        Step::Line(x + d + s, y),
                        Step::Line(x + s, y + d),
                        Step::Close,
                    ]);
                    sketch.part(vec![
                        Step::Move(x + s, y + d),
                        Step::Line(x + s + d, y),
                        Step::Line(x + s + d, y + s),
                        Step::Line(x + s, y + d + s),
                        Step::Close,
                    ]);
                    sketch.pale(rectangle(x, y + d, s, s));
                    for n in 1..10 {
                        let k = n as f32 * U;
                        sketch.thin((x + k, y + d), (x + k, y + d + s));
                        sketch.thin((x, y + d + k), (x + s, y + d + k));
                    }
                }
                _ => {
                    sketch.pale(rectangle(x, y, w, h));
                    for n in 1..10 {
                        let k = n as f32 * U;
                        if kind != Kind::Cube {
                            sketch.thin((x, y + k), (x + w, y + k));
                        }
                        if kind == Kind::Flat {
                            sketch.thin((x + k, y), (x + k, y + h));
                        }
                    }
                }
            }
            x += w + if kind == Kind::Cube { 6.0 } else { GAP };
            high = high.max(h);
            wide = wide.max(x);
        }
    }
    sketch.width = wide + 4.0;
    sketch.height = y + high + 6.0;
    sketch
}

pub(super) fn array(locale: Locale, of: &Array) -> Sketch {
    const CUT: f32 = 14.0;
    let step = (540.0 / of.columns.max(1) as f32).min(34.0);
    let gap_x = if of.split_column.is_some() { CUT } else { 0.0 };
    let gap_y = if of.split_row.is_some() { CUT } else { 0.0 };
    let x = |c: u32| {
        4.0 + c as f32 * step
            + of.split_column
                .map_or(0.0, |at| if c >= at { gap_x } else { 0.0 })
    };
    let y = |r: u32| {
        4.0 + r as f32 * step
            + of.split_row
                .map_or(0.0, |at| if r >= at { gap_y } else { 0.0 })
    };
    let width = 8.0 + of.columns as f32 * step + gap_x;
    let height = 8.0 + of.rows as f32 * step + gap_y;
    let mut sketch = Sketch::new(locale, width, height);
    for r in 0..of.rows {
        for c in 0..of.columns {
            if of.squares {
                sketch.pale(rectangle(x(c), y(r), step, step));
            } else {
                sketch.dot((x(c) + step / 2.0, y(r) + step / 2.0), step * 0.33);
            }
        }
    }
    if let Some(at) = of.split_column {
        let place = x(at) - gap_x / 2.0;
        sketch.cut((place, 0.0), (place, height));
    }
    if let Some(at) = of.split_row {
        let place = y(at) - gap_y / 2.0;
        sketch.cut((0.0, place), (width, place));
    }
    sketch
}

pub(super) fn groups(locale: Locale, of: &EqualGroups) -> Sketch {
    const DOT: f32 = 22.0;
    const GAP: f32 = 14.0;
    let wide = (of.each as f32).sqrt().ceil().max(1.0) as u32;
    let high = of.each.div_ceil(wide).max(1);
    let (w, h) = (wide as f32 * DOT + 20.0, high as f32 * DOT + 20.0);
    let across = of.groups.min((560.0 / (w + GAP)) as u32).max(1);
    let rows = of.groups.div_ceil(across);
    let left = if of.left_over > 0 { DOT + 16.0 } else { 0.0 };
    let mut sketch = Sketch::new(
        locale,
        (across as f32 * (w + GAP)).max(of.left_over as f32 * DOT) + 4.0,
        rows as f32 * (h + GAP) + left,
    );
    for g in 0..of.groups {
        let x = 2.0 + (g % across) as f32 * (w + GAP);
        let y = 2.0 + (g / across) as f32 * (h + GAP);
        sketch.empty(rounded(x, y, w, h, 16.0));
        for d in 0..of.each {
            let at = (
                x + 10.0 + ((d % wide) as f32 + 0.5) * DOT,
                y + 10.0 + ((d / wide) as f32 + 0.5) * DOT,
            );
            sketch.dot(at, 8.0);
        }
    }
    for d in 0..of.left_over {
        sketch.dot(
            (14.0 + d as f32 * DOT, rows as f32 * (h + GAP) + DOT / 2.0),
            8.0,
        );
    }
    sketch
}

pub(super) fn coins(locale: Locale, of: &Coins) -> Result<Sketch, MessageError> {
    use surefoot_exercises::Expr;
    use surefoot_exercises::text::expr_text;
    let mut sketch = Sketch::new(locale, 0.0, 0.0);
    let (mut x, mut y, mut high, mut wide) = (4.0f32, 4.0f32, 0.0f32, 0.0f32);
    for pile in &of.pieces {
        // True order of sizes: a dime is smaller than a cent.
        let r = match pile.value_hundredths {
            1 => 23.0,
            5 => 25.0,
            10 => 21.0,
            25 => 29.0,
            50 => 33.0,
            100 => 31.0,
            _ => 27.0,
        };
        let (w, h) = if pile.note {
            (112.0, 54.0)
        } else {
            (2.0 * r, 2.0 * r)
        };
        let words = if pile.value_hundredths < 100 {
            format!("{}¢", pile.value_hundredths)
        } else {
            expr_text(
                locale,
                &Expr::Money {
                    hundredths: pile.value_hundredths,
                },
            )?
        };
        for _ in 0..pile.count {
            if x > 4.0 && x + w > 560.0 {
                x = 4.0;
                y += high + 10.0;
                high = 0.0;
            }
            let path = rounded(x, y, w, h, if pile.note { 4.0 } else { w / 2.0 });
            sketch.pale(path);
            sketch.text(
                &words,
                (x + w / 2.0, y + h / 2.0),
                SMALL - 1.0,
                Anchor::Middle,
            );
            x += w + 10.0;
            high = high.max(h);
            wide = wide.max(x);
        }
    }
    sketch.width = wide;
    sketch.height = y + high + 4.0;
    Ok(sketch)
}
