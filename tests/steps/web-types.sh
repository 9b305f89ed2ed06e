#!/usr/bin/env bash
# Whether the student's program still compiles for a browser. `./test web` links and runs it.
. "$(dirname "$0")/lib.sh"

need_rust
c_compiler
check "web types" web_cargo check --profile web-quick
