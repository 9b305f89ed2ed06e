#!/usr/bin/env bash
# The screens in Chromium against the real calls: ui/playwright.config.ts.
. "$(dirname "$0")/lib.sh"

need_rust
c_compiler
files_in_memory
system_packages chromium fonts-dejavu-core
check "screens build for the bridge" ui_build_for_bridge
check "pseudo-language" pseudo_language
check "bridge" commands
# Playwright sets FORCE_COLOR for its workers, and Node warns where both are set.
check "browser" env -u NO_COLOR FORCE_COLOR=0 npm --prefix ui run browser
