#!/usr/bin/env bash
# Format, lints, and the tests of every crate, the boundaries among them.
. "$(dirname "$0")/lib.sh"

need_rust
window_libraries
files_in_memory
check "screens for the window" ui_build
check "rust format" cargo fmt --all --check
check "rust tests build" cargo test --locked --no-run
# No documentation has an example that could run.
check "rust tests" cargo test --locked --no-fail-fast --lib --bins --tests
check "rust lints" cargo clippy --workspace --all-targets --locked -- -D warnings
