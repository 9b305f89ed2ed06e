//! Benchmarks only, in `benches`.
