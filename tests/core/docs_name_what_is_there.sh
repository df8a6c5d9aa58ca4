#!/usr/bin/env bash
# Every path that the README and DEVELOPERS.md name is there.
# shellcheck disable=SC2016  # the pages' own quotes
set -euo pipefail
cd "$1"
faults=0
count=0
for page in README.md DEVELOPERS.md; do
  while read -r path; do
    case $path in *'<'* | *'*'* | .build/*) continue ;; esac
    count=$((count + 1))
    [ -e "$path" ] || { echo "$page names $path, which is not there"; faults=1; }
  done < <(grep -oE '`[A-Za-z_./<>*-]+/[A-Za-z_./<>*-]*`' "$page" | tr -d '`'
    grep -oE '\]\([A-Za-z_./-]+\)' "$page" | tr -d ']()')
done
[ "$count" -gt 0 ] || { echo "found no paths at all"; faults=1; }
echo "$count paths looked at"
exit "$faults"
