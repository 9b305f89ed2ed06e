#!/usr/bin/env bash
# The real window, driven by WebDriver on a screen of its own.
. "$(dirname "$0")/lib.sh"

need_rust
window_libraries
files_in_memory
check "window driver" window_driver
check "screens build" ui_build
check "window build" cargo build --locked --bin surefoot-desktop --example empty_window
check "command for the exercises" commands
check "page of exercises" contact_page
for run in tests/window/*_run.py; do
  check "window $(basename "$run" _run.py)" \
    xvfb-run -a -s '-screen 0 1280x900x24' dbus-run-session -- python3 "$run"
done
