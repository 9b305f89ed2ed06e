//! Time, mass, length, money, area, perimeter, volume.

pub mod area;
pub mod perimeter;
pub mod steps;
pub mod time;
pub mod units;
pub mod volume;
