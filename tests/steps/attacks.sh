#!/usr/bin/env bash
# Attacks on the command and the test bridge, by an implementation of the file formats that
# shares no code with ours. One that gets through fails, and so does one that cannot be
# carried out.
. "$(dirname "$0")/lib.sh"

need_rust
c_compiler
check "python packages" venv
check "command and bridge" commands
check "attacks" .venv/bin/python tests/attacks/run.py
