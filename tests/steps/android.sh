#!/usr/bin/env bash
# The types of the whole workspace for an Android tablet, and the Android project's
# resources by Android's own compiler for them. Nothing is linked.
. "$(dirname "$0")/lib.sh"

need_rust
c_compiler
system_packages rustc-web cargo-web rust-web-src aapt
check "screens build" ui_build
check "android types" tests/android/check.sh
resources() {
  mkdir -p "$CARGO_TARGET_DIR/tmp"
  aapt2 compile --dir src-tauri/gen/android/app/src/main/res -o "$CARGO_TARGET_DIR/tmp/resources.zip"
}
check "android resources" resources
