// Labels in a row above or below what they name: each as near to its own place as its neighbours allow. Unit: mm.
#pragma once

#include <optional>
#include <vector>

namespace ribwright {

struct RowLabel {
  double wanted;  // x of what it names
  double width;
};

// x of each label's middle. `labels` come in the order of `wanted`, and keep it, so that lines from places to labels
// never cross. No label reaches beyond [left, right], stands nearer than `gap` to the next, or over one of the upright
// lines at `barred` (rising). Nothing when they do not fit.
std::optional<std::vector<double>> rowOf(const std::vector<RowLabel>& labels, double left, double right, double gap,
                                         const std::vector<double>& barred);

// The largest distance between a label and its place.
double farthest(const std::vector<RowLabel>& labels, const std::vector<double>& places);

}  // namespace ribwright
