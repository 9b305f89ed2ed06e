#!/usr/bin/env bash
# check.sh [TARGET]: type-checks the Rust side for Android without an Android SDK, for arm64 or
# another target. Debian's compiler for the web has a source of std that can be built for any
# target, and nothing is linked. It has its own target folder, because it has another compiler.
#
# Leaves there what Tauri's build makes: `project`, the Android project with its changes;
# `kotlin`, the Kotlin files of wry and Tauri; `expanded.rs`, the window's crate with its macros
# written out, among them the functions that Kotlin calls.
set -euo pipefail
cd "$(dirname "$0")/../.."
target=${1:-aarch64-linux-android}

if ! dpkg-query -W rustc-web cargo-web rust-web-src >/dev/null 2>&1; then
  echo "needs the packages rustc-web, cargo-web and rust-web-src" >&2
  exit 1
fi
tools=$(dirname "$(dpkg -L rustc-web | grep 'bin/rustc$' | head -1)")
out=$PWD/target-android
mkdir -p "$out/kotlin"

# Its own build scripts change the Android project, so they get a copy of it. It is made anew
# if ours changed; then their files are missing and they run again.
sum=$(git ls-files -co --exclude-standard src-tauri/gen/android src-tauri/*.json |
  while read -r file; do [ ! -f "$file" ] || sha256sum "$file"; done | sha256sum)
if [ "$(cat "$out/project.sum" 2>/dev/null)" != "$sum" ]; then
  rm -rf "$out/project" "$out/project.sum"
  git ls-files -co --exclude-standard src-tauri/gen/android | while read -r file; do
    [ -f "$file" ] || continue
    mkdir -p "$(dirname "$out/project/${file#src-tauri/gen/android/}")"
    cp "$file" "$out/project/${file#src-tauri/gen/android/}"
  done
  printf '%s\n' "$sum" >"$out/project.sum"
fi

export RUSTC=$tools/rustc RUSTC_BOOTSTRAP=1 CARGO_TARGET_DIR=$out
unset RUSTUP_TOOLCHAIN
export LIBSQLITE3_SYS_USE_PKG_CONFIG=1 PKG_CONFIG_ALLOW_CROSS=1
export WRY_ANDROID_PACKAGE=org.surefoot.app WRY_ANDROID_LIBRARY=surefoot_lib
export WRY_ANDROID_KOTLIN_FILES_OUT_DIR=$out/kotlin
export TAURI_ANDROID_PROJECT_PATH=$out/project
# Nothing of it is run but build scripts and macros, so none of it is optimised. The
# window's crate uses all crates of the program but the command's.
export CARGO_INCREMENTAL=0
options=(--locked "-Zbuild-std=std,panic_abort" --target "$target"
  --config 'profile.dev.opt-level=0' --config 'profile.dev.package."*".opt-level=0'
  --config 'profile.dev.debug=0' -p surefoot-desktop)
"$tools/cargo" check "${options[@]}"
# If nothing changed, the file is that of the last time.
"$tools/cargo" rustc --profile check --lib "${options[@]}" -- \
  -Zunpretty=expanded -o "$out/expanded.rs"
