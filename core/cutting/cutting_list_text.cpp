#include "core/cutting/cutting_list_text.h"

#include <algorithm>
#include <charconv>
#include <map>
#include <string>

namespace ribwright {
namespace {

using Words = std::vector<std::string_view>;

constexpr std::string_view blanks = " \t\r";

Words wordsOf(std::string_view line) {
  line = line.substr(0, line.find('#'));
  Words words;
  for (auto at = line.find_first_not_of(blanks); at != std::string_view::npos;
       at = line.find_first_not_of(blanks, at)) {
    const auto end = std::min(line.find_first_of(blanks, at), line.size());
    words.push_back(line.substr(at, end - at));
    at = end;
  }
  return words;
}

std::optional<std::int64_t> wholeNumber(std::string_view word) {
  std::int64_t number = 0;
  const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), number);
  if (error != std::errc() || end != word.data() + word.size()) return std::nullopt;
  return number;
}

bool isStatement(std::string_view word) {
  return word == "stock" || word == "cost" || word == "supply" || word == "kerf" || word == "trim";
}

std::string lineName(int line) { return std::string("line ").append(std::to_string(line)); }

class Reading {
 public:
  Outcome<CuttingList> read(std::string_view text) {
    for (std::size_t at = 0; at < text.size(); ++line_) {
      const std::size_t end = std::min(text.find('\n', at), text.size());
      if (const Words words = wordsOf(text.substr(at, end - at)); !words.empty()) take(words);
      at = end + 1;
    }
    joinStocks();
    if (!faults_.empty()) return faults_;
    for (Fault& fault : faultsOf(list_)) faults_.push_back(named(std::move(fault)));
    if (!faults_.empty()) return faults_;
    return list_;
  }

 private:
  void add(const std::string& what) { faults_.push_back({lineName(line_), what}); }

  void take(const Words& words) {
    const std::string name(words.front());
    if (!isStatement(words.front())) return takeDemand(words);
    if (!lineOf_.emplace(name, line_).second) return add(name + " is there twice; state it once");
    Numbers numbers = numbersFrom(words, 1);
    if (name == "stock") return void(lengths_ = std::move(numbers));
    if (name == "cost") return void(costs_ = std::move(numbers));
    if (name == "supply") return void(supplies_ = std::move(numbers));
    if (numbers.size() != 1) return add(name + " takes one number, as in: " + name + " 2");
    (name == "kerf" ? list_.kerf : list_.endTrim) = numbers.front().value_or(0);
  }

  using Numbers = std::vector<std::optional<std::int64_t>>;

  Numbers numbersFrom(const Words& words, std::size_t first) {
    Numbers numbers;
    for (std::size_t i = first; i < words.size(); ++i) {
      numbers.push_back(wholeNumber(words[i]));
      const bool unlimited = words.front() == "supply" && words[i] == "-";
      if (!numbers.back() && !unlimited)
        add(std::string("\"").append(words[i]).append("\" is no whole number; write digits alone"));
    }
    if (words.size() <= first) add(std::string(words.front()).append(" wants a number after it"));
    return numbers;
  }

  void takeDemand(const Words& words) {
    if (words.size() != 2)
      return add("holds no length and its count; write two whole numbers, or stock, cost, supply, kerf or trim first");
    const Numbers numbers = numbersFrom(words, 0);
    demandLines_.push_back(line_);
    list_.demands.push_back({numbers[0].value_or(1), numbers[1].value_or(0)});
  }

  void joinStocks() {
    const auto parallel = [&](const char* name, const Numbers& numbers) {
      if (numbers.empty() || numbers.size() == lengths_.size()) return true;
      faults_.push_back({lineName(lineOf_[name]), std::string(name) + " has " + std::to_string(numbers.size()) +
                                                      " numbers where stock has " + std::to_string(lengths_.size()) +
                                                      "; state one for each stock"});
      return false;
    };
    if (!parallel("cost", costs_) || !parallel("supply", supplies_)) return;
    for (std::size_t k = 0; k < lengths_.size(); ++k)
      list_.stocks.push_back({lengths_[k].value_or(1), costs_.empty() ? std::nullopt : costs_[k],
                              supplies_.empty() ? std::nullopt : supplies_[k]});
  }

  // In lines of the text rather than members of the list.
  Fault named(Fault fault) {
    const std::string& place = fault.place;
    std::size_t index = 0;
    const auto bracket = place.find('[');
    if (bracket != std::string::npos) std::from_chars(place.data() + bracket + 1, place.data() + place.size(), index);
    if (place.starts_with("demands["))
      fault.place = lineName(demandLines_[index]);
    else if (place.starts_with("stocks["))
      fault.place = lineName(lineOf_[place.ends_with("cost")     ? "cost"
                                     : place.ends_with("supply") ? "supply"
                                                                 : "stock"]);
    else if (place == "kerf" || place == "endTrim")
      fault.place = lineName(lineOf_[place == "kerf" ? "kerf" : "trim"]);
    return fault;
  }

  CuttingList list_;
  Numbers lengths_, costs_, supplies_;
  std::map<std::string, int> lineOf_;
  std::vector<int> demandLines_;
  std::vector<Fault> faults_;
  int line_ = 1;
};

}  // namespace

bool looksLikeCuttingList(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    const Words words = wordsOf(text.substr(at, end - at));
    if (!words.empty()) return isStatement(words.front()) || wholeNumber(words.front());
    at = end + 1;
  }
  return false;
}

Outcome<CuttingList> readCuttingList(std::string_view text) { return Reading().read(text); }

}  // namespace ribwright
