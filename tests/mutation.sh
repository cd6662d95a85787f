#!/usr/bin/env bash
# Mutation testing of folders of the core: which changes of the code no test notices.
# usage: tests/mutation.sh [FOLDER...]    default: Figures Weeks Rides Rules Next. Answers lie in artifacts/mutation, one file a folder.
# dotnet-stryker makes the changes, all of them compiled into one assembly with a switch; tests/RideAudit.Mutation asks the tests about one after
# the other in one process, which takes milliseconds a change where a test run of its own takes seconds. Tests of more than half a second are not asked,
# so the score is a lower bound. A copy is changed, never the working tree.
set -euo pipefail
root=$(cd "$(dirname "$0")/.." && pwd)
folders=("$@")
[ ${#folders[@]} -gt 0 ] || folders=(Figures Weeks Rides Rules Next)
out=$root/artifacts/mutation
tools=$root/artifacts/tools
mkdir -p "$out"
[ -x "$tools/dotnet-stryker" ] || dotnet tool install dotnet-stryker --version 5.1.0 --tool-path "$tools" >/dev/null
copy=$(mktemp -d)
trap 'rm -rf "$copy"' EXIT
git clone --quiet "$root" "$copy/tree"
cd "$copy/tree/tests/RideAudit.Tests"
dotnet restore ../../RideAudit.sln --locked-mode >/dev/null

# The changed assembly stands beside the tests only while dotnet-stryker runs, here with the few tests that reach next to nothing.
bin=bin/Release/net10.0
globs=()
for folder in "${folders[@]}"; do globs+=(-m "**/$folder/**/*.cs"); done
"$tools/dotnet-stryker" -p RideAudit.csproj --configuration Release -c 1 --skip-version-check -r Json -O "$copy/report" \
  --test-case-filter "FullyQualifiedName~UnitsTests" "${globs[@]}" >"$out/stryker.log" 2>&1 &
stryker=$!
until [ -f "$copy/changed.dll" ] || ! kill -0 $stryker 2>/dev/null; do
  sleep 1
  if [ -f $bin/RideAudit.Core.dll ] && [ -f $bin/RideAudit.Core.dll.stryker-unchanged ] && ! cmp -s $bin/RideAudit.Core.dll{,.stryker-unchanged}; then
    sleep 2 # it may be half written
    cp $bin/RideAudit.Core.dll "$copy/changed.dll"
  fi
done
wait $stryker || true
report=$copy/report/reports/mutation-report.json
[ -f "$copy/changed.dll" ] && [ -f "$report" ] || { tail -n 5 "$out/stryker.log"; exit 1; }

dotnet build -c Release >/dev/null
dotnet build ../RideAudit.Mutation -c Release >/dev/null
asked=bin/Changed/net10.0
mkdir -p bin/Changed
cp -r $bin $asked
cp ../RideAudit.Mutation/$bin/RideAudit.Mutation.{dll,runtimeconfig.json} ../RideAudit.Mutation/$bin/xunit*.dll $asked/
cp "$copy/changed.dll" $asked/RideAudit.Core.dll
ask=(dotnet $asked/RideAudit.Mutation.dll)

for folder in "${folders[@]}"; do
  answers=$out/$folder.txt
  # A folder is asked its own tests: a change that they leave would else be asked of each test of each folder above. Weeks has few of its own and is small.
  tests="$folder,!GeneratedRiderTests,!RiddenFiles,!Season"
  [ "$folder" != Weeks ] || tests="Figures,Rides,Rules,$tests"
  "${ask[@]}" coverage "$tests" "$copy/coverage.json" >/dev/null 2>"$out/$folder.slow"
  rm -f "$answers"
  jq -r --arg folder "/src/RideAudit/$folder/" '.files | to_entries[] | select(.key | contains($folder)) | .value.mutants[]
    | select(.status | IN("NoCoverage", "Survived", "Killed", "Timeout")) | .id' "$report" >"$copy/ids"
  while true; do
    code=0
    "${ask[@]}" ask "$tests" "$copy/coverage.json" "$copy/ids" "$answers" >/dev/null || code=$?
    # 3: a change hung or left something behind, the next process goes on after it; a change that ends the process is asked once more.
    [ $code -ne 0 ] || break
    [ $code -eq 3 ] || [ "$(tail -n 1 "$answers" | cut -d' ' -f2)" = asked ] || exit 1
  done
  # What no test reaches may be made once and kept in a static field: it is asked in a process of its own, as the words of the rules are.
  awk '{ last[$1] = $2 } END { for (id in last) if (last[id] == "NoCoverage") print id }' "$answers" | sort >"$copy/alone"
  if [ "$folder" = Rules ]; then
    jq -r '.files[].mutants[] | select(.mutatorName | startswith("String")) | .id' "$report" | sort >"$copy/words"
    awk '$2 == "Survived" { print $1 }' "$answers" | sort | join - "$copy/words" >>"$copy/alone"
  fi
  while read -r id; do
    "${ask[@]}" fresh "$tests" "$id" RideAudit.Tests >/dev/null </dev/null || echo "$id Killed in a process of its own" >>"$answers"
  done <"$copy/alone"
  # A change answered twice was noticed the second time.
  awk '$2 != "asked" { last[$1] = $2 } END { for (id in last) { all++; if (last[id] != "Survived" && last[id] != "NoCoverage") noticed++ }
    printf "%d of %d noticed, %.1f %%\n", noticed, all, 100 * noticed / all }' "$answers" | sed "s/^/$folder: /"
done
jq -r '.files | to_entries[] | .key as $file | .value.mutants[] | [.id, ($file | sub(".*/src/"; "src/")), .location.start.line, .mutatorName, .replacement] | @tsv' "$report" >"$out/changes.tsv"
