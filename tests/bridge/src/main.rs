//! Test only.
fn main() {}
