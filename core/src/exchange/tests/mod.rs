mod round_trip;
mod sample;
