#!/usr/bin/env bash
# Answers worked out by other programs, compared with ours. Every Python file in
# tests/oracle that can be run is one; it exits with 0 when all agrees, and its
# last line says "N passed, M failed" where it counts. Each takes a sample of its
# cases, the same every time; with FULL=1 all of them.
. "$(dirname "$0")/lib.sh"

need_rust
c_compiler
files_in_memory
# Fonts for names in every script, 13 MB.
system_packages age poppler-utils fonts-dejavu-core fonts-noto-ui-core fonts-wqy-microhei
check "python packages" venv
check "command for the oracles" commands
export SUREFOOT=$CARGO_TARGET_DIR/debug/surefoot
for oracle in $(grep -l '__main__' tests/oracle/*.py 2>/dev/null); do
  check_beside "oracle $(basename "$oracle" .py)" .venv/bin/python "$oracle"
done
wait
