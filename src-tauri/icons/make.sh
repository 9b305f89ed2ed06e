#!/bin/sh
# Draws the icons anew from icons/source; needs ui/node_modules.
set -eu
cd "$(dirname "$0")"
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
"${TAURI:-../../ui/node_modules/.bin/tauri}" icon source/icon.json -o "$scratch"
cp "$scratch/32x32.png" "$scratch/128x128.png" "$scratch/128x128@2x.png" "$scratch/icon.png" \
   "$scratch/icon.ico" "$scratch/icon.icns" .
res=../gen/android/app/src/main/res
if [ -d "$res" ]; then cp -R "$scratch"/android/. "$res"/; fi
