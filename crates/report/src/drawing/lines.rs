//! Lines with marks: number lines, bars in parts, rulers, jugs and dials.

use super::sketch::{Anchor, LABEL, SMALL, Sketch, around, scale as place, ticks, value};
use crate::mark::{Step, ellipse, rectangle, rounded};
use surefoot_catalogue::Locale;
use surefoot_exercises::figure::{
    DoubleNumberLine, NumberLine, Ruler, Scale, ScaleShape, TapeDiagram,
};
use surefoot_exercises::messages::MessageError;
use surefoot_exercises::text::say;
use surefoot_exercises::{Expr, Say};

pub(crate) fn number_line(locale: Locale, line: &NumberLine) -> Result<Sketch, MessageError> {
    let (from, to) = (value(line.from), value(line.to));
    let marks = ticks(from, to, value(line.step));
    let labelled = |mark: f32| {
        line.labels
            .iter()
            .any(|one| (value(one.at) - mark).abs() < 1e-4)
    };
    if line.vertical {
        let mut sketch = Sketch::new(locale, 180.0, 360.0);
        let y = place(from, to, 336.0, 24.0);
        sketch.segment((80.0, 8.0), (80.0, 352.0));
        for mark in marks {
            let half = if labelled(mark) { 14.0 } else { 8.0 };
            sketch.segment((80.0 - half, y(mark)), (80.0 + half, y(mark)));
        }
        for one in &line.labels {
            sketch.label(&one.label, (104.0, y(value(one.at))), Anchor::Start)?;
        }
        for point in &line.points {
            let at = y(value(point.at));
            sketch.dot((80.0, at), 8.0);
            if let Some(label) = &point.label {
                sketch.label(label, (54.0, at), Anchor::End)?;
            }
        }
        return Ok(sketch);
    }
    const LONG: f32 = 560.0;
    const SIDE: f32 = 36.0;
    let axis = if !line.jumps.is_empty() {
        108.0
    } else if line.points.iter().any(|p| p.label.is_some()) {
        84.0
    } else {
        24.0
    };
    let x = place(from, to, SIDE, LONG - SIDE);
    let mut sketch = Sketch::new(locale, LONG, axis + 64.0);
    sketch.line(vec![
        Step::Move(8.0, axis),
        Step::Line(LONG - 8.0, axis),
        Step::Move(16.0, axis - 7.0),
        Step::Line(8.0, axis),
        Step::Line(16.0, axis + 7.0),
        Step::Move(LONG - 16.0, axis - 7.0),
        Step::Line(LONG - 8.0, axis),
        Step::Line(LONG - 16.0, axis + 7.0),
    ]);
    for mark in marks {
        let half = if labelled(mark) { 13.0 } else { 8.0 };
        sketch.segment((x(mark), axis - half), (x(mark), axis + half));
    }
    for one in &line.labels {
        sketch.label(&one.label, (x(value(one.at)), axis + 38.0), Anchor::Middle)?;
    }
    for jump in &line.jumps {
        let (a, b) = (x(value(jump.from)), x(value(jump.to)));
        let high = axis - 16.0 - (12.0 + (b - a).abs() / 4.0).min(34.0);
        let (foot, top) = (axis - 12.0, 2.0 * high - axis + 12.0);
        let mid = (a + b) / 2.0;
        // A quadratic curve as a cubic one.
        sketch.line(vec![
            Step::Move(a, foot),
            Step::Curve(
                a + (mid - a) * 2.0 / 3.0,
                foot + (top - foot) * 2.0 / 3.0,
                b + (mid - b) * 2.0 / 3.0,
                foot + (top - foot) * 2.0 / 3.0,
                b,
                foot,
            ),
        ]);
        sketch.ink(vec![
            Step::Move(b, axis - 10.0),
            Step::Line(b - 6.0, axis - 20.0),
            Step::Line(b + 6.0, axis - 20.0),
            Step::Close,
        ]);
        if let Some(label) = &jump.label {
            sketch.label(label, (mid, high - 25.0), Anchor::Middle)?;
        }
    }
    for ray in &line.rays {
        let end = x(value(ray.from));
        let far = if ray.rightward { LONG - 14.0 } else { 14.0 };
        sketch.bold(vec![Step::Move(end, axis), Step::Line(far, axis)]);
        if ray.open {
            sketch.empty(ellipse(end, axis, 8.0, 8.0));
        } else {
            sketch.spot((end, axis), 9.0);
        }
    }
    for point in &line.points {
        let at = x(value(point.at));
        sketch.dot((at, axis), 8.0);
        if let Some(label) = &point.label {
            sketch.label(label, (at, axis - 34.0), Anchor::Middle)?;
        }
    }
    Ok(sketch)
}

