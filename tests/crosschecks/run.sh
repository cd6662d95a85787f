#!/bin/sh
# Compares our FIT reader, record for record, with the official JavaScript decoder and with gpsbabel
# on our own test files and, where they are there, on the recordings beside the clone.
# Its last line is "N passed, N failed", and ", N skipped" where a decoder is not here. Without node the committed expected values
# (held by RideAudit.Fit.Tests) serve.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

leave() {
    echo "skip  $1: the outside decoders are left out; the committed expected values are held by RideAudit.Fit.Tests"
    echo "0 passed, 0 failed, 1 skipped"
    exit 0
}

command -v node >/dev/null 2>&1 || leave "node is not installed"
if [ ! -d "$here/node_modules/@garmin/fitsdk" ]; then
    (cd "$here" && npm ci --ignore-scripts --no-audit --no-fund >/dev/null 2>&1) || leave "the official decoder cannot be installed"
fi

files() {
    for folder in "$root/testdata/fit/good" "$root/testdata/demo" "$root/testdata/recordings" "$root/../shared/recordings"; do
        if [ -d "$folder" ]; then find "$folder" -name '*.fit' | sort; fi
    done
}

skipped=""
mkdir "$work/tracks"
files > "$work/list"
tr '\n' '\0' < "$work/list" | xargs -0 dotnet run --project "$here/RideAudit.Fit.Dump" -c Release -v q -- > "$work/ours.jsonl"
tr '\n' '\0' < "$work/list" | xargs -0 node "$here/dump-official.mjs" > "$work/official.jsonl"
if command -v gpsbabel >/dev/null 2>&1; then
    while read -r file; do
        gpsbabel -t -i garmin_fit,allpoints=1 -f "$file" -o unicsv,utc=0 -F "$work/tracks/$(basename "$file").csv" 2>/dev/null || true
    done < "$work/list"
else
    echo "skip  gpsbabel is not installed: only the official decoder is compared"
    skipped=", 1 skipped"
fi
node "$here/summarise.mjs" "$work/official.jsonl" "$root/testdata/fit/good" > "$work/expected.json"
if [ "${WRITE_EXPECTED:-}" = 1 ]; then cp "$work/expected.json" "$here/expected.json"; fi
if ! cmp -s "$work/expected.json" "$here/expected.json"; then
    echo "FAIL  expected.json is not what the official decoder gives; write it again with WRITE_EXPECTED=1"
    echo "0 passed, 1 failed$skipped"
    exit 1
fi
status=0
node "$here/compare.mjs" "$work/ours.jsonl" "$work/official.jsonl" "$work/tracks" > "$work/compared" || status=1
node "$here/check-workouts.mjs" "$root/testdata/workouts" > "$work/workouts" || status=1
cat "$work/compared" "$work/workouts" | grep -v ' passed, ' || true
# Both end in "N passed, M failed": the last line adds them.
tail -qn 1 "$work/compared" "$work/workouts" | awk '{ passed += $1; failed += $3 } END { printf "%d passed, %d failed%s\n", passed, failed, skipped }' skipped="$skipped" -
exit $status
