// Choices of what is stated of a wall's openings, steel and trim, and of prices, in the words of the job file, in the
// order of their enums.
#pragma once

#include <string_view>

namespace ribwright {

inline constexpr std::string_view anchorFromWords[] = {"left corner", "right corner", "column"};
inline constexpr std::string_view anchorToWords[] = {"near jamb", "centre"};
inline constexpr std::string_view openingKindWords[] = {"walk door", "overhead door", "sliding door",
                                                        "window",    "louvre",        "framed"};
inline constexpr std::string_view penetrationShapeWords[] = {"round", "rectangular"};
inline constexpr std::string_view girtTypedByWords[] = {"web line", "bottom", "top", "centre"};
inline constexpr std::string_view priceWhatWords[] = {"sheet", "trim", "cut", "charge"};
inline constexpr std::string_view pricePerWords[] = {"each",         "foot",  "metre",   "square foot",
                                                     "square metre", "pound", "kilogram"};
inline constexpr std::string_view girtFlangeWords[] = {"up", "down"};
inline constexpr std::string_view trimWhereWords[] = {"head",       "jamb",           "sill",          "header cover",
                                                      "jamb cover", "outside corner", "inside corner", "rake",
                                                      "eave",       "base",           "transition"};
inline constexpr std::string_view trimLapsWords[] = {"over", "under", "butts"};

}  // namespace ribwright