pub(super) fn double_number_line(
    locale: Locale,
    of: &DoubleNumberLine,
) -> Result<Sketch, MessageError> {
    const LEFT: f32 = 30.0;
    const LENGTH: f32 = 500.0;
    let shares = pair_places(of);
    let mut sketch = Sketch::new(locale, 580.0, 216.0);
    sketch.say(&of.upper.label, (4.0, 14.0), LABEL, Anchor::Start)?;
    sketch.segment((LEFT, 76.0), (560.0, 76.0));
    sketch.segment((LEFT, 132.0), (560.0, 132.0));
    for (row, tick, label) in [(&of.upper, 67.0, 48.0), (&of.lower, 123.0, 162.0)] {
        for (n, cell) in row.cells.iter().enumerate() {
            let x = LEFT + shares.get(n).copied().unwrap_or_default() * LENGTH;
            sketch.segment((x, tick), (x, tick + 18.0));
            sketch.label(cell, (x, label), Anchor::Middle)?;
        }
        sketch.segment((LEFT, tick), (LEFT, tick + 18.0));
        // Shown only if every part has space for it.
        if shares.iter().all(|share| share * LENGTH > 36.0) {
            sketch.text("0", (LEFT, label), LABEL, Anchor::Middle);
        }
    }
    sketch.say(&of.lower.label, (4.0, 200.0), LABEL, Anchor::Start)?;
    Ok(sketch)
}

/// The place of each pair as a share of the line: in proportion to its value, or at equal
/// distances if a value is unknown.
fn pair_places(of: &DoubleNumberLine) -> Vec<f32> {
    let count = of.upper.cells.len().max(1) as f32;
    [&of.upper, &of.lower]
        .into_iter()
        .find_map(|row| {
            let sizes: Vec<f32> = row
                .cells
                .iter()
                .map(|cell| match cell {
                    Expr::Number { text } => text.parse().ok().filter(|size| *size > 0.0),
                    _ => None,
                })
                .collect::<Option<_>>()?;
            let most = sizes.iter().copied().fold(f32::MIN_POSITIVE, f32::max);
            Some(sizes.into_iter().map(|size| size / most).collect())
        })
        .unwrap_or_else(|| {
            (1..=of.upper.cells.len())
                .map(|n| n as f32 / count)
                .collect()
        })
}

pub(super) fn tape_diagram(locale: Locale, of: &TapeDiagram) -> Result<Sketch, MessageError> {
    const WIDE: f32 = 440.0;
    const HIGH: f32 = 50.0;
    const OVER: f32 = 46.0;
    let left = if of.bars.iter().any(|bar| bar.label.is_some()) {
        130.0
    } else {
        6.0
    };
    let length = |bar: &surefoot_exercises::figure::TapeBar| -> u32 {
        bar.parts.iter().map(|p| p.length).sum()
    };
    let most = of.bars.iter().map(length).max().unwrap_or(1).max(1) as f32;
    let mut sketch = Sketch::new(locale, left + WIDE + 8.0, 0.0);
    let mut y = 6.0 - HIGH - 18.0;
    for bar in &of.bars {
        y += HIGH + 18.0 + if bar.whole_label.is_some() { OVER } else { 0.0 };
        let end = left + length(bar) as f32 / most * WIDE;
        if let Some(label) = &bar.label {
            sketch.say(label, (left - 14.0, y + HIGH / 2.0), LABEL, Anchor::End)?;
        }
        if let Some(label) = &bar.whole_label {
            sketch.line(vec![
                Step::Move(left, y - 6.0),
                Step::Line(left, y - 14.0),
                Step::Line(end, y - 14.0),
                Step::Line(end, y - 6.0),
            ]);
            sketch.label(label, ((left + end) / 2.0, y - 32.0), Anchor::Middle)?;
        }
        let mut x = left;
        for part in &bar.parts {
            let wide = part.length as f32 / most * WIDE;
            let path = rectangle(x, y, wide, HIGH);
            if part.shaded {
                sketch.part(path);
            } else {
                sketch.empty(path);
            }
            if let Some(label) = &part.label {
                sketch.label(label, (x + wide / 2.0, y + HIGH / 2.0), Anchor::Middle)?;
            }
            x += wide;
        }
    }
    sketch.height = y + HIGH + 6.0;
    Ok(sketch)
}

