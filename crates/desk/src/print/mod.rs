//! Values for prints: join slips, and practice for one seat.

mod join_slips;
mod seat_practice;

pub use join_slips::{JoinSlip, join_slips};
pub use seat_practice::{SeatPractice, seat_practice};
