#!/usr/bin/env bash
# core includes no header of Qt, and a program linked from all of core loads no library of Qt.
set -euo pipefail
source_dir=$1
build_dir=$2
faults=0

if grep -rnE '# *include *[<"](Q[A-Z][A-Za-z]*|Qt[A-Z].*)[>"/]' "$source_dir/core"; then
  echo "core includes Qt"
  faults=1
fi

program=$build_dir/tests/test_output
[ -x "$program" ] || { echo "$program is not built"; exit 1; }
if ldd "$program" | grep -i qt; then
  echo "a program of core alone loads Qt"
  faults=1
fi
for library in "$build_dir"/libfloor_*.a; do
  if nm -C --undefined-only "$library" 2>/dev/null | grep -E ' U (Q[A-Z][A-Za-z]+::|q[A-Z][A-Za-z]+\()'; then
    echo "$(basename "$library") leans on Qt"
    faults=1
  fi
done
exit "$faults"
