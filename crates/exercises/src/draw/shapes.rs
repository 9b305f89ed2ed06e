//! Shapes, solids, angles and coordinate grids.

use super::draw;
use crate::expr::{Expr, num};
use crate::figure::{
    Angle, AnglePart, CoordinateGrid, CubeBox, Drawing, Figure, GridFrame, GridPath, InnerLine,
    NamedPoint, Point, Polygon, Protractor, UnitCubes,
};
use crate::number::Rational;
use crate::say::Say;

/// A point of the plane by whole numbers.
#[must_use]
pub fn at(x: i64, y: i64) -> Point {
    Point {
        x: Rational::from(x),
        y: Rational::from(y),
    }
}

/// A rectangle with its width and height written at two sides (`None`: not written).
#[must_use]
pub fn rectangle(width: i64, height: i64, labels: [Option<Expr>; 2], alt: Say) -> Figure {
    let [across, up] = labels;
    polygon(
        vec![at(0, 0), at(width, 0), at(width, height), at(0, height)],
        vec![across, up, None, None],
        vec![0, 1, 2, 3],
        alt,
    )
}

/// A polygon with words of its own.
#[must_use]
pub fn polygon(
    corners: Vec<Point>,
    side_labels: Vec<Option<Expr>>,
    right_angles: Vec<u32>,
    alt: Say,
) -> Figure {
    draw(
        Drawing::Polygon(Polygon {
            corners,
            side_labels,
            right_angles,
            inner_lines: Vec::new(),
            on_grid: false,
        }),
        alt,
    )
}

/// A polygon with lines inside, such as a height or a fold line.
#[must_use]
pub fn polygon_with_lines(
    corners: Vec<Point>,
    side_labels: Vec<Option<Expr>>,
    inner_lines: Vec<InnerLine>,
    alt: Say,
) -> Figure {
    draw(
        Drawing::Polygon(Polygon {
            corners,
            side_labels,
            right_angles: Vec::new(),
            inner_lines,
            on_grid: false,
        }),
        alt,
    )
}

/// A polygon on unit squares.
#[must_use]
pub fn polygon_on_squares(corners: Vec<Point>, alt: Say) -> Figure {
    let sides = corners.len();
    draw(
        Drawing::Polygon(Polygon {
            corners,
            side_labels: vec![None; sides],
            right_angles: Vec::new(),
            inner_lines: Vec::new(),
            on_grid: true,
        }),
        alt,
    )
}

/// One box of unit cubes.
#[must_use]
pub fn cubes(width: i64, depth: i64, height: i64, show_cubes: bool) -> Figure {
    draw(
        Drawing::UnitCubes(UnitCubes {
            boxes: vec![CubeBox {
                x: 0,
                y: 0,
                z: 0,
                width: width as u32,
                depth: depth as u32,
                height: height as u32,
            }],
            show_cubes,
            labels: vec![if show_cubes {
                [None, None, None]
            } else {
                [Some(num(width)), Some(num(depth)), Some(num(height))]
            }],
        }),
        Say::new(if show_cubes {
            "figure-cubes"
        } else {
            "figure-box"
        })
        .count("width", width)
        .count("depth", depth)
        .count("height", height),
    )
}

/// An angle in one or more parts, as (degrees, label).
#[must_use]
pub fn angle(parts: Vec<(i64, Option<Expr>)>, whole_label: Option<Expr>, alt: Say) -> Figure {
    draw(
        Drawing::Angle(Angle {
            parts: parts
                .into_iter()
                .map(|(degrees, label)| AnglePart {
                    degrees: degrees as u16,
                    label,
                })
                .collect(),
            turn_degrees: 0,
            whole_label,
        }),
        alt,
    )
}

/// A protractor on an angle.
#[must_use]
pub fn protractor(degrees: i64, from_right: bool) -> Figure {
    let marks = if from_right { degrees } else { 180 - degrees };
    draw(
        Drawing::Protractor(Protractor {
            degrees: degrees as u16,
            from_right,
        }),
        Say::new(if from_right {
            "figure-protractor-right"
        } else {
            "figure-protractor-left"
        })
        .count("inner", marks)
        .count("outer", 180 - marks),
    )
}

/// Edges of a grid from 0 to `to` in steps of 1.
#[must_use]
pub fn first_quadrant(to: i64) -> GridFrame {
    frame(0, to, 0, to, 1)
}

/// Edges of a grid.
#[must_use]
pub fn frame(x_from: i64, x_to: i64, y_from: i64, y_to: i64, step: i64) -> GridFrame {
    GridFrame {
        x_from,
        x_to,
        y_from,
        y_to,
        x_step: step,
        y_step: step,
        x_title: None,
        y_title: None,
    }
}

/// A coordinate grid with lettered points, and strokes through points.
#[must_use]
pub fn grid(
    frame: GridFrame,
    points: &[(&'static str, i64, i64)],
    paths: Vec<GridPath>,
    alt: Say,
) -> Figure {
    draw(
        Drawing::CoordinateGrid(CoordinateGrid {
            frame,
            points: points
                .iter()
                .map(|(name, x, y)| NamedPoint {
                    at: at(*x, *y),
                    name: (*name).into(),
                })
                .collect(),
            paths,
        }),
        alt,
    )
}

/// A closed stroke through points.
#[must_use]
pub fn outline(points: &[(i64, i64)]) -> GridPath {
    GridPath {
        points: points.iter().map(|(x, y)| at(*x, *y)).collect(),
        closed: true,
    }
}
