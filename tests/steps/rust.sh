#!/usr/bin/env bash
# Format, lints, and the tests of every crate, the boundaries among them.
. "$(dirname "$0")/lib.sh"

need_rust
window_libraries
check "screens build" ui_build
check "rust format" cargo fmt --all --check
check "rust lints" cargo clippy --workspace --all-targets --locked -- -D warnings
check "rust tests" cargo test --workspace --locked --no-fail-fast
