#!/usr/bin/env bash
# smoke.sh [APK]: joins a class, marks a concept and hands in on a device that adb sees, or on an
# emulator that it makes and starts. Without an APK it builds one for the emulator. Needs
# Android's SDK in ANDROID_HOME, and to build, its NDK in NDK_HOME, Java and Gradle.
# Pictures of the screens and the tablet's log are in target/test-logs/tablet.
. "$(dirname "$0")/../steps/lib.sh"

need_rust
need_node
: "${ANDROID_HOME:?the folder of the Android SDK}"
export PATH=$ANDROID_HOME/platform-tools:$ANDROID_HOME/emulator:$ANDROID_HOME/cmdline-tools/latest/bin:$PATH
apk=${1:-}
image='system-images;android-34;google_apis;x86_64'

if [ -z "$apk" ]; then
  ui_packages
  npm --prefix ui exec tauri -- android build --apk --split-per-abi --target x86_64
  apk=$(find src-tauri/gen/android/app/build/outputs/apk -name '*.apk' -path '*x86_64*' | head -1)
  [ -n "$apk" ] || fail "The build made no APK."
fi
cargo build --locked --bin surefoot --bin surefoot-bridge

emulator=
end() {
  [ -z "$emulator" ] || kill "$emulator" 2>/dev/null || true
}
trap end EXIT
if ! adb devices | grep -q 'device$'; then
  say "No device, so an emulator is started"
  # It asks whether its licences are accepted.
  sdkmanager --install "$image" emulator platform-tools < <(yes) >/dev/null
  echo no | avdmanager create avd --force --name surefoot --package "$image" --device pixel_tablet
  emulator -avd surefoot -no-window -no-audio -no-boot-anim -no-snapshot -gpu swiftshader_indirect &
  emulator=$!
  adb wait-for-device
  for _ in $(seq 120); do
    [ "$(adb shell getprop sys.boot_completed | tr -d '\r')" != 1 ] || break
    sleep 5
  done
  [ "$(adb shell getprop sys.boot_completed | tr -d '\r')" = 1 ] || fail "The emulator did not start."
fi
python3 tests/android/smoke.py "$(command -v adb)" "$apk" "$LOGS/tablet"
