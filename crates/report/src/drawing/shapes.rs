//! Clocks, angles, flat shapes, lines and solids.

use super::sketch::{
    Anchor, LABEL, Place, Sketch, around, beside, centre, open_arc, outline, plane,
};
use crate::mark::{Pen, Step, arc, ellipse};
use surefoot_catalogue::Locale;
use surefoot_exercises::figure::{
    Angle, Clock, CubeBox, Lines, Net, Polygon, Protractor, StrokeKind, UnitCubes,
};
use surefoot_exercises::messages::MessageError;

pub(super) fn clock(locale: Locale, of: &Clock) -> Sketch {
    const C: Place = (118.0, 118.0);
    const R: f32 = 112.0;
    let mut sketch = Sketch::new(locale, 236.0, 236.0);
    sketch.empty(ellipse(C.0, C.1, R, R));
    for m in 0..60 {
        let turn = 90.0 - m as f32 * 6.0;
        if m % 5 == 0 {
            sketch.segment(around(C, R, turn), around(C, R - 11.0, turn));
        } else {
            sketch.thin(around(C, R, turn), around(C, R - 5.0, turn));
        }
    }
    for h in 1..=12 {
        let at = around(C, R - 25.0, 90.0 - h as f32 * 30.0);
        sketch.text(&h.to_string(), at, LABEL, Anchor::Middle);
    }
    let hour = (f32::from(of.hour % 12) + f32::from(of.minute) / 60.0) * 30.0;
    for (long, turn, width) in [(56.0, hour, 8.0), (86.0, f32::from(of.minute) * 6.0, 4.0)] {
        let end = around(C, long, 90.0 - turn);
        sketch.shape(
            vec![Step::Move(C.0, C.1), Step::Line(end.0, end.1)],
            None,
            Some(Pen::ink(width)),
        );
    }
    sketch.spot(C, 6.0);
    sketch
}

const MIDDLE: Place = (240.0, 226.0);
const RADIUS: f32 = 200.0;

/// A protractor over the sides of an angle. The inner scale counts from the right, the outer from
/// the left.
pub(crate) fn protractor_face(locale: Locale, sides: &[f32]) -> Sketch {
    let mut sketch = Sketch::new(locale, 480.0, 246.0);
    let mut face = vec![Step::Move(MIDDLE.0 + RADIUS, MIDDLE.1)];
    face.extend(arc(MIDDLE.0, MIDDLE.1, RADIUS, 0.0, 180.0));
    face.push(Step::Close);
    sketch.empty(face);
    for turn in sides {
        let end = around(MIDDLE, 214.0, *turn);
        sketch.shape(
            vec![Step::Move(MIDDLE.0, MIDDLE.1), Step::Line(end.0, end.1)],
            None,
            Some(Pen::ink(3.6)),
        );
    }
    for n in 0..=36 {
        let turn = n as f32 * 5.0;
        let deep = if n % 2 == 0 { 14.0 } else { 8.0 };
        sketch.thin(
            around(MIDDLE, RADIUS, turn),
            around(MIDDLE, RADIUS - deep, turn),
        );
    }
    for n in 0..=18 {
        // The numbers at the ends are above the side drawn there.
        let lift = if n % 18 == 0 { 11.0 } else { 0.0 };
        for (r, number) in [(26.0, 180 - n * 10), (58.0, n * 10)] {
            let at = around(MIDDLE, RADIUS - r, n as f32 * 10.0);
            let at = (at.0, at.1 - lift);
            // White under a number, so that no side crosses it.
            sketch.shape(ellipse(at.0, at.1, 13.0, 8.0), Some(255), None);
            sketch.text(&number.to_string(), at, 14.5, Anchor::Middle);
        }
    }
    sketch.spot(MIDDLE, 4.0);
    sketch
}

pub(super) fn protractor(locale: Locale, of: &Protractor) -> Sketch {
    let degrees = f32::from(of.degrees);
    let sides = if of.from_right {
        [0.0, degrees]
    } else {
        [180.0, 180.0 - degrees]
    };
    protractor_face(locale, &sides)
}

