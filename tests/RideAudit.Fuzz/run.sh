#!/usr/bin/env bash
# Fuzzes the readers with coverage, and says what came of it: reader, minutes, inputs run, inputs kept, crashes, hangs.
# usage: tests/RideAudit.Fuzz/run.sh SECONDS [READER...]    the readers are run side by side, each for so many seconds.
# Needs afl-fuzz (Debian: afl++). What is found lies in artifacts/findings, and a second run goes on from there.
set -euo pipefail
cd "$(dirname "$0")/../.."
seconds=$1
shift
readers=("$@")
[ ${#readers[@]} -gt 0 ] || readers=(fit csv tcx gpx zip rider plan note)
tools=artifacts/tools fuzz=artifacts/fuzz findings=artifacts/findings
[ -x $tools/sharpfuzz ] || dotnet tool install SharpFuzz.CommandLine --version 2.3.0 --tool-path $tools >/dev/null
rm -rf $fuzz
dotnet publish tests/RideAudit.Fuzz -c Release -o $fuzz >/dev/null
for part in RideAudit.Fit RideAudit.Core RideAudit.Report CsvHelper Tomlyn; do
  $tools/sharpfuzz $fuzz/$part.dll
done
export AFL_SKIP_BIN_CHECK=1 AFL_NO_UI=1 AFL_I_DONT_CARE_ABOUT_MISSING_CRASHES=1 AFL_SKIP_CPUFREQ=1 AFL_NO_AFFINITY=1 AFL_AUTORESUME=1 AFL_HANG_TMOUT=10000
mkdir -p $findings
for reader in "${readers[@]}"; do
  seeds=tests/RideAudit.Fuzz/seeds/$reader
  [ "$reader" = fit ] && seeds=testdata/fit/good
  mkdir -p "$findings/$reader"
  (afl-fuzz -i "$seeds" -o "$findings/$reader" -t 60000 -m none -V "$seconds" -- dotnet $fuzz/RideAudit.Fuzz.dll "$reader" >"$findings-$reader.log" 2>&1 ||
    tail -n 20 "$findings-$reader.log") &
done
wait
for reader in "${readers[@]}"; do
  of() { sed -nE "s/^$1 *: *([0-9]+).*/\1/p" "$findings/$reader/default/fuzzer_stats"; }
  echo "$reader: $(($(of run_time) / 60)) min, $(of execs_done) inputs run, $(of corpus_count) kept, $(of saved_crashes) crashes, $(of saved_hangs) hangs"
done
