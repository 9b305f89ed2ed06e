//! Coordinate grids, graphs and plots.

use super::sketch::{Anchor, LABEL, Place, SMALL, Sketch, outline, scale, ticks, value};
use crate::mark::{Step, arc, rectangle};
use surefoot_catalogue::Locale;
use surefoot_exercises::figure::{
    BarChart, BoxPlot, CoordinateGrid, DotPlot, GridFrame, Histogram, PictureGraph,
};
use surefoot_exercises::messages::MessageError;

/// A grid with its numbers. Returns where values are on it.
pub(crate) fn grid_face(
    locale: Locale,
    frame: &GridFrame,
) -> Result<(Sketch, impl Fn(f32, f32) -> Place), MessageError> {
    const LEFT: f32 = 52.0;
    const TOP: f32 = 22.0;
    let steps = |from: i64, to: i64, step: i64| (to - from) as f32 / step.max(1) as f32;
    let across = steps(frame.x_from, frame.x_to, frame.x_step);
    let up = steps(frame.y_from, frame.y_to, frame.y_step);
    let unit = 340.0 / across.max(up).max(1.0);
    let (right, foot) = (LEFT + across * unit, TOP + up * unit);
    let x = scale(frame.x_from as f32, frame.x_to as f32, LEFT, right);
    let y = scale(frame.y_from as f32, frame.y_to as f32, foot, TOP);
    let below = if frame.x_title.is_some() { 70.0 } else { 44.0 };
    let mut sketch = Sketch::new(locale, right + 40.0, foot + below);
    let values = |from: i64, to: i64, step: i64| -> Vec<i64> {
        (0..=(to - from) / step.max(1))
            .map(|n| from + n * step)
            .collect()
    };
    let xs = values(frame.x_from, frame.x_to, frame.x_step);
    let ys = values(frame.y_from, frame.y_to, frame.y_step);
    for v in &xs {
        sketch.thin((x(*v as f32), TOP), (x(*v as f32), foot));
    }
    for v in &ys {
        sketch.thin((LEFT, y(*v as f32)), (right, y(*v as f32)));
    }
    // The axes go through zero if the grid shows it.
    let x0 = x(0.clamp(frame.x_from, frame.x_to.max(frame.x_from)) as f32);
    let y0 = y(0.clamp(frame.y_from, frame.y_to.max(frame.y_from)) as f32);
    sketch.segment((x0, TOP - 8.0), (x0, foot));
    sketch.segment((LEFT, y0), (right + 10.0, y0));
    // If lines are close, only some have space for a number.
    let every = if unit >= 26.0 {
        1
    } else if unit >= 15.0 {
        2
    } else {
        5
    };
    let named = |v: i64, step: i64| v % (step.max(1) * every) == 0;
    for v in xs
        .iter()
        .filter(|v| named(**v, frame.x_step) && (**v != 0 || frame.x_from >= 0))
    {
        let text = sketch.number(v);
        sketch.text(&text, (x(*v as f32), y0 + 16.0), SMALL, Anchor::Middle);
    }
    for v in ys.iter().filter(|v| named(**v, frame.y_step) && **v != 0) {
        let text = sketch.number(v);
        sketch.text(&text, (x0 - 8.0, y(*v as f32)), SMALL, Anchor::End);
    }
    if let Some(title) = &frame.x_title {
        let at = ((LEFT + right) / 2.0, foot + 48.0);
        sketch.say(title, at, SMALL, Anchor::Middle)?;
    }
    if let Some(title) = &frame.y_title {
        sketch.say(title, (4.0, 9.0), SMALL, Anchor::Start)?;
    }
    Ok((sketch, move |a, b| (x(a), y(b))))
}

pub(super) fn coordinate_grid(locale: Locale, of: &CoordinateGrid) -> Result<Sketch, MessageError> {
    let (mut sketch, at) = grid_face(locale, &of.frame)?;
    for path in &of.paths {
        let points: Vec<Place> = path
            .points
            .iter()
            .map(|p| at(value(p.x), value(p.y)))
            .collect();
        sketch.line(outline(&points, path.closed));
    }
    for point in &of.points {
        let (x, y) = at(value(point.at.x), value(point.at.y));
        sketch.spot((x, y), 6.0);
        sketch.text(&point.name, (x + 15.0, y - 14.0), LABEL, Anchor::Middle);
    }
    Ok(sketch)
}

