#!/usr/bin/env bash
# The tests that take long: those marked as ignored.
. "$(dirname "$0")/lib.sh"

need_rust
c_compiler
check "long rust tests" cargo test --locked --no-fail-fast -- --ignored
