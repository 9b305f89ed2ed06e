//! Figures with their text alternatives, for generators.

mod graphs;
mod line;
mod numbers;
mod relations;
mod shapes;

pub use graphs::{FiveNumbers, bars, box_plot, cell, dots, histogram, pictures, table, words};
pub use line::Line;
pub use numbers::{
    area_model, array, array_with, base_ten, base_ten_hundredths, circle, clock, coins,
    fraction_grid, groups, ruler, scale, squares, strip, strips,
};
pub use relations::{balance, double_line, ratio_row, ratio_table, tape, tape_bar, tape_parts};
pub use shapes::{
    angle, at, cubes, first_quadrant, frame, grid, outline, polygon, polygon_on_squares,
    polygon_with_lines, protractor, rectangle,
};

use super::figure::{Drawing, Figure};
use super::say::Say;

fn draw(drawing: Drawing, alt: Say) -> Figure {
    Figure { alt, drawing }
}
