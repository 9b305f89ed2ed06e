#!/usr/bin/env bash
# Types, lints and unit tests of the screens; the built screens hold no test door.
. "$(dirname "$0")/lib.sh"

ui_packages
# The lints take longest, on one core; so the others run beside them.
check_beside "screens lints" npm --prefix ui run lint
check_beside "screens types" npm --prefix ui run check
check_beside "screens tests" npm --prefix ui test -- --reporter=default --reporter=json \
  --outputFile.json="$LOGS/screens-tests.json"
wait
check "screens build" ui_build
check "screens size" node ui/measure/bundle.mjs
no_test_door() {
  ! grep -rl "/call/" ui/dist
}
check "no test door in what is installed" no_test_door
