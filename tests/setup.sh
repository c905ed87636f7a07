#!/usr/bin/env bash
# What the tests need beside Node: a Chromium for the browser tests, Jupyter's converter for the notebooks, a
# checker of XML for the drawings (all from Debian, only where they are absent), and the packages of the lock file.
set -euo pipefail
cd "$(dirname "$0")/.."

wanted=()
command -v chromium >/dev/null || command -v chromium-browser >/dev/null || command -v google-chrome >/dev/null || wanted+=(chromium)
command -v jupyter-nbconvert >/dev/null || wanted+=(jupyter-nbconvert)
command -v xmllint >/dev/null || wanted+=(libxml2-utils)

if ((${#wanted[@]} > 0)); then
  if ! command -v apt-get >/dev/null; then
    echo "Please install ${wanted[*]} with your system's package manager, then run this again." >&2
    exit 2
  fi
  as_root=()
  [ "$(id -u)" = 0 ] || as_root=(sudo)
  "${as_root[@]}" apt-get update -qq
  DEBIAN_FRONTEND=noninteractive "${as_root[@]}" apt-get install -y -qq --no-install-recommends "${wanted[@]}"
fi

npm ci
