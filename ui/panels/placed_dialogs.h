// What is asked when an order is placed, and when sheets come.
#pragma once

#include <functional>
#include <string>

#include "core/takeoff/placed_sheets.h"

class QString;
class QWidget;

namespace ribwright {

// Its number and date. `taken` is called when they were given; dialogs do not wait.
void askForOrder(QWidget* window, const QString& number, const QString& date,
                 std::function<void(const std::string& id, const std::string& date)> taken);

// How many sheets came fit to hang, and how many are short.
void askForCounts(QWidget* window, const PlacedCount& now, std::function<void(int received, int missing)> taken);

}  // namespace ribwright
