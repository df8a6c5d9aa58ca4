#include "core/output/csv_reading.h"

namespace ribwright {
namespace {

Fault at(int line, const std::string& message) { return {std::string("line ").append(std::to_string(line)), message}; }

// Goes through the text record by record.
class Records {
 public:
  Records(std::string_view text, char separator) : text_(text), separator_(separator) {}

  bool atEnd() const { return place_ >= text_.size(); }
  int line() const { return line_; }

  Outcome<std::vector<std::string>> next() {
    std::vector<std::string> fields;
    for (bool more = true; more;) {
      const bool quoted = peek() == '"';
      Outcome<std::string> field = quoted ? quotedField() : plainField();
      if (!field) return field.faults();
      fields.push_back(std::move(field).value());
      more = peek() == separator_;
      if (more) {
        ++place_;
      } else if (!endLine()) {
        return at(line_, "something stands behind a closing quote; double a quote that belongs to the field");
      }
    }
    return fields;
  }

 private:
  char peek() const { return atEnd() ? '\0' : text_[place_]; }

  bool endLine() {
    if (atEnd()) return true;
    if (peek() == '\r') ++place_;
    if (peek() != '\n') return atEnd();
    ++place_;
    ++line_;
    return true;
  }

  Outcome<std::string> plainField() {
    std::string field;
    while (!atEnd() && peek() != separator_ && peek() != '\r' && peek() != '\n') {
      // As people type inches: 88-1/2". Only a quote in front opens a quoted field.
      field += text_[place_++];
    }
    return field;
  }

  Outcome<std::string> quotedField() {
    const int opened = line_;
    std::string field;
    for (++place_; !atEnd(); ++place_) {
      if (peek() == '"') {
        ++place_;
        if (peek() != '"') return field;
      }
      if (peek() == '\n') ++line_;
      field += text_[place_];
    }
    return at(opened, "a quote is opened and never closed");
  }

  std::string_view text_;
  char separator_;
  std::size_t place_ = 0;
  int line_ = 1;
};

// How many bytes the character at the front takes; 0: it is none of UTF-8.
std::size_t characterLength(std::string_view text) {
  const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
  const unsigned first = byte(0);
  if (first < 0x80) return 1;
  const std::size_t length = first >= 0xF0 && first <= 0xF4   ? 4
                             : first >= 0xE0 && first < 0xF0  ? 3
                             : first >= 0xC2 && first <= 0xDF ? 2
                                                              : 0;
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(i) & 0xC0U) != 0x80U) return 0;
  }
  const bool overlong = (first == 0xE0 && byte(1) < 0xA0) || (first == 0xF0 && byte(1) < 0x90);
  const bool beyond = (first == 0xED && byte(1) > 0x9F) || (first == 0xF4 && byte(1) > 0x8F);
  return overlong || beyond ? 0 : length;
}

// The line of the first character that is none of UTF-8; 0: all are.
int lineOfUnsound(std::string_view text) {
  for (int line = 1; !text.empty();) {
    const std::size_t length = characterLength(text);
    if (length == 0) return line;
    line += text.front() == '\n';
    text.remove_prefix(length);
  }
  return 0;
}

}  // namespace

Outcome<ReadTable> readCsv(std::string_view text) {
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  if (const int line = lineOfUnsound(text))
    return at(line, "holds a character that is not UTF-8; save the table as CSV in UTF-8");
  const std::string_view head = text.substr(0, text.find('\n'));
  const bool semicolons = head.find(';') != std::string_view::npos && head.find(',') == std::string_view::npos;
  ReadTable read;
  read.decimalSign = semicolons ? ',' : '.';
  Records records(text, semicolons ? ';' : ',');
  std::vector<Fault> faults;
  while (!records.atEnd()) {
    const int line = records.line();
    Outcome<std::vector<std::string>> record = records.next();
    if (!record) return record.faults();
    std::vector<std::string>& fields = record.value();
    if (fields.size() == 1 && fields.front().empty()) continue;
    if (read.table.columns.empty()) {
      read.table.columns = std::move(fields);
    } else if (fields.size() != read.table.columns.size()) {
      faults.push_back(at(line, std::to_string(fields.size()) + " fields, where " +
                                    std::to_string(read.table.columns.size()) + " columns are named"));
    } else {
      read.table.rows.push_back(std::move(fields));
      read.lines.push_back(line);
    }
  }
  if (read.table.columns.empty()) return at(1, "no columns are named; the first line names them");
  if (!faults.empty()) return faults;
  return read;
}

}  // namespace ribwright