pub(super) fn ruler(locale: Locale, of: &Ruler) -> Result<Sketch, MessageError> {
    let length = of.length as f32;
    let unit = (540.0 / length).min(110.0);
    let x = |v: f32| 20.0 + v * unit;
    let mut sketch = Sketch::new(locale, length * unit + 60.0, 122.0);
    let (from, to) = (value(of.thing_from), value(of.thing_to));
    sketch.part(rounded(x(from), 8.0, (to - from) * unit, 26.0, 3.0));
    sketch.empty(rounded(6.0, 42.0, length * unit + 48.0, 74.0, 4.0));
    for n in 0..=of.length * of.parts {
        let tall = if n % of.parts == 0 {
            30.0
        } else if (2 * n) % of.parts == 0 {
            22.0
        } else if (4 * n) % of.parts == 0 {
            16.0
        } else {
            11.0
        };
        let at = x(n as f32 / of.parts as f32);
        sketch.segment((at, 43.0), (at, 43.0 + tall));
    }
    for n in 0..=of.length {
        sketch.text(&n.to_string(), (x(n as f32), 88.0), LABEL, Anchor::Middle);
    }
    let unit_sign = say(locale, &Say::new(of.unit.clone()))?;
    sketch.text(
        &unit_sign,
        (length * unit + 50.0, 105.0),
        SMALL,
        Anchor::End,
    );
    Ok(sketch)
}

pub(super) fn scale(locale: Locale, of: &Scale) -> Result<Sketch, MessageError> {
    let unit = say(locale, &Say::new(of.unit.clone()))?;
    let marks: Vec<i64> = (0..=of.to / of.step.max(1)).map(|n| n * of.step).collect();
    let named = |v: i64| v % of.label_step.max(1) == 0;
    if of.shape == ScaleShape::Jug {
        let mut sketch = Sketch::new(locale, 230.0, 284.0);
        let y = place(0.0, of.to as f32, 262.0, 40.0);
        let surface = y(of.value as f32);
        sketch.part(rectangle(62.0, surface, 120.0, 268.0 - surface));
        sketch.line(vec![
            Step::Move(62.0, 18.0),
            Step::Line(62.0, 268.0),
            Step::Line(182.0, 268.0),
            Step::Line(182.0, 18.0),
            Step::Move(182.0, 60.0),
            Step::Curve(207.0, 60.0, 220.0, 80.0, 220.0, 120.0),
            Step::Curve(220.0, 160.0, 207.0, 180.0, 182.0, 180.0),
        ]);
        for v in marks {
            let at = y(v as f32);
            let long = if named(v) { 30.0 } else { 16.0 };
            sketch.segment((62.0, at), (62.0 + long, at));
            if named(v) {
                let text = sketch.number(v);
                sketch.text(&text, (54.0, at), SMALL, Anchor::End);
            }
        }
        sketch.text(&unit, (140.0, 24.0), SMALL, Anchor::Middle);
        return Ok(sketch);
    }
    let mut sketch = Sketch::new(locale, 260.0, 260.0);
    let middle = (130.0, 130.0);
    let turn = |v: i64| 90.0 - v as f32 / of.to as f32 * 360.0;
    sketch.empty(ellipse(130.0, 130.0, 124.0, 124.0));
    for v in marks.iter().copied().filter(|v| *v < of.to) {
        let inner = if named(v) { 108.0 } else { 114.0 };
        sketch.segment(
            around(middle, 122.0, turn(v)),
            around(middle, inner, turn(v)),
        );
        if named(v) {
            let text = sketch.number(v);
            sketch.text(&text, around(middle, 90.0, turn(v)), SMALL, Anchor::Middle);
        }
    }
    sketch.text(&unit, (130.0, 166.0), SMALL, Anchor::Middle);
    let hand = around(middle, 84.0, turn(of.value));
    sketch.bold(vec![
        Step::Move(middle.0, middle.1),
        Step::Line(hand.0, hand.1),
    ]);
    sketch.spot(middle, 7.0);
    Ok(sketch)
}
