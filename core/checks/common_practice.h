// The source of a finding that rests on no published rule.
#pragma once

namespace ribwright {

constexpr const char* kCommon = "common practice";

}  // namespace ribwright
