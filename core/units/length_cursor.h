// A place in a text that is being read as a length, and why it could not be.
#pragma once

#include <string>
#include <string_view>

#include "core/units/length_text.h"

namespace ribwright {

// Walks over text in plain spelling. Whoever refuses says why; an empty reason is "not understood".
class LengthCursor {
 public:
  LengthCursor(std::string_view text, const LengthStyle& style) : text_(text), style_(style) {}

  const LengthStyle& style() const { return style_; }
  bool feetInches() const { return style_.units == UnitSystem::FeetInches; }
  bool atEnd() const { return at_ >= text_.size(); }
  // '\0' beyond the end.
  char next(std::size_t ahead = 0) const { return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0'; }
  char before() const { return at_ > 0 ? text_[at_ - 1] : '\0'; }
  std::size_t place() const { return at_; }
  void goTo(std::size_t place) { at_ = place; }
  void skip(std::size_t characters = 1) { at_ += characters; }
  void skipSpaces() {
    while (next() == ' ') skip();
  }
  bool take(char c) {
    if (next() != c) return false;
    skip();
    return true;
  }

  // The first reason stays. Always false, so that it reads `return cursor.refuse(...)`.
  bool refuse(const std::string& reason) {
    if (!refused_) reason_ = reason;
    refused_ = true;
    return false;
  }
  const std::string& reason() const { return reason_; }

 private:
  std::string_view text_;
  LengthStyle style_;
  std::size_t at_ = 0;
  bool refused_ = false;
  std::string reason_;
};

}  // namespace ribwright
