// Sets of whole nanometres as closed spans, rising, none touching another's inside.
#pragma once

#include <algorithm>
#include <vector>

#include "tests/fuzz/stated_line.h"

namespace ribwright::fuzz {

struct Span {
  Nm from = 0, to = 0;  // from <= to, both belong to it
  bool operator==(const Span&) const = default;
};

using Spans = std::vector<Span>;

inline Spans common(const Spans& a, const Spans& b) {
  Spans both;
  for (const Span& p : a) {
    for (const Span& q : b) {
      const Span span{std::max(p.from, q.from), std::min(p.to, q.to)};
      if (span.from <= span.to) both.push_back(span);
    }
  }
  return both;
}

inline Spans within(const Spans& spans, Nm from, Nm to) { return common(spans, {{from, to}}); }

// What lies strictly between `from` and `to` goes.
inline Spans without(const Spans& spans, Nm from, Nm to) {
  Spans left = within(spans, -(Nm(1) << 60), from);
  const Spans right = within(spans, to, Nm(1) << 60);
  left.insert(left.end(), right.begin(), right.end());
  return left;
}

inline Spans moved(Spans spans, Nm by) {
  for (Span& span : spans) span = {span.from + by, span.to + by};
  return spans;
}

inline bool holds(const Spans& spans, Nm place) {
  return std::any_of(spans.begin(), spans.end(), [&](const Span& s) { return s.from <= place && place <= s.to; });
}

// Spans that overlap or touch become one.
inline Spans united(Spans spans) {
  std::sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) { return a.from < b.from; });
  Spans all;
  for (const Span& span : spans) {
    if (!all.empty() && span.from <= all.back().to) {
      all.back().to = std::max(all.back().to, span.to);
    } else {
      all.push_back(span);
    }
  }
  return all;
}

}  // namespace ribwright::fuzz
