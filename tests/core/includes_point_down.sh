#!/usr/bin/env bash
# Every #include of our own names a path from the root and points down the floors or stays on its own, and no headers go in a
# circle.
set -euo pipefail
cd "$1"

floors=(units words job layout fastening cutting takeoff checks plan drawing output editing ui app)
height() {
  local i
  for i in "${!floors[@]}"; do [ "${floors[$i]}" = "$1" ] && echo "$i" && return; done
  echo "includes_point_down: \"$1\" is no known floor" >&2
  return 1
}
floor_of() { case $1 in core/*) cut -d/ -f2 <<<"$1" ;; *) cut -d/ -f1 <<<"$1" ;; esac; }

faults=0
count=0
edges=$(mktemp)
trap 'rm -f "$edges"' EXIT
while IFS=: read -r file include; do
  target=$(sed -E 's/.*"([^"]*)".*/\1/' <<<"$include")
  count=$((count + 1))
  if [ ! -f "$target" ]; then
    echo "$file: \"$target\" is no path from the root"
    faults=1
    continue
  fi
  from=$(height "$(floor_of "$file")")
  to=$(height "$(floor_of "$target")")
  [ "$to" -le "$from" ] || { echo "$file looks up at $target"; faults=1; }
  [[ $file == *.h ]] && echo "$file $target" >>"$edges"
done < <(grep -rnE '^ *# *include *"' core ui app --include='*.h' --include='*.cpp' | sed -E 's/^([^:]*):[0-9]+:/\1:/' |
  grep -vE '"[a-z_]+\.moc"')

tsort "$edges" >/dev/null || { echo "headers include one another in a circle"; faults=1; }
[ "$count" -gt 0 ] || { echo "found no includes at all"; faults=1; }
echo "$count includes looked at"
exit "$faults"
