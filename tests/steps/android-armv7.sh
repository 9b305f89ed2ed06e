#!/usr/bin/env bash
# The types of the whole workspace for an older tablet, of 32 bits. They differ from those of
# arm64 in the size of addresses, so this part is run on request.
. "$(dirname "$0")/lib.sh"

need_rust
c_compiler
system_packages rustc-web cargo-web rust-web-src
check "screens build" ui_build
check "android types armv7" tests/android/check.sh armv7-linux-androideabi
