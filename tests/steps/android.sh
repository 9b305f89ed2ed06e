#!/usr/bin/env bash
# What can be known of the Android program without Android's SDK: the types of the whole
# workspace for a tablet and of all Kotlin, the names that one side calls in the other, and
# the project's manifest and resources by Android's own compiler. Nothing is linked.
. "$(dirname "$0")/lib.sh"

need_rust
need_node
c_compiler
system_packages rustc-web cargo-web rust-web-src android-framework-res \
  libjackson2-core-java libjackson2-databind-java libjackson2-annotations-java
command -v java >/dev/null || system_packages default-jre-headless

tools=$CARGO_TARGET_DIR/android
fetch() {
  [ -d "$tools/node_modules" ] || rm -f "$STAMPS/android-tools"
  stamped android-tools tests/android/tools.sh tests/android/requirements.lock \
    tests/android/kotlin/package-lock.json -- tests/android/tools.sh "$tools"
}
check "screens build" ui_build
check_beside "android tools" fetch
check_beside "android types" tests/android/check.sh
wait
check "android smoke script" python3 tests/android/smoke_test.py
check_beside "android kotlin" python3 tests/android/kotlin.py "$tools" target-android
check_beside "android project" python3 tests/android/project.py "$tools" target-android
wait
# What was checked, each by its name.
sed -n 's/^ok  /          /p' "$LOGS/android-kotlin.log" "$LOGS/android-project.log"
