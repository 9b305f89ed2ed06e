#!/usr/bin/env bash
# The Debian package: made by the bundler, looked into, installed, opened on a
# screen, and removed again. Where nothing may be installed it is unpacked instead.
. "$(dirname "$0")/lib.sh"

need_rust
window_libraries
system_packages dpkg-dev desktop-file-utils shared-mime-info libglib2.0-bin
check "window driver" window_driver
check "screens build" ui_build

bundle() {
  rm -rf target/debug/bundle/deb
  # The screens are built already, and the lock file stays as it is.
  CI=true ui/node_modules/.bin/tauri build --debug --bundles deb \
    --config '{"build":{"beforeBuildCommand":""}}' -- --locked
}
check "package build" bundle
package=$(find target/debug/bundle/deb -name '*.deb' | head -1)
[ -n "$package" ] || fail "No package was made."

# holds PATH: whether the package holds it.
holds() { dpkg-deb --contents "$package" | awk '{ print $6 }' | sed 's|^\./||' | grep -qxF "${1#/}"; }
field() { dpkg-deb --field "$package" "$1"; }
contents() {
  local path
  for path in /usr/bin/surefoot-desktop /usr/share/applications/Surefoot.desktop \
    /usr/share/mime/packages/org.surefoot.app.xml \
    /usr/share/icons/hicolor/128x128/apps/surefoot-desktop.png; do
    holds "$path" || { echo "not in the package: $path"; return 1; }
  done
  # Nothing of a program for tests, and nothing outside the places for programs.
  ! dpkg-deb --contents "$package" | grep -E 'bridge|test' || return 1
  ! dpkg-deb --contents "$package" | awk '{ print $6 }' | grep -vE '^(\./)?(usr(/.*)?)?$' || return 1
}
fields() {
  [ "$(field Version)" = "$(sed -n 's/.*"version": "\(.*\)".*/\1/p' src-tauri/tauri.conf.json | head -1)" ]
  [ "$(field Section)" = education ]
  field Depends | grep -q 'libwebkit2gtk-4.1-0'
}
check "package contents" contents
check "package fields" fields

root=()
installs=yes
if [ "$(id -u)" -ne 0 ]; then
  if sudo -n true 2>/dev/null; then root=(sudo -n); else installs=no; fi
fi
if [ "$installs" = yes ]; then
  installed() {
    "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq \
      --no-install-recommends --reinstall "./$package"
    [ "$(dpkg-query -W -f '${db:Status-Status}' "$(field Package)")" = installed ]
  }
  check "package installs" installed
  prefix=/
else
  say "Nothing may be installed here, so the package is unpacked only."
  prefix=$(mktemp -d)
  dpkg-deb --extract "$package" "$prefix"
fi
prefix=${prefix%/}

entry=$prefix/usr/share/applications/Surefoot.desktop
check "desktop entry" desktop-file-validate "$entry"
opens_files() { grep -qE '^Exec=.*surefoot-desktop %F$' "$entry"; }
check "desktop entry takes files" opens_files
if [ "$installs" = yes ]; then
  # The kinds of files are known, and this program is who opens them.
  kinds() {
    local folder kind
    folder=$(mktemp -d)
    for kind in class:sfclass handin:sfhandin carry:sfcarry; do
      printf 'x' >"$folder/a.${kind#*:}"
      gio info -a standard::content-type "$folder/a.${kind#*:}" |
        grep "application/x-surefoot-${kind%:*}\$"
      # All of the answer is read, or its writer would fail.
      gio mime "application/x-surefoot-${kind%:*}" | grep Surefoot.desktop
    done
    rm -rf "$folder"
  }
  check "kinds of files" kinds
fi

SUREFOOT_WINDOW=$prefix/usr/bin/surefoot-desktop
export SUREFOOT_WINDOW
check "installed program opens" \
  xvfb-run -a -s '-screen 0 1280x900x24' dbus-run-session -- python3 tests/window/installed.py

if [ "$installs" = yes ]; then
  removed() {
    "${root[@]}" dpkg --purge "$(field Package)"
    [ ! -e /usr/bin/surefoot-desktop ] && [ ! -e /usr/share/mime/packages/org.surefoot.app.xml ]
  }
  check "package goes without a trace" removed
else
  rm -rf "$prefix"
fi
