//! The files that travel: class pack, hand-in, carry file, seat code.

mod refusal;

pub use refusal::{Flag, Refusal, SeatCodeError};
