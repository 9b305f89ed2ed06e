//! What prints ask for and no screen shows.

mod seat_practice;

pub use seat_practice::{SeatPractice, seat_practice};
