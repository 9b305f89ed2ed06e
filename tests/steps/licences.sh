#!/usr/bin/env bash
# The licence and the source of everything that is built in.
. "$(dirname "$0")/lib.sh"

need_rust
c_compiler
install_deny() {
  cargo install cargo-deny --locked --debug --version "$(cat tests/steps/cargo-deny.version)" \
    --root target/tools --target-dir target/tools-build --quiet
}
check "licence reader" stamped cargo-deny tests/steps/cargo-deny.version -- install_deny
terms() {
  cargo fetch --locked --quiet
  target/tools/bin/cargo-deny --offline check licenses bans sources
}
check "licences, bans, sources" terms
