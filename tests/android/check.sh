#!/usr/bin/env bash
# Type-checks the Rust side for aarch64 Android without an Android SDK: Debian's
# compiler for the web has a source of std that can be built for any target, and
# nothing is linked. It has its own target folder, because it has another compiler.
set -euo pipefail
cd "$(dirname "$0")/../.."

if ! dpkg-query -W rustc-web cargo-web rust-web-src >/dev/null 2>&1; then
  echo "needs the packages rustc-web, cargo-web and rust-web-src" >&2
  exit 1
fi
tools=$(dirname "$(dpkg -L rustc-web | grep 'bin/rustc$' | head -1)")
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
mkdir "$scratch/kotlin"

# Its own build scripts change the Android project, so they get a copy of it.
cp -R src-tauri/gen/android "$scratch/android"

export RUSTC=$tools/rustc RUSTC_BOOTSTRAP=1 CARGO_TARGET_DIR=$PWD/target-android
unset RUSTUP_TOOLCHAIN
export LIBSQLITE3_SYS_USE_PKG_CONFIG=1 PKG_CONFIG_ALLOW_CROSS=1
export WRY_ANDROID_PACKAGE=org.surefoot.app WRY_ANDROID_LIBRARY=surefoot_lib
export WRY_ANDROID_KOTLIN_FILES_OUT_DIR=$scratch/kotlin
export TAURI_ANDROID_PROJECT_PATH=$scratch/android
# Nothing of it is run but build scripts and macros, so none of it is optimised. The
# window's crate uses all crates of the program but the command's.
export CARGO_INCREMENTAL=0
"$tools/cargo" check --locked -Zbuild-std=std,panic_abort --target aarch64-linux-android \
  --config 'profile.dev.opt-level=0' --config 'profile.dev.package."*".opt-level=0' \
  --config 'profile.dev.debug=0' -p surefoot-desktop "$@"

# What Tauri made of the manifest is what goes into the program.
manifest=$scratch/android/app/src/main/AndroidManifest.xml
if grep -n 'BROWSABLE\|AUTO-GENERATED' "$manifest"; then
  echo "Tauri adds to the manifest" >&2
  exit 1
fi
