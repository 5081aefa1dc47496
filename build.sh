#!/usr/bin/env bash
# The one door to building, testing and packing Dewstone. Works from any current folder.
set -euo pipefail

root="$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)"
solution="$root/src/Dewstone.slnx"
cli="$root/src/Dewstone.Cli/Dewstone.Cli.csproj"
out="$root/.artifacts"

usage() {
  cat <<'TEXT'
usage: ./build.sh <command>
  build    leave a runnable program at .artifacts/dewstone/dewstone
  demo     build it and compile the first example into .artifacts/demo
  test     check the format, build everything and run all tests but the soak tests
  soak     run the long tests (marked with the trait Category=Soak)
  bench    measure every heart and the whole commands in some minutes, table in .artifacts/bench/table.md; further words go
           to the benchmarks, e.g. --table scaling, or --filter '*' for BenchmarkDotNet
  format   put every source file into the house's format
  schemas  write schemas/ anew from the key tables
  pack     make all that is handed out in .artifacts/pack: tool packages, single files, manual page, completions, bill of
           materials; `pack here` makes those of this machine in .artifacts/pack-here
  audit    say which packages have security advisories; fails as DEVELOPERS.md says
  judges   fetch what judges our files for the tests (needs npm): the glTF validator and the SARIF schema
TEXT
}

fail() {
  echo "build.sh: $*" >&2
  exit 1
}

require_dotnet() {
  command -v dotnet >/dev/null ||
    fail "dotnet was not found: install the .NET 10 SDK and put it on the PATH."
  local newest
  newest="$(dotnet --list-sdks 2>/dev/null | awk -F. '$1 + 0 > n { n = $1 + 0 } END { print n + 0 }')"
  [ "$newest" -ge 10 ] ||
    fail "the .NET SDK found is too old (newest major version: $newest): install the .NET 10 SDK."
  export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1
}

runtime_identifier() {
  local system machine
  case "$(uname -m)" in
    x86_64 | amd64) machine=x64 ;;
    aarch64 | arm64) machine=arm64 ;;
    *) return 1 ;;
  esac
  case "$(uname -s)" in
    Linux) if ls /lib/ld-musl-* >/dev/null 2>&1; then system=linux-musl; else system=linux; fi ;;
    Darwin) system=osx ;;
    MINGW* | MSYS* | CYGWIN*) system=win ;;
    *) return 1 ;;
  esac
  echo "$system-$machine"
}

# Publishes to a new folder and swaps it in, so that a failed build leaves the last good program.
publish() {
  local rid log="$out/publish.log"
  mkdir -p "$out"
  rm -rf "$out/dewstone.new"
  dotnet restore "$cli" -v quiet
  local -a common=("$cli" -c Release -o "$out/dewstone.new" -nologo -v quiet)
  if rid="$(runtime_identifier)" &&
    dotnet publish "${common[@]}" -p:DewstoneReadyToRun="$rid" >"$log" 2>&1; then
    :
  elif [ -n "${rid:-}" ] && ! grep -qE 'NU110[0-9].*(Crossgen2|NETCore\.App)' "$log"; then
    cat "$log" >&2
    fail "the program does not build; see the errors above."
  else
    echo "build.sh: compiling ahead of time is not to be had for this machine; the program will start a little slower." >&2
    dotnet publish "${common[@]}"
  fi
  rm -rf "$out/dewstone"
  mv "$out/dewstone.new" "$out/dewstone"
}

