#!/usr/bin/env bash
# Rules of the house that a compiler does not know.
set -euo pipefail
cd "$1"
faults=0
fault() { echo "$1"; faults=1; }
sources() { find core ui app -name '*.h' -o -name '*.cpp'; }

# A file is one idea.
while read -r file; do
  lines=$(wc -l <"$file")
  [ "$lines" -le 450 ] || fault "$file has $lines lines; is it one idea?"
done < <(sources)

# Numbers never go through a locale.
if sources | xargs grep -nE '\b(v?s?n?printf|strto(d|f|ld)|ato(f|i|l)|sto(d|f|ld)|setlocale|std::locale|[io]?stringstream)\b'; then
  fault "these look at the locale; use std::to_chars and std::from_chars"
fi

# JSON stays inside source files of core.
if find core ui app -name '*.h' -exec grep -nE 'nlohmann/json\.hpp' {} +; then fault "headers name <nlohmann/json_fwd.hpp> at most"; fi
if grep -rn 'nlohmann' ui app --include='*.h' --include='*.cpp'; then fault "the window and the commands read no JSON of their own"; fi

# Every header is guarded, and names of files are small.
while read -r file; do
  case $file in *.h) grep -q '^#pragma once$' "$file" || fault "$file has no #pragma once" ;; esac
done < <(sources)
while read -r file; do fault "$file: names of files are snake_case"; done < <(sources | grep '[^a-z0-9_./]' || true)

# Nothing unfinished, no switched-off test, no path of one machine.
if grep -rnE '\b(TODO|FIXME|XXX|HACK)\b' core ui app tests resources --include='*.h' --include='*.cpp' --include='*.py' --include='*.json'; then
  fault "unfinished"
fi
if grep -rnE 'REQUIRE\(true\)|CHECK\(true\)|\[\.\]|\[!mayfail\]' tests --include='*.cpp'; then fault "a test that cannot fail"; fi
if grep -rnE '"/(home|work|root|Users)/' core ui app tests resources sample-jobs; then fault "a path of one machine"; fi

# The top level holds what the house was laid out for, and nothing more.
allowed=' CMakeLists.txt DEVELOPERS.md LICENSE README.md app core resources sample-jobs tests ui '
for entry in *; do
  [ -f "$entry/CMakeCache.txt" ] && continue
  case $allowed in *" $entry "*) ;; *) fault "$entry stands at the top level" ;; esac
done
exit "$faults"
