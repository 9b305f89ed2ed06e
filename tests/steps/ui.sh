#!/usr/bin/env bash
# Types, lints and unit tests of the screens; the built screens hold no test door.
. "$(dirname "$0")/lib.sh"

ui_packages
# Lints and types follow from these files alone. ESLint's own cache forgets that a lint of one
# file can follow from the types in another.
mapfile -t sources < <(find ui shared -type f -not -path 'ui/node_modules/*' -not -path 'ui/dist*' | sort)
# The lints take longest, on one core; so the others run beside them.
check_beside "screens lints" stamped ui-lints "${sources[@]}" -- npm --prefix ui run lint
check_beside "screens types" stamped ui-types "${sources[@]}" -- npm --prefix ui run check
check_beside "screens tests" npm --prefix ui test -- --reporter=default --reporter=json \
  --outputFile.json="$LOGS/screens-tests.json"
wait
check "screens build" ui_build
check "screens size" node ui/measure/bundle.mjs
no_test_door() {
  ! grep -rl "/call/" ui/dist
}
check "no test door in what is installed" no_test_door
