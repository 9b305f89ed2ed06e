//! Angles, shapes, solids and coordinate grids.

use crate::expr::Expr;
use crate::number::Rational;
use crate::say::Say;
use serde::{Deserialize, Serialize};
use std::borrow::Cow;
use ts_rs::TS;

/// A protractor laid on an angle.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Protractor {
    /// Size of the angle.
    pub degrees: u16,
    /// The fixed side points right (read the inner scale), else left.
    pub from_right: bool,
}

/// An angle, whole or in parts that lie side by side.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Angle {
    /// The parts, turning on from the first side; one part is a plain angle.
    pub parts: Vec<AnglePart>,
    /// How far the first side is turned from pointing right, anticlockwise.
    pub turn_degrees: u16,
    /// What is written at the whole angle, when there are parts.
    pub whole_label: Option<Expr>,
}

/// One part of an angle.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct AnglePart {
    /// Its size.
    pub degrees: u16,
    /// What is written in it.
    pub label: Option<Expr>,
}

/// A point of the plane.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Point {
    /// Across.
    pub x: Rational,
    /// Up.
    pub y: Rational,
}

/// A flat shape with straight sides.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Polygon {
    /// Corners in order around the shape.
    pub corners: Vec<Point>,
    /// What is written at the side from each corner to the next.
    pub side_labels: Vec<Option<Expr>>,
    /// Corners (by place in the list) marked with a small square.
    pub right_angles: Vec<u32>,
    /// Lines inside, such as a height or a line of symmetry.
    pub inner_lines: Vec<InnerLine>,
    /// Drawn on unit squares.
    pub on_grid: bool,
}

/// A line drawn in a shape.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct InnerLine {
    /// One end.
    pub from: Point,
    /// The other.
    pub to: Point,
    /// What is written beside it.
    pub label: Option<Expr>,
    /// Broken rather than drawn through.
    pub dashed: bool,
}

/// Points, segments, rays and lines.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Lines {
    /// The parts of the drawing.
    pub strokes: Vec<Stroke>,
    /// Points with letters.
    pub points: Vec<NamedPoint>,
    /// Places with a right-angle mark.
    pub right_angles: Vec<Point>,
}

/// One straight stroke.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Stroke {
    /// Segment, ray (arrow at `to`) or line (arrow at both ends).
    pub stroke: StrokeKind,
    /// One end.
    pub from: Point,
    /// The other.
    pub to: Point,
}

/// What a stroke means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
#[serde(rename_all = "snake_case")]
pub enum StrokeKind {
    /// Two ends.
    Segment,
    /// One end.
    Ray,
    /// No end.
    Line,
}

/// A point with a letter.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NamedPoint {
    /// Where.
    pub at: Point,
    /// Its letter.
    #[ts(type = "string")]
    pub name: Cow<'static, str>,
}

/// Boxes built of unit cubes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct UnitCubes {
    /// Boxes that touch without overlapping.
    pub boxes: Vec<CubeBox>,
    /// Draw each unit cube; else only the edges of the boxes.
    pub show_cubes: bool,
    /// What is written at width, depth and height of each box.
    pub labels: Vec<[Option<Expr>; 3]>,
}

/// One box of unit cubes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CubeBox {
    /// Left front bottom corner: across.
    pub x: u32,
    /// To the back.
    pub y: u32,
    /// Up.
    pub z: u32,
    /// Cubes across.
    pub width: u32,
    /// Cubes to the back.
    pub depth: u32,
    /// Cubes up.
    pub height: u32,
}

/// A solid unfolded flat.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct Net {
    /// Its faces, side by side.
    pub faces: Vec<NetFace>,
}

/// One face of a net.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct NetFace {
    /// Corners in order.
    pub corners: Vec<Point>,
    /// What is written at the side from each corner to the next.
    pub side_labels: Vec<Option<Expr>>,
}

/// A coordinate grid.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct CoordinateGrid {
    /// Edges and steps.
    pub frame: GridFrame,
    /// Points with letters.
    pub points: Vec<NamedPoint>,
    /// Straight strokes through points, in order.
    pub paths: Vec<GridPath>,
}

/// Edges and steps of a coordinate grid.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GridFrame {
    /// Left edge.
    #[ts(type = "number")]
    pub x_from: i64,
    /// Right edge.
    #[ts(type = "number")]
    pub x_to: i64,
    /// Lower edge.
    #[ts(type = "number")]
    pub y_from: i64,
    /// Upper edge.
    #[ts(type = "number")]
    pub y_to: i64,
    /// Distance between grid lines across.
    #[ts(type = "number")]
    pub x_step: i64,
    /// Distance between grid lines up.
    #[ts(type = "number")]
    pub y_step: i64,
    /// Words at the axis across.
    pub x_title: Option<Say>,
    /// Words at the axis up.
    pub y_title: Option<Say>,
}

/// A stroke through points of a grid.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, TS)]
pub struct GridPath {
    /// In order.
    pub points: Vec<Point>,
    /// Back to the first point.
    pub closed: bool,
}