pub(super) fn angle(locale: Locale, of: &Angle) -> Result<Sketch, MessageError> {
    const C: Place = (160.0, 150.0);
    let mut sketch = Sketch::new(locale, 320.0, 300.0);
    let first = f32::from(of.turn_degrees);
    let total: f32 = of.parts.iter().map(|p| f32::from(p.degrees)).sum();
    sketch.segment(C, around(C, 120.0, first));
    let mut from = first;
    for (at, part) in of.parts.iter().enumerate() {
        let degrees = f32::from(part.degrees);
        let to = from + degrees;
        sketch.segment(C, around(C, 120.0, to));
        if part.degrees == 90 {
            sketch.line(outline(
                &[
                    around(C, 20.0, from),
                    around(C, 28.3, from + 45.0),
                    around(C, 20.0, to),
                ],
                false,
            ));
        } else {
            let r = if at % 2 == 0 { 34.0 } else { 40.0 };
            sketch.line(open_arc(C, r, from, to));
        }
        if let Some(label) = &part.label {
            let r = if degrees < 35.0 { 92.0 } else { 68.0 };
            sketch.label(label, around(C, r, (from + to) / 2.0), Anchor::Middle)?;
        }
        from = to;
    }
    if let Some(label) = &of.whole_label {
        sketch.dash(open_arc(C, 110.0, first, first + total));
        sketch.label(label, around(C, 138.0, first + total / 2.0), Anchor::Middle)?;
    }
    sketch.spot(C, 4.0);
    Ok(sketch)
}

/// A small square in a corner, along both its sides.
fn square(corners: &[Place], place: usize) -> Option<Vec<Step>> {
    let n = corners.len();
    let c = *corners.get(place)?;
    let along = |p: Place| {
        let length = (p.0 - c.0).hypot(p.1 - c.1).max(1e-6);
        ((p.0 - c.0) / length * 15.0, (p.1 - c.1) / length * 15.0)
    };
    let u = along(*corners.get((place + n - 1) % n)?);
    let v = along(*corners.get((place + 1) % n)?);
    Some(outline(
        &[
            (c.0 + u.0, c.1 + u.1),
            (c.0 + u.0 + v.0, c.1 + u.1 + v.1),
            (c.0 + v.0, c.1 + v.1),
        ],
        false,
    ))
}

pub(super) fn polygon(locale: Locale, of: &Polygon) -> Result<Sketch, MessageError> {
    const MARGIN: f32 = 52.0;
    let points = of
        .corners
        .iter()
        .copied()
        .chain(of.inner_lines.iter().flat_map(|l| [l.from, l.to]));
    let plane = plane(points, 260.0, MARGIN);
    let mut sketch = Sketch::new(locale, plane.width, plane.height);
    let corners: Vec<Place> = of.corners.iter().map(|p| plane.at(*p)).collect();
    let middle = centre(&corners);
    sketch.pale(outline(&corners, true));
    if of.on_grid {
        let (right, foot) = (plane.width - MARGIN, plane.height - MARGIN);
        let across = ((right - MARGIN) / plane.unit).round() as u32;
        let down = ((foot - MARGIN) / plane.unit).round() as u32;
        for n in 0..=across {
            let x = MARGIN + n as f32 * plane.unit;
            sketch.thin((x, MARGIN), (x, foot));
        }
        for n in 0..=down {
            let y = MARGIN + n as f32 * plane.unit;
            sketch.thin((MARGIN, y), (right, y));
        }
    }
    sketch.line(outline(&corners, true));
    for place in &of.right_angles {
        if let Some(path) = square(&corners, *place as usize) {
            sketch.line(path);
        }
    }
    for inner in &of.inner_lines {
        let (a, b) = (plane.at(inner.from), plane.at(inner.to));
        if inner.dashed {
            sketch.dash(outline(&[a, b], false));
        } else {
            sketch.segment(a, b);
        }
        if let Some(label) = &inner.label {
            // Inside, on the side with more space: outside it would look like the length of a side.
            let across = if (middle.0 - f32::midpoint(a.0, b.0)).abs() < 1.0 {
                (a.0 - 99.0, a.1)
            } else {
                (a.0 + b.0 - middle.0, a.1 + b.1 - middle.1)
            };
            let at = beside(a, b, across, 20.0);
            sketch.label(label, at, Anchor::Middle)?;
        }
    }
    sides(&mut sketch, &corners, &of.side_labels, middle, 28.0)?;
    Ok(sketch)
}