# Adds up the counters of the TRX files in a folder: passed failed skipped.
sum_trx() {
  grep -h '<Counters ' "$1"/*.trx | awk '
    function counter(name) {
      return match($0, " " name "=\"[0-9]+\"") ? substr($0, RSTART + length(name) + 3, RLENGTH - length(name) - 4) + 0 : 0
    }
    {
      passed += counter("passed")
      failed += counter("failed") + counter("error") + counter("timeout") + counter("aborted")
      skipped += counter("notExecuted") + counter("inconclusive")
    }
    END { print passed + 0, failed + 0, skipped + 0 }'
}

# Runs every test project; the last line is the sum. $1: test | soak; further words go to each project's runner.
run_tests() {
  local kind="$1" results="$out/test-results/$1" folder project code worst=0 missing=0
  shift
  local -a filter=(--filter-not-trait Category=Soak)
  # A project without soak tests runs none, which is no fault (exit code 8).
  [ "$kind" = soak ] && filter=(--filter-trait Category=Soak --ignore-exit-code 8)
  rm -rf "$results"
  mkdir -p "$results"
  for folder in "$root"/tests/*.Tests; do
    project="$(basename "$folder")"
    echo "== $project"
    code=0
    dotnet "$out/bin/$project/release/$project.dll" "${filter[@]}" --progress off --no-ansi \
      --report-xunit-trx --report-xunit-trx-filename "$project.trx" --results-directory "$results" "$@" </dev/null || code=$?
    [ "$code" -eq 0 ] || { worst="$code"; echo "build.sh: $project ended with exit code $code" >&2; }
    [ -s "$results/$project.trx" ] || { missing=1; echo "build.sh: $project left no TRX file" >&2; }
  done

  ls "$results"/*.trx >/dev/null 2>&1 || fail "no test project left a TRX file."
  local passed failed skipped verdict=0
  read -r passed failed skipped <<<"$(sum_trx "$results")"
  [ "$missing" -eq 0 ] || verdict=1
  [ "$failed" -eq 0 ] || verdict=1
  [ $((passed + failed)) -gt 0 ] || { verdict=1; echo "build.sh: no test ran" >&2; }
  if [ "$worst" -ne 0 ]; then
    verdict=1
    [ "$failed" -gt 0 ] || echo "build.sh: a project ended with exit code $worst although no test is counted as failed" >&2
  elif [ "$failed" -gt 0 ]; then
    echo "build.sh: every project ended with exit code 0 although tests are counted as failed" >&2
  fi
  if [ "$skipped" -gt 0 ]; then
    echo "$passed passed, $failed failed, $skipped skipped"
  else
    echo "$passed passed, $failed failed"
  fi
  return "$verdict"
}

# Whether some package source serves advisories at all; without, a list of none proves nothing.
has_advisories() {
  local url
  command -v curl >/dev/null || return 1
  while read -r url; do
    curl -fsS -m 20 "$url" 2>/dev/null | grep -q VulnerabilityInfo && return 0
  done < <(dotnet nuget list source --format short | awk '$1 == "E" { print $2 }')
  return 1
}

# The advisories that a restore tells of, one a line: ships | tests, package, version, severity, address. (`dotnet list package --vulnerable` does not read
# the data that restore reads, and says that there are none.)
advisories() {
  dotnet restore "$solution" --force -v minimal 2>&1 |
    sed -nE "s|^ *(.*\.csproj) : (warning\|error) NU190[1-4]: Package '([^']+)' ([^ ]+) has a known ([a-z]+) severity vulnerability, ([^ ]+).*|\1 \3 \4 \5 \6|p" |
    sed -E 's|^[^ ]*/src/[^ ]* |ships |; s|^[^ ]*\.csproj |tests |' | sort -u |
    awk '{ advisory = $2 " " $3 " " $4 " " $5 } $1 == "ships" { ships[advisory] } $1 == "ships" || !(advisory in ships) { print }'
}

# Judges known security advisories by the policy of DEVELOPERS.md. Fails for a high or critical one in what ships that is not accepted up to today.
audit() {
  local today where name version severity address until advisory verdict=0
  today="$(date -u +%F)"
  echo "== security advisories on packages"
  has_advisories || echo "no package source here serves advisories, or none could be asked: that none is listed proves nothing"
  while read -r where name version severity address; do
    [ -n "$where" ] || continue
    advisory="$name $version, $severity, $address"
    until="$(awk -v address="$address" '$1 == address { print $2 }' "$root/.build/accepted-advisories.txt")"
    if [ "$where" = tests ]; then
      echo "warning: $advisory (tests and benchmarks only)"
    elif [ -n "$until" ] && [[ ! "$until" < "$today" ]]; then
      echo "accepted until $until: $advisory"
    elif [ "$severity" = high ] || [ "$severity" = critical ] || [ -n "$until" ]; then
      echo "error: $advisory${until:+ (accepted until $until, which is over)}"
      verdict=1
    else
      echo "warning: $advisory"
    fi
  done < <(advisories)
  return "$verdict"
}

# The single file for a machine: everything in it, .NET too.
pack_single() {
  rm -rf "${pack:?}/$1"
  dotnet publish "$cli" -c Release -nologo -v quiet -p:DewstoneSingleFile="$1" -o "$pack/$1"
}

