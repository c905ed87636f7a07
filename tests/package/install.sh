#!/usr/bin/env bash
# The package as a stranger installs it: packed, installed for the machine into an empty folder, without optional
# parts, and run on the demo that it carries.
set -euo pipefail
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

npm pack --silent --pack-destination "$work" >/dev/null
tarball=$(ls "$work"/thrum-*.tgz)
kilobytes=$(($(wc -c <"$tarball") / 1024))
echo "package: $kilobytes kB, $(tar -tzf "$tarball" | wc -l) files"
((kilobytes < 6 * 1024)) || { echo "the package is larger than 6 MB" >&2; exit 1; }

cd "$work"
npm install --global --prefix "$work/machine" --omit=optional --no-fund --no-audit --prefer-offline "$tarball" >/dev/null
megabytes=$(du -sm "$work/machine" | cut -f1)
echo "installed: $megabytes MB"
((megabytes < 80)) || { echo "the installed package is larger than 80 MB" >&2; exit 1; }
if find "$work/machine" -name 'danfojs-node' -o -name 'tfjs*' | grep -q .; then
  echo "data frames came along, which are for notebooks alone" >&2
  exit 1
fi

thrum="$work/machine/bin/thrum"
[ -e "$thrum" ] || thrum="$work/machine/thrum"
"$thrum" --version
mkdir "$work/empty" && cd "$work/empty"
"$thrum" demo
# One analysis of the demo is enough to show that everything is there: reading, numbers, report, figures.
node -e 'const fs = require("fs"); const s = JSON.parse(fs.readFileSync("thrum-demo/study.json", "utf8")); s.analyses = s.analyses.filter((a) => a.kind === "summary").slice(0, 1); delete s.brief; fs.writeFileSync("thrum-demo/study.json", JSON.stringify(s));'
"$thrum" run thrum-demo/study.json --out out >/dev/null
for file in results.json report.html brief.html fragments.csv ledger.csv datapackage.json thrum-files.json; do
  [ -s "out/$file" ] || { echo "out/$file was not written" >&2; exit 1; }
done
cat >use.mjs <<'JS'
import { readSource, defaultRegister } from 'thrum';
const bytes = new TextEncoder().encode('id,site\na,Ness\n');
const reading = readSource(bytes, { name: 'a.csv', register: defaultRegister() });
if (reading.rowsKept !== 1) throw new Error('the library does not read');
JS
mkdir -p node_modules && ln -s "$(dirname "$(find "$work/machine" -path '*node_modules/thrum/package.json' | head -1)")" node_modules/thrum
node use.mjs
echo "the package works in an empty folder on $(node --version)"
