#!/usr/bin/env bash
# The screens in Chromium against the real calls. Every ui/e2e/*.e2e.mjs is a run.
. "$(dirname "$0")/lib.sh"

need_rust
c_compiler
system_packages chromium fonts-dejavu-core
check "screens build for the bridge" ui_build_for_bridge
check "bridge" commands
export SUREFOOT=$CARGO_TARGET_DIR/debug/surefoot
export BRIDGE=$CARGO_TARGET_DIR/debug/surefoot-bridge
CHROMIUM=$(command -v chromium || command -v chromium-browser || command -v google-chrome || true)
export CHROMIUM
for run in ui/e2e/*.e2e.mjs; do
  [ -f "$run" ] || continue
  check "browser $(basename "$run" .e2e.mjs)" node "$run"
done