# The .NET tool packages: one that names the machines, and one a machine. $1: machines, by default all. Restored by the stored lock file first, as above.
pack_tool() {
  rm -f "$pack"/*.nupkg
  dotnet restore "$cli" -v quiet
  dotnet pack "$cli" -c Release -o "$pack" -nologo -v quiet -p:DewstonePack=true ${1:+"-p:DewstoneMachines=$1"}
}

# What does not depend on the machine: manual page and completions where systems look for them, and the bill of materials.
pack_words() {
  local share="$pack/share"
  mkdir -p "$share/man/man1" "$share/bash-completion/completions" "$share/zsh/site-functions" "$share/fish/vendor_completions.d"
  "$1" manual >"$share/man/man1/dewstone.1"
  "$1" completion bash >"$share/bash-completion/completions/dewstone"
  "$1" completion zsh >"$share/zsh/site-functions/_dewstone"
  "$1" completion fish >"$share/fish/vendor_completions.d/dewstone.fish"
  dotnet restore "$cli" -v quiet
  (cd "$root" && dotnet tool restore -v quiet >/dev/null)
  (cd "$root" && dotnet dotnet-CycloneDX "$cli" --disable-package-restore --exclude-dev --no-serial-number --output-format UnsafeJson \
    --set-name Dewstone --set-version "$("$1" --version)" --output "$pack" --filename bill-of-materials.json) >"$out/bill.log" 2>&1 || {
    cat "$out/bill.log" >&2
    fail "the bill of materials cannot be made."
  }
  # The same packages give the same bytes.
  sed '/^ *"timestamp": /d' "$pack/bill-of-materials.json" >"$out/bill.json"
  mv "$out/bill.json" "$pack/bill-of-materials.json"
  touch "$pack/made"
}

# For this machine alone, as the tests need it.
pack_here() {
  local here pack="$out/pack-here"
  here="$(runtime_identifier)" || fail "no package can be made on a machine of this kind."
  mkdir -p "$pack"
  pack_tool "$here"
  pack_single "$here"
  pack_words "$pack/$here/dewstone"
}

# For all machines. What the registry does not serve for one is told and left out.
pack_all() {
  local here rid pack="$out/pack"
  here="$(runtime_identifier)" || fail "no package can be made on a machine of this kind."
  rm -rf "$pack"
  mkdir -p "$pack"
  pack_tool
  pack_single "$here"
  for rid in linux-x64 linux-arm64 osx-arm64 osx-x64 win-x64; do
    [ "$rid" != "$here" ] || continue
    pack_single "$rid" >"$out/pack.log" 2>&1 && continue
    grep -qE 'NU110[0-9]' "$out/pack.log" || { cat "$out/pack.log" >&2; fail "the single file for $rid cannot be made."; }
    rm -rf "${pack:?}/$rid"
    echo "build.sh: the registry serves no .NET for $rid: no single file for it." >&2
  done
  pack_words "$pack/$here/dewstone"
  (cd "$pack" && find . -type f ! -name SHA256SUMS ! -name made | sed 's|^\./||' | LC_ALL=C sort | xargs sha256sum >SHA256SUMS)
}

command="${1:-}"
[ "$#" -gt 0 ] && shift
case "$command" in
  build)
    require_dotnet
    publish
    echo "Built $out/dewstone/dewstone"
    ;;
  demo)
    require_dotnet
    publish
    code=0
    "$out/dewstone/dewstone" compile "$root/examples/wrackline-bay/units/wrack-block.unit.yaml" -o "$out/demo" "$@" || code=$?
    [ "$code" -eq 0 ] || exit "$code"
    echo "The job folder is in $out/demo"
    ;;
  test)
    require_dotnet
    mkdir -p "$out"
    dotnet restore "$solution" -v quiet
    # Beside the build, whose projects wait for each other. White space only: the rules of style are errors of the build itself.
    dotnet format whitespace "$solution" --verify-no-changes --no-restore >"$out/format.log" 2>&1 &
    format=$!
    dotnet build "$solution" -c Release --no-restore -nologo -v quiet
    echo "== format"
    wait "$format" || {
      cat "$out/format.log" >&2
      fail "some files are not in the house's format: run ./build.sh format."
    }
    publish
    audit || [ "${CI:-}" != true ] || fail "a package that ships has an advisory that is not accepted: see above."
    run_tests test "$@"
    ;;
  soak)
    require_dotnet
    dotnet build "$solution" -c Release -nologo -v quiet
    echo "== packages for this machine"
    "$root/build.sh" pack here || echo "build.sh: no packages could be made here; the tests of installed programs are skipped." >&2
    run_tests soak "$@"
    ;;
  bench)
    require_dotnet
    # Whole commands are measured on the program as it is handed out.
    publish
    [ "$#" -gt 0 ] || set -- --table short
    [ "$1" = --table ] || set -- --artifacts "$out/benchmarks" "$@"
    dotnet run -c Release --project "$root/tests/Dewstone.Benchmarks" -- "$@"
    ;;
  format)
    require_dotnet
    dotnet format "$solution"
    ;;
  schemas)
    require_dotnet
    publish
    for kind in unit mix printer site order tonight; do
      "$out/dewstone/dewstone" schema "$kind" >"$out/$kind.schema.json"
      mv "$out/$kind.schema.json" "$root/schemas/$kind.schema.json"
    done
    ls "$root/schemas"
    ;;
  pack)
    require_dotnet
    if [ "${1:-}" = here ]; then
      pack_here
      ls "$out/pack-here"
    else
      audit || fail "a package that ships has an advisory that is not accepted: see above."
      pack_all
      ls "$out/pack"
    fi
    ;;
  audit)
    require_dotnet
    dotnet restore "$solution" -v quiet
    audit
    ;;
  judges)
    command -v npm >/dev/null || fail "npm was not found; the tests that need the judges are skipped without them."
    mkdir -p "$out/judges"
    npm install --prefix "$out/judges" --no-save --ignore-scripts --no-audit --no-fund --loglevel=error \
      gltf-validator@2.0.0-dev.3.10 @microsoft/jest-sarif@1.0.0-beta.0
    ;;
  -h | --help | help)
    usage
    ;;
  *)
    usage >&2
    exit 2
    ;;
esac
