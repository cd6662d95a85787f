#!/usr/bin/env bash
# Mutation testing of one folder of the core at a time: which changes of the code no test notices.
# usage: tests/mutation.sh [FOLDER...]    default: Figures Weeks Rules Rides Next. Reports lie in artifacts/mutation.
# A copy is mutated, never the working tree; a folder's own tests and the worked riders are asked first, so the score is a lower bound.
set -euo pipefail
root=$(cd "$(dirname "$0")/.." && pwd)
folders=("$@")
[ ${#folders[@]} -gt 0 ] || folders=(Figures Weeks Rules Rides Next)
tools=$root/artifacts/tools
[ -x "$tools/dotnet-stryker" ] || dotnet tool install dotnet-stryker --version 5.1.0 --tool-path "$tools" >/dev/null
copy=$(mktemp -d)
trap 'rm -rf "$copy"' EXIT
git clone --quiet "$root" "$copy/tree"
cd "$copy/tree/tests/RideAudit.Tests"
dotnet restore ../../RideAudit.sln --locked-mode >/dev/null
for folder in "${folders[@]}"; do
  tests="FullyQualifiedName~RideAudit.Tests.$folder|FullyQualifiedName~RideAudit.Tests.Worked"
  "$tools/dotnet-stryker" -p RideAudit.csproj --configuration Release -c 1 --skip-version-check -r Json -r ClearText \
    -O "$root/artifacts/mutation/$folder" --test-case-filter "$tests" -m "**/$folder/**/*.cs" >"$root/artifacts/mutation-$folder.log" 2>&1 ||
    tail -n 5 "$root/artifacts/mutation-$folder.log"
  echo "$folder: $(grep -E 'final mutation score' "$root/artifacts/mutation-$folder.log" || echo 'no score')"
done
