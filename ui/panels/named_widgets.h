// Labels and buttons under a name of their own, by which tests and help find them.
#pragma once

#include <QLabel>
#include <QPushButton>

namespace ribwright {

// Whole sentences, broken into lines as the room asks.
QLabel* sentences(const QString& words, const char* name, QWidget* parent);

// A button that Enter in a field beside it does not press.
QPushButton* namedButton(const QString& words, const QString& name, QWidget* parent);

}  // namespace ribwright
