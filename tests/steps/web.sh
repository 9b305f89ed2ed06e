#!/usr/bin/env bash
# The student's program in a browser, as a school gets it: release build, size over the wire, a
# student's day, and kills. WEB_KILLS sets the kills of each kind (200).
. "$(dirname "$0")/lib.sh"

need_rust
c_compiler
files_in_memory
system_packages chromium fonts-dejavu-core brotli
check "command and bridge" commands
check "pages for a web space" web_pages web target/web-pages
# What a first visit loads, without what is loaded for printing.
size() {
  local most_bytes=$((2 * 1024 * 1024)) all=0 file bytes
  for file in $(cd target/web-pages && find . -type f -not -path './whole-*' -not -path './sample/*'); do
    bytes=$(brotli --quality=11 --stdout "target/web-pages/$file" | wc -c)
    all=$((all + bytes))
    printf '%9d  %s\n' "$bytes" "$file"
  done | sort -rn
  all=$(cd target/web-pages && find . -type f -not -path './whole-*' -not -path './sample/*' -print0 |
    xargs -0 -I{} sh -c 'brotli --quality=11 --stdout "{}" | wc -c' | awk '{ sum += $1 } END { print sum }')
  echo "$all bytes of $most_bytes"
  [ "$all" -le "$most_bytes" ]
}
check "size over the wire" size
tail -n 1 "$LOGS/size-over-the-wire.log"
check "web" env -u NO_COLOR FORCE_COLOR=0 npm --prefix ui run browser -- \
  --config playwright.web.config.ts
grep -h 'acknowledged check-ins' "$LOGS/web.log" || true
