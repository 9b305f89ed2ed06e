//! Shapes, angles, lines, the coordinate grid, area of polygons.

pub mod angles;
pub mod drawn;
pub mod families;
pub mod grids;
pub mod shapes;
pub mod solids;
