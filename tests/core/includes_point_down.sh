#!/usr/bin/env bash
# Every #include of our own names a path from the root and points down the floors or stays on its own, and no headers go in a
# circle.
set -euo pipefail
cd "$1"

# Lines "file:include" of what is named in quotes; the meta-object files that Qt makes are no files of ours.
includes() {
  grep -rHoE '^ *# *include *"[^"]+"' core ui app --include='*.h' --include='*.cpp' |
    sed -E 's/^([^:]+): *# *include *"([^"]+)"/\1 \2/' | grep -vE ' [a-z_]+\.moc$'
}

faults=0
includes | awk '
  BEGIN {
    split("units words job layout fastening cutting takeoff checks plan drawing editing output ui app", names)
    for (i in names) height[names[i]] = i + 0
  }
  function floor(path, parts) { split(path, parts, "/"); return parts[1] == "core" ? parts[2] : parts[1] }
  {
    ++count
    for (i = 1; i <= 2; ++i) if (!(floor($i) in height)) { print $1 ": " $2 " is no path from the root to a known floor"; bad = 1; next }
    if ((getline line < $2) < 0) { print $1 ": " $2 " is not there"; bad = 1 }
    close($2)
    if (height[floor($2)] > height[floor($1)]) { print $1 " looks up at " $2; bad = 1 }
  }
  END {
    if (count == 0) { print "found no includes at all"; bad = 1 }
    print count " includes looked at"
    exit bad
  }' || faults=1

includes | grep -E '^[^ ]+\.h ' | tsort >/dev/null || { echo "headers include one another in a circle"; faults=1; }
exit "$faults"