fn sides(
    sketch: &mut Sketch,
    corners: &[Place],
    labels: &[Option<surefoot_exercises::Expr>],
    middle: Place,
    by: f32,
) -> Result<(), MessageError> {
    for (n, label) in labels.iter().enumerate() {
        let next = corners.get(n + 1).or(corners.first());
        if let (Some(label), Some(a), Some(b)) = (label, corners.get(n), next) {
            sketch.label(label, beside(*a, *b, middle, by), Anchor::Middle)?;
        }
    }
    Ok(())
}

pub(super) fn strokes(locale: Locale, of: &Lines) -> Sketch {
    let points = of
        .strokes
        .iter()
        .flat_map(|s| [s.from, s.to])
        .chain(of.points.iter().map(|p| p.at));
    let plane = plane(points, 240.0, 36.0);
    let mut sketch = Sketch::new(locale, plane.width, plane.height.max(76.0));
    let arrow = |from: Place, to: Place| {
        let turn = (to.1 - from.1).atan2(to.0 - from.0);
        let leg = |by: f32| {
            [
                Step::Move(to.0, to.1),
                Step::Line(
                    to.0 - 14.0 * (turn + by).cos(),
                    to.1 - 14.0 * (turn + by).sin(),
                ),
            ]
        };
        [leg(0.45), leg(-0.45)].concat()
    };
    let named: Vec<Place> = of.points.iter().map(|p| plane.at(p.at)).collect();
    for stroke in &of.strokes {
        let (start, end) = (plane.at(stroke.from), plane.at(stroke.to));
        let a = match stroke.stroke {
            StrokeKind::Line => beyond(&named, end, start),
            StrokeKind::Ray | StrokeKind::Segment => start,
        };
        let b = match stroke.stroke {
            StrokeKind::Segment => end,
            StrokeKind::Ray | StrokeKind::Line => beyond(&named, start, end),
        };
        sketch.segment(a, b);
        match stroke.stroke {
            StrokeKind::Segment => {
                sketch.spot(a, 5.0);
                sketch.spot(b, 5.0);
            }
            StrokeKind::Ray => {
                sketch.line(arrow(a, b));
                sketch.spot(a, 5.0);
            }
            StrokeKind::Line => {
                sketch.line(arrow(a, b));
                sketch.line(arrow(b, a));
            }
        }
    }
    for place in &of.right_angles {
        let (x, y) = plane.at(*place);
        sketch.line(vec![
            Step::Move(x + 15.0, y),
            Step::Line(x + 15.0, y - 15.0),
            Step::Line(x, y - 15.0),
        ]);
    }
    for point in &of.points {
        let at = plane.at(point.at);
        sketch.spot(at, 5.0);
        let mut strokes = of
            .strokes
            .iter()
            .map(|s| (plane.at(s.from), plane.at(s.to)));
        let name = strokes
            .find_map(|(a, b)| aside(at, a, b))
            .unwrap_or((at.0 - 14.0, at.1 + 20.0));
        sketch.text(&point.name, name, LABEL, Anchor::Middle);
    }
    sketch
}

/// The tip of an arrow: beyond a named point, which the arrow would hide.
fn beyond(named: &[Place], from: Place, to: Place) -> Place {
    let on = |p: &Place| (p.0 - to.0).hypot(p.1 - to.1) < 2.0;
    let length = (to.0 - from.0).hypot(to.1 - from.1).max(1e-6);
    let more = if named.iter().any(on) {
        26.0 / length
    } else {
        0.0
    };
    (to.0 + (to.0 - from.0) * more, to.1 + (to.1 - from.1) * more)
}

/// The place for the name of a point on a stroke: beside it, preferably below.
fn aside(point: Place, a: Place, b: Place) -> Option<Place> {
    let length = (b.0 - a.0).hypot(b.1 - a.1).max(1e-6);
    let (nx, ny) = (-(b.1 - a.1) / length, (b.0 - a.0) / length);
    if ((point.0 - a.0) * nx + (point.1 - a.1) * ny).abs() > 2.0 {
        return None;
    }
    let by = if ny < 0.0 || (ny == 0.0 && nx < 0.0) {
        -21.0
    } else {
        21.0
    };
    Some((point.0 + nx * by, point.1 + ny * by))
}

