# What the steps share. Sourced by them, from the top of the tree.
# shellcheck shell=bash

set -euo pipefail
TOP=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
cd "$TOP"
export CARGO_TARGET_DIR="$TOP/target"
STAMPS=$CARGO_TARGET_DIR/stamps
mkdir -p "$STAMPS"

say() { printf '%s\n' "$*" >&2; }

# fail WORDS: says why and ends the step.
fail() {
  say "$*"
  exit 1
}

# stamped NAME FILES... -- COMMAND...: runs the command unless it ran before
# with the same files and the same words.
stamped() {
  local name=$1
  shift
  local files=()
  while [ "$1" != -- ]; do
    files+=("$1")
    shift
  done
  shift
  local sum
  sum=$({ printf '%s\n' "$*"; cat "${files[@]}"; } | sha256sum | cut -d' ' -f1)
  if [ "$(cat "$STAMPS/$name" 2>/dev/null || true)" = "$sum" ]; then
    return 0
  fi
  "$@"
  printf '%s\n' "$sum" >"$STAMPS/$name"
}

# system_packages PACKAGE...: installs what is missing of the system's own
# packages where that can be done without asking, else says what to install.
system_packages() {
  local missing=()
  if ! command -v dpkg-query >/dev/null; then
    say "This system has no apt; please see to these packages or their like yourself: $*"
    return 0
  fi
  local package
  for package in "$@"; do
    if [ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null || true)" != installed ]; then
      missing+=("$package")
    fi
  done
  [ ${#missing[@]} -gt 0 ] || return 0
  local root=()
  if [ "$(id -u)" -ne 0 ]; then
    if sudo -n true 2>/dev/null; then
      root=(sudo -n)
    else
      fail "Please install first: sudo apt-get install ${missing[*]}"
    fi
  fi
  say "Installing ${missing[*]}"
  local log=$CARGO_TARGET_DIR/apt.log
  {
    "${root[@]}" apt-get update -qq &&
      "${root[@]}" env DEBIAN_FRONTEND=noninteractive \
        apt-get install -y -qq --no-install-recommends "${missing[@]}"
  } </dev/null >"$log" 2>&1 || {
    tail -20 "$log" >&2
    fail "Could not install ${missing[*]}"
  }
}

# older_than FOUND WANTED: whether a dotted version is older than another.
older_than() {
  [ "$1" != "$2" ] && [ "$(printf '%s\n%s\n' "$1" "$2" | sort -V | head -1)" = "$1" ]
}

need_rust() {
  command -v cargo >/dev/null || fail "Rust is missing: https://rustup.rs"
  local found wanted
  found=$(rustc --version | cut -d' ' -f2)
  wanted=$(sed -n 's/^rust-version = "\(.*\)"/\1/p' Cargo.toml)
  if older_than "$found" "$wanted"; then
    fail "Rust $wanted or newer is needed; this is $found"
  fi
}

need_node() {
  command -v node >/dev/null || fail "Node.js is missing: https://nodejs.org"
  local found
  found=$(node --version)
  if older_than "${found#v}" 20.19.0; then
    fail "Node.js 20.19 or newer is needed; this is $found"
  fi
}

c_compiler() { system_packages build-essential pkg-config; }

# What the window is built with.
window_libraries() { system_packages build-essential pkg-config libwebkit2gtk-4.1-dev; }

# The command, the test bridge and the examples: built together wherever one of
# them is needed, so that they share one build of what they have in common.
commands() { cargo build --locked --workspace --exclude surefoot-desktop --bins --examples; }

ui_packages() {
  need_node
  [ -d ui/node_modules ] || rm -f "$STAMPS/ui-packages"
  stamped ui-packages ui/package-lock.json -- npm --prefix ui ci --no-audit --no-fund >&2
}

# The screens as the window embeds them.
ui_build() {
  ui_packages
  local sources
  mapfile -t sources < <(find ui shared/messages shared/catalogue shared/languages.json -type f \
    -not -path '*/node_modules/*' -not -path 'ui/dist*' | sort)
  [ -f ui/dist/index.html ] || rm -f "$STAMPS/ui-build"
  stamped ui-build "${sources[@]}" -- npm --prefix ui run build >&2
}

# The same screens for a browser that talks to the test bridge.
ui_build_for_bridge() {
  ui_packages
  TEST_BRIDGE=1 npm --prefix ui run build -- --outDir dist-bridge --emptyOutDir >&2
}

# A language made from English, and the screens that know it, for tests alone.
pseudo_language() {
  venv
  .venv/bin/python tests/pseudo/make.py target/pseudo >&2
  TEST_BRIDGE=1 EXTRA_LANGUAGE="$PWD/target/pseudo" \
    npm --prefix ui run build -- --outDir dist-pseudo --emptyOutDir >&2
}

# venv: a Python of our own with the pinned packages; prints nothing.
venv() {
  system_packages python3 python3-venv
  [ -x .venv/bin/python ] || rm -f "$STAMPS/venv"
  stamped venv tests/oracle/requirements.txt -- make_venv >&2
}

make_venv() {
  python3 -m venv .venv
  .venv/bin/pip install --quiet --disable-pip-version-check -r tests/oracle/requirements.txt
}

# What drives the window, and the screen it stands on.
window_driver() {
  system_packages xvfb xauth dbus webkit2gtk-driver openbox xdotool python3 fonts-dejavu-core
}

# --- counting -----------------------------------------------------------------

export NO_COLOR=1 CARGO_TERM_COLOR=never CI="${CI:-1}"
LOGS=$CARGO_TARGET_DIR/test-logs
TALLY=${TALLY:-$LOGS/tally}
mkdir -p "$LOGS"

# tally LOG STATUS: how many checks passed and failed, as "P F", by what the log
# says: the sums of cargo's results, the last "N passed, M failed", vitest's or
# Playwright's count, or one check by its exit status.
tally() {
  awk -v status="$2" '
    /^test result: / { counted = 1; for (i = 1; i < NF; i++) {
        if ($(i + 1) ~ /^passed/) p += $i
        if ($(i + 1) ~ /^failed/) f += $i } }
    /^[0-9]+ passed, [0-9]+ failed$/ { counted = 1; p = $1; f = $3 }
    /^ +Tests +[0-9]/ { counted = 1; p = f = 0; for (i = 1; i < NF; i++) {
        if ($(i + 1) == "passed") p = $i
        if ($(i + 1) == "failed") f = $i } }
    /^ +[0-9]+ passed( \(.*\))?$/ { counted = 1; p = $1 }
    /^ +[0-9]+ (failed|flaky|interrupted|did not run)$/ { counted = 1; f += $1 }
    END {
      if (!counted) { p = (status == 0); f = (status != 0) }
      else if (status != 0 && f == 0) f = 1
      else if (p + f == 0) f = 1 # a run that looked at nothing proves nothing
      print p + 0, f + 0
    }' "$1"
}

# check NAME COMMAND...: runs it with its output in a log, says what came of it
# and goes on; a failure shows the end of the log.
check() {
  local name=$1 log started status=0 passed failed
  shift
  log=$LOGS/${name//[ \/]/-}.log
  started=$SECONDS
  # Not in a condition: there, a failing line would not end the command.
  set +e
  (
    set -e
    "$@"
  ) </dev/null >"$log" 2>&1
  status=$?
  set -e
  read -r passed failed < <(tally "$log" "$status")
  printf '%s %s\n' "$passed" "$failed" >>"$TALLY"
  if [ "$failed" -eq 0 ]; then
    printf '  ok      %-34s %5d passed             %4d s\n' "$name" "$passed" $((SECONDS - started))
  else
    printf '  FAILED  %-34s %5d passed %4d failed %4d s\n' "$name" "$passed" "$failed" $((SECONDS - started))
    tail -n 60 "$log" | sed 's/^/          | /'
    printf '          | (all of it: %s)\n' "${log#"$TOP"/}"
  fi
}
