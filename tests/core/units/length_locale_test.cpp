// No locale of the process changes a figure: neither its decimal sign, nor its grouping, nor its digits.
#include <sys/wait.h>
#include <unistd.h>

#include <clocale>
#include <cstdlib>
#include <filesystem>
#include <functional>
#include <iostream>
#include <locale>
#include <random>
#include <sstream>

#include "tests/core/temporary_folder.h"
#include "tests/core/units/length_samples.h"

namespace ribwright {
namespace {

struct Wanted {
  std::string name;
  std::string source;  // what localedef compiles it from; "" = always there
};

// A point, a comma, a comma with fixed spaces, Indian grouping and digits, and the dotless i.
const std::array kWanted{Wanted{"C", ""},
                         Wanted{"C.UTF-8", ""},
                         Wanted{"de_DE.UTF-8", "de_DE"},
                         Wanted{"fr_FR.UTF-8", "fr_FR"},
                         Wanted{"hi_IN.UTF-8", "hi_IN"},
                         Wanted{"tr_TR.UTF-8", "tr_TR"}};

// Where glibc keeps what a locale is compiled from: with it here, a locale that does not run is a failure of the test.
bool canBeMade(const Wanted& wanted) {
  return wanted.source.empty() || std::filesystem::exists("/usr/share/i18n/locales/" + wanted.source);
}

// Compiled locales of the test alone.
class LocaleFolder : public TemporaryFolder {
 public:
  LocaleFolder() : TemporaryFolder("locales ") {}

  // False when the system has neither localedef with its sources nor this locale.
  bool make(const Wanted& wanted) const {
    if (wanted.source.empty()) return true;
    std::string command = "localedef --quiet -i ";
    command.append(wanted.source).append(" -f UTF-8 '").append(*this / wanted.name).append("' >/dev/null 2>&1");
    return std::system(command.c_str()) == 0 && std::filesystem::exists(*this / wanted.name);
  }
};

// Everything that is written of some thousand lengths, and whether it was read again.
std::string everything() {
  std::mt19937_64 random(5);
  std::string all;
  for (int i = 0; i < 5'000; ++i) {
    const Length length =
        Length::nanometres(static_cast<std::int64_t>(random() >> (1 + random() % 60)) * (i % 2 ? 1 : -1));
    for (const LengthStyle& style : kStyles) {
      for (const std::string& text :
           {exactText(length, style.units), shownText(length, style, 64, 6), shownText(length, style)})
        all += text + '\n';
      all += std::to_string(read(withSign(exactText(length, style.units), style), style).nanometres()) + '\n';
    }
    all += decimalInches(length) + '\n';
    all += decimalMillimetres(length) + '\n';
    all += lengthStringText({length, length, Length::inches(36)}, kMillimetresComma) + '\n';
  }
  all += faultOf("1 FT 1 INCH X", kFeetInches);
  all += std::to_string(read("1 FT 1 INCH", kFeetInches).nanometres());
  return all;
}

enum Ended { Same, Different, NoLocale };

// A process of its own lives in the locale: C and C++ alike, as a window's toolkit would set them.
Ended inLocale(const Wanted& wanted, const LocaleFolder& folder, const std::function<bool()>& check) {
  const pid_t child = fork();
  if (child == 0) {
    try {
      if (!wanted.source.empty()) setenv("LOCPATH", folder.path().c_str(), 1);
      if (!std::setlocale(LC_ALL, wanted.name.c_str())) _exit(NoLocale);
      std::locale::global(std::locale(wanted.name));
      _exit(check() ? Same : Different);
    } catch (...) {
      _exit(Different);
    }
  }
  int status = 0;
  REQUIRE(waitpid(child, &status, 0) == child);
  return WIFEXITED(status) ? static_cast<Ended>(WEXITSTATUS(status)) : Different;
}

TEST_CASE("figures are the same in every locale") {
  const std::string plain = everything();
  const LocaleFolder folder;
  std::string ran;
  std::string missing;
  for (const Wanted& wanted : kWanted) {
    INFO(wanted.name);
    const bool made = folder.make(wanted);
    if (!canBeMade(wanted) && !made) {
      missing += ' ' + wanted.name;
      continue;
    }
    CHECK(inLocale(wanted, folder, [&] { return everything() == plain; }) == Same);
    ran += ' ' + wanted.name;
  }
  std::cout << "locales that ran:" << ran << '\n';
  if (!missing.empty()) std::cout << "locales this system cannot make (package locales):" << missing << '\n';
}

// A locale test that never meets a foreign decimal sign would prove nothing.
TEST_CASE("a locale of the test really writes a comma") {
  const LocaleFolder folder;
  const Wanted& german = kWanted[2];
  if (!folder.make(german) && !canBeMade(german)) {
    WARN("de_DE.UTF-8 cannot be made here: package locales is missing");
    return;
  }
  CHECK(inLocale(german, folder, [] {
          std::ostringstream text;
          text << 0.5;
          return text.str() == "0,5" && std::string(std::localeconv()->decimal_point) == ",";
        }) == Same);
}

}  // namespace
}  // namespace ribwright
