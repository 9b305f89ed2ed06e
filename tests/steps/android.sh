#!/usr/bin/env bash
# The types of the whole workspace for an Android tablet. Nothing is linked.
. "$(dirname "$0")/lib.sh"

need_rust
c_compiler
system_packages rustc-web cargo-web rust-web-src
check "screens build" ui_build
check "android types" tests/android/check.sh
