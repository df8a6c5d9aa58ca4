#include "app/command_line.h"

#include <algorithm>
#include <charconv>
#include <filesystem>
#include <system_error>
#include <utility>

#include "core/job/job_file_text.h"
#include "core/units/typed_text.h"
#include "core/words/words.h"

namespace ribwright {
namespace {

using Command = Request::Command;

template <class Value>
using Named = std::vector<std::pair<std::string, Value>>;

const Named<Command> commands = {
    {"packet", Command::Packet}, {"order", Command::Order}, {"check", Command::Check}, {"cut", Command::Cut}};
const Named<UnitSystem> unitSystems = {{"ft-in", UnitSystem::FeetInches}, {"mm", UnitSystem::Millimetres}};
const std::vector<std::string> paperNames = {"letter", "tabloid", "a4", "a3"};
const std::vector<std::string> cutOptions = {"--stock", "--kerf", "--end-trim", "--effort", "--proof"};
const std::vector<std::string> valueOptions = {"--to",    "--units", "--paper",    "--language",
                                               "--stock", "--kerf",  "--end-trim", "--effort"};
const std::vector<std::string> options = {"--to",       "--units",  "--paper", "--language", "--stock",  "--kerf",
                                          "--end-trim", "--effort", "--proof", "--help",     "--version"};

bool holds(const std::vector<std::string>& words, const std::string& word) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

template <class Value>
std::vector<std::string> namesOf(const Named<Value>& named) {
  std::vector<std::string> names;
  for (const auto& [name, value] : named) names.push_back(name);
  return names;
}

template <class Value>
std::optional<Value> valueOf(const Named<Value>& named, const std::string& name) {
  const auto found = std::find_if(named.begin(), named.end(), [&](const auto& entry) { return entry.first == name; });
  if (found == named.end()) return std::nullopt;
  return found->second;
}

// "packet, order or check"
std::string listed(const std::vector<std::string>& names, const std::string& last) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) text += i + 1 == names.size() ? " " + last + " " : ", ";
    text += names[i];
  }
  return text;
}

std::string oneOf(const std::vector<std::string>& names) { return listed(names, "or"); }

Fault unknown(const std::string& word, const std::string& what, const std::vector<std::string>& known) {
  const std::string nearest(nearestOf(word, {known.begin(), known.end()}));
  return {word, "is no " + what + "; the nearest of " + listed(known, "and") + " is " + nearest};
}

// Words of the command line in the order they were written.
class Reading {
 public:
  explicit Reading(const std::vector<std::string>& words) : words_(words) {}

  Outcome<Request> request() {
    while (!fault_ && next_ < words_.size()) readWord();
    if (!fault_ && asked_) return Request{*asked_, {}, {}, {}, {}, {}, {}, {}};
    if (!fault_) settleCommand();
    if (!fault_) checkFit();
    if (fault_) return *fault_;
    return request_;
  }

 private:
  void readWord() {
    const std::string word = words_[next_++];
    if (onlyPlaces_ || !word.starts_with("-") || word == "-") {
      places_.push_back(word);
    } else if (word == "--") {
      onlyPlaces_ = true;
    } else {
      readOption(word);
    }
  }

  void readOption(const std::string& word) {
    const auto equals = word.find('=');
    const std::string name = word.substr(0, equals);
    const bool joined = equals != std::string::npos;
    if (!holds(options, name)) {
      fault_ = unknown(name, "option", options);
    } else if (!holds(valueOptions, name)) {
      if (joined) fault_ = Fault{word, "wants nothing after it; write " + name};
      given_.push_back(name);
      if (name == "--proof")
        request_.cut.proof = true;
      else if (!asked_)
        asked_ = name == "--help" ? Command::Help : Command::Version;
    } else if (holds(given_, name) && name != "--stock") {
      fault_ = Fault{name, "is there twice; write it once"};
    } else if (!joined && (next_ == words_.size() || words_[next_].starts_with("--"))) {
      fault_ = Fault{name, "wants a value after it: " + wanted(name)};
    } else {
      given_.push_back(name);
      take(name, joined ? word.substr(equals + 1) : words_[next_++]);
    }
  }

  static std::string wanted(const std::string& name) {
    if (name == "--units") return oneOf(namesOf(unitSystems));
    if (name == "--paper") return oneOf(paperNames);
    if (name == "--language") return oneOf(Words::languages());
    if (name == "--stock") return "a length, and a cost behind a colon if it has one";
    if (name == "--kerf" || name == "--end-trim") return "a length";
    if (name == "--effort") return "a whole number of steps";
    return "the folder to write into";
  }

  void take(const std::string& name, const std::string& value) {
    if (name == "--to") {
      request_.directory = value;
      if (value.empty()) fault_ = Fault{name, "wants " + wanted(name) + ", and it is empty"};
    } else if (name == "--units") {
      request_.units = valueOf(unitSystems, value);
      if (!request_.units)
        fault_ = Fault{name, ribwright::inQuotes(value) + " is no system of units; write " + wanted(name)};
    } else if (name == "--language") {
      request_.language = value;
      if (!holds(Words::languages(), value))
        fault_ =
            Fault{name, ribwright::inQuotes(value) + " is no language of pages and findings; write " + wanted(name)};
    } else if (holds(cutOptions, name)) {
      takeCut(name, value);
    } else {
      request_.paper = paperNamed(value);
      if (!request_.paper)
        fault_ = Fault{name, ribwright::inQuotes(value) + " is no paper size; write " + wanted(name)};
    }
  }

