#!/usr/bin/env bash
# clang-tidy 16 over the sources: tests/tidy.sh BUILD_FOLDER [FILES...]. Slow, so it is no part
# of tests/run.
set -u
cd "$(dirname "$0")/.." || exit 1
build=${1:?name the build folder that holds compile_commands.json}
shift
if [ $# -gt 0 ]; then files=("$@"); else
  mapfile -t files < <(find core storage app -name '*.cpp' | sort)
fi
printf '%s\n' "${files[@]}" | xargs -P "$(nproc)" -n 2 clang-tidy-16 -quiet -p "$build" 2>/dev/null
