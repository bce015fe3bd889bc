#!/usr/bin/env bash
# Every source file stands as clang-format would put it, without tabs or trailing space.
set -u
cd "$(dirname "$0")/.." || exit 1
mapfile -t files < <(find core storage app tests -name '*.h' -o -name '*.cpp' | sort)
fault=0
clang-format-16 --dry-run --Werror "${files[@]}" || fault=1
if grep -nP '\t|[ ]+$' "${files[@]}"; then
  echo 'tabs or trailing space stand in the lines above'
  fault=1
fi
exit $fault