  void takeCut(const std::string& name, const std::string& value) {
    if (value.empty()) fault_ = Fault{name, "wants " + wanted(name) + ", and it is empty"};
    if (name == "--stock") request_.cut.stocks.push_back(value);
    if (name == "--kerf") request_.cut.kerf = value;
    if (name == "--end-trim") request_.cut.endTrim = value;
    if (name != "--effort" || fault_) return;
    std::int64_t effort = 0;
    const auto [end, error] = std::from_chars(value.data(), value.data() + value.size(), effort);
    if (error != std::errc() || end != value.data() + value.size() || effort < 0)
      fault_ = Fault{name, ribwright::inQuotes(value) + " is no number of steps; write a whole number"};
    request_.cut.effort = effort;
  }

  // The first word is a command, or a job for the window.
  void settleCommand() {
    if (places_.empty()) return;
    if (const auto command = valueOf(commands, places_.front())) {
      request_.command = *command;
      places_.erase(places_.begin());
    } else if (places_.size() > 1 || !looksLikeFile(places_.front())) {
      fault_ = unknown(places_.front(), "command", namesOf(commands));
      return;
    }
    const bool takesPage = request_.command == Command::Check;
    const std::size_t most = takesPage ? 2 : 1;
    if (!places_.empty()) request_.job = places_.front();
    if (takesPage && places_.size() > 1) request_.fingerprint = places_[1];
    if (places_.size() > most)
      fault_ = Fault{places_[most], std::string("is one word too many; only one ")
                                        .append(request_.command == Command::Cut ? "list" : "job")
                                        .append(takesPage ? " and one page's fingerprint" : "")
                                        .append(" at a time")};
  }

  static bool looksLikeFile(const std::string& word) {
    std::error_code ignored;  // what cannot be asked for is no file
    return word.find_first_of("./") != std::string::npos || std::filesystem::exists(word, ignored);
  }

  void checkFit() {
    const std::string name = commandName();
    if (request_.command != Command::Window && request_.job.empty())
      fault_ = Fault{
          name, request_.command == Command::Cut ? "wants a list of lengths after it" : "wants a job file after it"};
    else if (request_.command == Command::Packet && request_.directory.empty())
      fault_ = Fault{name, "wants --to and the folder to write into"};
    else if (request_.command != Command::Packet && !request_.directory.empty())
      fault_ = Fault{"--to", "goes with packet alone"};
    else if (request_.command != Command::Packet && request_.paper)
      fault_ = Fault{"--paper", "goes with packet alone"};
    else if (request_.command == Command::Order && !request_.language.empty())
      fault_ = Fault{"--language", "goes with packet, check, cut or the window"};
    else if (request_.command != Command::Cut && givenOfCut())
      fault_ = Fault{*givenOfCut(), "goes with cut alone"};
    else if (request_.command == Command::Window && request_.units)
      fault_ =
          Fault{"--units", "goes with " + oneOf(namesOf(commands)) + "; in the window choose the job's units there"};
  }

  std::optional<std::string> givenOfCut() const {
    for (const std::string& name : given_)
      if (holds(cutOptions, name)) return name;
    return std::nullopt;
  }

  std::string commandName() const {
    for (const auto& [name, command] : commands)
      if (command == request_.command) return name;
    return "";
  }

  const std::vector<std::string>& words_;
  std::size_t next_ = 0;
  bool onlyPlaces_ = false;
  std::vector<std::string> places_, given_;
  std::optional<Command> asked_;
  std::optional<Fault> fault_;
  Request request_;
};

}  // namespace

Outcome<Request> readCommandLine(const std::vector<std::string>& words) { return Reading(words).request(); }

std::string helpText() {
  return R"(Ribwright lays out the wall cladding of steel buildings.

  ribwright [JOB]                  the window
  ribwright packet JOB --to DIR    tables, elevations and findings into DIR; deletes nothing there
  ribwright order JOB              the sheet order as CSV on standard output
  ribwright check JOB [PAGE]       findings, one a line; PAGE: the fingerprint in a page's title block,
                                   to be told whether the page is current and what has changed
  ribwright cut LIST               how a list of lengths is cut from the least stock, as CSV, and whether that is
                                   proved; LIST: CSV with the columns length and quantity, and mark if wanted,
                                   or plain whole numbers: stock 1952, kerf 2, then a length and its count a line

  --units ft-in|mm                 units of tables and pages (usual: the job's own)
  --paper letter|tabloid|a4|a3     paper of the packet (usual: letter, or a4 in millimetres)
  --language en|es                 language of pages and findings (usual: en), or of the window
                                   (usual: the system's)
  --stock LENGTH[:COST]            stock that a CSV is cut from; once for each length of stock
  --kerf LENGTH                    lost between two pieces (usual: nothing)
  --end-trim LENGTH                lost at both ends of each stock together (usual: nothing)
  --effort N                       steps of work after which the best plan so far is given (usual: 3000000000)
  --proof                          with the plan why none is better, in points to be checked by hand
  --help, --version

Exit: 0 done and nothing stops; 1 done, but some finding is a stop; 2 the job cannot be read or
the command is wrong.
)";
}

}  // namespace ribwright
