//! A figure while it is drawn: lines, grey areas and labels.

use crate::font::{Face, width};
use crate::mark::{Mark, Pen, Step, arc, ellipse};
use crate::math::math;
use surefoot_catalogue::Locale;
use surefoot_exercises::expr::Expr;
use surefoot_exercises::figure::Point;
use surefoot_exercises::messages::MessageError;
use surefoot_exercises::text::say;
use surefoot_exercises::{Rational, Say};

/// Which part of a label is at its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Anchor {
    Start,
    Middle,
    End,
}

/// A place on the sketch.
pub(crate) type Place = (f32, f32);

/// Size of labels.
pub(crate) const LABEL: f32 = 19.0;
/// Size of small labels.
pub(crate) const SMALL: f32 = 16.5;

/// Grey of a shaded part.
const PART: u8 = 196;
/// Grey of a part in the background.
const PALE: u8 = 236;
/// Grey of a dot.
const DOT: u8 = 120;
const LINE: Pen = Pen::ink(2.0);
const THIN: Pen = Pen::grey(1.0, 110);

pub(crate) struct Sketch {
    pub locale: Locale,
    pub width: f32,
    pub height: f32,
    pub marks: Vec<Mark>,
}

impl Sketch {
    pub fn new(locale: Locale, width: f32, height: f32) -> Self {
        Self {
            locale,
            width,
            height,
            marks: Vec::new(),
        }
    }

    pub fn shape(&mut self, path: Vec<Step>, fill: Option<u8>, pen: Option<Pen>) {
        self.marks.push(Mark::Shape { path, fill, pen });
    }

    pub fn line(&mut self, path: Vec<Step>) {
        self.shape(path, None, Some(LINE));
    }

    pub fn segment(&mut self, a: Place, b: Place) {
        self.line(vec![Step::Move(a.0, a.1), Step::Line(b.0, b.1)]);
    }

    pub fn thin(&mut self, a: Place, b: Place) {
        self.shape(
            vec![Step::Move(a.0, a.1), Step::Line(b.0, b.1)],
            None,
            Some(THIN),
        );
    }

    pub fn dash(&mut self, path: Vec<Step>) {
        self.shape(path, None, Some(LINE.dashed(7.0, 6.0)));
    }

    pub fn cut(&mut self, a: Place, b: Place) {
        self.shape(
            vec![Step::Move(a.0, a.1), Step::Line(b.0, b.1)],
            None,
            Some(Pen::ink(2.6).dashed(8.0, 6.0)),
        );
    }

    pub fn bold(&mut self, path: Vec<Step>) {
        self.shape(path, None, Some(Pen::ink(5.0)));
    }

    pub fn empty(&mut self, path: Vec<Step>) {
        self.shape(path, Some(255), Some(LINE));
    }

    pub fn part(&mut self, path: Vec<Step>) {
        self.shape(path, Some(PART), Some(LINE));
    }

    pub fn pale(&mut self, path: Vec<Step>) {
        self.shape(path, Some(PALE), Some(LINE));
    }

    pub fn ink(&mut self, path: Vec<Step>) {
        self.shape(path, Some(0), None);
    }

    pub fn dot(&mut self, at: Place, r: f32) {
        self.shape(ellipse(at.0, at.1, r, r), Some(DOT), Some(Pen::ink(1.0)));
    }

    pub fn spot(&mut self, at: Place, r: f32) {
        self.ink(ellipse(at.0, at.1, r, r));
    }

    /// Words with their middle at `y`.
    pub fn text(&mut self, text: &str, at: Place, size: f32, anchor: Anchor) {
        let wide = width(text, Face::Regular, size);
        let x = at.0 - wide * anchor.share();
        self.marks.push(Mark::Text {
            x,
            y: at.1 + 0.33 * size,
            size,
            face: Face::Regular,
            text: text.to_string(),
        });
        self.reach(x + wide);
    }

    pub fn say(
        &mut self,
        words: &Say,
        at: Place,
        size: f32,
        anchor: Anchor,
    ) -> Result<(), MessageError> {
        let text = say(self.locale, words)?;
        self.text(&text, at, size, anchor);
        Ok(())
    }

    /// Mathematics with its middle at `y`.
    pub fn label(&mut self, expr: &Expr, at: Place, anchor: Anchor) -> Result<(), MessageError> {
        let set = math(self.locale, expr, LABEL, Face::Regular)?;
        let x = at.0 - set.width * anchor.share();
        // The place is at half the height of digits, or at the bar of a fraction.
        let y = at.1 + 0.33 * LABEL;
        self.marks
            .extend(set.marks.iter().map(|m| m.moved(1.0, x, y)));
        self.reach(x + set.width);
        Ok(())
    }

