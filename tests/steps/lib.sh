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

# alone NAME COMMAND...: runs the command while no part beside this one runs one of that name.
alone() {
  local name=$1
  shift
  if ! command -v flock >/dev/null; then
    "$@"
    return
  fi
  (
    flock 9
    "$@"
  ) 9>"$STAMPS/$name.lock"
}

# stamped NAME FILES... -- COMMAND...: runs the command unless it ran before
# with files of the same names and contents, and the same words.
stamped() { alone "$1" stamped_alone "$@"; }

stamped_alone() {
  local name=$1
  shift
  local files=()
  while [ "$1" != -- ]; do
    files+=("$1")
    shift
  done
  shift
  local sum
  sum=$({ printf '%s\n' "$*"; sha256sum "${files[@]}"; } | sha256sum | cut -d' ' -f1)
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
    say "This system has no apt. Please install these packages, or those that match them: $*"
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
  install_packages() {
    "${root[@]}" apt-get update -qq &&
      "${root[@]}" env DEBIAN_FRONTEND=noninteractive \
        apt-get install -y -qq --no-install-recommends "${missing[@]}"
  }
  alone apt install_packages </dev/null >"$log" 2>&1 || {
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

# The command, the test bridge and the example for the oracles. Without `-p`, so that
# they share one build of the dependencies with the window and the tests.
commands() {
  cargo build --locked --bin surefoot --bin surefoot-bridge --example exchange_fixture
}

ui_packages() {
  need_node
  [ -d ui/node_modules ] || rm -f "$STAMPS/ui-packages"
  stamped ui-packages ui/package-lock.json -- npm --prefix ui ci --no-audit --no-fund >&2
}

# screens FOLDER COMMAND...: builds pages into ui/FOLDER, unless they are there and
# were built from the same sources.
screens() {
  local folder=$1 sources
  shift
  ui_packages
  mapfile -t sources < <(find ui/src ui/build ui/public ui/test/contact ui/index.html ui/package-lock.json \
    ui/*.config.* shared/messages shared/catalogue shared/languages.json -type f -not -name '*.test.ts' | sort)
  [ -f "ui/$folder/index.html" ] || rm -f "$STAMPS/$folder"
  stamped "$folder" "${sources[@]}" -- "$@" >&2
}

# The screens as the window embeds them.
ui_build() { screens dist npm --prefix ui run build; }

# The same screens for a browser that talks to the test bridge.
ui_build_for_bridge() {
  screens dist-bridge env TEST_BRIDGE=1 npm --prefix ui run build -- --outDir dist-bridge --emptyOutDir
}

# The page of exercises for the window's engine.
contact_page() {
  screens dist-contact env -C ui node_modules/.bin/vite build --config test/contact/vite.config.ts
}

# A language made from English, and the screens that know it, for tests alone.
pseudo_language() {
  venv
  .venv/bin/python tests/pseudo/make.py target/pseudo >&2
  screens dist-pseudo env TEST_BRIDGE=1 EXTRA_LANGUAGE="$PWD/target/pseudo" \
    npm --prefix ui run build -- --outDir dist-pseudo --emptyOutDir
}

# venv: a Python of our own with the pinned packages; prints nothing.
venv() {
  system_packages python3 python3-venv
  [ -x .venv/bin/python ] || rm -f "$STAMPS/venv"
  stamped venv tests/oracle/requirements.lock -- make_venv >&2
}

make_venv() {
  python3 -m venv .venv
  .venv/bin/pip install --quiet --disable-pip-version-check --require-hashes \
    -r tests/oracle/requirements.lock
}

# files_in_memory: has the files of tests made in memory, where there is room for them. The
# stores wait for the disk after each tap, and no test asks what a disk keeps without power.
files_in_memory() {
  local free_kib
  free_kib=$(df -Pk /dev/shm 2>/dev/null | awk 'NR == 2 { print $4 }')
  [ "${free_kib:-0}" -gt 3000000 ] || return 0
  TMPDIR=$(mktemp -d /dev/shm/surefoot-test.XXXXXX)
  export TMPDIR
  trap 'rm -rf "$TMPDIR"' EXIT
}

# Installs what drives the window, and a screen for it.
window_driver() {
  system_packages xvfb xauth dbus webkit2gtk-driver openbox xdotool python3 fonts-dejavu-core
}

# --- counting -----------------------------------------------------------------

export NO_COLOR=1 CARGO_TERM_COLOR=never CI="${CI:-1}"
LOGS=$CARGO_TARGET_DIR/test-logs
RECORD=${RECORD:-$LOGS/record}
mkdir -p "$LOGS"

# check NAME COMMAND...: runs it with its output in a log, prints what came of it
# and goes on; a failure shows the end of the log.
check() {
  local name=$1 log started seconds status=0 passed failed
  shift
  command -v python3 >/dev/null || system_packages python3
  log=$LOGS/${name//[ \/]/-}.log
  rm -f "${log%.log}.json"
  started=$SECONDS
  # Not in a condition: there, a failing line would not end the command.
  set +e
  (
    set -e
    "$@"
  ) </dev/null >"$log" 2>&1
  status=$?
  set -e
  seconds=$((SECONDS - started))
  read -r passed failed < <(tests/steps/tally.py check "$RECORD" "$name" "$seconds" "$status" "$log")
  if [ "$failed" -eq 0 ]; then
    printf '  ok      %-34s %5d passed             %4d s\n' "$name" "$passed" "$seconds"
  else
    # In one piece, as another check may print beside this one.
    printf '  FAILED  %-34s %5d passed %4d failed %4d s\n%s\n          | (all of it: %s)\n' \
      "$name" "$passed" "$failed" "$seconds" \
      "$(tail -n 60 "$log" | sed 's/^/          | /')" "${log#"$TOP"/}"
  fi
}

# check_beside NAME COMMAND...: like check, two at a time. End with `wait`.
check_beside() {
  while [ "$(jobs -rp | wc -l)" -ge 2 ]; do wait -n || true; done
  check "$@" &
}

# What Debian has where Rust's own library for a browser is missing: it is then built from source.
WEB_PACKAGES=(rustc-web cargo-web rust-web-src clang-19 lld-19 llvm-19)

# web_cargo COMMAND...: cargo on the student's program for a browser.
web_cargo() {
  local command=$1 target=wasm32-unknown-unknown
  shift
  local cargo=(cargo) more=()
  export CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS='--cfg getrandom_backend="wasm_js"'
  # Nothing searches text or places.
  export SQLITE_WASM_RS_FLAGS="-USQLITE_ENABLE_FTS5 -USQLITE_ENABLE_RTREE -USQLITE_ENABLE_SESSION -USQLITE_ENABLE_PREUPDATE_HOOK"
  if [ ! -d "$(rustc --print target-libdir --target $target)" ]; then
    system_packages "${WEB_PACKAGES[@]}"
    # The packaged linker is a link that leads nowhere.
    cargo=(env RUSTC=/usr/bin/rustc RUSTC_BOOTSTRAP=1
      CC_wasm32_unknown_unknown=clang-19 AR_wasm32_unknown_unknown=llvm-ar-19
      CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER=wasm-ld-19 /usr/bin/cargo)
    more=(-Zbuild-std=std,panic_abort)
  fi
  "${cargo[@]}" "$command" --locked -p surefoot-web --target $target \
    --target-dir "$CARGO_TARGET_DIR/web" "${more[@]}" "$@"
}

# web_program PROFILE FOLDER [FEATURES...]: compiles the student's program for a browser and
# writes it into a folder.
web_program() {
  local profile=$1 folder=$2 built=$CARGO_TARGET_DIR/web
  shift 2
  web_cargo build --profile "$profile" "$@"
  cargo build --locked --quiet --release --manifest-path web/bindgen/Cargo.toml \
    --target-dir "$built/bindgen"
  mkdir -p "$folder"
  "$built/bindgen/release/surefoot-bindgen" \
    "$built/wasm32-unknown-unknown/$profile/surefoot_web.wasm" "$folder"
}

# web_pages PROFILE FOLDER: makes the folder that a school puts on its web space.
web_pages() {
  local profile=$1 folder=$2
  screens dist-web env WEB=1 npm --prefix ui run build -- --outDir dist-web --emptyOutDir
  rm -rf "$folder"
  mkdir -p "$folder"
  cp -r ui/dist-web/. "$folder"
  web_program "$profile" "$folder/program"
  # The program that prints, loaded when a student does. Not tried yet, so it is left out unless
  # asked for; without it there is no button for it.
  if [ "${WEB_PRINTS:-0}" = 1 ]; then
    web_program "$profile" "$folder/whole" --features desk
  fi
  node web/page/pages.mjs "$folder" >&2
}
