mod age_vectors;
mod faults;
mod mutation;
mod round_trip;
mod sample;
mod seat_codes;
