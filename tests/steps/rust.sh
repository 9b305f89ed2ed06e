#!/usr/bin/env bash
# Format, lints, and the tests of every crate, the boundaries among them.
. "$(dirname "$0")/lib.sh"

need_rust
window_libraries
check "screens build" ui_build
check "rust format" cargo fmt --all --check
check "rust tests build" cargo test --locked --no-run
check "rust tests" cargo test --locked --no-fail-fast
check "rust lints" cargo clippy --workspace --all-targets --locked -- -D warnings
