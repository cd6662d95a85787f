#!/usr/bin/env bash
# The page in a real browser. Builds it, writes both deliveries, checks the modules, runs the browser tests.
# Its last line is "N passed, N failed" (", N skipped": where the browser or the network is missing, with the reason in a line before).
set -uo pipefail
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
RIDEAUDIT_WORK=$(mktemp -d)
export RIDEAUDIT_WORK DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1
trap 'rm -rf "$RIDEAUDIT_WORK"' EXIT

fail() {
  echo "FAIL  $1"
  echo "0 passed, 1 failed"
  exit 1
}

skip() {
  echo "skip  the page in a browser: $1"
  echo "0 passed, 0 failed, 1 skipped"
  exit 0
}

missing=()
command -v chromium >/dev/null 2>&1 || missing+=(chromium)
command -v node >/dev/null 2>&1 || missing+=(nodejs npm)
command -v zip >/dev/null 2>&1 || missing+=(zip)
if [ ${#missing[@]} -gt 0 ]; then
  (apt-get update -qq && apt-get install -y -qq --no-install-recommends "${missing[@]}") >/dev/null 2>&1 || skip "could not install ${missing[*]}"
fi
if ! (cd "$here" && npm ci --ignore-scripts --no-audit --no-fund) >"$RIDEAUDIT_WORK/npm.log" 2>&1; then
  (cd "$here" && npm view playwright-core version) >/dev/null 2>&1 || skip "the registry of its driver does not answer"
  cat "$RIDEAUDIT_WORK/npm.log"
  fail "npm ci"
fi
cd "$here" || fail "$here"

# The page first: the program carries it.
if [ -z "${RIDEAUDIT_PAGE_BUILT:-}" ]; then
  (cd "$root" && dotnet publish src/RideAudit.Web -c Release && dotnet build src/RideAudit.Cli) >"$RIDEAUDIT_WORK/build.log" 2>&1 || {
    ! grep -q NU1301 "$RIDEAUDIT_WORK/build.log" || skip "the registry of its runtime does not answer"
    tail -n 40 "$RIDEAUDIT_WORK/build.log"
    fail "the page's build"
  }
fi
program=(dotnet "${RIDEAUDIT_PROGRAM:-$root/src/RideAudit.Cli/bin/Debug/net10.0/rideaudit.dll}")
"${program[@]}" page --site "$RIDEAUDIT_WORK/site" || fail "the static site"
"${program[@]}" page --out "$RIDEAUDIT_WORK/rideaudit.html" --no-open || fail "the page of one file"

passed=0 failed=0
if (cd "$root" && node "$here/node_modules/eslint/bin/eslint.js" --config "$here/eslint.config.mjs" src/RideAudit.Web/wwwroot tests/web/lib tests/web/tests 'tests/web/*.mjs'); then
  passed=1
else
  failed=1
fi
node tests.mjs "$@" 2>&1 | tee "$RIDEAUDIT_WORK/tests.log" | grep -vE '^[0-9]+ passed, [0-9]+ failed$'
read -r p f < <(sed -nE 's/^([0-9]+) passed, ([0-9]+) failed$/\1 \2/p' "$RIDEAUDIT_WORK/tests.log" | tail -n 1)
passed=$((passed + ${p:-0})) failed=$((failed + ${f:-1}))
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
