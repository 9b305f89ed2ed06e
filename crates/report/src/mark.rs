//! Marks on paper: text and shapes in black and grey.

use crate::font::Face;

/// One mark. Coordinates are in points from the upper left corner of its slab or page.
#[derive(Clone, Debug, PartialEq)]
pub enum Mark {
    /// A run of text.
    Text {
        /// Left end.
        x: f32,
        /// Baseline.
        y: f32,
        /// Size in points.
        size: f32,
        /// Regular or bold.
        face: Face,
        /// The words.
        text: String,
    },
    /// Lines and areas.
    Shape {
        /// The outline.
        path: Vec<Step>,
        /// Lightness of the area, 0 black to 255 white.
        fill: Option<u8>,
        /// The line around it.
        pen: Option<Pen>,
    },
}

/// One step of an outline.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Step {
    /// Starts a new line at this place.
    Move(f32, f32),
    /// A straight line.
    Line(f32, f32),
    /// A cubic curve with two control points.
    Curve(f32, f32, f32, f32, f32, f32),
    /// Closes the line.
    Close,
}

/// The pen of a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pen {
    /// Width in points.
    pub width: f32,
    /// Lightness, 0 black to 255 white.
    pub grey: u8,
    /// Lengths of stroke and gap of a broken line.
    pub dash: Option<(f32, f32)>,
}

impl Pen {
    /// A black line.
    #[must_use]
    pub const fn ink(width: f32) -> Self {
        Self {
            width,
            grey: 0,
            dash: None,
        }
    }

    /// A grey line.
    #[must_use]
    pub const fn grey(width: f32, grey: u8) -> Self {
        Self {
            width,
            grey,
            dash: None,
        }
    }

    /// The same line, broken.
    #[must_use]
    pub const fn dashed(self, stroke: f32, gap: f32) -> Self {
        Self {
            width: self.width,
            grey: self.grey,
            dash: Some((stroke, gap)),
        }
    }
}

/// A rectangle as an outline.
#[must_use]
pub fn rectangle(x: f32, y: f32, w: f32, h: f32) -> Vec<Step> {
    vec![
        Step::Move(x, y),
        Step::Line(x + w, y),
        Step::Line(x + w, y + h),
        Step::Line(x, y + h),
        Step::Close,
    ]
}

/// Distance of the control points of a quarter circle, in radii.
const QUARTER: f32 = 0.552_284_8;

/// An ellipse as an outline.
#[must_use]
pub fn ellipse(cx: f32, cy: f32, rx: f32, ry: f32) -> Vec<Step> {
    let (kx, ky) = (rx * QUARTER, ry * QUARTER);
    vec![
        Step::Move(cx + rx, cy),
        Step::Curve(cx + rx, cy + ky, cx + kx, cy + ry, cx, cy + ry),
        Step::Curve(cx - kx, cy + ry, cx - rx, cy + ky, cx - rx, cy),
        Step::Curve(cx - rx, cy - ky, cx - kx, cy - ry, cx, cy - ry),
        Step::Curve(cx + kx, cy - ry, cx + rx, cy - ky, cx + rx, cy),
        Step::Close,
    ]
}

/// A rectangle with round corners as an outline.
#[must_use]
pub fn rounded(x: f32, y: f32, w: f32, h: f32, r: f32) -> Vec<Step> {
    let r = r.min(w / 2.0).min(h / 2.0);
    let k = r * (1.0 - QUARTER);
    let (right, low) = (x + w, y + h);
    vec![
        Step::Move(x + r, y),
        Step::Line(right - r, y),
        Step::Curve(right - k, y, right, y + k, right, y + r),
        Step::Line(right, low - r),
        Step::Curve(right, low - k, right - k, low, right - r, low),
        Step::Line(x + r, low),
        Step::Curve(x + k, low, x, low - k, x, low - r),
        Step::Line(x, y + r),
        Step::Curve(x, y + k, x + k, y, x + r, y),
        Step::Close,
    ]
}

/// An arc around a centre from one angle to another (degrees, anticlockwise from the right), as
/// steps that follow a move or line to its start.
#[must_use]
pub fn arc(cx: f32, cy: f32, r: f32, from: f32, to: f32) -> Vec<Step> {
    let pieces = ((to - from).abs() / 45.0).ceil().max(1.0);
    let step = (to - from) / pieces;
    let handle = 4.0 / 3.0 * (step.to_radians() / 4.0).tan() * r;
    let mut steps = Vec::new();
    let mut at = from;
    for _ in 0..(pieces as u32) {
        let (a, b) = (at.to_radians(), (at + step).to_radians());
        steps.push(Step::Curve(
            cx + r * a.cos() - handle * a.sin(),
            cy - r * a.sin() - handle * a.cos(),
            cx + r * b.cos() + handle * b.sin(),
            cy - r * b.sin() + handle * b.cos(),
            cx + r * b.cos(),
            cy - r * b.sin(),
        ));
        at += step;
    }
    steps
}

impl Step {
    fn moved(self, scale: f32, dx: f32, dy: f32) -> Self {
        let (x, y) = (|v: f32| v * scale + dx, |v: f32| v * scale + dy);
        match self {
            Step::Move(a, b) => Step::Move(x(a), y(b)),
            Step::Line(a, b) => Step::Line(x(a), y(b)),
            Step::Curve(a, b, c, d, e, f) => Step::Curve(x(a), y(b), x(c), y(d), x(e), y(f)),
            Step::Close => Step::Close,
        }
    }
}

impl Mark {
    /// The same mark scaled from its origin, then moved.
    #[must_use]
    pub fn moved(&self, scale: f32, dx: f32, dy: f32) -> Self {
        match self {
            Mark::Text {
                x,
                y,
                size,
                face,
                text,
            } => Mark::Text {
                x: x * scale + dx,
                y: y * scale + dy,
                size: size * scale,
                face: *face,
                text: text.clone(),
            },
            Mark::Shape { path, fill, pen } => Mark::Shape {
                path: path.iter().map(|s| s.moved(scale, dx, dy)).collect(),
                fill: *fill,
                pen: pen.map(|pen| Pen {
                    width: pen.width * scale,
                    grey: pen.grey,
                    dash: pen.dash.map(|(a, b)| (a * scale, b * scale)),
                }),
            },
        }
    }
}

/// Left, top, right and bottom of marks; none without marks.
#[must_use]
pub fn reach(marks: &[Mark]) -> Option<(f32, f32, f32, f32)> {
    let mut all: Option<(f32, f32, f32, f32)> = None;
    let mut take = |x: f32, y: f32| {
        let (l, t, r, b) = all.unwrap_or((x, y, x, y));
        all = Some((l.min(x), t.min(y), r.max(x), b.max(y)));
    };
    for mark in marks {
        match mark {
            Mark::Text {
                x,
                y,
                size,
                face,
                text,
            } => {
                take(*x, y - 0.76 * size);
                take(x + crate::font::width(text, *face, *size), y + 0.22 * size);
            }
            Mark::Shape { path, pen, .. } => {
                let half = pen.map_or(0.0, |pen| pen.width / 2.0);
                let mut point = |x: f32, y: f32| {
                    take(x - half, y - half);
                    take(x + half, y + half);
                };
                for step in path {
                    match *step {
                        Step::Move(x, y) | Step::Line(x, y) => point(x, y),
                        Step::Curve(a, b, c, d, x, y) => {
                            point(a, b);
                            point(c, d);
                            point(x, y);
                        }
                        Step::Close => {}
                    }
                }
            }
        }
    }
    all
}