pub(super) fn cubes(locale: Locale, of: &UnitCubes) -> Result<Sketch, MessageError> {
    const M: f32 = 62.0;
    let reach = |b: &CubeBox| {
        let (x, y, z) = (b.x + b.width, b.y + b.depth, b.z + b.height);
        (
            x as f32 + y as f32 * 0.5,
            z as f32 + y as f32 * 0.42,
            (x.max(z) as f32) + y as f32 / 2.0,
        )
    };
    let (mut right, mut high, mut most) = (1.0f32, 1.0f32, 1.0f32);
    for (r, h, m) in of.boxes.iter().map(reach) {
        (right, high, most) = (right.max(r), high.max(h), most.max(m));
    }
    let unit = (280.0 / most).min(38.0);
    // Depth points up and to the right.
    let at = |x: f32, y: f32, z: f32| {
        (
            M + (x + y * 0.5) * unit,
            M / 2.0 + (high - z - y * 0.42) * unit,
        )
    };
    let mut drawn: Vec<CubeBox> = if of.show_cubes {
        let mut all = Vec::new();
        for b in &of.boxes {
            for z in 0..b.height {
                for y in 0..b.depth {
                    for x in 0..b.width {
                        all.push(CubeBox {
                            x: b.x + x,
                            y: b.y + y,
                            z: b.z + z,
                            width: 1,
                            depth: 1,
                            height: 1,
                        });
                    }
                }
            }
        }
        all
    } else {
        of.boxes.clone()
    };
    // From the back to the front, from below to above, from left to right.
    drawn.sort_by_key(|b| (std::cmp::Reverse(b.y), b.z, b.x));
    let mut sketch = Sketch::new(locale, 2.0 * M + right * unit, M * 1.4 + high * unit);
    for b in &drawn {
        let (x, y, z) = (b.x as f32, b.y as f32, b.z as f32);
        let (x2, y2, z2) = (
            (b.x + b.width) as f32,
            (b.y + b.depth) as f32,
            (b.z + b.height) as f32,
        );
        sketch.pale(outline(
            &[at(x, y, z2), at(x2, y, z2), at(x2, y2, z2), at(x, y2, z2)],
            true,
        ));
        sketch.part(outline(
            &[at(x2, y, z), at(x2, y2, z), at(x2, y2, z2), at(x2, y, z2)],
            true,
        ));
        sketch.empty(outline(
            &[at(x, y, z), at(x2, y, z), at(x2, y, z2), at(x, y, z2)],
            true,
        ));
    }
    for (b, [width, depth, height]) in of.boxes.iter().zip(&of.labels) {
        let (x, y, z) = (b.x as f32, b.y as f32, b.z as f32);
        let (w, d, h) = (b.width as f32, b.depth as f32, b.height as f32);
        if let Some(label) = width {
            let (px, py) = at(x + w / 2.0, y, z);
            sketch.label(label, (px, py + 24.0), Anchor::Middle)?;
        }
        if let Some(label) = depth {
            let (px, py) = at(x + w, y + d / 2.0, z);
            sketch.label(label, (px + 12.0, py + 14.0), Anchor::Start)?;
        }
        if let Some(label) = height {
            let (px, py) = at(x, y, z + h / 2.0);
            sketch.label(label, (px - 10.0, py), Anchor::End)?;
        }
    }
    Ok(sketch)
}

pub(super) fn net(locale: Locale, of: &Net) -> Result<Sketch, MessageError> {
    let points = of.faces.iter().flat_map(|f| f.corners.iter().copied());
    let plane = plane(points, 340.0, 50.0);
    let mut sketch = Sketch::new(locale, plane.width, plane.height);
    for face in &of.faces {
        let corners: Vec<Place> = face.corners.iter().map(|p| plane.at(*p)).collect();
        sketch.pale(outline(&corners, true));
        sides(
            &mut sketch,
            &corners,
            &face.side_labels,
            centre(&corners),
            24.0,
        )?;
    }
    Ok(sketch)
}
