// Light or dark, and how large the window's words are: chosen by a person, kept from one day to the next.
#pragma once

#include <QString>

namespace ribwright {

enum class Appearance { System, Light, Dark };

Appearance keptAppearance();
// Shows and keeps it.
void chooseAppearance(Appearance appearance);

// Of the system's own size of text.
inline constexpr int textPercents[] = {100, 125, 150, 175, 200};
int keptTextPercent();
void chooseTextPercent(int percent);

// What was kept, shown: once, before the first window.
void applyKeptAppearance();

}  // namespace ribwright
