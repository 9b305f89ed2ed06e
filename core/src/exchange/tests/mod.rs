mod age_vectors;
mod faults;
pub(crate) mod merge;
mod mutation;
mod round_trip;
mod sample;
mod seat_codes;