pub(super) fn bar_chart(locale: Locale, of: &BarChart) -> Result<Sketch, MessageError> {
    const LEFT: f32 = 54.0;
    let step = (480.0 / of.bars.len().max(1) as f32).min(120.0);
    let right = LEFT + of.bars.len() as f32 * step;
    let y = scale(0.0, of.scale_to as f32, 262.0, 62.0);
    let mut sketch = Sketch::new(locale, (right + 12.0).max(300.0), 300.0);
    sketch.say(&of.title, (4.0, 14.0), LABEL, Anchor::Start)?;
    sketch.say(&of.axis, (4.0, 40.0), SMALL, Anchor::Start)?;
    rungs(&mut sketch, of.scale_to, of.scale_step, LEFT, right, &y);
    for (at, bar) in of.bars.iter().enumerate() {
        let x = LEFT + (at as f32 + 0.18) * step;
        let top = y(bar.value as f32);
        sketch.part(rectangle(x, top, step * 0.64, 262.0 - top));
        let place = (LEFT + (at as f32 + 0.5) * step, 282.0);
        sketch.say(&bar.label, place, SMALL, Anchor::Middle)?;
    }
    sketch.line(outline(
        &[(LEFT, 54.0), (LEFT, 262.0), (right, 262.0)],
        false,
    ));
    Ok(sketch)
}

fn rungs(sketch: &mut Sketch, top: i64, step: i64, left: f32, right: f32, y: &impl Fn(f32) -> f32) {
    for v in (0..=top / step.max(1)).map(|n| n * step.max(1)) {
        let at = y(v as f32);
        sketch.thin((left, at), (right, at));
        let text = sketch.number(v);
        sketch.text(&text, (left - 8.0, at), SMALL, Anchor::End);
    }
}

pub(super) fn picture_graph(locale: Locale, of: &PictureGraph) -> Result<Sketch, MessageError> {
    const LEFT: f32 = 150.0;
    const STEP: f32 = 34.0;
    let most = of
        .rows
        .iter()
        .map(|r| r.half_symbols.div_ceil(2))
        .max()
        .unwrap_or(0)
        .max(4) as f32;
    let foot = 36.0 + of.rows.len() as f32 * 42.0;
    let end = LEFT + most * STEP + 8.0;
    let mut sketch = Sketch::new(locale, end + 8.0, foot + 40.0);
    sketch.say(&of.title, (4.0, 14.0), LABEL, Anchor::Start)?;
    for (at, row) in of.rows.iter().enumerate() {
        let y = 57.0 + at as f32 * 42.0;
        sketch.thin((4.0, y - 21.0), (end, y - 21.0));
        sketch.say(&row.label, (LEFT - 16.0, y), LABEL, Anchor::End)?;
        let whole = row.half_symbols / 2;
        for n in 0..whole {
            sketch.dot((LEFT + (n as f32 + 0.5) * STEP, y), 14.0);
        }
        if row.half_symbols % 2 == 1 {
            let x = LEFT + (whole as f32 + 0.5) * STEP;
            let mut half = vec![Step::Move(x, y - 14.0)];
            half.extend(arc(x, y, 14.0, 90.0, 270.0));
            half.push(Step::Close);
            sketch.shape(half, Some(120), Some(crate::mark::Pen::ink(1.0)));
        }
    }
    sketch.thin((4.0, foot), (end, foot));
    sketch.thin((LEFT - 4.0, 36.0), (LEFT - 4.0, foot));
    sketch.dot((18.0, foot + 21.0), 12.0);
    sketch.say(&of.key, (40.0, foot + 21.0), SMALL, Anchor::Start)?;
    Ok(sketch)
}