    /// Grows so that nothing is cut off at the right.
    fn reach(&mut self, right: f32) {
        self.width = self.width.max(right + 2.0);
    }

    pub fn number(&self, text: impl ToString) -> String {
        surefoot_exercises::messages::format_number(self.locale, &text.to_string())
    }
}

impl Anchor {
    fn share(self) -> f32 {
        match self {
            Anchor::Start => 0.0,
            Anchor::Middle => 0.5,
            Anchor::End => 1.0,
        }
    }
}

/// A rational as a number to draw with.
pub(crate) fn value(of: Rational) -> f32 {
    of.top() as f32 / of.bottom() as f32
}

/// Maps values of `from..to` to `low..high`.
pub(crate) fn scale(from: f32, to: f32, low: f32, high: f32) -> impl Fn(f32) -> f32 {
    let span = if to == from { 1.0 } else { to - from };
    move |v| low + (v - from) / span * (high - low)
}

/// The values from `from` to `to` by `step`, both ends included.
pub(crate) fn ticks(from: f32, to: f32, step: f32) -> Vec<f32> {
    let count = ((to - from) / step).round().clamp(0.0, 2000.0) as u32;
    (0..=count).map(|at| from + at as f32 * step).collect()
}

/// Maps points of the plane to the sketch.
pub(crate) struct Plane {
    margin: f32,
    left: f32,
    high: f32,
    pub unit: f32,
    pub width: f32,
    pub height: f32,
}

/// Fits points into a figure at most `most` long, with a margin for labels.
pub(crate) fn plane(points: impl Iterator<Item = Point>, most: f32, margin: f32) -> Plane {
    let (mut left, mut right, mut low, mut high) = (f32::MAX, f32::MIN, f32::MAX, f32::MIN);
    for point in points {
        let (x, y) = (value(point.x), value(point.y));
        left = left.min(x);
        right = right.max(x);
        low = low.min(y);
        high = high.max(y);
    }
    if left > right {
        (left, right, low, high) = (0.0, 1.0, 0.0, 1.0);
    }
    let unit = most / (right - left).max(high - low).max(1e-6);
    Plane {
        margin,
        left,
        high,
        unit,
        width: 2.0 * margin + (right - left) * unit,
        height: 2.0 * margin + (high - low) * unit,
    }
}

impl Plane {
    pub fn at(&self, point: Point) -> Place {
        (
            self.margin + (value(point.x) - self.left) * self.unit,
            self.margin + (self.high - value(point.y)) * self.unit,
        )
    }
}

/// An outline through points.
pub(crate) fn outline(points: &[Place], closed: bool) -> Vec<Step> {
    let mut path: Vec<Step> = points
        .iter()
        .enumerate()
        .map(|(at, (x, y))| {
            if at == 0 {
                Step::Move(*x, *y)
            } else {
                Step::Line(*x, *y)
            }
        })
        .collect();
    if closed {
        path.push(Step::Close);
    }
    path
}

/// A place at an angle (anticlockwise from the right) around a centre.
pub(crate) fn around(centre: Place, r: f32, degrees: f32) -> Place {
    let turn = degrees.to_radians();
    (centre.0 + r * turn.cos(), centre.1 - r * turn.sin())
}

/// An open arc.
pub(crate) fn open_arc(centre: Place, r: f32, from: f32, to: f32) -> Vec<Step> {
    let start = around(centre, r, from);
    let mut path = vec![Step::Move(start.0, start.1)];
    path.extend(arc(centre.0, centre.1, r, from, to));
    path
}

/// The middle of two places, pushed off the line between them, away from `from`.
pub(crate) fn beside(a: Place, b: Place, away: Place, by: f32) -> Place {
    let mid = ((a.0 + b.0) / 2.0, (a.1 + b.1) / 2.0);
    let length = (b.0 - a.0).hypot(b.1 - a.1).max(1e-6);
    let (mut nx, mut ny) = (-(b.1 - a.1) / length, (b.0 - a.0) / length);
    if nx * (mid.0 - away.0) + ny * (mid.1 - away.1) < 0.0 {
        (nx, ny) = (-nx, -ny);
    }
    (mid.0 + nx * by, mid.1 + ny * by)
}

/// The middle of some places.
pub(crate) fn centre(points: &[Place]) -> Place {
    let n = points.len().max(1) as f32;
    (
        points.iter().map(|p| p.0).sum::<f32>() / n,
        points.iter().map(|p| p.1).sum::<f32>() / n,
    )
}
