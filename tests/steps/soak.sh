#!/usr/bin/env bash
# The tests that take long, and a table of what they did:
#   CRASH_KILLS      kills of a writing program (1,000)
#   EXCHANGE_CASES   changed files for each reader of bytes from outside (500,000: with 23 readers,
#                    11,025,000 in all)
#   MEMORY_MIB       address space the readers get (1,536; the most expensive passphrase takes 256)
# Other runs try a few random school years, entries and hand-ins; this one tries up to 400.
# The oracle of the exercises goes over 2,000 seeds, the others over all of their cases.
. "$(dirname "$0")/lib.sh"

need_rust
window_libraries
export CRASH_KILLS=${CRASH_KILLS:-1000}
cases=${EXCHANGE_CASES:-500000}
memory_mib=${MEMORY_MIB:-1536}
kills_log=$LOGS/kills-at-random-points.log
weeks_log=$LOGS/weeks-of-a-class-folder.log
files_log=$LOGS/changed-files.log

long_rust_tests() {
  cargo test --locked --no-fail-fast -- --ignored --skip thousand_kills --skip many_weeks
}
weeks() {
  cargo test --locked --test it -- --ignored --nocapture many_weeks
}
kills() {
  cargo test --locked --test crash -- --ignored --nocapture thousand_kills
}
changed_files() {
  local crates=() crate
  for crate in $(grep -rlE 'fn (changed_\w+|any_bytes_at_all)\(.* in ' crates --include='*.rs' | cut -d/ -f2 | sort -u); do
    crates+=(-p "surefoot-$crate")
  done
  # Built first: the compiler wants more memory than the readers may have.
  cargo test --locked --profile soak --no-run --lib "${crates[@]}"
  (
    ulimit -v $((memory_mib * 1024))
    EXCHANGE_CASES=$cases cargo test --locked --profile soak --lib "${crates[@]}" -- changed_ any_bytes_at_all
  )
}

by_chance() {
  FULL=1 cargo test --locked --lib -- tests::days_apart tests::what_counts tests::derive
}

check "long rust tests" long_rust_tests
check "years and hand-ins by chance" by_chance
check "kills at random points" kills
check "weeks of a class folder" weeks
began=$SECONDS
check "changed files" changed_files
files_seconds=$((SECONDS - began))
check "python packages" venv
check "command for the oracles" commands
export SUREFOOT=$CARGO_TARGET_DIR/debug/surefoot
check "exercises over 2,000 seeds" .venv/bin/python tests/oracle/items_oracle.py \
  --seeds 2000 --surefoot "$SUREFOOT" --report target/exercises-oracle.json
check "insight, all cases" env FULL=1 .venv/bin/python tests/oracle/insight_oracle.py

# found LOG WORDS: the number behind the words in a log.
found() { awk -v words="$2" 'index($0, words) == 1 { print $NF; exit }' "$1"; }
# The reader of pacing lists takes one in twenty.
tried() { echo $((readers * cases - cases + cases / 20)); }
readers=$(grep -cE '^test .*::(changed_|any_bytes).* ok$' "$files_log" || true)
printf '\n  %-34s %12s\n' \
  "kills" "$(found "$kills_log" kills)" \
  "check-ins acknowledged" "$(found "$kills_log" 'check-ins acknowledged')" \
  "exercises acknowledged" "$(found "$kills_log" 'exercises acknowledged')" \
  "imports acknowledged" "$(found "$kills_log" 'imports acknowledged')" \
  "losses" "$(found "$kills_log" losses)" \
  "readers tried" "$readers" \
  "changed files tried" "$(tried)" \
  "changed files a second" "$(($(tried) / (files_seconds + 1)))" \
  "memory they had at most, MiB" "$memory_mib"
# For each class: students, weeks, check-ins, files under other names.
grep -oE '[0-9]+ students, .*' "$weeks_log" || true
