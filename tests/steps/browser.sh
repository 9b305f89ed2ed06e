#!/usr/bin/env bash
# The screens in Chromium against the real calls: ui/playwright.config.ts.
. "$(dirname "$0")/lib.sh"

need_rust
c_compiler
system_packages chromium fonts-dejavu-core
check "screens build for the bridge" ui_build_for_bridge
check "bridge" commands
export PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD=1
check "browser" npm --prefix ui run browser