pub(super) fn dot_plot(locale: Locale, of: &DotPlot) -> Result<Sketch, MessageError> {
    const STEP: f32 = 22.0;
    let x = scale(value(of.from), value(of.to), 40.0, 520.0);
    let most = of.columns.iter().map(|c| c.count).max().unwrap_or(1).max(1);
    let axis = 44.0 + most as f32 * STEP;
    let mut sketch = Sketch::new(locale, 560.0, axis + 88.0);
    sketch.say(&of.title, (4.0, 14.0), LABEL, Anchor::Start)?;
    sketch.segment((20.0, axis), (540.0, axis));
    for tick in ticks(value(of.from), value(of.to), value(of.step)) {
        sketch.segment((x(tick), axis - 6.0), (x(tick), axis + 6.0));
    }
    for one in &of.labels {
        sketch.label(&one.label, (x(value(one.at)), axis + 32.0), Anchor::Middle)?;
    }
    for column in &of.columns {
        for d in 0..column.count {
            let y = axis - 18.0 - d as f32 * STEP;
            sketch.dot((x(value(column.at)), y), 9.0);
        }
    }
    sketch.say(&of.axis, (280.0, axis + 72.0), SMALL, Anchor::Middle)?;
    Ok(sketch)
}

pub(super) fn histogram(locale: Locale, of: &Histogram) -> Result<Sketch, MessageError> {
    const LEFT: f32 = 50.0;
    let step = (500.0 / of.bins.len().max(1) as f32).min(96.0);
    let right = LEFT + of.bins.len() as f32 * step;
    let each = of.scale_step.max(1);
    let most = of.bins.iter().map(|b| b.count).max().unwrap_or(1);
    let top = (most + each - 1) / each * each;
    let y = scale(0.0, top as f32, 240.0, 44.0);
    let mut sketch = Sketch::new(locale, right + 14.0, 302.0);
    sketch.say(&of.title, (4.0, 14.0), LABEL, Anchor::Start)?;
    rungs(&mut sketch, top, each, LEFT, right, &y);
    for (n, bin) in of.bins.iter().enumerate() {
        let x = LEFT + n as f32 * step;
        let high = y(bin.count as f32);
        sketch.part(rectangle(x, high, step, 240.0 - high));
        let words = format!("{}–{}", bin.from, bin.to);
        sketch.text(&words, (x + step / 2.0, 258.0), SMALL, Anchor::Middle);
    }
    sketch.line(outline(
        &[(LEFT, 40.0), (LEFT, 240.0), (right, 240.0)],
        false,
    ));
    let under = ((LEFT + right) / 2.0, 288.0);
    sketch.say(&of.axis, under, SMALL, Anchor::Middle)?;
    Ok(sketch)
}

pub(super) fn box_plot(locale: Locale, of: &BoxPlot) -> Result<Sketch, MessageError> {
    let x = scale(value(of.from), value(of.to), 40.0, 520.0);
    let [least, low, mid, up, greatest] = [
        of.least,
        of.lower_quartile,
        of.median,
        of.upper_quartile,
        of.greatest,
    ]
    .map(|v| x(value(v)));
    let mut sketch = Sketch::new(locale, 560.0, 184.0);
    sketch.say(&of.title, (4.0, 14.0), LABEL, Anchor::Start)?;
    sketch.segment((least, 68.0), (low, 68.0));
    sketch.segment((up, 68.0), (greatest, 68.0));
    sketch.segment((least, 56.0), (least, 80.0));
    sketch.segment((greatest, 56.0), (greatest, 80.0));
    sketch.pale(rectangle(low, 44.0, up - low, 48.0));
    sketch.segment((mid, 44.0), (mid, 92.0));
    sketch.segment((24.0, 116.0), (536.0, 116.0));
    let step = of.step.ratio();
    let mut at = of.from.ratio();
    // Steps are exact numbers, so that the numbers under the marks are exact.
    for _ in 0..200 {
        if at > of.to.ratio() || *step.numer() <= 0 {
            break;
        }
        let place = x(*at.numer() as f32 / *at.denom() as f32);
        sketch.segment((place, 110.0), (place, 122.0));
        let label = surefoot_exercises::expr::rational(at, true);
        sketch.label(&label, (place, 140.0), Anchor::Middle)?;
        at += step;
    }
    sketch.say(&of.axis, (280.0, 170.0), SMALL, Anchor::Middle)?;
    Ok(sketch)
}
